using Recipe.Model;
using Recipe.Semantics.Binding;
using Recipe.Semantics.Findings;
using Recipe.Semantics.Schema;
using Recipe.Semantics.Values;
using Recipe.Syntax;
using Recipe.Text.Units;

namespace Recipe.Semantics.Reading;

/// <summary>A cloth that is asked for as it is sold, by its weight and what it is: <c>5.9 oz carbon twill</c>.</summary>
internal static class ClothByWeight
{
    private const int MostWords = 4;
    private const int MostMeant = 4;

    // Shops round: 6 oz cloth weighs 5.6 to 6.1 oz/yd2.
    private const double Near = 0.07;

    /// <summary>Reports a weight where the name of a cloth is wanted, with the cloths it may be, and steps over the words behind it.</summary>
    /// <param name="line">The line, behind the weight.</param>
    /// <param name="value">What stands there in place of a name.</param>
    /// <param name="kind">What is wanted.</param>
    /// <returns>Whether it was a weight.</returns>
    public static bool Report(LineReader line, ValueSyntax value, NameRefKind kind)
    {
        if (!kind.Keywords.Contains("fabric") || value is not QuantitySyntax { Unit: { } unit } quantity)
        {
            return false;
        }

        var isOunces = unit.Symbol == "oz";
        if (!isOunces && unit.Symbol != "g" && unit.Dimension != DimensionNames.ArealWeight)
        {
            return false;
        }

        var words = new List<string>();
        var span = value.Span;
        while (words.Count < MostWords && !line.AtEnd && !line.AtClause() && line.Peek is WordSyntax { Text: not "random" } word)
        {
            words.Add(word.Text);
            span = span.Union(line.Take().Span);
        }

        var saysPrepreg = words.Contains("prepreg", StringComparer.OrdinalIgnoreCase);

        // Nobody sells a mat by the square yard, nor a cloth by the square foot; who says 200 g means a square metre.
        var cloths = kind.Keywords
            .SelectMany(keyword => line.Context.Scope.MaterialsOf(keyword).Where(declared => IsPrepreg(declared) == saysPrepreg).Select(declared => (declared.Name, Weight: WeightOf(declared), IsMat: keyword == "mat")))
            .Where(cloth => cloth.Weight is { } weight && Math.Abs((weight / Asked(cloth.IsMat)) - 1) <= Near && NamesApart.HasAll(cloth.Name, words))
            .DistinctBy(cloth => cloth.Name)
            .OrderBy(cloth => cloth.Name, StringComparer.Ordinal)
            .ToList();
        line.Report(UnknownName.ByWeight(line.Context.At(span), cloths.Count > MostMeant ? [] : [.. cloths.Select(cloth => (cloth.Name, Sold(cloth.Weight!.Value, cloth.IsMat)))]));
        return true;

        double Asked(bool isMat) => unit.Dimension == DimensionNames.ArealWeight
            ? unit.ToSi(quantity.Number)
            : UnitTable.Get(isOunces ? isMat ? "oz/ft2" : "oz/yd2" : "g/m2").ToSi(quantity.Number);
    }

    private static bool IsPrepreg(MaterialDeclaration declared) => declared.Material is Reinforcement { PrepregContent: not null };

    private static double? WeightOf(MaterialDeclaration declared) => (declared.Material as Reinforcement)?.ArealWeight?.Value.KilogramsPerSquareMeter;

    private static string Sold(double weight, bool isMat) => $"{In(weight, "g/m2", 0)}, {In(weight, isMat ? "oz/ft2" : "oz/yd2", 1)}";

    private static string In(double weight, string unit, int digits) => $"{Numbers.Format(Math.Round(UnitTable.Get(unit).FromSi(weight), digits))} {unit}";
}
