using System.CommandLine;
using System.Text;
using Recipe.Cli.Files;
using Recipe.Cli.Text;
using Recipe.Compiler.Merging;
using Recipe.Disk;

namespace Recipe.Cli.Commands;

/// <summary><c>recipe git merge</c>: merges two versions of a recipe for git, and leaves the result in the place of ours.</summary>
internal static class GitMergeCommand
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    public static Command Create(Terminal terminal)
    {
        var before = new Argument<string>("base") { Description = "What both versions began as." };
        var ours = new Argument<string>("ours") { Description = "Our version; the result is written here." };
        var theirs = new Argument<string>("theirs") { Description = "Their version." };
        var path = new Argument<string>("path") { Description = "The name of the file in the repository." };
        var size = new Option<int>("--marker-size") { Description = "How many signs a conflict marker has.", DefaultValueFactory = _ => 7 };
        var command = new Command("merge", "Merge two versions of a recipe for git: 0 when all went together, 1 when somebody has to choose.") { before, ours, theirs, path, size };
        command.SetAction(result => Run(
            terminal, [result.GetValue(before)!, result.GetValue(ours)!, result.GetValue(theirs)!], result.GetValue(path)!, Math.Clamp(result.GetValue(size), 1, 100)));
        return command;
    }

    private static int Run(Terminal terminal, string[] files, string path, int markerSize)
    {
        var bytes = files.Select(DiskFiles.ReadBytes).ToArray();
        if (bytes.Any(file => file.Contains((byte)0)))
        {
            terminal.Error.WriteLine($"recipe: {path} is no text on one of the sides, so it was not merged and our version stands. Choose one: `git checkout --ours -- {path}` or `--theirs`.");
            return ExitStatus.Findings;
        }

        // Bytes that are no UTF-8 go through as they are, a letter each.
        var (encoding, isUtf8) = bytes.All(IsUtf8) ? ((Encoding)Strict, true) : (Encoding.Latin1, false);
        var texts = bytes.Select(encoding.GetString).ToArray();
        var merged = (isUtf8 ? ByMeaning(terminal, path, texts, markerSize) : null) ?? VersionMerge.OfLines(texts[0], texts[1], texts[2], markerSize);
        WholeFile.Write(files[1], encoding.GetBytes(merged.Text));
        Report(terminal, path, merged, texts);
        return merged.Conflicts == 0 ? ExitStatus.Clean : ExitStatus.Findings;
    }

    private static VersionMerge? ByMeaning(Terminal terminal, string path, string[] texts, int markerSize)
    {
        try
        {
            return VersionMerge.Of(texts[0], texts[1], texts[2], markerSize);
        }
#pragma warning disable CA1031 // A fault of this program must not stop a merge that any program for text can do.
        catch (Exception problem)
#pragma warning restore CA1031
        {
            terminal.Error.WriteLine($"recipe: the merge of {path} as a recipe failed inside the program ({problem.GetType().Name}); please report it.");
            return null;
        }
    }

    private static void Report(Terminal terminal, string path, VersionMerge merged, string[] texts)
    {
        if (merged.ByLines)
        {
            terminal.Error.WriteLine($"recipe: {path} was merged line by line, because one of its versions cannot be read as a recipe.");
        }

        if (merged.Conflicts > 0)
        {
            var places = merged.Conflicts == 1 ? "1 place of" : $"{merged.Conflicts} places of";
            terminal.Error.WriteLine($"recipe: {places} {path} changed on both sides; both texts stand between markers. Choose, take the markers out, then `git add {path}`.");
        }
        else if (!merged.ByLines)
        {
            SayWhatIsNew(terminal, path, merged.Text, texts);
        }
    }

    /// <summary>Each change was right by itself; whether both together are, only the checks know. It is no conflict, so git goes on.</summary>
    private static void SayWhatIsNew(Terminal terminal, string path, string text, string[] texts)
    {
        try
        {
            var errors = VersionMerge.NewErrors(
                Overlay.Compile(path, text, terminal), Overlay.Compile(path, texts[1], terminal), Overlay.Compile(path, texts[2], terminal));
            if (errors.IsEmpty)
            {
                return;
            }

            terminal.Error.WriteLine($"recipe: {path} was merged without a conflict, but together the two versions earn what neither did alone. Mend it, or talk to whoever changed the other version.");
            var printer = new FindingPrinter(terminal.Error, Style.For(terminal, "never"));
            foreach (var error in errors)
            {
                printer.Print(error);
            }
        }
#pragma warning disable CA1031 // The merge is done and written; a check that fails must not undo it.
        catch (Exception problem)
#pragma warning restore CA1031
        {
            terminal.Error.WriteLine($"recipe: {path} was merged and not checked: {problem.Message}");
        }
    }

    private static bool IsUtf8(byte[] bytes) => System.Text.Unicode.Utf8.IsValid(bytes);
}
