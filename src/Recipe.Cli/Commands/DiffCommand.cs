using System.CommandLine;
using Recipe.Cli.Files;
using Recipe.Compiler.Comparing;
using Recipe.Text;

namespace Recipe.Cli.Commands;

/// <summary><c>recipe diff</c>: what changed, in the words of the trade, and what it does in grams and minutes.</summary>
internal static class DiffCommand
{
    public static Command Create(Terminal terminal)
    {
        var before = new Argument<string>("before") { Description = "A file, a folder, or a git revision." };
        var after = new Argument<string?>("after") { Description = "The same, later; what stands on disk when it is not given.", Arity = ArgumentArity.ZeroOrOne };
        var path = new Option<string[]>("--path") { Description = "Of a revision only these files or folders.", AllowMultipleArgumentsPerToken = true };
        var format = new Option<string>("--format") { Description = "text, md (for a review comment), html (both stacks drawn) or json.", DefaultValueFactory = _ => "text" };
        format.AcceptOnlyFromAmong("text", "md", "html", "json");
        var command = new Command("diff", "Compare two versions of recipes: what was written, and what it does.") { before, after, path, format };
        command.SetAction(result => Run(
            terminal, result.GetValue(before)!, result.GetValue(after), result.GetValue(path) ?? [], result.GetValue(format) ?? "text"));
        return command;
    }

    private static int Run(Terminal terminal, string before, string? after, string[] paths, string format)
    {
        var compared = Compare(before, after, paths, terminal);
        terminal.Out.Write(format switch
        {
            "md" => compared.AsMarkdown(),
            "html" => compared.AsHtml(),
            "json" => compared.AsJson(),
            _ => compared.IsSame ? "Nothing is different.\n" : compared.AsText(),
        });
        return ExitStatus.Clean;
    }

    private static Comparison Compare(string before, string? after, string[] paths, Terminal terminal)
    {
        var (oldIsPath, newIsPath) = (IsPath(before), after is not null && IsPath(after));
        if (oldIsPath && !newIsPath)
        {
            throw new CannotRunException(after is null
                ? $"{before} is a file or folder: name another one to compare it with, or a revision in its place."
                : $"{after}: there is no such file or folder.");
        }

        using var old = oldIsPath ? RecipeVersion.OnDisk(terminal) : RecipeVersion.At(before, terminal);
        using var now = newIsPath || after is null ? RecipeVersion.OnDisk(terminal) : RecipeVersion.At(after, terminal);
        var pairs = oldIsPath ? Pairs(before, after!, old) : newIsPath ? Named([after!, .. paths], old, now) : Named(paths, old, now);
        if (pairs.Count == 0)
        {
            throw new CannotRunException("there is no recipe to compare.");
        }

        return Comparison.Of(
            pairs.Select(pair => new FileVersions(
                pair.Old is { } was ? old.Compile(was) : null,
                pair.Old is null ? "nothing" : old.Shown(pair.Old),
                pair.New is { } file ? now.Compile(file) : null,
                pair.New is null ? "nothing" : now.Shown(pair.New))),
            terminal.Today);
    }

    private static bool IsPath(string name) => File.Exists(name) || Directory.Exists(name);

    /// <summary>Two files, or the files of two folders by their place in them.</summary>
    private static List<(string? Old, string? New)> Pairs(string before, string after, RecipeVersion disk)
    {
        if (File.Exists(before) != File.Exists(after))
        {
            throw new CannotRunException($"{before} and {after}: one is a file and the other a folder.");
        }

        if (File.Exists(before))
        {
            return [(before, after)];
        }

        var (old, now) = (Below(before), Below(after));
        return [.. old.Keys.Union(now.Keys).Order(StringComparer.Ordinal).Select(name => (old.GetValueOrDefault(name), now.GetValueOrDefault(name)))];

        Dictionary<string, string> Below(string folder) => disk.Recipes(folder).ToDictionary(file => Path.GetRelativePath(folder, file), StringComparer.Ordinal);
    }

    /// <summary>The files of two versions by their names; all that either has when none is named.</summary>
    private static List<(string? Old, string? New)> Named(string[] paths, RecipeVersion old, RecipeVersion now)
    {
        var names = (paths.Length == 0 ? [""] : paths)
            .SelectMany(path => path.EndsWith(FileEndings.Recipe, StringComparison.Ordinal) ? [path] : old.Recipes(path).Union(now.Recipes(path)))
            .Distinct(StringComparer.Ordinal)
            .Order(StringComparer.Ordinal);
        return [.. names.Select(name => (old.Compile(name) is null ? null : name, now.Compile(name) is null ? null : name)).Where(pair => pair is not (null, null))];
    }
}
