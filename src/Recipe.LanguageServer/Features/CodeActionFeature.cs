using Recipe.Editing;
using Recipe.LanguageServer.Protocol;

namespace Recipe.LanguageServer.Features;

/// <summary><c>textDocument/codeAction</c>: fixes, all safe fixes at once, and other ways to say the same.</summary>
internal sealed class CodeActionFeature : IFeature
{
    private const string QuickFix = "quickfix";
    private const string FixAll = "source.fixAll.recipe";
    private const string Extract = "refactor.extract";
    private const string Rewrite = "refactor.rewrite";

    public void Enter(Router router, ServerCapabilities capabilities, Session session)
    {
        // Without literals an action is a command; the fixes are changes of text, so such a client is offered none.
        if (session.Client.TextDocument?.CodeAction?.CodeActionLiteralSupport is null)
        {
            return;
        }

        capabilities.CodeActionProvider = new CodeActionOptions { CodeActionKinds = [QuickFix, FixAll, Extract, Rewrite] };
        router.Request("textDocument/codeAction", ProtocolJson.Default.CodeActionParams, ProtocolJson.Default.CodeActionArray, p =>
        {
            var file = session.Compile(p.TextDocument);
            var actions = Actions.At(file, session.Positions.Span(file.Source, p.Range));
            return [.. actions.Where(action => IsWanted(KindOf(action.Kind), p.Context.Only)).Select(action => Map(session, action))];
        });
    }

    private static CodeAction Map(Session session, EditorAction action) => new(action.Title)
    {
        Kind = KindOf(action.Kind),
        Diagnostics = action.Settles is { } finding ? [DiagnosticMapper.One(session, finding)] : null,
        IsPreferred = action.IsPreferred ? true : null,
        Edit = session.EditOf(action.Edits),
    };

    /// <summary>A kind stands for itself and for what is below it: <c>refactor</c> for <c>refactor.extract</c>.</summary>
    private static bool IsWanted(string kind, string[]? only) => only is null or []
        || only.Any(wanted => kind == wanted || kind.StartsWith(wanted + ".", StringComparison.Ordinal));

    private static string KindOf(ActionKind kind) => kind switch
    {
        ActionKind.QuickFix => QuickFix,
        ActionKind.FixAll => FixAll,
        ActionKind.Extract => Extract,
        _ => Rewrite,
    };
}
