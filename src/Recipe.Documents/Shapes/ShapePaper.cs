using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Engineering;
using Recipe.Model;
using Recipe.Planning;
using UnitsNet;

namespace Recipe.Documents.Shapes;

/// <summary>The shape sheet: the surface as it was measured, how each woven cloth is sheared on it, and what the cloth looks like laid flat.</summary>
internal static class ShapePaper
{
    /// <summary>Whether cloth is sheared on the surface so that somebody should look, or the surface was measured from a file or a profile.</summary>
    public static bool Applies(PaperInput input) => input.Plan.Shape is { Trouble: null, Model: not null } shape && (shape.IsDeep || shape.IsMeasured);

    public static Document Build(PaperInput input)
    {
        var context = new PaperContext(input);
        var none = new Station(context.Wording.Say("The surface"), [new Paragraph(context.Wording.Say("Cloth lies on this surface without much shear, or the surface is not known."))]);
        ImmutableArray<Station> stations = context.Plan.Shape is { Trouble: null, Model: not null } shape
            ? [Measures(context, shape), .. shape.Cloths.GroupBy(cloth => (cloth.Warp, cloth.Locking.Value.Degrees)).Select(alike => Cloth(context, shape, [.. alike])), .. Flattened(context, shape)]
            : [none];
        return new Document
        {
            Kind = "Shape sheet",
            Identity = context.Identity(ofOneBuild: false),
            Paper = context.Paper,
            ForTheBench = true,
            Stations = stations,
        };
    }

    private static Station Measures(PaperContext context, ShapePlan shape)
    {
        var (say, text, measures) = (context.Wording, context.Text, shape.Model!.Measures);
        var facts = ImmutableArray.CreateBuilder<Fact>();
        facts.Add(new(say.Say("Surface"), QuantityText.Written(shape.Surface)));
        facts.AddRange(shape.Regions.Select(region => new Fact(say.Say("Of it"), region.Written)));
        facts.Add(new(say.Say("Area"), text.Area(measures.Area).Main));
        facts.Add(new(say.Say("Rim"), text.Distance(shape.Model.Rim).Main));
        facts.Add(new(say.Say("Box"), string.Join(" x ", Box(measures).Select(side => text.Size(side).Main))));
        facts.Add(new(say.Say("Depth below the rim"), text.Size(shape.Model.Depth).Main));
        var edge = EdgesOfMould.InsideRadius(context.Plan);
        facts.Add(edge switch
        {
            { IsStated: true } => new(say.Say("Smallest inside radius, as the mould says"), text.Written(context.Part.Mould!.InsideRadius!, value => text.Thickness(value)).Main),
            { } measured => new(say.Say("Smallest inside radius, about"), text.Deflection(measured.Radius).Main),
            null => new(say.Say("Smallest inside radius"), Phrase.WithCode(say.Say("not known: write `radius 6 mm` in the mould"))),
        });
        if (EdgesOfMould.Draft(context.Plan) is { } draft)
        {
            facts.Add(new(draft.IsStated ? say.Say("Draft against the pull, as the mould says") : say.Say("Smallest draft against the pull"), Numbers.AtMost(draft.Draft.Degrees, 1) + "\u00A0" + "deg"));
        }

        if (measures.Draft is { } walls)
        {
            facts.Add(new(say.Say("Undercut"), walls.Undercut is { SquareMeters: > 0 } under ? text.Area(under).Main : say.Say("none")));
        }

        var blocks = ImmutableArray.CreateBuilder<Block>();
        blocks.Add(new Facts(facts.ToImmutable()));
        if (shape.Model.Reading is { } reading)
        {
            blocks.Add(new Paragraph(say.Say($"Measured on {Numbers.Whole(shape.Model.Mesh.Triangles.Length)} triangles of a file; 1 in the file is {text.Thickness(reading.Unit).Main}."), Fine: true));
            if (Mended.Of(say, reading.Repairs) is { IsEmpty: false } mended)
            {
                blocks.Add(new BulletList(mended, Fine: true));
            }

            if (!shape.Model.Mesh.Groups.IsEmpty)
            {
                blocks.Add(new Paragraph(say.Say($"Groups in the file: {string.Join(", ", shape.Model.Mesh.Groups.Select(group => group.Name).Distinct().Take(20))}."), Fine: true));
            }
        }

        blocks.Add(new IfBox(
        [
            new(say.Say("A sheet of paper laid into the mould does not agree"), say.Say("stop; the file is of another mould or has another unit")),
            new(say.Say("The cloth stands in a wrinkle"), say.Say("lift it as far as the middle, lay it down again from there; then cut a dart")),
        ]));
        return new Station(say.Say("The surface"), blocks.ToImmutable());
    }

