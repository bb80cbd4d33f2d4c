using System.Diagnostics.CodeAnalysis;
using Recipe.Compiler;
using Recipe.Model;
using Recipe.RuleApi;
using Recipe.TestKit;
using FactKind = Recipe.Model.FactKind;
using Process = Recipe.RulesProcess.RulesProcess;

namespace Recipe.RulesHost.Tests;

/// <summary>Rules in C# on real recipes, through the compiler and the real host.</summary>
public sealed class WholeProgramTests(RealHostTests.Shared shared) : IClassFixture<RealHostTests.Shared>
{
    [Fact]
    public void The_sample_rule_agrees_with_its_examples_and_finds_what_breaks_it()
    {
        var files = Sample("use \"rules/even-faces.rule.cs\"\n");
        Assert.Empty(files.Compile("settings.recipe").Findings);
        Assert.DoesNotContain(files.Compile("locker-lid.recipe").Findings, finding => finding.Descriptor.IsHouseRule);
        var lid = files.Texts["locker-lid.recipe"];
        var back = lid.IndexOf("    back", StringComparison.Ordinal);
        files.Texts["locker-lid.recipe"] = string.Concat(lid.AsSpan(0, back), "    back   glass-plain-49    0/90", lid.AsSpan(lid.IndexOf('\n', back)));
        var found = Assert.Single(files.Compile("locker-lid.recipe").Findings, finding => finding.Descriptor.Name == "even-faces");
        Assert.StartsWith("back", found.Where.Text, StringComparison.Ordinal);
        Assert.Contains("49 g/m2", found.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_rule_to_start_from_is_sound()
    {
        var files = new Files(shared.Client);
        files.Texts["new-rule.rule.cs"] = ShippedTexts.RuleTemplates.Single(text => text.Name.EndsWith(".cs.txt", StringComparison.Ordinal)).Text;
        files.Texts["settings.recipe"] = "use \"new-rule.rule.cs\"\n";
        Assert.Empty(files.Compile("settings.recipe").Findings);
    }

    [Fact]
    public void A_rule_that_may_not_be_is_shown_where_it_stands()
    {
        var files = Sample("use \"rules/even-faces.rule.cs\"\n");
        files.Texts["rules/even-faces.rule.cs"] = files.Texts["rules/even-faces.rule.cs"].Replace("return;", "System.IO.File.Delete(\"x\"); return;", StringComparison.Ordinal);
        var found = files.Compile("settings.recipe").Findings;
        Assert.All(found, finding => Assert.Equal("RC9206", finding.Descriptor.Code));
        Assert.Contains(found, finding => finding.Labels[0].Where.Text == "File");
    }

    /// <summary>The language and C# know the same facts by the same names.</summary>
    [Fact]
    public void Every_fact_of_the_language_has_its_property()
    {
        var views = new Dictionary<string, Type>
        {
            ["part"] = typeof(PartFacts),
            ["ply"] = typeof(PlyFacts),
            ["core"] = typeof(CoreFacts),
            ["insert"] = typeof(InsertFacts),
            ["coat"] = typeof(CoatFacts),
            ["release"] = typeof(ReleaseFacts),
            ["pot"] = typeof(PotFacts),
            ["bag-layer"] = typeof(BagLayerFacts),
            ["cure-step"] = typeof(CureStepFacts),
            ["finish-step"] = typeof(FinishStepFacts),
            ["load"] = typeof(LoadFacts),
        };
        foreach (var group in FactTable.Elements.Prepend(FactTable.Part))
        {
            foreach (var fact in group.Facts)
            {
                var property = views[group.Word].GetProperty(string.Concat(fact.Word.Split('-').Select(word => char.ToUpperInvariant(word[0]) + word[1..])));
                Assert.True(property is not null, $"{group.Word} {fact.Word}");
                var type = Nullable.GetUnderlyingType(property.PropertyType) ?? property.PropertyType;
                var fits = fact.Kind switch
                {
                    FactKind.Word or FactKind.Text => type == typeof(string),
                    FactKind.YesNo => type == typeof(bool),
                    FactKind.Quantity when fact.Dimension != Text.Units.Dimension.None => type.Namespace == "UnitsNet",
                    _ => type == typeof(double),
                };
                Assert.True(fits, $"{group.Word} {fact.Word} is {type.Name}");
            }
        }
    }

    private Files Sample(string more)
    {
        var files = new Files(shared.Client);
        var folder = Repository.PathOf("samples/house-rules");
        foreach (var path in Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories))
        {
            files.Texts[Path.GetRelativePath(folder, path).Replace('\\', '/')] = File.ReadAllText(path);
        }

        files.Texts["settings.recipe"] += more;
        return files;
    }

    private sealed class Files(Process process) : IFileStore, IRuleRunner
    {
        public Dictionary<string, string> Texts { get; } = new(StringComparer.Ordinal);

        public IRuleRunner Rules => this;

        public bool TryRead(string name, [NotNullWhen(true)] out string? text) => Texts.TryGetValue(name, out text);

        public bool IsTrusted(string name) => true;

        public RuleSetAnswer Describe(IReadOnlyList<RuleSource> files) => process.Describe(files, CancellationToken.None);

        public RuleRunAnswer Examine(IReadOnlyList<RuleSource> files, IReadOnlyList<FactSheet> parts) => process.Examine(files, parts, CancellationToken.None);

        public Compiler.CompiledFile Compile(string name)
        {
            Assert.True(new Workspace(this, new DateOnly(2026, 5, 14)).TryCompile(name, out var file));
            return file;
        }
    }
}
