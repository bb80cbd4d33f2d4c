using System.Globalization;
using Recipe.Compiler;
using Recipe.Semantics;
using Recipe.Syntax;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Editing;

/// <summary>Ways to say the same otherwise: a material of one's own, a variant, other units.</summary>
internal static class Refactorings
{
    public static IEnumerable<EditorAction> At(CompiledFile file, TextSpan range) =>
        new[] { OwnMaterial(file, range), Variant(file, range) }.OfType<EditorAction>().Concat(OtherUnits(file, range));

    private static EditorAction? OwnMaterial(CompiledFile file, TextSpan range)
    {
        if (Navigation.NameAt(file, range.Start) is not { Kind: NameKind.Material, IsDeclaration: false, Declaration: not null } use
            || !file.Bound.Model.Materials.TryGetValue(use.Name, out var material) || !material.FromBook
            || Top(file, use.Where.Span.Start) is not { } place)
        {
            return null;
        }

        var name = Free("our-" + use.Name, file.Bound.Model.Materials.ContainsKey);
        var newLine = BlockText.LineEndOf(file.Source);
        var declaration = $"{material.Keyword} {name} like {use.Name} {{{newLine}  source \"your data sheet\"{newLine}}}{newLine}{newLine}";
        return new EditorAction(
            $"Declare a {material.Keyword} of your own like {use.Name}",
            ActionKind.Extract,
            [
                new TextEdit(new SourceSpan(file.Source, new TextSpan(place.Entry.Span.Start, 0)), declaration),
                new TextEdit(use.Where, name),
            ]);
    }

    private static EditorAction? Variant(CompiledFile file, TextSpan range)
    {
        if (Navigation.NameAt(file, range.Start) is not { Kind: NameKind.Part, IsDeclaration: true } part || Top(file, part.Where.Span.Start) is not { } place)
        {
            return null;
        }

        var taken = file.PartNames.ToHashSet(StringComparer.Ordinal);
        var name = Free(part.Name + "-b", taken.Contains);
        var newLine = BlockText.LineEndOf(file.Source);
        return new EditorAction(
            $"Make a variant of {part.Name}",
            ActionKind.Extract,
            [new TextEdit(
                new SourceSpan(file.Source, new TextSpan(place.Entry.Span.End, 0)),
                $"{newLine}{newLine}variant {name} of {part.Name} {{{newLine}  title \"What is different\"{newLine}}}")]);
    }

    private static IEnumerable<EditorAction> OtherUnits(CompiledFile file, TextSpan range)
    {
        foreach (var place in Places.All(file.Tree).Where(p => p.Entry.LineSpan.Touches(range.Start)))
        {
            foreach (var quantity in place.Entry.Values.OfType<QuantitySyntax>())
            {
                if (quantity.Unit is not { Currency: null } unit || !quantity.Span.Touches(range.Start))
                {
                    continue;
                }

                foreach (var other in Hovers.OtherUnits(unit))
                {
                    if (Short(other.FromSi(unit.ToSi(quantity.Number))) is { } number)
                    {
                        yield return new EditorAction(
                            $"Write {number} {other.Symbol}", ActionKind.Rewrite, [new TextEdit(new SourceSpan(file.Source, quantity.Span), $"{number} {other.Symbol}")]);
                    }
                }
            }
        }
    }

    // The fewest digits that say the same: within a five-thousandth, which nobody at a bench can tell. Null where that is no number to write down.
    private static string? Short(double value)
    {
        const int most = 9;
        for (var digits = 0; digits <= most; digits++)
        {
            var rounded = Math.Round(value, digits, MidpointRounding.AwayFromZero);
            if (Math.Abs(rounded - value) <= 2e-4 * Math.Abs(value))
            {
                return rounded.ToString("0.#########", CultureInfo.InvariantCulture);
            }
        }

        return null;
    }

    private static EntryPlace? Top(CompiledFile file, int offset) => Places.EntryAt(file.Tree, offset)?.Chain().Last();

    private static string Free(string wanted, Func<string, bool> taken)
    {
        var name = wanted;
        for (var i = 2; taken(name); i++)
        {
            name = string.Create(CultureInfo.InvariantCulture, $"{wanted}-{i}");
        }

        return name;
    }
}
