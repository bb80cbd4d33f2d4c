using Recipe.Editing;
using Recipe.LanguageServer.Protocol;

namespace Recipe.LanguageServer.Features;

/// <summary>
/// <c>textDocument/formatting</c>, <c>rangeFormatting</c> and <c>onTypeFormatting</c>. There is one layout, so the client's wishes about
/// tabs are not asked for.
/// </summary>
internal sealed class FormattingFeature : IFeature
{
    public void Enter(Router router, ServerCapabilities capabilities, Session session)
    {
        capabilities.DocumentFormattingProvider = true;
        capabilities.DocumentRangeFormattingProvider = true;
        capabilities.DocumentOnTypeFormattingProvider = new DocumentOnTypeFormattingOptions("}") { MoreTriggerCharacter = ["\n"] };
        router.Request("textDocument/formatting", ProtocolJson.Default.DocumentFormattingParams, ProtocolJson.Default.TextEditArray, p =>
            session.EditsOf(Layout.Whole(session.Compile(p.TextDocument))));
        router.Request("textDocument/rangeFormatting", ProtocolJson.Default.DocumentRangeFormattingParams, ProtocolJson.Default.TextEditArray, p =>
        {
            var file = session.Compile(p.TextDocument);
            return session.EditsOf(Layout.Range(file, session.Positions.Span(file.Source, p.Range)));
        });
        router.Request("textDocument/onTypeFormatting", ProtocolJson.Default.DocumentOnTypeFormattingParams, ProtocolJson.Default.TextEditArray, p =>
        {
            var file = session.Compile(p.TextDocument);
            return p.Typed.Length == 0 ? [] : session.EditsOf(Layout.OnType(file, session.Offset(file, p.Position), p.Typed[0]));
        });
    }
}
