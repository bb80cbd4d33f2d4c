using Recipe.Compiler;
using Recipe.Compiler.Comparing;
using Recipe.Disk;
using Recipe.LanguageServer.Documents;
using Recipe.LanguageServer.Protocol;
using Recipe.LanguageServer.Transport;
using Recipe.Preview;

namespace Recipe.LanguageServer.Features;

/// <summary>
/// <c>workspace/executeCommand</c>. Each command takes the URI of a document and the name of a part. One writes the papers of the part
/// into a folder <c>papers</c> beside the document and answers with their paths; the others answer with Markdown: the figures of the part, and what is
/// different from the last commit. The last one shows the part on a page that follows what is typed, opens it in the browser where the client can, and
/// answers with its address.
/// </summary>
internal sealed class Commands : IFeature
{
    public const string MakePapers = "recipe.makePapers";
    public const string ShowNumbers = "recipe.showNumbers";
    public const string Compare = "recipe.compare";
    public const string Preview = "recipe.preview";

    public void Enter(Router router, ServerCapabilities capabilities, Session session)
    {
        capabilities.ExecuteCommandProvider = new ExecuteCommandOptions([MakePapers, ShowNumbers, Compare, Preview]);
        router.Request("workspace/executeCommand", ProtocolJson.Default.ExecuteCommandParams, ProtocolJson.Default.StringArray, p =>
        {
            if (p is { Command: Preview, Arguments: [var document, ..] } && LooseText.Of(document) is { } shown)
            {
                return [Show(session, shown, p.Arguments is [_, var chosen] ? LooseText.Of(chosen) : null)];
            }

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
                Compare => [Compared(session, file, part)],
                _ => throw new RpcException(ErrorCode.InvalidParams, $"There is no command {p.Command}."),
            };
        });
    }

    private static (string Uri, string Part) Arguments(ExecuteCommandParams p) =>
        p.Arguments is [var uri, var part] && LooseText.Of(uri) is { } document && LooseText.Of(part) is { } name
            ? (document, name)
            : throw new RpcException(ErrorCode.InvalidParams, $"{p.Command} takes the URI of a document and the name of a part.");

    /// <summary>Whether a text has a last commit to be compared with, as far as a look at the folders above it tells.</summary>
    public static bool CanCompare(Session session, string name)
    {
        if (session.LastCommit is null || !DocumentNames.IsOnDisk(name))
        {
            return false;
        }

        for (string? folder = PathNames.FolderOf(name); folder is not null; folder = PathNames.Above(folder))
        {
            var git = folder.TrimEnd('/') + "/.git";
            if (Directory.Exists(git) || File.Exists(git))
            {
                return true;
            }
        }

        return false;
    }

    private static string Compared(Session session, CompiledFile file, string part)
    {
        if (!CanCompare(session, file.Source.Name))
        {
            throw new RpcException(ErrorCode.RequestFailed, "There is no last commit to compare with: the recipe is in no git repository.");
        }

        var opened = session.LastCommit!(PathNames.FolderOf(file.Source.Name));
        using var held = opened.Files as IDisposable;
        if (opened.Files is not { } files)
        {
            throw new RpcException(ErrorCode.RequestFailed, opened.Refusal ?? "There is no last commit to compare with.");
        }

        new Workspace(files, session.Today).TryCompile(file.Source.Name, out var before);
        return Comparison.Of([new FileVersions(before, "the last commit", file, PathNames.FileName(file.Source.Name))], session.Today, part).AsMarkdown();
    }

    private static string Show(Session session, string uri, string? part)
    {
        var name = session.Compile(new TextDocumentIdentifier(uri)).Source.Name;
        if (!DocumentNames.IsOnDisk(name))
        {
            throw new RpcException(ErrorCode.RequestFailed, "Save the recipe first: its page follows a file.");
        }

        string address;
        try
        {
            address = session.Previews.AddressOf(name, session.Documents).AbsoluteUri + (part is null ? "" : $"#part={Uri.EscapeDataString(part)}");
        }
        catch (PreviewException problem)
        {
            throw new RpcException(ErrorCode.RequestFailed, problem.Message);
        }

        if (session.Client.Window?.ShowDocument?.Support == true)
        {
            session.Connection.Ask("window/showDocument", new ShowDocumentParams(address) { External = true, TakeFocus = true }, ProtocolJson.Default.ShowDocumentParams, _ => { });
        }
        else
        {
            session.Writer.Notification("window/showMessage", new ShowMessageParams(ShowMessageParams.Info, $"The preview is at {address}"), ProtocolJson.Default.ShowMessageParams);
        }

        return address;
    }

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
        try
        {
            using var output = new OutputSet($"{PathNames.FolderOf(file.Source.Name).TrimEnd('/')}/papers", flush: false);
            foreach (var paper in papers)
            {
                output.Add(paper.FileName, paper.Bytes);
            }

            return [.. output.Write()];
        }
        catch (CannotWriteException problem)
        {
            throw new RpcException(ErrorCode.RequestFailed, $"The papers could not be written: {problem.Message}", problem);
        }
    }
}
