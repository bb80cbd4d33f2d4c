using System.Text;
using Recipe.Compiler;
using Recipe.Model;
using Recipe.Planning;
using Recipe.Semantics;
using Recipe.Syntax;
using Recipe.Text.Findings;
using Recipe.Text.Units;

namespace Recipe.Editing;

/// <summary>What is shown about the thing under the cursor.</summary>
public static class Hovers
{
    /// <summary>The page about a place: what is wrong there, the thing that a name stands for with what follows from it, what a word takes, a quantity in other units; null where there is nothing to say.</summary>
    public static Hover? At(CompiledFile file, int offset)
    {
        ArgumentNullException.ThrowIfNull(file);
        var found = file.Findings.Where(f => ReferenceEquals(f.Where.Source, file.Source) && f.Where.Span.Touches(offset)).ToList();
        var about = Name(file, offset) ?? Quantity(file, offset) ?? Word(file, offset);
        if (found.Count == 0)
        {
            return about;
        }

        var reasons = string.Join("\n\n", found.Select(Reason));
        return about is null
            ? new Hover(found[0].Where.Span, reasons)
            : new Hover(about.Where, $"{about.Markdown}\n\n---\n\n{reasons}");
    }

    private static string Reason(Finding finding) =>
        $"**{finding.Descriptor.Label}**: {Cards.Plain(finding.Message)}.\n\n{Cards.Plain(finding.Descriptor.Reason)} {Cards.Plain(finding.Descriptor.Remedy)}\n\n*From: {Cards.Plain(finding.Descriptor.Source)}*";

    private static Hover? Name(CompiledFile file, int offset)
    {
        if (Navigation.NameAt(file, offset) is not { } name)
        {
            return null;
        }

        var page = name.Kind switch
        {
            NameKind.Material => Cards.Material(file, name.Name),
            NameKind.Part => file.Parts.FirstOrDefault(p => p.Part.Name == name.Name) is { } part ? Part(part.Figures) : null,
            NameKind.Mould => file.Bound.Model.Moulds.TryGetValue(name.Name, out var mould) ? Mould(mould) : null,
            NameKind.Ply => Ply(file, name, offset),
            NameKind.Value => Value(file, name),
            _ => null,
        };
        return page is null ? null : new Hover(name.Where.Span, page);
    }

    private static string? Ply(CompiledFile file, NameUse name, int offset)
    {
        foreach (var plan in file.Parts.Where(part => part.MayStandIn(name.Where.Span)).Select(part => part.Plan))
        {
            var line = plan.Stack.FirstOrDefault(s => s.Item.Name == name.Name && (s.Item.NameWhere == name.Declaration || s.Item.Where.Span.Touches(offset)));
            if (line is not null)
            {
                return Line(plan, line);
            }
        }

        return null;
    }

    private static string Line(Plan plan, StackPlan line)
    {
        var page = new StringBuilder(line.Number > 0 ? $"**{line.Item.Name}**, ply {line.Number} from the mould, of `{plan.Part.Name}`\n" : $"**{line.Item.Name}** of `{plan.Part.Name}`\n");
        Fact(page, "thickness", line.Thickness, Say.Of);
        Fact(page, "covers", line.NetArea, Say.Of);
        Fact(page, "to cut", line.CutArea, Say.Of);
        Fact(page, "dry, trimmed", line.NetMass, Say.Of);
        Fact(page, "resin that stays", line.NetResin, Say.Of);
        Fact(page, "resin to lay", line.LaidResin, Say.Of);
        Fact(page, "time to wet out", line.WetOut, Say.Of);
        foreach (var piece in line.Pieces)
        {
            var joins = piece.Joins > 0 ? $", {piece.Joins} join{(piece.Joins == 1 ? "" : "s")}" : "";
            page.Append(System.Globalization.CultureInfo.InvariantCulture, $"\n* {piece.Count} x {Say.Of(piece.Length)} x {Say.Of(piece.Width)} at {Say.Number(piece.RollAngle)} deg to the roll{joins}");
        }

        if (plan.Stiffness?.Lines.FirstOrDefault(share => share.Name == line.Item.Name) is { } share)
        {
            page.Append(System.Globalization.CultureInfo.InvariantCulture, $"\n* brings {Say.Percent(share.Bending)} of the bending stiffness for {Say.Percent(share.Mass)} of the mass");
        }

        return page.ToString();
    }

