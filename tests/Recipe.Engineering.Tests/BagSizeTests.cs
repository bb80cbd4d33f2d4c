using CsCheck;
using UnitsNet;

namespace Recipe.Engineering.Tests;

public class BagSizeTests
{
    private static readonly BagAllowances Usual = new();

    private static Length Mm(double value) => Length.FromMillimeters(value);

    [Fact]
    public void Film_of_a_flat_part_is_75_mm_larger_on_each_side()
    {
        // Common practice: flat part plus 75 mm each side.
        FlatPiece film = BagSize.Film(Surfaces.FlatRectangle(Mm(600), Mm(250)), Usual);
        Digits.Close(750, film.Length.Millimeters);
        Digits.Close(400, film.Width.Millimeters);
        Digits.Close(750 * 400, film.Area.SquareMillimeters);
    }

    [Fact]
    public void Film_of_a_shaped_part_follows_the_string_and_not_the_footprint()
    {
        // Common practice: string length times 1.15 to 1.25 in each direction.
        Surface bowl = BowlSurfaces.HalfEllipsoid(Mm(600), Mm(400), Mm(200));
        FlatPiece film = BagSize.Film(bowl, Usual with { FilmEdge = Length.Zero });
        Assert.InRange(film.Length / bowl.DevelopedLength, 1.15, 1.25);
        Assert.InRange(film.Width / bowl.DevelopedWidth, 1.15, 1.25);
        Assert.True(film.Length.Millimeters > 600 * 1.25);
    }

    [Fact]
    public void Layers_reach_past_the_edge_or_stay_inside_it()
    {
        Surface panel = Surfaces.FlatRectangle(Mm(600), Mm(250));
        FlatPiece breather = BagSize.Layer(panel, Mm(50));
        Digits.Close(700, breather.Length.Millimeters);
        Digits.Close(350, breather.Width.Millimeters);

        // FAA AC 43.13-1B 3-4: the solid film is cut an inch smaller than the bleeder.
        FlatPiece bleeder = BagSize.Layer(panel, Length.FromInches(2));
        FlatPiece film = BagSize.Layer(panel, Length.FromInches(1));
        Digits.Close(2, (bleeder.Length - film.Length).Inches);
        Digits.Close(590, BagSize.Layer(panel, Mm(-5)).Length.Millimeters);
        Assert.Throws<ArgumentOutOfRangeException>(() => BagSize.Layer(panel, Mm(-125)));
    }

    [Fact]
    public void A_layer_on_a_tube_is_longer_but_not_wider()
    {
        FlatPiece layer = BagSize.Layer(Surfaces.Cylinder(Mm(100), Mm(700)), Mm(50));
        Digits.Close(800, layer.Length.Millimeters);
        Digits.Close(Math.PI * 100, layer.Width.Millimeters);
    }

    // Plane geometry: three plies of 0.3 mm each make the girth 2 pi 0.9 mm longer, so a layer cut to the bare mandrel does not close over them.
    [Fact]
    public void A_layer_with_a_lap_closes_round_a_tube_and_its_plies()
    {
        Surface tube = Surfaces.Cylinder(Mm(100), Mm(700));
        Digits.Close((Math.PI * 100) + 25, BagSize.Layer(tube, Mm(50), Mm(25)).Width.Millimeters);
        Assert.True(BagSize.Layer(tube, Mm(50), Mm(25)).Width.Millimeters > Math.PI * (100 + (2 * 0.9)));
        Digits.Close(590, BagSize.Layer(Surfaces.FlatRectangle(Mm(600), Mm(250)), Mm(-5), Mm(25)).Length.Millimeters);
        Assert.Throws<ArgumentOutOfRangeException>(() => BagSize.Layer(tube, Mm(50), Mm(-1)));
    }

    // The sector of the cone that reaches so much farther at both ends, by plane geometry: its box must lie within the layer.
    [Fact]
    public void A_layer_on_a_cone_widens_with_it()
    {
        (double big, double small, double height, double beyond) = (100, 50, 120, 40);
        double slant = double.Hypot(height, big - small);
        double share = beyond / slant;
        Surface longer = Surfaces.Frustum(
            Mm(2 * (big + ((big - small) * share))), Mm(2 * (small - ((big - small) * share))), Mm(height * (1 + (2 * share))));
        FlatPiece layer = BagSize.Layer(Surfaces.Frustum(Mm(2 * big), Mm(2 * small), Mm(height)), Mm(beyond));
        Assert.True(layer.Width >= longer.DevelopedWidth);
        Assert.True(layer.Length >= longer.DevelopedLength);
        Assert.True(layer.Width.Millimeters <= longer.DevelopedWidth.Millimeters + (2 * beyond));
    }

    [Fact]
    public void Tape_is_the_line_its_pleats_and_five_percent()
    {
        // Common practice: perimeter + 2 x height for each pleat + 5 %. Box 300 x 200 x 100: line 1000 + 8 x 50; 4 pleats of 100.
        Surface box = Surfaces.OpenBox(Mm(300), Mm(200), Mm(100));
        Digits.Close(1400, BagSize.TapeLine(box, Usual).Millimeters);
        Digits.Close((1400 + 800) * 1.05, BagSize.Tape(box, Usual).Millimeters);
        Digits.Close(
            (1400 + (2 * 2 * 60)) * 1.05,
            BagSize.Tape(box, Usual with { Pleats = 2, PleatHeight = Mm(60) }).Millimeters);

        Surface disc = Surfaces.FlatDisc(Mm(300));
        Digits.Close(Math.PI * 400 * 1.05, BagSize.Tape(disc, Usual).Millimeters);
    }

    [Fact]
    public void A_tube_is_taped_round_both_ends_and_along_the_slit()
    {
        Surface tube = Surfaces.Cylinder(Mm(100), Mm(700));
        Digits.Close((2 * Math.PI * 100) + 800, BagSize.TapeLine(tube, Usual).Millimeters);
    }

    [Fact]
    public void An_envelope_has_two_sides()
    {
        Surface panel = Surfaces.FlatRectangle(Mm(600), Mm(250));
        FlatPiece film = BagSize.Envelope(panel, Usual);
        Digits.Close(750, film.Length.Millimeters);
        Digits.Close(800, film.Width.Millimeters);
    }

    [Fact]
    public void Film_is_always_larger_than_the_layers_that_end_inside_the_tape()
    {
        Gen.Select(Gen.Double[50, 2000], Gen.Double[50, 2000], Gen.Double[5, 500]).Sample(
            (a, b, c) =>
            {
                Surface bowl = BowlSurfaces.HalfEllipsoid(Mm(a), Mm(b), Mm(c));
                FlatPiece film = BagSize.Film(bowl, Usual);
                FlatPiece breather = BagSize.Layer(bowl, Usual.TapeOffset);
                return film.Length > breather.Length && film.Width > breather.Width;
            },
            iter: 500);
    }

    [Fact]
    public void Allowances_out_of_range_are_refused()
    {
        Surface box = Surfaces.OpenBox(Mm(300), Mm(200), Mm(100));
        Assert.Throws<ArgumentOutOfRangeException>(() => BagSize.Film(box, Usual with { ShapedFactor = 0.9 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => BagSize.Film(box, Usual with { FilmEdge = Mm(-1) }));
        Assert.Throws<ArgumentOutOfRangeException>(() => BagSize.Tape(box, Usual with { Pleats = -1 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => BagSize.Tape(box, Usual with { TapeSpare = Ratio.FromPercent(-5) }));
    }
}
