using Recipe.Editing;
using Recipe.LanguageServer.Protocol;

namespace Recipe.LanguageServer.Features;

/// <summary><c>textDocument/signatureHelp</c>: what may stand on the line, and where in it the cursor is.</summary>
internal sealed class SignatureHelpFeature : IFeature
{
    public void Enter(Router router, ServerCapabilities capabilities, Session session)
    {
        capabilities.SignatureHelpProvider = new SignatureHelpOptions { TriggerCharacters = [" "], RetriggerCharacters = [" "] };
        router.Request("textDocument/signatureHelp", ProtocolJson.Default.TextDocumentPositionParams, ProtocolJson.Default.SignatureHelp, p =>
        {
            var file = session.Compile(p.TextDocument);
            return EntryHelp.At(file, session.Offset(file, p.Position)) is { } help
                ? new SignatureHelp(
                [
                    new SignatureInformation(help.Label)
                    {
                        Documentation = new MarkupContent(MarkupContent.Markdown, help.Doc),
                        Parameters =
                        [
                            .. help.Parts.Select(part => new ParameterInformation([part.Start, part.Start + part.Length])
                            {
                                Documentation = new MarkupContent(MarkupContent.Markdown, part.Doc),
                            }),
                        ],
                    },
                ])
                { ActiveSignature = 0, ActiveParameter = help.Active }
                : null;
        });
    }
}