    private static string Part(Plan plan)
    {
        var page = new StringBuilder($"**{Cards.Plain(plan.Part.Label)}**, {plan.Part.Process.Written}\n");
        if (plan.TrimmedMass is { Value: var mass })
        {
            page.Append(System.Globalization.CultureInfo.InvariantCulture, $"\n* {(plan.Part.IsAssembly ? "joined" : "trimmed")} {Say.Of(mass.Value)} ({Say.Of(mass.Low)} to {Say.Of(mass.High)})");
        }

        if (plan.Laminate is { } laminate)
        {
            Fact<UnitsNet.Length>(page, "thickness", laminate.Thickness, v => Say.Of(v));
            Fact<double>(page, "resin by weight", laminate.ResinFraction, Say.Percent);
        }

        Fact(page, "resin to mix", plan.Resin?.ToMix, mass => Say.Of(mass));
        if (plan.Clock is { } clock)
        {
            Fact<UnitsNet.Duration>(page, "first mix to full vacuum", clock.Need, v => Say.Of(WholeMinutes.OfNeed(v)));
            Fact(page, "the resin on the part lives", clock.FilmLife, v => Say.Of(WholeMinutes.OfLimit(v)));
        }

        if (plan.Cure is { } cure)
        {
            Fact<UnitsNet.Duration>(page, "cure", cure.Total, v => Say.Of(v));
            Fact<UnitsNet.Temperature>(page, "hottest", cure.Peak, v => Say.Of(v));
            if (cure.Progress?.Transition is { } softens)
            {
                page.Append(System.Globalization.CultureInfo.InvariantCulture, $"\n* softens at about {Say.Of(softens.Value.Value)} after it");
            }
        }

        foreach (var gap in plan.Gaps.Take(3))
        {
            page.Append("\n* not known: ").Append(Cards.Plain(gap.Subject)).Append(": ").Append(Cards.Plain(gap.Missing));
        }

        return page.ToString();
    }

    private static string Mould(Mould mould)
    {
        var page = new StringBuilder($"**{Cards.Plain(mould.Label)}**{(mould.IsPattern ? ", a pattern" : "")}\n");
        if (mould.MadeOf is { } stuff)
        {
            page.Append("\n* made of ").Append(Cards.Plain(stuff.Label));
        }

        if (mould.HeatLimit is { } limit)
        {
            page.Append("\n* stands ").Append(limit.Written);
        }

        if (mould.Surface is { } surface)
        {
            page.Append("\n* ").Append(Cards.Plain(surface.Written));
        }

        foreach (var coat in mould.Release)
        {
            page.Append("\n* released with ").Append(Cards.Plain(coat.Agent.Label));
        }

        return page.ToString();
    }

    private static string? Value(CompiledFile file, NameUse name) =>
        file.Tree.Root.Statements.OfType<LetSyntax>().FirstOrDefault(let => let.Name.Text == name.Name) is { } let
            ? $"**{name.Name}** = {Cards.Plain(file.Source.Slice(let.Value.Span))}"
            : null;

    private static Hover? Quantity(CompiledFile file, int offset)
    {
        foreach (var place in Places.All(file.Tree).Where(p => p.Entry.LineSpan.Touches(offset)))
        {
            foreach (var quantity in place.Entry.Values.SelectMany(Quantities))
            {
                if (quantity is { Unit: { } unit } && quantity.Span.Touches(offset))
                {
                    var others = OtherUnits(unit).Select(other => $"{Say.Number(other.FromSi(unit.ToSi(quantity.Number)))} {other.Symbol}").ToList();
                    return others.Count == 0 ? null : new Hover(quantity.Span, $"{Say.Number(quantity.Number)} {unit.Symbol} = {string.Join(" = ", others)}");
                }
            }
        }

        return null;
    }

