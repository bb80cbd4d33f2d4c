using System.Collections.Immutable;

namespace Recipe.Checks;

/// <summary>All checks there are, in order of their codes. A new check adds one line here and one file beside its kin.</summary>
public static class CheckCatalogue
{
    /// <summary>The checks.</summary>
    public static ImmutableArray<Check> All { get; } =
    [
        new NoRelease(),
        new FewWaxCoats(),
        new WaxCoatsTooClose(),
        new FilmNotDry(),
        new ReleaseTooHot(),

        new NoPlies(),
        new WiderThanRoll(),
        new MatWithEpoxy(),
        new BareCoreFace(),
        new PatchWithoutPlace(),
        new TargetOutOfReach(),

        new NoResin(),
        new PotDiesFirst(),
        new BagAfterFilmLife(),
        new BatchesShort(),
        new PotTooBig(),
        new RunawayPot(),
        new ScaleTooCoarse(),
        new LeftTooWet(),
        new FillSlowerThanGel(),

        new BagUpsideDown(),
        new FilmUnderPeelPly(),
        new FeltOnLaminate(),
        new SolidFilmBlocksBleed(),
        new NothingUnderBag(),
        new NoBreather(),
        new BareFlowMedium(),
        new LayerOutsideBag(),
        new BleedsDry(),
        new FeltSoaks(),

        new GaugeAtPump(),
        new NoPleats(),
        new BagBridgesCorner(),
        new BagFilmTooNarrow(),
        new CaulSticks(),
        new PolyethyleneInOven(),
        new DryNylon(),
        new NylonWithPhenolic(),
        new ThinFelt(),
        new FilmCoversBleeder(),
        new CoatedPeelPlyBonded(),
        new BagClosedInNoTime(),

        new NoVacuumLevel(),
        new MoreVacuumThanAir(),
        new WeakVacuum(),
        new NoLeakCheck(),
        new NoDropTest(),
        new LeakCheckNotIsolated(),
        new LeakLimitTooLoose(),
        new VacuumBeyondPump(),
        new VacuumCrushesCore(),
        new PumpTooSmall(),
        new PumpTooSlow(),
        new StyreneBoils(),
        new VacuumOffEarly(),

        new NoCure(),
        new MouldTooHot(),
        new CoreTooHot(),
        new BagTooHot(),
        new TooColdToCure(),
        new ColdNight(),
        new DemouldTooEarly(),
        new OvenAheadOfPart(),
        new SoftensInUse(),
        new LaminateHeatsItself(),

        new CureInFahrenheit(),
        new ShortDwell(),
        new UnsupportedPostCure(),
        new CooledTooFast(),
        new OpenedHot(),
        new PulledHot(),
        new NoPartTemperature(),
        new HeatBeforeGel(),
        new SunAsOven(),
        new HotterThanOven(),

        new SeamWithoutLap(),
        new SeamClosedLate(),
        new ExpiredStock(),

        new JointNotKeyed(),
        new NeatSeam(),
        new ThickBondLine(),
        new NoAlignment(),
        new SealedHollowHeated(),
        new HalvesUnequal(),
        new NarrowSeamTape(),
        new ShortLap(),

        new NoKeyForBond(),
        new ReleaseLeftOnFace(),
        new BlushLeft(),
        new DarkPaintBeforeHeat(),
        new MetalLevers(),
        new HammerOnMould(),
        new InspectWithoutLimits(),
        new NeverWeighed(),
        new WeighedBeforeTrim(),
        new GreenDust(),
        new OpenAramidEdge(),
        new SprayWithoutAir(),
        new DryDust(),

        new NotEnoughOnShelf(),
        new OpenedLongAgo(),
        new OldPolyester(),
        new OldTape(),
        new StalePrice(),
        new TwoLots(),
        new PiecesDoNotFitRoll(),

        new UnknownWaiver(),
        new UnusedWaiver(),
        new LapsedWaiver(),
        new RefusedWaiver(),
    ];

    /// <summary>The check with this code or name, or null.</summary>
    public static Check? Find(string codeOrName) =>
        All.FirstOrDefault(c => c.Descriptor.Code == codeOrName || c.Descriptor.Name == codeOrName);
}
