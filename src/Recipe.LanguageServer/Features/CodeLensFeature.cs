using Recipe.Editing;
using Recipe.LanguageServer.Protocol;

namespace Recipe.LanguageServer.Features;

/// <summary><c>textDocument/codeLens</c>: the figures of a part above its name, and a line to press that writes its papers.</summary>
internal sealed class CodeLensFeature : IFeature
{
    public void Enter(Router router, ServerCapabilities capabilities, Session session)
    {
        capabilities.CodeLensProvider = new CodeLensOptions { ResolveProvider = false };
        router.Request("textDocument/codeLens", ProtocolJson.Default.DocumentParams, ProtocolJson.Default.CodeLensArray, p =>
        {
            var file = session.Compile(p.TextDocument);
            return
            [
                .. Lenses.Of(file).Select(lens => new CodeLens(session.RangeOf(file, lens.Where))
                {
                    Command = new Command(lens.Title, lens.Action == LensAction.MakePapers ? Commands.MakePapers : Commands.ShowNumbers)
                    {
                        Arguments = [p.TextDocument.Uri, lens.Part],
                    },
                }),
            ];
        });
    }
}
