using System.Diagnostics;
using System.Globalization;
using Recipe.TestKit;

namespace Recipe.Benchmarks;

/// <summary>
/// Measures the published binary as a user starts it: wall time and the most memory, against the budgets. It reports and never
/// fails: what a figure is worth depends on the machine and on what else it does; the least of the runs says most beside other work.
/// Run with: dotnet run -c Release --project tests/Recipe.Benchmarks -- native PATH/recipe [WORD], a word that stands in the rows wanted.
/// </summary>
internal static class NativeBudgets
{
    private const int Runs = 31;
    private const int BuildParts = 100;
    private const int WorkspaceFiles = 1_000;
    private const int WorkspaceLinesOfAFile = 100;

    public static int Measure(string binary, string wanted)
    {
        if (!File.Exists(binary))
        {
            Console.Error.WriteLine($"There is no {binary}. First: dotnet publish src/Recipe.Cli -c Release -o out");
            return 2;
        }

        var folder = Directory.CreateTempSubdirectory("recipe-budgets-").FullName;
        try
        {
            var workspace = Path.Combine(folder, "workspace");
            var hatch = Repository.PathOf("samples/hatch-lid.recipe");
            // What a user has agreed to and kept is not of these figures, and stays as it is.
            foreach (var variable in (string[])["XDG_CONFIG_HOME", "XDG_CACHE_HOME"])
            {
                Environment.SetEnvironmentVariable(variable, Path.Combine(folder, variable));
            }

            Console.WriteLine("| what | budget, ms | median | least | budget, MB | most |");
            Console.WriteLine("|---|---|---|---|---|---|");
            Row("start (--version)", Runs, null, null, () => ["--version"]);
            Row("check of the hatch lid", Runs, 30, 40, () => ["check", hatch]);
            Row("build of the hatch lid, text formats", Runs, 60, null, () => ["build", hatch, "--part", "hatch-lid", "--out", Path.Combine(folder, "out"), "--format", "md", "html", "csv", "json"]);
            Row("build of the hatch lid, all formats", Runs, 150, null, () => ["build", hatch, "--part", "hatch-lid", "--out", Path.Combine(folder, "out")]);
            Row($"build of {BuildParts} parts, all formats", 5, 5000, 300, () => ["build", MakeParts(Path.Combine(folder, "parts")), "--out", Path.Combine(folder, "many")]);
            Row("explore of 103680 candidates", 3, 60_000, 300, () => ["explore", MakeStudy(Path.Combine(folder, "study"))]);
            foreach (var words in (string[][])[["explain", "RC7007"], ["explain"], ["explain", "hatch-lid", "--in", hatch], ["stock", Repository.PathOf("samples")], ["history", "hatch-lid", "--in", Repository.PathOf("samples/records")], ["learn", Repository.PathOf("samples/records")], ["compare", hatch], ["fmt", "--check", hatch], ["manual"]])
            {
                Row($"`{string.Join(' ', words.Select(word => Path.IsPathRooted(word) ? Path.GetFileName(word) : word))}`", Runs, null, null, () => words);
            }

            Row("check of the instrument housing, draped", Runs, null, null, () => ["check", Repository.PathOf("samples/instrument-housing.recipe")]);
            Row("shape of 20,000 triangles, draped", 5, 1000, null, () => ["shape", BowlFile.Make(Path.Combine(folder, "bowl"), 20_000)]);
            Row("check on 1,000,000 triangles, draped once", 3, 2000, 500, () => ["check", BowlFile.Make(Path.Combine(folder, "scan"), 1_000_000)]);
            Row("cut of 40 pieces on three rolls", 3, 10_000, null, () => ["cut", Repository.PathOf("samples/shapes/seat-pan.recipe"), "--quantity", "10", "--format", "svg", "--out", Path.Combine(folder, "cut")]);
            if ("house rules".Contains(wanted, StringComparison.Ordinal))
            {
                RulesBudget.Measure(binary, Path.Combine(folder, "rules"));
            }

            if ("preview".Contains(wanted, StringComparison.Ordinal))
            {
                PreviewBudget.Measure(binary, folder);
            }

            Row($"check of {WorkspaceFiles} files, 125 lines each", 5, 1000, 300, () => ["check", MakeWorkspace(workspace)]);

            void Row(string what, int runs, int? budgetMs, int? budgetMb, Func<string[]> arguments)
            {
                if (what.Contains(wanted, StringComparison.Ordinal))
                {
                    Report(what, binary, runs, budgetMs, budgetMb, arguments());
                }
            }
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }

        return 0;
    }

    // The sample with as many variants as make up the number of parts.
    private static string MakeParts(string folder)
    {
        Directory.CreateDirectory(folder);
        File.Copy(Repository.PathOf("samples/shop.recipe"), Path.Combine(folder, "shop.recipe"));
        var variants = Enumerable.Range(2, BuildParts - 2).Select(i => string.Create(CultureInfo.InvariantCulture, $"\nvariant many-{i} of hatch-lid {{\n  plies {{\n    remove veil\n  }}\n}}\n"));
        var path = Path.Combine(folder, "many.recipe");
        File.WriteAllText(path, Repository.Read("samples/hatch-lid.recipe") + string.Concat(variants));
        return path;
    }

