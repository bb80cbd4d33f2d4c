using Recipe.Semantics.Findings;
using Recipe.Text.Findings;

namespace Recipe.Semantics.Tests;

/// <summary>The documentation of each finding, run: its bad example earns it, its good one earns nothing, its fixes settle it.</summary>
public class FindingDocumentationTests
{
    public static TheoryData<string> Names => [.. SemanticFindings.All.Select(d => d.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_bad_example_earns_exactly_this_finding(string name)
    {
        var descriptor = Named(name);
        var bound = Given.Bind(descriptor.BadExample, Book.Empty);
        Assert.Empty(bound.Tree.Findings);
        Assert.NotEmpty(bound.Findings);
        Assert.All(bound.Findings, f => Assert.Equal(name, f.Descriptor.Name));
        Assert.All(bound.Findings, f => Assert.Equal(descriptor.Severity, f.Severity));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_good_example_earns_nothing(string name)
    {
        var bound = Given.Bind(Named(name).GoodExample, Book.Empty);
        Assert.Empty(bound.Tree.Findings);
        Assert.Empty(bound.Findings.Select(f => f.Message));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Each_fix_leaves_a_text_that_parses_and_does_not_earn_the_finding_there(string name)
    {
        var bound = Given.Bind(Named(name).BadExample, Book.Empty);
        foreach (var finding in bound.Findings)
        {
            FixCheck.Settles(bound, finding, text => Given.Bind(text, Book.Empty));
        }
    }

    [Fact]
    public void Codes_and_names_are_each_used_once_and_the_class_has_the_name()
    {
        Assert.Equal(SemanticFindings.All.Length, SemanticFindings.All.Select(d => d.Code).Distinct().Count());
        Assert.Equal(SemanticFindings.All.Length, SemanticFindings.All.Select(d => d.Name).Distinct().Count());
        Assert.Equal(SemanticFindings.All.Select(d => d.Code).Order(StringComparer.Ordinal), SemanticFindings.All.Select(d => d.Code));
        Assert.All(SemanticFindings.All, d => Assert.Matches("^RC1[12][0-9]{2}$", d.Code));
        var classes = typeof(SemanticFindings).Assembly.GetTypes()
            .Where(t => t.GetProperty("Descriptor")?.PropertyType == typeof(FindingDescriptor))
            .Select(t => string.Concat(t.Name.Select((c, i) => char.IsUpper(c) && i > 0 ? "-" + char.ToLowerInvariant(c) : char.ToLowerInvariant(c).ToString())));
        Assert.Equal(classes.Order(StringComparer.Ordinal), SemanticFindings.All.Select(d => d.Name).Order(StringComparer.Ordinal));
    }

    private static FindingDescriptor Named(string name) => SemanticFindings.All.Single(d => d.Name == name);
}
