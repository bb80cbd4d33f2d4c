using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Recipe.Architecture.Tests;

/// <summary>What DEVELOPERS.md names is there: files, packages with their licences, the version.</summary>
public sealed partial class DeveloperPageTests
{
    private static readonly string Page = Repository.Read("DEVELOPERS.md");

    [Fact]
    public void Every_path_that_is_named_is_there()
    {
        var paths = Code().Matches(Page).Select(match => match.Groups[1].Value).Where(path => !path.Contains('*', StringComparison.Ordinal)).Distinct().ToArray();
        Assert.True(paths.Length > 40);

        // TAG stands for the language that is added.
        Assert.DoesNotContain(paths, path => !path.Contains("TAG", StringComparison.Ordinal) && !Path.Exists(Repository.Absolute(path)));
    }

    [Fact]
    public void The_table_of_licences_names_every_package_of_the_props_with_its_version()
    {
        var packages = XDocument.Parse(Repository.Read("src/Directory.Packages.props")).Descendants("PackageVersion")
            .Select(package => (Name: package.Attribute("Include")!.Value, Version: package.Attribute("Version")!.Value, For: package.Parent!.Attribute("Label")!.Value.ToLowerInvariant()));
        Assert.Equal(packages, Rows().Select(row => (row.Name, row.Version, row.For)));
    }

    [Fact]
    public void A_package_that_is_at_hand_says_the_licence_of_the_table()
    {
        var cache = Environment.GetEnvironmentVariable("NUGET_PACKAGES") ?? Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), ".nuget", "packages");
        var compared = 0;
        foreach (var (name, version, licence, _) in Rows())
        {
            var folder = Path.Combine(cache, name.ToLowerInvariant(), version);
            if (Directory.Exists(folder))
            {
                var said = XDocument.Load(Directory.EnumerateFiles(folder, "*.nuspec").Single()).Descendants().Single(element => element.Name.LocalName == "license").Value;
                Assert.Equal((name, licence), (name, said));
                compared++;
            }
        }

        // Whoever builds these tests has the test framework at least.
        Assert.True(compared >= 3);
    }

    [Fact]
    public void What_changed_begins_with_the_version_of_today()
    {
        var version = XDocument.Parse(Repository.Read("src/Directory.Build.props")).Descendants("Version").Single().Value;
        Assert.StartsWith($"### {version}\n", Page[(Page.IndexOf("## What changed\n", StringComparison.Ordinal) + "## What changed\n\n".Length)..], StringComparison.Ordinal);
    }

    private static IEnumerable<(string Name, string Version, string Licence, string For)> Rows() =>
        Row().Matches(Page[Page.IndexOf("## Licences", StringComparison.Ordinal)..]).Select(row => (row.Groups[1].Value, row.Groups[2].Value, row.Groups[3].Value, row.Groups[4].Value));

    [GeneratedRegex(@"`((?:src|tests|grammar|editors|samples|\.ci)/[^` ,{}]+)[ `]", RegexOptions.CultureInvariant)]
    private static partial Regex Code();

    [GeneratedRegex(@"^\| (\S+) \| (\d\S*) \| (\S+) \| (.+) \|$", RegexOptions.Multiline | RegexOptions.CultureInvariant)]
    private static partial Regex Row();
}
