namespace Recipe.Planning.Tests;

/// <summary>How the pieces of a part lie on their rolls, through the text of a recipe. Plane geometry.</summary>
public class NestPlanTests
{
    /// <summary>Three pieces of 630 mm x 280 mm with 5 mm between them are 850 mm side by side: on a roll of 1 m one length of 630 mm does for all.</summary>
    [Fact]
    public void PiecesLieSideBySideWhereTheRollIsWideEnough()
    {
        var nest = Nest("outer tried-cloth 0/90 x3", "width 1 m");
        Assert.Null(nest.Obstacle);
        Assert.Equal(630, nest.LengthUsed!.Value.Value.Millimeters, 6);
        Assert.Equal(1 - (3 * 0.63 * 0.28 / 0.63), nest.Waste!.Value.Value, 9);
        Assert.Equal(3, nest.Placements.Length);
        Assert.Equal("A", Assert.Single(nest.Sizes).Letter);
    }

    /// <summary>
    /// Balanced plain cloth may lie either way: on a roll of 300 mm its pieces lie one behind the other. Strands that run one way may not be turned by a quarter, whatever is saved: pieces of
    /// 280 mm x 630 mm do not fit that roll, and are joined of three strips edge to edge.
    /// </summary>
    [Fact]
    public void ClothIsTurnedOnlyWhereItIsTheSameBothWays()
    {
        Assert.Equal((2 * 630) + 5, Nest("outer tried-cloth 0/90 x2", "width 300 mm").LengthUsed!.Value.Value.Millimeters, 6);
        Assert.Equal(90, Math.Abs(Nest("outer tried-ud 90", "width 300 mm", "tried-ud").Sizes[0].Angle), 9);
        var joined = Assert.Single(Nest("outer tried-ud 90", "width 300 mm", "tried-ud").Sizes);
        Assert.Equal((3, 3), (joined.Strips, joined.Count));
        Assert.Equal(210, joined.Across.Millimeters, 6);
        Assert.Equal(280, joined.Along.Millimeters, 6);
    }

    /// <summary>
    /// Cloth with more yarn one way than the other, a satin, a stitched cloth and strands that run one way keep their warp along the roll, whatever a turn would save: on a roll of 640 mm a
    /// piece of 630 mm x 280 mm would take 280 mm of it turned, and takes 630 mm as it is.
    /// </summary>
    [Theory]
    [InlineData("tried-cloth", "0/90", "warp-share 50 %", 280)]
    [InlineData("tried-cloth", "0/90", "warp-share 60 %", 630)]
    [InlineData("tried-cloth", "0/90", "warp-share 40 %", 630)]
    [InlineData("tried-cloth", "0", "warp-share 50 %", 630)]
    [InlineData("tried-satin", "0/90", "", 630)]
    [InlineData("tried-biax", "+/-45", "", 630)]
    [InlineData("tried-ud", "0", "", 630)]
    public void UnevenClothIsNeverTurnedByAQuarter(string cloth, string direction, string share, double length)
    {
        var nest = Nest($"outer {cloth} {direction}", "width 640 mm", cloth, share: share);
        Assert.Equal(length, nest.LengthUsed!.Value.Value.Millimeters, 6);
        Assert.Equal(length < 630, Assert.Single(nest.Placements).IsTurned);
    }

    /// <summary>Cut at 45 degrees a rectangle takes (630 + 280)/sqrt 2 both along and across the roll: 643 mm.</summary>
    [Fact]
    public void APieceAskewTakesTheRectangleRoundIt()
    {
        var size = Assert.Single(Nest("outer tried-cloth +/-45", "width 1 m").Sizes);
        Assert.Equal(910 / Math.Sqrt(2), size.Along.Millimeters, 6);
        Assert.Equal(910 / Math.Sqrt(2), size.Across.Millimeters, 6);
    }

    /// <summary>Two halves are as many pieces again, half of them mirror images.</summary>
    [Fact]
    public void HalvesAreMirrored()
    {
        var size = Assert.Single(Nest("outer tried-cloth 0/90 x3", "width 1 m", halves: "halves left right").Sizes);
        Assert.Equal((6, true), (size.Count, size.Mirrored));
    }

    [Fact]
    public void WithoutAWidthThereIsNoLayout() => Assert.Equal(NestObstacle.WidthUnknown, Nest("outer tried-cloth 0/90", "").Obstacle);

    private static NestPlan Nest(string ply, string width, string cloth = "tried-cloth", string halves = "", string share = "") => Corpus.PlanOf($$"""
        fabric tried-cloth {
          fibre e-glass
          areal-weight 200 g/m2
          weave plain
          {{width}}
          {{share}}
        }
        fabric tried-satin {
          fibre e-glass
          areal-weight 200 g/m2
          weave satin
          {{width}}
        }
        fabric tried-biax {
          fibre e-glass
          areal-weight 200 g/m2
          weave stitched
          fibre-angles +/-45
          {{width}}
        }
        ud tried-ud {
          fibre e-glass
          areal-weight 200 g/m2
          {{width}}
        }
        mould plate {
          surface flat 600 mm x 250 mm
          {{halves}}
        }
        part panel {
          mould plate
          process hand
          resin slow-laminating-epoxy
          trim 15 mm
          plies { {{ply}} }
        }
        """).Nests.Single(nest => nest.Material.Name == cloth);
}
