using Recipe.Compiler;
using Recipe.Disk;
using Recipe.Text.Findings;

namespace Recipe.Cli.Files;

/// <summary>
/// Makes the safe fixes of files, again and again until none is left: one fix may open the way for another. A file is written whole,
/// and only when the new text has no error that the old one had not.
/// </summary>
internal static class FixedFiles
{
    // Each round settles something; a fix that brings its finding back must not go on for ever.
    private const int Rounds = 20;

    /// <summary>Fixes the files; each line that comes back says what was done where.</summary>
    /// <exception cref="CannotRunException">A file could not be read or written.</exception>
    public static IReadOnlyList<string> Fix(IReadOnlyList<string> names, Terminal terminal)
    {
        var said = new List<string>();
        var given = new HashSet<string>(names, StringComparer.Ordinal);
        for (var round = 0; round < Rounds && given.Count > 0; round++)
        {
            foreach (var name in given.Order(StringComparer.Ordinal).ToList())
            {
                if (!FixOnce(name, terminal, said))
                {
                    given.Remove(name);
                }
            }
        }

        return said;
    }

    private static bool FixOnce(string name, Terminal terminal, List<string> said)
    {
        var store = new DiskFiles(terminal.Rules);
        if (!new Workspace(store, terminal.Today).TryCompile(name, out var file))
        {
            throw DiskFiles.Missing(name);
        }

        var (text, applied) = SafeFixes.Apply(file);
        if (applied.IsEmpty || text == file.Source.Text)
        {
            return false;
        }

        if (!new Workspace(new TextOverlay(store, name, text), terminal.Today).TryCompile(name, out var after) || Errors(after) > Errors(file))
        {
            said.Add($"not fixed {name}: the fixes do not go together; make them one by one");
            return false;
        }

        if (DiskFiles.ReadExactly(name) != file.Source.Text)
        {
            throw new CannotRunException($"{name} has changed while it was read; nothing was written.");
        }

        WholeFile.Write(name, text);
        said.AddRange(applied.Select(a => $"fixed {a.Finding.Where.Source.Name}:{a.Finding.Where.Start} {a.Finding.Descriptor.Label}: {a.Fix.Title}"));
        return true;
    }

    private static int Errors(CompiledFile file) => file.Findings.Count(f => f.Severity == Severity.Error);
}
