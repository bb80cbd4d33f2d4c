using Recipe.HouseRules;
using Recipe.Model;
using Recipe.RuleApi;
using FactKind = Recipe.Model.FactKind;

namespace Recipe.Compiler;

/// <summary>The facts of a part in the form in which they travel to rules in C#.</summary>
internal static class FactSheets
{
    public static FactSheet Of(FactNode node) => new(
        node.Group.Word,
        node.Group.Facts.Select(word => (word.Word, Fact: Of(word, node.Find(word.Word)))).Where(pair => pair.Fact is not null).ToDictionary(pair => pair.Word, pair => pair.Fact!.Value, StringComparer.Ordinal),
        node.Elements.Where(pair => !pair.Value.IsEmpty).ToDictionary(pair => pair.Key, pair => (IReadOnlyList<FactSheet>)[.. pair.Value.Select(Of)], StringComparer.Ordinal));

    private static Fact? Of(FactWord word, FactValue? value)
    {
        if (value is null)
        {
            return null;
        }

        var assumed = value.Assumed is not null || !value.RestsOn.IsDefaultOrEmpty;
        return word.Kind switch
        {
            FactKind.Quantity when word.Dimension != Text.Units.Dimension.None => Fact.Quantity(value.Si, assumed),
            FactKind.Quantity or FactKind.Number or FactKind.Money => Fact.Number(value.Si, assumed),
            FactKind.Word => Fact.Word(value.Word!, assumed),
            FactKind.Text => Fact.Words(value.Word!, assumed),
            _ => Fact.YesNo(value.Yes == true, assumed),
        };
    }
}
