using Recipe.Text.Findings;

namespace Recipe.HouseRules.Tests;

/// <summary>Slips in a rule are found where it is written, and a rule that was not understood whole is not applied.</summary>
public class BindingTests
{
    [Theory]
    [InlineData("must rooom at-least 20 degC", "unknown-name", "rooom")]
    [InlineData("must room at-least 20 g", "wrong-kind-of-unit", "20 g")]
    [InlineData("must room at-least 20", "wrong-kind-of-unit", "20")]
    [InlineData("must mass at-most 20 degC", "wrong-kind-of-unit", "20 degC")]
    [InlineData("must mass atmost 20 g", "not-understood", "atmost")]
    [InlineData("must mass", "missing-value", "")]
    [InlineData("must mass at-most", "missing-value", "")]
    [InlineData("must", "missing-value", "must")]
    [InlineData("must (mass + thickness) at-most 1 g", "dimension-clash", "mass + thickness")]
    [InlineData("must (room + room) at-most 40 degC", "dimension-clash", "room + room")]
    [InlineData("must (room * 2) at-most 40 degC", "dimension-clash", "room * 2")]
    [InlineData("must process at-least 2", "missing-value", "")]
    [InlineData("must process is baked", "not-understood", "baked")]
    [InlineData("must (process / 2) at-most 1", "not-understood", "process")]
    [InlineData("must outdoors is maybe", "not-understood", "maybe")]
    [InlineData("must outdoors is yse", "not-understood", "yse")]
    [InlineData("must outdoors is yes no", "not-understood", "yes no")]
    [InlineData("must any plies { form is veil }", "not-understood", "plies")]
    [InlineData("must any", "missing-value", "")]
    [InlineData("must every ply", "missing-value", "must")]
    [InlineData("must every ply { where form is veil }", "missing-value", "must")]
    [InlineData("must every ply { araeal-weight at-most 1 g/m2 }", "unknown-name", "araeal-weight")]
    [InlineData("must sum cure-step to at-most 100 degC", "dimension-clash", "sum")]
    [InlineData("must sum ply at-most 3", "unknown-name", "at-most")]
    [InlineData("must room at-least 20 degC { form is veil }", "not-understood", "{")]
    [InlineData("must either", "missing-value", "must")]
    [InlineData("must every ply { every pot { every core { every load { sag at-most 1 mm } } } }", "not-understood", "every")]
    [InlineData("figure mass (mass * 2)\nmust mass at-most 1 g", "not-understood", "mass")]
    [InlineData("figure half\nmust mass at-most 1 g", "missing-value", "figure")]
    [InlineData("must mass at-most 1 g\nmessage \"{mas}\"", "unknown-name", "\"{mas}\"")]
    [InlineData("must mass at-most 1 g\nmessage \"{mass in degC}\"", "wrong-kind-of-unit", "\"{mass in degC}\"")]
    [InlineData("must mass at-most 1 g\nmessage \"{mass\"", "not-understood", "\"{mass\"")]
    [InlineData("must mass at-most 1 g\nfix add finnish \"weigh\"", "not-understood", "finnish")]
    [InlineData("must mass at-most 1 g\nfix write rom 20 degC", "unknown-name", "rom")]
    [InlineData("must mass at-most 1 g\nseverity bad", "not-understood", "bad")]
    [InlineData("title \"no must\"", "missing-value", "tried")]
    public void Slips(string lines, string finding, string where)
    {
        var bound = Bench.Bind($"rule tried {{\n  {lines}\n}}\n");
        var found = bound.Findings.Where(f => f.Severity == Severity.Error).ToArray();
        Assert.Equal(finding, Assert.Single(found).Descriptor.Name);
        Assert.Equal(where, found[0].Where.Text);
        Assert.False(Assert.Single(bound.Model.OwnRules).IsWhole);
    }

    [Fact]
    public void A_name_that_no_file_declares_is_only_a_warning()
    {
        var bound = Bench.Bind("rule tried {\n  must any ply { fibre is standard-carbn }\n}\n");
        var found = Assert.Single(bound.Findings);
        Assert.Equal((Severity.Warning, "standard-carbn"), (found.Severity, found.Where.Text));
        Assert.True(bound.Model.OwnRules[0].IsWhole);
    }

    [Fact]
    public void Names_are_names_of_findings() => Assert.Equal("not-understood", Assert.Single(Bench.Bind("rule Großes_Tuch { must mass at-most 1 g }").Findings).Descriptor.Name);

    [Fact]
    public void Two_rules_of_one_name_are_an_error()
    {
        var bound = Bench.Bind("rule a { must mass at-most 1 g }\nrule a { must mass at-most 2 g }");
        Assert.Equal("duplicate-name", Assert.Single(bound.Findings).Descriptor.Name);
        Assert.Single(bound.Model.Rules);
    }
}
