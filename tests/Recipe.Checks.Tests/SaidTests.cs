using System.Globalization;
using System.Text;
using Recipe.TestKit;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Checks.Tests;

/// <summary>
/// What each check says about its own bad example, word for word, with what it marks and what it offers; without which lines it says nothing or cannot judge;
/// and for each number of the example that decides, from where on it decides otherwise. The page (<c>said.md</c>) is there to be read: a limit that
/// nobody meant stands there in plain figures. The limits themselves are held to their sources in <c>Rules</c>.
/// </summary>
public class SaidTests
{
    private const string Page = "tests/Recipe.Checks.Tests/said.md";
    private static readonly double[] Steps = [16, 3, 1.4];
    private static readonly Lazy<Dictionary<string, string>> Sections = new(Read);

    public static TheoryData<string> Codes => [.. CheckCatalogue.All.Select(c => c.Descriptor.Code)];

    [Theory]
    [MemberData(nameof(Codes))]
    public void Each_check_says_of_its_example_what_the_page_has(string code)
    {
        var said = Write(code);
        if (Environment.GetEnvironmentVariable("RECIPE_UPDATE_GOLDENS") == "1")
        {
            lock (Sections)
            {
                Sections.Value[code] = said;
                File.WriteAllText(Repository.PathOf(Page), string.Concat(Sections.Value.Where(s => CheckCatalogue.Find(s.Key) is not null).OrderBy(s => s.Key, StringComparer.Ordinal).Select(s => s.Value)));
            }
        }

        Assert.Equal(Sections.Value.GetValueOrDefault(code, $"{Page} has nothing of {code}: run the tests once with RECIPE_UPDATE_GOLDENS=1."), said);
    }

    private static Dictionary<string, string> Read()
    {
        var path = Repository.PathOf(Page);
        var text = File.Exists(path) ? File.ReadAllText(path).ReplaceLineEndings("\n") : "";
        return text.Split("## ", StringSplitOptions.RemoveEmptyEntries).ToDictionary(s => s[..6], s => "## " + s);
    }

    private static string Write(string code)
    {
        var check = CheckCatalogue.Find(code)!.Descriptor;
        var text = check.BadExample.ReplaceLineEndings("\n");
        var page = new StringBuilder().Append("## ").Append(code).Append(' ').Append(check.Name).Append("\n\n");
        var found = Bench.Of(text, checks: Bench.Only(code)).Report.Findings.Single(f => f.Descriptor.Code == code);
        Append(page, found);
        var usual = Outcome(code, text)!;
        HashSet<int> idle = [];
        foreach (var (line, end, what, without) in Nudged.Gaps(text).Where(gap => !idle.Contains(gap.Line)))
        {
            var outcome = Outcome(code, without);
            if (outcome == usual)
            {
                // Nor does anything in a block that can as well be left out.
                idle.UnionWith(Enumerable.Range(line, end - line + 1));
            }
            else if (outcome is not null)
            {
                page.Append(CultureInfo.InvariantCulture, $"- without line {line}, `{what}`: {outcome}\n");
            }
        }

        // A line that can as well be left out decides nothing by its numbers.
        foreach (var number in Nudged.Numbers(text).Where(n => !idle.Contains(n.Line)))
        {
            foreach (var less in (bool[])[true, false])
            {
                if (Turn(code, number, less, usual) is var (at, outcome))
                {
                    page.Append(CultureInfo.InvariantCulture, $"- line {number.Line}, `{number.What}`: at {at} {(less ? "or less" : "or more")}, {outcome}\n");
                }
            }
        }

        return page.Append('\n').ToString();
    }

    private static void Append(StringBuilder page, Finding found)
    {
        page.Append(CultureInfo.InvariantCulture, $"{Outcome(found)}, line {LineOf(found.Where)}: {found.Message}\n");
        foreach (var label in found.Labels)
        {
            page.Append(CultureInfo.InvariantCulture, $"- line {LineOf(label.Where)}: {label.Text}\n");
        }

        foreach (var fix in found.Fixes)
        {
            page.Append(CultureInfo.InvariantCulture, $"- fix ({fix.Safety}): {fix.Title}\n");
            foreach (var edit in fix.Edits)
            {
                page.Append(CultureInfo.InvariantCulture, $"  - `{edit.NewText.Trim().Replace("\n", "` `", StringComparison.Ordinal)}`\n");
            }
        }
    }

    // Where the outcome turns, on the way from a number to the farthest that can be understood; null when it does not.
    private static (string At, string Outcome)? Turn(string code, Nudged.Number number, bool less, string usual)
    {
        var (near, away, other) = (number.Value, 0.0, (string?)null);
        foreach (var step in Steps)
        {
            away = less ? number.Value / step : number.Value * step;
            other = Outcome(code, number.With(away));
            if (other is not null)
            {
                break;
            }
        }

        if (other is null || other == usual)
        {
            return null;
        }

        while (true)
        {
            var middle = Math.Sqrt(near * away);
            if (number.Show(middle) == number.Show(near) || number.Show(middle) == number.Show(away))
            {
                return (number.Show(away), other);
            }

            if (Outcome(code, number.With(middle)) is { } outcome && outcome != usual)
            {
                (away, other) = (middle, outcome);
            }
            else
            {
                near = middle;
            }
        }
    }

    private static string? Outcome(string code, string text)
    {
        var bench = Bench.Of(text, checks: Bench.Only(code));
        if (!bench.Before.IsEmpty)
        {
            return null;
        }

        var found = bench.Report.Findings.Where(f => f.Descriptor.Code == code).ToList();
        return found.Count > 0
            ? string.Join(", ", found.Select(Outcome))
            : bench.Report.NotChecked.FirstOrDefault(n => n.Descriptor.Code == code) is { } not ? $"not checked, {not.Missing}" : "nothing";
    }

    private static string Outcome(Finding found) => found.Severity.ToString().ToLowerInvariant();

    private static int LineOf(SourceSpan where) => where.Start.Line + 1;
}
