using CsCheck;
using Recipe.Model;
using Recipe.TestKit.Models;
using UnitsNet;

namespace Recipe.Planning.Tests;

/// <summary>Random parts with everything in them: shapes, processes, stacks, bags, clocks, cures.</summary>
internal static class RandomParts
{
    private static readonly Gen<Length> Size = Gen.Double[0.05, 2.0].Select(m => Length.FromMeters(Math.Round(m, 3)));

    public static readonly Gen<SurfaceShape> Shape = Gen.OneOf<SurfaceShape>(
        Gen.Select(Size, Size).Select(t => (SurfaceShape)new FlatShape(t.Item1, t.Item2)),
        Size.Select(d => (SurfaceShape)new DiscShape(d)),
        Gen.Select(Size, Size).Select(t => (SurfaceShape)new CylinderShape(t.Item1, t.Item2)),
        Gen.Select(Size, Size, Size).Select(t => (SurfaceShape)new ConeShape(t.Item1, t.Item2, t.Item3)),
        Gen.Select(Size, Size).Select(t => (SurfaceShape)new SphericalCapShape(t.Item1, t.Item2)),
        Gen.Select(Size, Size, Size).Select(t => (SurfaceShape)new HalfEllipsoidShape(t.Item1, t.Item2, t.Item3)),
        Gen.Select(Size, Size).Select(t => (SurfaceShape)new ParaboloidShape(t.Item1, t.Item2)),
        Gen.Select(Size, Size, Size).Select(t => (SurfaceShape)new BoxShape(t.Item1, t.Item2, t.Item3)),
        Gen.Select(Size, Size, Gen.Int[0, 3]).Select(t => (SurfaceShape)new GivenAreaShape(
            t.Item1 * t.Item2, t.Item3 > 0 ? t.Item1 : null, t.Item3 > 1 ? t.Item2 : null, t.Item3 > 2 ? Length.FromMillimeters(30) : null)));

    private static readonly Gen<Reinforcement> Material = Gen.OneOf(
        Gen.Int[20, 600].Select(g => Stuffs.Cloth("own-cloth", $"{g} g/m2")),
        Gen.Int[20, 600].Select(g => Stuffs.BookCloth("book-cloth", $"{g} g/m2")),
        Gen.Int[200, 900].Select(g => Stuffs.Biax("biax", $"{g} g/m2")),
        Gen.Int[6, 40].Select(g => Stuffs.Veil("veil", $"{g} g/m2")),
        Gen.Int[100, 600].Select(g => Stuffs.Mat("mat", $"{g} g/m2")));

    private static readonly Gen<Figure<Orientation>> Lie = Gen.OneOf(
        Gen.Const(Fig.Pair(0, 90)), Gen.Const(Fig.Pair(45, -45)), Gen.Const(Fig.Random()), Gen.Int[-90, 90].Select(a => Fig.Single(a)));

    private static readonly Gen<StackItem> Item = Gen.OneOf<StackItem>(
        Gen.Select(Material, Lie, Gen.Int[1, 3], Gen.Int[0, 4]).Select(t => (StackItem)Decorate(Recipes.Ply("ply", t.Item1, t.Item2) with { Count = t.Item3 }, t.Item4)),
        Gen.Select(Material, Gen.Int[1, 4]).Select(t => (StackItem)Recipes.Patch("patch", t.Item1, "60 mm", "40 mm", t.Item2)),
        Gen.Const((StackItem)Recipes.Core("core", Stuffs.Foam, "120 mm", "80 mm")),
        Gen.Int[1, 4].Select(n => (StackItem)Recipes.Insert("insert", Stuffs.Nut, n)));

    private static readonly Consumable[] Layers =
        [Stuffs.PeelPly, Stuffs.PerforatedFilm, Stuffs.SolidFilm, Stuffs.Breather, Stuffs.Mesh, Stuffs.BagFilm];

    private static readonly Gen<Bag> AnyBag = Gen.Select(Gen.Int[0, 5], Gen.Int[1, 2])
        .Select(t => t.Item2 == 1 ? Stuffs.Layer(Layers[t.Item1], t.Item2) : Stuffs.ByDefault(Layers[t.Item1]))
        .Array[0, 6]
        .Select(layers => Recipes.Bag() with { Layers = [.. layers] });

    private static readonly Gen<WetOut?> AnyWetOut = Gen.Select(Gen.Int[0, 7], Gen.Int[5, 35], Gen.Int[1, 3], Gen.Int[30, 60]).Select(t => t.Item1 == 0
        ? null
        : new WetOut
        {
            Where = Fig.Somewhere,
            Room = Fig.Celsius(t.Item2),
            Laminators = Fig.Count(t.Item3),
            Content = t.Item1 > 2 ? t.Item1 > 4 ? Fig.Resin(t.Item4) : Fig.Fibre(t.Item4) : null,
            Loss = t.Item1 > 5 ? Fig.Mass("10 g") : null,
            Pots = t.Item1 == 4 ? Fig.Count(3) : null,
            PotMasses = t.Item1 == 7 ? [Fig.Mass("100 g"), Fig.Mass("50 g")] : [],
            Spare = t.Item1 == 6 ? Fig.Share("20 %") : null,
        });

    /// <summary>A part and what is around it.</summary>
    public static readonly Gen<RecipeModel> Model =
        Gen.Select(Gen.Enum<Process>(), Shape, Gen.Bool, Item.Array[0, 6], AnyBag, AnyWetOut, Gen.Bool, Gen.Int[1, 5])
            .Select(t => Make(t.Item1, t.Item2, t.Item3, t.Item4, t.Item5, t.Item6, t.Item7, t.Item8));

    private static PlyItem Decorate(PlyItem ply, int kind) => kind switch
    {
        1 => ply with { CoversShare = Fig.Share("60 %") },
        2 => ply with { CoversArea = Fig.Area("10 cm2") },
        3 => ply with { Step = Fig.Length("10 mm") },
        4 => ply with { Content = Fig.Resin(48) },
        _ => ply,
    };

    private static RecipeModel Make(Process process, SurfaceShape shape, bool halves, StackItem[] stack, Bag bag, WetOut? wetOut, bool shop, int quantity)
    {
        var part = Recipes.Part(process, Recipes.Mould(shape, halves), stack) with
        {
            Bag = process == Process.Hand ? null : bag,
            WetOut = wetOut,
            Quantity = quantity,
            Coats = quantity > 3 ? [new Coat(Stuffs.Epoxy with { Name = "white-coat", Role = ResinRole.SurfaceCoat }, Fig.ArealWeight("300 g/m2"), Fig.Somewhere)] : [],
            Infusion = process == Process.Infused ? new Infusion { Where = Fig.Somewhere, FeedLine = Fig.Length("400 mm") } : null,
            Vacuum = process == Process.Hand ? null : new VacuumPlan { Where = Fig.Somewhere, Draw = Fig.Vacuum("25 inHg", VacuumConvention.BelowAmbient) },
            Cure = Recipes.WarmCure(),
            Join = halves
                ? new Join { Where = Fig.Somewhere, Manner = Fig.Stated(quantity > 2 ? JoinManner.WetInWet : JoinManner.CuredThenTaped, "as written"), Tape = Stuffs.Cloth("seam-tape", "200 g/m2"), TapeWidth = Fig.Length("40 mm"), Fillet = Fig.LinearDensity("6 g/m") }
                : null,
        };
        return Recipes.Around(part, shop ? Recipes.Shop() : null);
    }
}