    // Cloths that lie the same way and stand the same shear lie alike.
    private static Station Cloth(PaperContext context, ShapePlan shape, ImmutableArray<ClothShear> alike)
    {
        var (say, text, cloth) = (context.Wording, context.Text, alike[0]);
        var locking = cloth.Locking.Value.Degrees;
        var title = say.Say($"Woven cloth, warp at {Numbers.AtMost(cloth.Warp, 0)} deg");
        if (cloth.Net.Value is not { } net)
        {
            return new Station(title, [new Paragraph(Phrase.WithCode(say.Say("The cloth cannot be laid down from where it begins. Write another place with `drape`.")))]);
        }

        var (share, advice) = (net.ShearBeyond(cloth.Locking.Value).Share.DecimalFractions, net.Darts(cloth.Locking.Value));
        var name = $"shear-{Numbers.Whole(cloth.StackLine + 1)}";
        var blocks = ImmutableArray.CreateBuilder<Block>();
        blocks.Add(new KeyNumbers(
            string.Join("; ", alike.Select(one => $"{context.Plan.Stack[one.StackLine].Item.Name}: {Words.Of(one.Cloth)}")),
            [
                new(say.Say("Greatest shear"), Numbers.AtMost(net.GreatestShear.Degrees, 0) + "\u00A0" + "deg", say.Say($"wrinkles from {Numbers.AtMost(locking, 0)} deg"), Alarm: net.GreatestShear > cloth.Locking.Value),
                new(say.Say("Beyond that"), QuantityText.Share(share), say.Say("of the ply")),
            ]));
        blocks.Add(ShapeSketch.Of(
            name,
            say.Say("The cloth on the surface"),
            say.Say("Seen from above one corner. White is sheared by less than a third of what the cloth stands, grey by more, crossed where it wrinkles."),
            net,
            [.. shape.Model!.Measures.Boundaries.Select(rim => rim.Points)],
            shape.Model.Pull ?? shape.Model.Measures.Rim!.Normal,
            locking));
        if (net.Flat is { } flat)
        {
            var (along, across) = (text.Size(Length.FromMeters(flat.Along)).Main, text.Size(Length.FromMeters(flat.Across)).Main);
            blocks.Add(FlatSketch.Of(
                name + "-flat", say.Say("The same cloth laid flat, without trim"), say.Say($"{along} along the warp, {across} across. Crossed where it wrinkles on the mould."), flat, net, locking, along, across));
        }

        if (!advice.Darts.IsEmpty)
        {
            blocks.Add(new BulletList(
            [
                .. advice.Darts.Select((dart, i) => (Phrase)say.Say($"Dart {Numbers.Whole(i + 1)}: from the rim {text.Size(dart.Depth).Main} deep, towards {Numbers.AtMost(dart.Direction.Degrees, 0)} deg from the warp.")),
                advice.StaysWithin
                    ? say.Say($"With these darts about {Numbers.AtMost(advice.RemainingShear?.Degrees ?? 0, 0)} deg remain: it should lie down. Try it dry.")
                    : say.Say("With these darts it still wrinkles somewhere: take the ply in pieces."),
            ]));
        }

        if (context.RestsOn([cloth.Locking.RestsOn, shape.Net?.RestsOn ?? []]) is { } assumed)
        {
            blocks.Add(new Paragraph(say.Say($"What is said here {assumed}: see the cover."), Fine: true));
        }

        return new Station(title, blocks.ToImmutable());
    }

    // What has no direction is flattened with the least distortion.
    private static IEnumerable<Station> Flattened(PaperContext context, ShapePlan shape)
    {
        var (say, text) = (context.Wording, context.Text);
        if (!context.Part.Stack.OfType<PlyItem>().Any(ply => ply.Material.Form != ReinforcementForm.Fabric && !ply.IsPatch) || shape.Model!.Pattern is not { } pattern)
        {
            yield break;
        }

        var blocks = ImmutableArray.CreateBuilder<Block>();
        blocks.Add(new Facts(
        [
            new(say.Say("Area of the flat pattern against the surface"), QuantityText.Share(pattern.AreaChange.DecimalFractions)),
            new(say.Say("An edge becomes longer or shorter by at most"), QuantityText.Share(pattern.GreatestEdgeChange.DecimalFractions)),
        ]));
        blocks.AddRange(pattern.Outlines.Select((outline, i) =>
        {
            var (along, across) = (text.Size(Length.FromMeters(outline.Along)).Main, text.Size(Length.FromMeters(outline.Across)).Main);
            return FlatSketch.Of($"pattern-{Numbers.Whole(i + 1)}", say.Say("Flat pattern, without trim"), say.Say($"{along} by {across}."), outline, null, 90, along, across);
        }));
        blocks.Add(new Paragraph(say.Say("For mat, veil and strands in one direction: they are not sheared like a woven cloth. Mat gives a little; strands gape or are cut into strips."), Fine: true));
        yield return new Station(say.Say("Mat, veil and strands in one direction"), blocks.ToImmutable());
    }

    private static Length[] Box(MeshMeasures measures)
    {
        var size = measures.Most - measures.Least;
        return [Length.FromMeters(size.X), Length.FromMeters(size.Y), Length.FromMeters(size.Z)];
    }
}
