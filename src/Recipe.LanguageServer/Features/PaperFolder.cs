using Recipe.Compiler;
using Recipe.LanguageServer.Transport;

namespace Recipe.LanguageServer.Features;

/// <summary>
/// Writes papers that belong together. Each is first written whole under a temporary name; only when all are on disk do they take their
/// places, so a full disk leaves the old papers as they were. Nothing else in the folder is touched.
/// </summary>
internal static class PaperFolder
{
    /// <summary>The paths, in the order of the papers.</summary>
    /// <exception cref="RpcException">They could not be written; then none was.</exception>
    public static IEnumerable<string> Write(string folder, IEnumerable<WrittenPaper> papers)
    {
        var pending = new List<(string Temporary, string Final)>();
        try
        {
            Directory.CreateDirectory(folder);
            foreach (var paper in papers)
            {
                var temporary = $"{folder}/.{paper.FileName}.{Environment.ProcessId}.tmp";
                pending.Add((temporary, $"{folder}/{paper.FileName}"));
                File.WriteAllBytes(temporary, paper.Bytes.Span);
            }

            foreach (var (temporary, final) in pending)
            {
                File.Move(temporary, final, overwrite: true);
            }

            return pending.Select(file => file.Final);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            throw new RpcException(ErrorCode.RequestFailed, $"The papers could not be written to {folder}: {problem.Message}", problem);
        }
        finally
        {
            foreach (var (temporary, _) in pending.Where(file => File.Exists(file.Temporary)))
            {
                File.Delete(temporary);
            }
        }
    }
}
