using System.Collections.Immutable;

namespace Recipe.Planning;

/// <content>The list of them all.</content>
public static partial class Defaults
{
    // Made when first asked for, after every field of every file is there.
    private static readonly Lazy<ImmutableArray<TradeDefault>> Everything = new(Collect);

    private static ImmutableArray<TradeDefault> Collect()
    {
        TradeDefault[] all =
        [
            Room, ResinTemperature, Laminators, Altitude, GivenAreaShape, CoversShape, Trim, Overlap, NestGap, LockingAngle, DrapeStart, SharpEdge, Orientation, CoreUptake, CorePoisson, StressFree,
            GelCoatFilm, SurfaceCoatFilm, WetOutPace, CurvatureFactor, PieceHandling, CoatPace, SeamPace, Mixing, PeelPlyPace, LayerPace,
            ClosingPace, LeakHunt, ToolLoss, BrushLoss, PotLoss, Spare, FeedReserve, FeedLoss, LineBore, FeedLine, FeedLines, LargestPot, LargestTray,
            LargestFeedPot, PotLifeMass, PotLifeShare, RampRate, CoolRate, FirstOffBand, PractisedBand, Seam, BondLine,
            CuredEpoxy, CuredPolyester, CuredVinylester, CuredPhenolic, FibreDensity, PeelPlyPickup, BleederPickup, BreatherPickup,
            FlowMediumPickup, FilmPerforation, PrepregBleed, LayerBeyond, FilmEdge, FilmFactor, TapeOffset, Pleats, TapeSpare,
            BagGap, HoseLength, HoseBore, CatchPot, PumpUltimate, WasteStraight, WasteShaped, WasteBias, WasteMat, WasteCore,
            WasteConsumable, RoomBand, SheetTimeScatter, ClothPermeability, StitchedPermeability, MatPermeability, FlowMediumPermeability,
            FlowMediumThickness, ThroughThickness, PermeabilityScatter, OwnPermeabilityScatter, ViscosityHalves, ViscosityDoubles, CureShape,
            TransitionCurve, PotHeat, LaminateHeat, PartTemperatureBand, TransitionScatter,
            .. ClothContents, .. DriestContents, .. MatContents, .. VeilContents, .. FilmBleeds, .. PotLifeRules,
        ];
        Array.Sort(all, static (a, b) => string.CompareOrdinal(a.Key, b.Key));
        return [.. all];
    }
}
