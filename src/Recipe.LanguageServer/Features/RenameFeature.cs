using Recipe.Editing;
using Recipe.LanguageServer.Protocol;
using Recipe.LanguageServer.Transport;

namespace Recipe.LanguageServer.Features;

/// <summary><c>textDocument/prepareRename</c> and <c>textDocument/rename</c>, in all files of the workspace.</summary>
internal sealed class RenameFeature : IFeature
{
    public void Enter(Router router, ServerCapabilities capabilities, Session session)
    {
        capabilities.RenameProvider = new RenameOptions { PrepareProvider = true };
        router.Request("textDocument/prepareRename", ProtocolJson.Default.TextDocumentPositionParams, ProtocolJson.Default.PrepareRenamePlaceholder, p =>
        {
            var file = session.Compile(p.TextDocument);
            return Renames.Prepare(file, session.Offset(file, p.Position)) is { } target
                ? new PrepareRenamePlaceholder(session.RangeOf(file, target.Where), target.Name)
                : null;
        });
        router.Request("textDocument/rename", ProtocolJson.Default.RenameParams, ProtocolJson.Default.WorkspaceEdit, p =>
        {
            var file = session.Compile(p.TextDocument);
            var result = Renames.Rename(session.CompileAll(), file, session.Offset(file, p.Position), p.NewName);
            return result.Refusal is { } why ? throw new RpcException(ErrorCode.RequestFailed, why) : session.EditOf(result.Edits);
        });
    }
}
