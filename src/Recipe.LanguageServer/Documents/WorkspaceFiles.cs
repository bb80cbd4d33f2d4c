using System.IO.Enumeration;
using Recipe.LanguageServer.Protocol;
using Recipe.Text;

namespace Recipe.LanguageServer.Documents;

/// <summary>
/// The recipes in the folders that are open in the editor. They are looked for when somebody asks, and again after the client has told
/// of a file that came or went; a client that tells of none makes each question look again.
/// </summary>
internal sealed class WorkspaceFiles
{
    /// <summary>More recipes than any shop has: past it the folder is something else, and the rest is left out.</summary>
    public const int MostFiles = 20_000;

    private readonly List<string> _folders = [];
    private List<string>? _found;

    /// <summary>Whether the client tells when a file comes or goes.</summary>
    public bool IsTold { get; set; }

    public void Add(WorkspaceFolder folder)
    {
        var name = DocumentNames.FromUri(folder.Uri);
        if (DocumentNames.IsOnDisk(name) && !_folders.Contains(name))
        {
            _folders.Add(name);
        }

        _found = null;
    }

    public void Remove(WorkspaceFolder folder)
    {
        _folders.Remove(DocumentNames.FromUri(folder.Uri));
        _found = null;
    }

    /// <summary>Files came or went.</summary>
    public void Changed() => _found = null;

    /// <summary>Names of all recipes in the folders, in ordinal order. Hidden folders are left out.</summary>
    public IReadOnlyList<string> Names()
    {
        if (_found is null || !IsTold)
        {
            _found = [.. _folders.SelectMany(Below).Take(MostFiles).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
        }

        return _found;
    }

    private static IEnumerable<string> Below(string folder)
    {
        var options = new EnumerationOptions
        {
            RecurseSubdirectories = true,
            AttributesToSkip = FileAttributes.Hidden | FileAttributes.System,
            IgnoreInaccessible = true,
        };

        // Links to folders are not followed: they may lead back up.
        return Directory.Exists(folder)
            ? new FileSystemEnumerable<string>(folder, (ref FileSystemEntry entry) => entry.ToSpecifiedFullPath(), options)
            {
                ShouldIncludePredicate = (ref FileSystemEntry entry) => !entry.IsDirectory && entry.FileName.EndsWith(FileEndings.Recipe, StringComparison.Ordinal),
                ShouldRecursePredicate = (ref FileSystemEntry entry) => (entry.Attributes & FileAttributes.ReparsePoint) == 0,
            }.Select(path => path.Replace('\\', '/')).Where(path => !path.Contains("/node_modules/", StringComparison.Ordinal))
            : [];
    }
}