    /// <summary>Quantities inside a value, however it is put together.</summary>
    internal static IEnumerable<QuantitySyntax> Quantities(ValueSyntax value) => value switch
    {
        QuantitySyntax quantity => [quantity],
        CompoundSyntax compound => compound.Parts,
        SignedSyntax signed => [signed.Quantity],
        PlusMinusSyntax both => [both.Quantity],
        RangeSyntax range => Quantities(range.Low).Concat(Quantities(range.High)),
        ToleranceSyntax tolerance => Quantities(tolerance.Value).Concat(Quantities(tolerance.Tolerance)),
        ParenthesisSyntax parenthesis => Quantities(parenthesis.Inner),
        BinarySyntax binary => Quantities(binary.Left).Concat(Quantities(binary.Right)),
        NegateSyntax negate => Quantities(negate.Operand),
        _ => [],
    };

    /// <summary>The units that people use for the same thing, the one written left out.</summary>
    internal static IEnumerable<Unit> OtherUnits(Unit unit)
    {
        string[][] families =
        [
            ["mm", "in"], ["m", "ft"], ["cm", "in"], ["m2", "ft2"], ["g", "oz"], ["kg", "lb"], ["g/m2", "oz/yd2"], ["degC", "degF"], ["mbar", "inHg"], ["kPa", "psi"],
            ["MPa", "psi"], ["GPa", "Msi"], ["L", "qt"], ["m3/h", "cfm"], ["g/cm3", "lb/ft3"], ["degC/min", "degF/min"], ["min", "h"], ["mPa.s", "cP"],
        ];
        var family = families.FirstOrDefault(f => f.Contains(unit.Symbol));
        return family is null
            ? families.SelectMany(f => f).Where(s => UnitTable.Get(s) is var other && other.Dimension == unit.Dimension && other.Scale == unit.Scale).Take(2).Select(UnitTable.Get)
            : family.Where(s => s != unit.Symbol).Select(UnitTable.Get).Where(other => other.Dimension == unit.Dimension && other.Scale == unit.Scale);
    }

    private static Hover? Word(CompiledFile file, int offset)
    {
        if (Places.EntryAt(file.Tree, offset) is not { Word: { } word } place)
        {
            return null;
        }

        if (place.Entry.Values.Prepend(place.Entry.Head).FirstOrDefault(v => v.Span.Touches(offset)) is WordSyntax asked && RuleHelp.About(place, asked.Text) is { } fact)
        {
            return new Hover(asked.Span, fact);
        }

        if (place.Entry.Head.Span.Touches(offset) && !place.IsNameLine)
        {
            return new Hover(place.Entry.Head.Span, Cards.Word(word));
        }

        if (place.Entry.Values.FirstOrDefault(v => v.Span.Touches(offset)) is not WordSyntax value)
        {
            return null;
        }

        var clause = word.Line.Clauses.FirstOrDefault(c => c.Words.Contains(value.Text));
        var flag = word.Line.Flags.FirstOrDefault(f => f.Words.Contains(value.Text));
        var form = word.FormOf(value.Text);
        var text = clause is not null ? $"**{clause.Phrase}**: {clause.Doc}"
            : flag is not null ? $"**{flag.Phrase}**: {flag.Doc}"
            : form is not null ? $"**{form.Word}**: {form.Doc}\n\n```recipe\n{form.Example}\n```"
            : Choice(word, value.Text);
        return text is null ? null : new Hover(value.Span, text);
    }

    private static string? Choice(Recipe.Semantics.Schema.WordSchema word, string text) => word.Line.Arguments.Select(a => a.Kind)
        .Concat(word.Line.Clauses.Select(c => c.Kind))
        .OfType<Recipe.Semantics.Schema.ChoiceKind>()
        .Select(kind => kind.Find(text))
        .FirstOrDefault(choice => choice is not null) is { } found
            ? $"**{found.Word}**: {found.Doc}"
            : null;

    private static void Fact<T>(StringBuilder page, string what, Computed<T>? figure, Func<T, string> say)
    {
        if (figure is { } known)
        {
            page.Append("\n* ").Append(what).Append(' ').Append(say(known.Value)).Append(known.IsAssumed ? " (assumed)" : "");
        }
    }
}
