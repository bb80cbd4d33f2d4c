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

        new WaxStillSoft(),
        new FilmWithoutWax(),
        new FilmOnSilicone(),
        new FilmUnderInfusion(),
        new ReleasedTapeLand(),
        new SiliconeBeforePaint(),
        new CornerTooSharp(),
        new NoDraft(),
        new LockedIn(),
        new FlangeTooNarrow(),
        new LeakyMould(),
        new StyreneEatsFoam(),
        new FirstPullsUnshielded(),
        new GreenMould(),
        new TooManyPulls(),
        new ReleasesMixed(),
        new HalfNotReleased(),
        new NoWayToPull(),
        new UntriedCoating(),
        new SweatingMould(),

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
        new ShopClosesFirst(),

        new PeroxideMeetsAccelerator(),
        new AcceleratedTwice(),
        new WrongCureAgent(),
        new FillerFirst(),
        new TooMuchPigment(),
        new ThinnedResin(),
        new MixedInHaste(),
        new UncleanCup(),
        new NoCupSample(),
        new MixIncomplete(),

        new GelCoatFilm(),
        new GelCoatTimed(),
        new PolyesterOnEpoxy(),
        new LaminateOnWax(),

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

        new LeakCheckTooShort(),
        new NoSettling(),
        new PumpMayStop(),
        new PulledAtOnce(),
        new GaugeUnchecked(),
        new WideSwitchBand(),
        new OilMistIndoors(),
        new HoldDisagrees(),

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

        new OpenedFrozen(),
        new OutLifeSpent(),
        new NoDebulk(),
        new SealedEdges(),
        new PeelPlySteals(),
        new FreezerWarm(),
        new WeakOvenVacuum(),

        new SeamWithoutLap(),
        new SeamClosedLate(),
        new ExpiredStock(),

        new NoGloves(),
        new LatexGloves(),
        new StyreneUnvented(),
        new PeroxideBesideAccelerator(),
        new LeftoverInBin(),
        new SpillsOnSawdust(),
        new SolventsByHeat(),
        new DustInTheAir(),
        new OpenMotorsWithCarbon(),
        new UnattendedHeat(),

        new UnknownWaiver(),
        new UnusedWaiver(),
        new LapsedWaiver(),
        new RefusedWaiver(),
    ];

    /// <summary>The check with this code or name, or null.</summary>
    public static Check? Find(string codeOrName) =>
        All.FirstOrDefault(c => c.Descriptor.Code == codeOrName || c.Descriptor.Name == codeOrName);
}
