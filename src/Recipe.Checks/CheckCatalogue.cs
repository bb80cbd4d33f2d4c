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

        new UnsymmetricFlat(),
        new UnbalancedAngles(),
        new AngleWithoutAxis(),
        new AngleOnRandom(),
        new SameWeaveTurned(),
        new CopiedNotMirrored(),
        new ShortJoinOverlap(),
        new SteepDrop(),
        new NoTrimAllowance(),
        new AramidSanded(),
        new CarbonOnMetal(),
        new ClothTooStiff(),
        new DrierThanHands(),
        new PinholesExpected(),
        new BareHole(),
        new DampFibre(),
        new ThicknessDisagrees(),
        new OddClothWeight(),
        new SizeSlip(),
        new TooManyPliesWet(),
        new VeilForStrength(),
        new JoinsStacked(),
        new WrongSizing(),

        new AirUnderCore(),
        new WetHoneycomb(),
        new CellPrint(),
        new SquareCoreEdge(),
        new CoreOutgases(),
        new DampCore(),
        new OpenCoreJoints(),
        new DrilledCore(),
        new OpenCoreEdge(),

        new NoResin(),
        new PotDiesFirst(),
        new BagAfterFilmLife(),
        new BatchesShort(),
        new PotTooBig(),
        new RunawayPot(),
        new ScaleTooCoarse(),
        new LeftTooWet(),
        new FillSlowerThanGel(),

        new OddPotLife(),
        new OddHardenerShare(),
        new HardenerOutweighsResin(),
        new LivesOutOfOrder(),
        new TransitionAboveLimit(),
        new ColdResin(),
        new MixedTooMuch(),
        new StirsAwayLife(),

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

        new TooThickToInfuse(),
        new InfusedCold(),
        new LongFlowPath(),
        new NoClampOrder(),
        new NoWayOut(),
        new SmallReserve(),
        new NotDegassed(),
        new StyreneDegassed(),
        new DegassedTooLong(),
        new TightWeaveInfused(),
        new MeshReachesVacuum(),
        new NoCatchPot(),

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

        new SeamWithoutLap(),
        new SeamClosedLate(),
        new ExpiredStock(),

        new UnknownWaiver(),
        new UnusedWaiver(),
        new LapsedWaiver(),
        new RefusedWaiver(),
    ];

    /// <summary>The check with this code or name, or null.</summary>
    public static Check? Find(string codeOrName) =>
        All.FirstOrDefault(c => c.Descriptor.Code == codeOrName || c.Descriptor.Name == codeOrName);
}
