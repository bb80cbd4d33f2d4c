using System.Text;
using System.Text.RegularExpressions;

namespace Recipe.Checks.Tests;

public class CatalogueTests
{
    public static TheoryData<string> Codes => [.. CheckCatalogue.All.Select(c => c.Descriptor.Code)];

    [Fact]
    public void Every_check_of_the_library_is_in_the_list_once()
    {
        var written = typeof(Check).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(Check)) && !t.IsAbstract).Select(t => t.Name);
        Assert.Equal(written.Order(StringComparer.Ordinal), CheckCatalogue.All.Select(c => c.GetType().Name).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void The_list_is_in_order_of_code() =>
        Assert.Equal(CheckCatalogue.All.Select(c => c.Descriptor.Code).Order(StringComparer.Ordinal), CheckCatalogue.All.Select(c => c.Descriptor.Code));

    [Fact]
    public void Codes_and_names_belong_to_one_finding_only()
    {
        Assert.Equal(FindingCatalogue.All.Length, FindingCatalogue.All.Select(d => d.Code).Distinct().Count());
        Assert.Equal(FindingCatalogue.All.Length, FindingCatalogue.All.Select(d => d.Name).Distinct().Count());
    }

    [Fact]
    public void Codes_of_a_family_follow_each_other_without_a_gap()
    {
        foreach (var family in CheckCatalogue.All.Select(c => int.Parse(c.Descriptor.Code[2..], null)).GroupBy(n => n / 100))
        {
            Assert.Equal(Enumerable.Range((family.Key * 100) + 1, family.Count()), family);
        }
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void The_name_is_that_of_the_class(string code)
    {
        var check = CheckCatalogue.Find(code)!;
        Assert.Equal(Kebab(check.GetType().Name), check.Descriptor.Name);
        Assert.Same(check, CheckCatalogue.Find(check.Descriptor.Name));
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void Its_words_are_whole(string code)
    {
        var d = CheckCatalogue.Find(code)!.Descriptor;
        Assert.Matches(new Regex("^[A-Z].*[^.]$"), d.Title);
        Assert.Matches(new Regex("^[A-Z].*\\.$"), d.Reason);
        Assert.Matches(new Regex("^[A-Z].*\\.$"), d.Remedy);
        Assert.DoesNotMatch(new Regex("\\d"), d.Title);
        Assert.True(
            d.Source.Contains("common practice", StringComparison.Ordinal) || d.Source.Contains("TM 1-1500", StringComparison.Ordinal)
            || d.Source.Contains("AC 43.13", StringComparison.Ordinal) || d.Source.Contains("ISO", StringComparison.Ordinal)
            || d.Source.Contains("NIOSH", StringComparison.Ordinal) || d.Source.Contains("own demould time", StringComparison.Ordinal),
            d.Source);
        Assert.True(d.Exceptions.Length == 0 || d.Exceptions.EndsWith('.'), d.Exceptions);
        Assert.NotEqual(d.BadExample, d.GoodExample);
    }

    [Fact]
    public void A_check_that_is_not_there_is_not_found() => Assert.Null(CheckCatalogue.Find("RC2999"));

    private static string Kebab(string name)
    {
        var text = new StringBuilder();
        foreach (var c in name)
        {
            if (char.IsUpper(c) && text.Length > 0)
            {
                text.Append('-');
            }

            text.Append(char.ToLowerInvariant(c));
        }

        return text.ToString();
    }
}
