using System.Diagnostics;
using System.Globalization;
using Recipe.TestKit;

namespace Recipe.Benchmarks;

/// <summary>What ten house rules in C# add to <c>check</c>: compiled anew, compiled before with other facts, and with the same facts.</summary>
internal static class RulesBudget
{
    private const int Rules = 10;
    private const int Runs = 11;

    public static void Measure(string binary, string folder)
    {
        Copy(Repository.PathOf("samples/house-rules"), folder);
        var recipe = Path.Combine(folder, "locker-lid.recipe");
        var settings = Path.Combine(folder, "settings.recipe");
        var bare = File.ReadAllText(settings);
        NativeBudgets.Report("check with the house rules in the language alone", binary, Runs, null, null, ["check", recipe]);
        var text = File.ReadAllText(Path.Combine(folder, "rules", "even-faces.rule.cs"));
        foreach (var (name, files) in ((string, int)[])[("in one file", 1), ("in ten files", Rules)])
        {
            var uses = Enumerable.Range(0, files).Select(file =>
            {
                var rules = Enumerable.Range(0, Rules / files).Select(i => Renamed(text, (file * Rules / files) + i)).ToArray();
                File.WriteAllText(Path.Combine(folder, "rules", $"many-{files}-{file}.rule.cs"), rules[0] + string.Concat(rules.Skip(1).Select(WithoutUsings)));
                return $"use \"rules/many-{files}-{file}.rule.cs\"\n";
            });
            File.WriteAllText(settings, bare.Replace("\nfindings", "\n" + string.Concat(uses) + "\nfindings", StringComparison.Ordinal));
            using (var trust = Process.Start(new ProcessStartInfo(binary, ["trust", folder]) { RedirectStandardOutput = true })!)
            {
                trust.StandardOutput.ReadToEnd();
            }

            var cache = Environment.GetEnvironmentVariable("XDG_CACHE_HOME")!;
            NativeBudgets.Report($"check with {Rules} house rules in C# {name}, compiled anew", binary, Runs, 1500, null, ["check", recipe], () => Directory.Delete(cache, recursive: true));
            NativeBudgets.Report($"the same {name}, compiled before, the same facts", binary, Runs, null, null, ["check", recipe]);
            var run = 0;
            var written = File.ReadAllText(recipe);
            NativeBudgets.Report(
                $"the same {name}, compiled before, other facts",
                binary,
                Runs,
                null,
                null,
                ["check", recipe],
                () => File.WriteAllText(recipe, written.Replace("21 degC", string.Create(CultureInfo.InvariantCulture, $"21.{++run:00} degC"), StringComparison.Ordinal)));
            File.WriteAllText(recipe, written);
        }
    }

    private static string Renamed(string text, int number) =>
        text.Replace("EvenFaces", $"EvenFaces{number}", StringComparison.Ordinal).Replace("\"even-faces\"", $"\"even-faces-{number}\"", StringComparison.Ordinal);

    private static string WithoutUsings(string text) => string.Concat(text.Split('\n').Where(line => !line.StartsWith("using ", StringComparison.Ordinal)).Select(line => line + "\n"));

    private static void Copy(string from, string to)
    {
        foreach (var path in Directory.GetFiles(from, "*", SearchOption.AllDirectories))
        {
            var copy = Path.Combine(to, Path.GetRelativePath(from, path));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(path, copy);
        }
    }
}
