using Recipe.Editing;
using Recipe.LanguageServer.Protocol;

namespace Recipe.LanguageServer.Features;

/// <summary><c>textDocument/inlayHint</c>: computed figures beside the lines that cause them, each topic with a switch of its own.</summary>
internal sealed class InlayHintFeature : IFeature
{
    public void Enter(Router router, ServerCapabilities capabilities, Session session)
    {
        capabilities.InlayHintProvider = true;
        router.Request("textDocument/inlayHint", ProtocolJson.Default.InlayHintParams, ProtocolJson.Default.InlayHintArray, p =>
        {
            var file = session.Compile(p.TextDocument);
            var wanted = Enum.GetValues<HintTopic>().Where(topic => session.Settings.Shows(SwitchOf(topic))).ToHashSet();
            return
            [
                .. Hints.Of(file, session.Positions.Span(file.Source, p.Range), wanted).Select(hint =>
                    new InlayHint(session.Positions.Position(file.Source, hint.Offset), hint.Text) { Tooltip = hint.Tooltip, PaddingLeft = true }),
            ];
        });
    }

    private static string SwitchOf(HintTopic topic) => topic switch
    {
        HintTopic.Thickness => "thickness",
        HintTopic.Resin => "resin",
        HintTopic.Clock => "clock",
        HintTopic.Pressure => "pressure",
        _ => "cure",
    };
}
