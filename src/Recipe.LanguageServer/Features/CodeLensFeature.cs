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
            var canCompare = Commands.CanCompare(session, file.Source.Name);
            return
            [
                .. Lenses.Of(file).Where(lens => canCompare || lens.Action != LensAction.Compare).Select(lens => new CodeLens(session.RangeOf(file, lens.Where))
                {
                    Command = new Command(lens.Title, CommandOf(lens.Action))
                    {
                        Arguments = [p.TextDocument.Uri, lens.Part],
                    },
                }),
            ];
        });
    }
    private static string CommandOf(LensAction action) => action switch
    {
        LensAction.MakePapers => Commands.MakePapers,
        LensAction.Compare => Commands.Compare,
        _ => Commands.ShowNumbers,
    };
}
