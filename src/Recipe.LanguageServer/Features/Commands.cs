using System.Text.Json;
using Recipe.Compiler;
using Recipe.LanguageServer.Documents;
using Recipe.LanguageServer.Protocol;
using Recipe.LanguageServer.Transport;

namespace Recipe.LanguageServer.Features;

/// <summary>
/// <c>workspace/executeCommand</c>. Both commands take the URI of a document and the name of a part. One writes the papers of the part
/// into a folder <c>papers</c> beside the document and answers with their paths; the other answers with the figures of the part as Markdown.
/// </summary>
internal sealed class Commands : IFeature
{
    public const string MakePapers = "recipe.makePapers";
    public const string ShowNumbers = "recipe.showNumbers";

    public void Enter(Router router, ServerCapabilities capabilities, Session session)
    {
        capabilities.ExecuteCommandProvider = new ExecuteCommandOptions([MakePapers, ShowNumbers]);
        router.Request("workspace/executeCommand", ProtocolJson.Default.ExecuteCommandParams, ProtocolJson.Default.StringArray, p =>
        {
            var (uri, part) = Arguments(p);
            var file = session.Compile(new TextDocumentIdentifier(uri));
            if (!file.PartNames.Contains(part))
            {
                throw new RpcException(ErrorCode.InvalidParams, $"There is no part named {part} in {uri}.");
            }

            return p.Command switch
            {
                MakePapers => Write(session, file, part),
                ShowNumbers => [BenchPapers.Summary(file, part, session.Today)!],
                _ => throw new RpcException(ErrorCode.InvalidParams, $"There is no command {p.Command}."),
            };
        });
    }

    private static (string Uri, string Part) Arguments(ExecuteCommandParams p) =>
        p.Arguments is [{ ValueKind: JsonValueKind.String } uri, { ValueKind: JsonValueKind.String } part]
            ? (uri.GetString()!, part.GetString()!)
            : throw new RpcException(ErrorCode.InvalidParams, $"{p.Command} takes the URI of a document and the name of a part.");

    private static string[] Write(Session session, CompiledFile file, string part)
    {
        if (file.HasErrors)
        {
            throw new RpcException(ErrorCode.RequestFailed, "No papers were written: a sheet on the bench must not carry an error. Mend it, or accept it in the recipe with a reason.");
        }

        if (!DocumentNames.IsOnDisk(file.Source.Name))
        {
            throw new RpcException(ErrorCode.RequestFailed, "Save the recipe first: its papers are written beside it.");
        }

        var papers = BenchPapers.Write(file, new PaperWish { Part = part, Printed = session.Today, Today = session.Today });
        return [.. PaperFolder.Write($"{PathNames.FolderOf(file.Source.Name).TrimEnd('/')}/papers", papers)];
    }
}
