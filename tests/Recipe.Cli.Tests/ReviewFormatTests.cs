using System.Text.Json;
using System.Xml.Linq;

namespace Recipe.Cli.Tests;

/// <summary>What systems that review code and build servers read.</summary>
public sealed class ReviewFormatTests
{
    private static readonly string Mistakes = Bench.Sample("samples/mistakes");

    /// <summary>
    /// What SARIF 2.1.0 requires of the objects used, by section of the OASIS standard. The output was also held to the standard's own schema
    /// with a general-purpose validator; the schema is not kept here.
    /// </summary>
    [Fact]
    public void Sarif_has_what_the_standard_requires()
    {
        using var sarif = JsonDocument.Parse(Bench.Run("check", Mistakes, "--format", "sarif").Out);
        var log = sarif.RootElement;
        Assert.Equal("2.1.0", log.GetProperty("version").GetString()); // 3.13.2
        var run = Assert.Single(log.GetProperty("runs").EnumerateArray());
        var driver = run.GetProperty("tool").GetProperty("driver"); // 3.14.6, 3.18.2
        Assert.Equal("recipe", driver.GetProperty("name").GetString()); // 3.19.8
        var rules = driver.GetProperty("rules").EnumerateArray().ToArray();
        Assert.Equal(rules.Length, rules.Select(rule => rule.GetProperty("id").GetString()).Distinct().Count()); // 3.19.23: unique
        Assert.All(run.GetProperty("invocations").EnumerateArray(), i => Assert.True(i.GetProperty("executionSuccessful").GetBoolean())); // 3.20.14
        var results = run.GetProperty("results").EnumerateArray().ToArray();
        Assert.NotEmpty(results);
        Assert.All(results, result =>
        {
            Assert.Equal(result.GetProperty("ruleId").GetString(), rules[result.GetProperty("ruleIndex").GetInt32()].GetProperty("id").GetString()); // 3.27.6
            Assert.Contains(result.GetProperty("level").GetString(), new[] { "error", "warning", "note" }); // 3.27.10
            Assert.Matches(@"^\P{Ll}.*[^.?!:][.?]$", result.GetProperty("message").GetProperty("text").GetString()); // 3.11.3: a sentence, ended once
            var place = result.GetProperty("locations")[0].GetProperty("physicalLocation");
            Assert.True(Uri.IsWellFormedUriString(place.GetProperty("artifactLocation").GetProperty("uri").GetString(), UriKind.RelativeOrAbsolute)); // 3.10.1
            var region = place.GetProperty("region");
            Assert.All(new[] { "startLine", "startColumn", "endLine", "endColumn" }, name => Assert.True(region.GetProperty(name).GetInt32() >= 1)); // 3.30.5
            foreach (var change in result.GetProperty("fixes").EnumerateArray().SelectMany(fix => fix.GetProperty("artifactChanges").EnumerateArray()))
            {
                Assert.NotEmpty(change.GetProperty("replacements").EnumerateArray()); // 3.56.3
            }
        });
        Assert.Equal(results.Length, results.Select(r => r.GetProperty("partialFingerprints").ToString()).Distinct().Count());
    }

    [Fact]
    public void What_is_accepted_is_suppressed_with_its_reason()
    {
        using var bench = new Bench();
        var path = bench.Write("lid.recipe", File.ReadAllText(Bench.Sample("samples/hatch-lid.recipe")).Replace("use \"shop.recipe\"", "", StringComparison.Ordinal)
            .Replace("  target    mass 126 g +/- 9 g", "  target    mass 90 g +/- 2 g\n  accept target-out-of-reach because \"a trial\"", StringComparison.Ordinal));
        using var sarif = JsonDocument.Parse(Bench.Run("check", path, "--format", "sarif").Out);
        var suppressed = sarif.RootElement.GetProperty("runs")[0].GetProperty("results").EnumerateArray().Where(result => result.TryGetProperty("suppressions", out _)).ToArray();
        var suppression = Assert.Single(suppressed).GetProperty("suppressions")[0];
        Assert.Equal(("inSource", "a trial"), (suppression.GetProperty("kind").GetString(), suppression.GetProperty("justification").GetString()));
    }

    [Fact]
    public void A_fingerprint_stays_when_lines_come_above()
    {
        using var bench = new Bench();
        var path = bench.Write("lid.recipe", "shop ours {\n  altitude 250\n}\n");
        var before = Prints(path);
        bench.Write("lid.recipe", "# a remark\n\nshop ours {\n    altitude 250\n}\n");
        Assert.Equal(before, Prints(path));
        Assert.NotEmpty(before);

        static string[] Prints(string path)
        {
            using var sarif = JsonDocument.Parse(Bench.Run("check", path, "--format", "sarif").Out);
            return [.. sarif.RootElement.GetProperty("runs")[0].GetProperty("results").EnumerateArray().Select(r => r.GetProperty("partialFingerprints").ToString())];
        }
    }

    [Fact]
    public void Errors_fail_as_tests_and_milder_findings_pass()
    {
        var xml = XDocument.Parse(Bench.Run("check", Mistakes, "--format", "junit").Out);
        using var json = JsonDocument.Parse(Bench.Run("check", Mistakes, "--format", "json").Out);
        var errors = json.RootElement.GetProperty("errors").GetInt32();
        Assert.True(errors > 0);
        Assert.Equal(errors, xml.Descendants("failure").Count());
        Assert.Equal(errors.ToString(System.Globalization.CultureInfo.InvariantCulture), (string?)xml.Root!.Attribute("failures"));
        Assert.Equal((int)xml.Root.Attribute("tests")!, xml.Descendants("testcase").Count());
        var clean = XDocument.Parse(Bench.Run("check", Bench.Sample("samples/hatch-lid.recipe"), "--format", "junit").Out);
        Assert.Equal("nothing wrong found", (string?)Assert.Single(clean.Descendants("testcase")).Attribute("name"));
    }

    [Fact]
    public void Remarks_stand_on_one_line_each()
    {
        var lines = Bench.Run("check", Mistakes, "--format", "annotations").Out.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.NotEmpty(lines);
        Assert.All(lines, line => Assert.Matches(@"^::(error|warning|notice) file=[^,]+,line=\d+,endLine=\d+(,col=\d+,endColumn=\d+)?,title=RC\d{4} [a-z0-9-]+::.+\.$", line));
        Assert.All(lines, line => Assert.DoesNotMatch(@"[.?]\.( |$)", line));
    }
}
