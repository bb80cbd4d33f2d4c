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
            Console.WriteLine("what                                          | median ms | least ms | budget | most MB | budget");
            Row("start (--version)", Runs, null, null, () => ["--version"]);
            Row("check of the hatch lid", Runs, 30, 40, () => ["check", hatch]);
            Row("build of the hatch lid, text formats", Runs, 60, null, () => ["build", hatch, "--part", "hatch-lid", "--out", Path.Combine(folder, "out"), "--format", "md", "html", "csv", "json"]);
            Row("build of the hatch lid, all formats", Runs, 150, null, () => ["build", hatch, "--part", "hatch-lid", "--out", Path.Combine(folder, "out")]);
            Row($"build of {BuildParts} parts, all formats", 5, 5000, 300, () => ["build", MakeParts(Path.Combine(folder, "parts")), "--out", Path.Combine(folder, "many")]);
            Row("explore of 103680 candidates", 3, 60_000, 300, () => ["explore", MakeStudy(Path.Combine(folder, "study"))]);
            Row("check of the instrument housing, draped", Runs, null, null, () => ["check", Repository.PathOf("samples/instrument-housing.recipe")]);
            Row("shape of 20,000 triangles, draped", 5, 1000, null, () => ["shape", BowlFile.Make(Path.Combine(folder, "bowl"), 20_000)]);
            Row("check on 1,000,000 triangles, draped once", 3, 2000, 500, () => ["check", BowlFile.Make(Path.Combine(folder, "scan"), 1_000_000)]);
            Row("cut of 40 pieces on three rolls", 3, 10_000, null, () => ["cut", Repository.PathOf("samples/shapes/seat-pan.recipe"), "--quantity", "10", "--format", "svg", "--out", Path.Combine(folder, "cut")]);
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

    /// <summary>Of all rows only those of the live page.</summary>
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

    private static void Report(string what, string binary, int runs, int? budgetMs, int? budgetMb, string[] arguments)
    {
        var most = Enumerable.Range(0, Math.Min(3, runs)).Max(_ => MostMemory(binary, arguments));
        var times = Enumerable.Range(0, runs).Select(_ => Time(binary, arguments).TotalMilliseconds).Order().ToArray();
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{what,-45} | {times[runs / 2],9:0.0} | {times[0],8:0.0} | {budgetMs,6} | {most / 1e6,7:0.0} | {budgetMb,6}"));
    }

    private static TimeSpan Time(string binary, string[] arguments)
    {
        var clock = Stopwatch.StartNew();
        using var process = Start(binary, arguments);
        process.WaitForExit();
        var elapsed = clock.Elapsed;
        return process.ExitCode == 0
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