    // The hatch lid with choices of every kind, mass against bending stiffness under limits of thickness and clock.
    private static string MakeStudy(string folder)
    {
        Directory.CreateDirectory(folder);
        foreach (var name in (string[])["hatch-lid.recipe", "shop.recipe"])
        {
            File.Copy(Repository.PathOf($"samples/{name}"), Path.Combine(folder, name));
        }

        var path = Path.Combine(folder, "study.recipe");
        File.WriteAllText(
            path,
            """
            use "hatch-lid.recipe"
            use "shop.recipe"

            explore study of hatch-lid {
              choose material outer glass-plain-49 glass-plain-80 glass-plain-105
              choose material body glass-twill-163 glass-twill-280 carbon-twill-200
              choose material back glass-plain-105 glass-twill-163 glass-twill-280 carbon-twill-200
              choose orientation body 0/90 +/-45
              choose orientation back 0/90 +/-45
              choose repeats veil 0 1
              choose repeats inner 1 2
              choose laminators 1 2
              choose resin-content 40 to 48 % by weight steps 18
              choose room 18 to 24 degC steps 5
              limit thickness at-least 0.7 mm
              limit clock-left at-least 30 min
              want least mass
              want most bending-along
            }
            """);
        return path;
    }

    // Copies of the sample, each filled up to its number of lines with variants, beside one shop file.
    private static string MakeWorkspace(string folder)
    {
        Directory.CreateDirectory(folder);
        File.Copy(Repository.PathOf("samples/shop.recipe"), Path.Combine(folder, "shop.recipe"));
        var text = Repository.Read("samples/hatch-lid.recipe");
        var count = text.Count(c => c == '\n');
        for (var variant = 0; count < WorkspaceLinesOfAFile; variant++)
        {
            var more = string.Create(CultureInfo.InvariantCulture, $"\nvariant filler-{variant} of hatch-lid {{\n  plies {{\n    remove veil\n  }}\n}}\n");
            text += more;
            count += more.Count(c => c == '\n');
        }

        for (var file = 0; file < WorkspaceFiles; file++)
        {
            File.WriteAllText(Path.Combine(folder, string.Create(CultureInfo.InvariantCulture, $"lid-{file:0000}.recipe")), text);
        }

        return folder;
    }

    /// <summary>Measures one row and writes it.</summary>
    /// <param name="what">What is measured.</param>
    /// <param name="binary">The program.</param>
    /// <param name="runs">How many times.</param>
    /// <param name="budgetMs">The most time, in milliseconds; null when there is none.</param>
    /// <param name="budgetMb">The most memory, in millions of bytes; null when there is none.</param>
    /// <param name="arguments">The command line.</param>
    /// <param name="prepare">What is done before each run and not measured.</param>
    public static void Report(string what, string binary, int runs, int? budgetMs, int? budgetMb, string[] arguments, Action? prepare = null)
    {
        var most = Enumerable.Range(0, Math.Min(3, runs)).Max(_ => MostMemory(binary, arguments));
        var times = Times(binary, runs, arguments, prepare);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {what} | {budgetMs} | {times[runs / 2]:0.0} | {times[0]:0.0} | {budgetMb} | {most / 1e6:0} |"));
    }

    /// <summary>The times of some runs in milliseconds, the least first.</summary>
    public static double[] Times(string binary, int runs, string[] arguments, Action? prepare = null) =>
    [
        .. Enumerable.Range(0, runs)
            .Select(_ =>
            {
                prepare?.Invoke();
                return Time(binary, arguments).TotalMilliseconds;
            })
            .Order(),
    ];

    private static TimeSpan Time(string binary, string[] arguments)
    {
        var clock = Stopwatch.StartNew();
        using var process = Start(binary, arguments);
        process.WaitForExit();
        var elapsed = clock.Elapsed;

        // With a finding the work was done all the same.
        return process.ExitCode <= 1
            ? elapsed
            : throw new InvalidOperationException($"{binary} {string.Join(' ', arguments)} ended with {process.ExitCode}: its time says nothing.");
    }

    // Apart from the timing: looking disturbs. The peak grows only, so the last look before the end is close to it.
    private static long MostMemory(string binary, string[] arguments)
    {
        using var process = Start(binary, arguments);
        long most = 0;
        try
        {
            while (!process.HasExited)
            {
                process.Refresh();
                most = Math.Max(most, process.PeakWorkingSet64);
            }
        }
        catch (InvalidOperationException)
        {
            // It ended between the two questions.
        }

        return most;
    }

    private static Process Start(string binary, string[] arguments)
    {
        var start = new ProcessStartInfo(binary) { RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var argument in arguments)
        {
            start.ArgumentList.Add(argument);
        }

        var process = Process.Start(start) ?? throw new InvalidOperationException($"{binary} did not start.");
        process.OutputDataReceived += (_, _) => { };
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
        return process;
    }
}
