namespace Recipe.Planning.Tests;

/// <summary>What is cut for the bag, through the text of a recipe.</summary>
public class BagSizeTests
{
    /// <summary>Common practice: film 75 mm past a flat part on each side; the other layers 25 mm past the plies, which run 15 mm past the trim line.</summary>
    [Fact]
    public void AFlatPart()
    {
        var bag = Bag("flat 600 mm x 250 mm", "peel-ply; release-film perforated; breather x2; bag-film; sealant-tape");
        Assert.Equal(["680 x 330", "680 x 330", "680 x 330", "750 x 400"], Sizes(bag));
        Assert.Equal([1, 1, 2, 1], bag.Layers.Select(layer => layer.Sheets));
        Assert.Equal(2 * 0.68 * 0.33, bag.Layers[2].Area.Value.SquareMeters, 9);

        // Round a rectangle 50 mm outside its rim, and five percent: common practice.
        Assert.Equal((1.7 + 0.4) * 1.05, bag.SealantTape.Value.Meters, 9);
    }

    /// <summary>
    /// FAA AC 43.13-1B (1998) p. 3-7: the bleeder runs 2 to 3 in past the patch, the parting film without holes is cut 1 in smaller than the bleeder, here on each side. The breather over it
    /// reaches the bleeder's edge again.
    /// </summary>
    [Fact]
    public void ASolidFilmIsSmallerThanItsBleeder()
    {
        var bag = Bag(
            "flat 12 in x 10 in", "release-film perforated beyond 1 in; bleeder beyond 2 in; release-film solid smaller 1 in; breather beyond 2 in; bag-film; sealant-tape", "trim 0 mm");
        Assert.Equal(
            [(14.0, 12.0), (16.0, 14.0), (14.0, 12.0), (16.0, 14.0)],
            bag.Layers.Take(4).Select(layer => (Math.Round(layer.Length.Value.Inches, 6), Math.Round(layer.Width.Value.Inches, 6))));
    }

    /// <summary>
    /// Common practice: over a shaped part the film is 1.15 to 1.25 times the string in each direction, with a pleat as high as the mould is deep at each corner, up and down again on the tape.
    /// The string over a box of 300 x 200 x 100 mm is 500 and 400 mm.
    /// </summary>
    [Fact]
    public void ABox()
    {
        var bag = Bag("box 300 mm x 200 mm x 100 mm", "peel-ply; bag-film; sealant-tape", "trim 0 mm");
        var film = bag.Layers[1];
        Assert.InRange((film.Length.Value.Millimeters - 150) / 500, 1.15, 1.25);
        Assert.InRange((film.Width.Value.Millimeters - 150) / 400, 1.15, 1.25);
        Assert.Contains("default.film-factor", film.Length.RestsOn);
        Assert.Equal("550 x 450", Sizes(bag)[0]);
        Assert.Equal((1.0 + 0.4 + (4 * 2 * 0.1)) * 1.05, bag.SealantTape.Value.Meters, 9);
        Assert.Equal((1.0 + 0.4 + (2 * 2 * 0.1)) * 1.05, Bag("box 300 mm x 200 mm x 100 mm", "peel-ply; bag-film; sealant-tape; pleats 2").SealantTape.Value.Meters, 9);
    }

    /// <summary>An envelope is its film twice over, joined along one edge: tape on the long slit and across both ends. By hand.</summary>
    [Fact]
    public void AnEnvelope()
    {
        var bag = Bag("flat 600 mm x 250 mm", "peel-ply; bag-film; sealant-tape; envelope yes");
        Assert.Equal("750 x 800", Sizes(bag)[1]);
        Assert.Equal((0.75 + (2 * 0.4)) * 1.05, bag.SealantTape.Value.Meters, 9);
    }

    /// <summary>Each half of a mould has a bag of its own: common practice.</summary>
    [Fact]
    public void TwoHalvesAreTwoBags()
    {
        var one = Bag("flat 600 mm x 250 mm", "peel-ply; bag-film; sealant-tape");
        var two = Bag("flat 600 mm x 250 mm", "peel-ply; bag-film; sealant-tape", mould: "halves left right");
        Assert.Equal((1, 2), (one.Bags, two.Bags));
        Assert.Equal(Sizes(one), Sizes(two));
        Assert.Equal([2, 2], two.Layers.Select(layer => layer.Sheets));
        Assert.Equal(2 * one.SealantTape.Value.Meters, two.SealantTape.Value.Meters, 9);
        Assert.Equal(2 * one.Pickup!.Value.Value.Grams, two.Pickup!.Value.Value.Grams, 9);
    }

    /// <summary>Common practice: 40 g/m2 for a peel ply, counted where it lies on plies: 630 mm x 280 mm of its 680 x 330.</summary>
    [Fact]
    public void ALayerTakesResinWhereItLiesOnPlies()
    {
        var bag = Bag("flat 600 mm x 250 mm", "peel-ply; bag-film; sealant-tape");
        Assert.Equal(0.63 * 0.28, bag.Layers[0].WetArea.SquareMeters, 9);
        Assert.Equal(40 * 0.63 * 0.28, bag.Layers[0].Pickup!.Value.Value.Grams, 6);
        Assert.Equal(40 * 0.63 * 0.28, bag.Pickup!.Value.Value.Grams, 6);
    }

    /// <summary>
    /// Plane geometry: round a tube of 100 mm the plies run 314 mm and grow with their thickness, so peel ply and felt lap as they run past a flat part (25 mm, common practice). A flow mesh lies edge to edge.
    /// </summary>
    [Fact]
    public void LayersRoundATubeLapOverThemselves()
    {
        var bag = Bag("cylinder diameter 100 mm length 500 mm", "peel-ply; release-film perforated; breather; bag-film; sealant-tape; envelope yes", mould: "mandrel yes");
        Assert.All(bag.Layers.Take(3), layer => Assert.Equal((100 * Math.PI) + 25, layer.Width.Value.Millimeters, 6));
        Assert.All(bag.Layers.Take(3), layer => Assert.Equal(580, layer.Length.Value.Millimeters, 6));
        Assert.Contains("default.layer-beyond", bag.Layers[0].Width.RestsOn);
    }

    private static string[] Sizes(BagPlan bag) =>
        [.. bag.Layers.Select(layer => FormattableString.Invariant($"{layer.Length.Value.Millimeters:0.###} x {layer.Width.Value.Millimeters:0.###}"))];

    private static BagPlan Bag(string surface, string layers, string part = "", string mould = "") => Corpus.PlanOf($$"""
        mould plate {
          surface {{surface}}
          {{mould}}
        }
        part panel {
          mould plate
          process bagged
          resin slow-laminating-epoxy
          {{part}}
          plies { only glass-twill-163 0/90 }
          bag { {{layers}} }
        }
        """).Bag!;
}
