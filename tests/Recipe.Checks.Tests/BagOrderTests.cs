using System.Collections.Immutable;
using Recipe.Model;
using static Recipe.Model.LayerClass;

namespace Recipe.Checks.Tests;

/// <summary>The order of a bag, from the part outwards, against the handbooks.</summary>
public class BagOrderTests
{
    // FAA AC 43.13-1B (1998) paragraph 3-4, p. 3-6 to 3-8: porous release cloth, bleeder, non-porous parting film smaller than the
    // bleeder, breather, bag film.
    private static readonly ImmutableArray<LayerClass> SampleBag = [ReleaseFilm, Bleeder, ReleaseFilm, Breather, BagFilm];

    // US Army TM 1-1500-204-23-11, page files 0170 to 0175: peel ply on the part, porous film, bleeder, solid film, breather, bag film.
    private static readonly ImmutableArray<LayerClass> ArmyBag = [PeelPly, ReleaseFilm, Bleeder, ReleaseFilm, Breather, BagFilm];

    public static TheoryData<LayerClass[]> Legal => new(
        [.. SampleBag],
        [.. ArmyBag],
        [PeelPly, Breather, BagFilm],
        [ReleaseFilm, Breather, BagFilm],
        [PeelPly, Bleeder, Bleeder, BagFilm],
        [PeelPly, ReleaseFilm, Caul, Breather, BagFilm],
        [PeelPly, FlowMedium, BagFilm],
        [PeelPly, ReleaseFilm, FlowMedium, BagFilm],
        [BagFilm]);

    public static TheoryData<LayerClass[]> Illegal => new(
        [Breather, ReleaseFilm, BagFilm],
        [Bleeder, PeelPly, BagFilm],
        [ReleaseFilm, PeelPly, Breather, BagFilm],
        [BagFilm, PeelPly],
        [PeelPly, BagFilm, Breather],
        [FlowMedium, PeelPly, BagFilm]);

    [Theory]
    [MemberData(nameof(Legal))]
    public void What_the_handbooks_lay_is_legal(LayerClass[] order) => Assert.True(BagOrder.IsLegal([.. order]));

    [Theory]
    [MemberData(nameof(Illegal))]
    public void What_they_never_lay_is_not(LayerClass[] order) => Assert.False(BagOrder.IsLegal([.. order]));

    [Theory]
    [MemberData(nameof(Legal))]
    public void A_bag_listed_from_the_film_inwards_is_not_legal(LayerClass[] order) =>
        Assert.Equal(order.Length == 1, BagOrder.IsLegal([.. order.Reverse()]));
}
