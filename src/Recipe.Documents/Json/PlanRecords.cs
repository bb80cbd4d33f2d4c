using System.Collections.Immutable;
using Rests = System.Collections.Immutable.ImmutableSortedDictionary<string, System.Collections.Immutable.ImmutableArray<string>>;

namespace Recipe.Documents.Json;

/// <summary>The root of <c>recipe/plan/1</c>. Keys carry their SI unit; null means not known; <c>rests_on</c> names assumptions.</summary>
internal sealed record PlanRecord(
    string Schema,
    string Source,
    string? Revision,
    DateOnly? Printed,
    PartRecord Part,
    ShopRecord? Shop,
    ConditionsRecord Conditions,
    GeometryRecord? Geometry,
    ImmutableArray<ReleaseRecord> Release,
    ImmutableArray<CoatRecord> Coats,
    ImmutableArray<StackRecord> Stack,
    LaminateRecord? Laminate,
    StiffnessRecord? Stiffness,
    ResinRecord? Resin,
    ImmutableArray<PotRecord> Pots,
    ImmutableArray<OwnMixRecord> OwnMixes,
    ClockRecord? Clock,
    BagRecord? Bag,
    VacuumRecord? Vacuum,
    InfusionRecord? Infusion,
    CureRecord? Cure,
    ImmutableArray<FinishRecord> Finish,
    JoinRecord? Join,
    ImmutableArray<NestRecord> Nests,
    ImmutableArray<TakeoffRecord> Takeoff,
    ImmutableArray<TakeoffSumRecord> TakeoffSums,
    TakeoffTotalRecord? TakeoffTotal,
    CostRecord? Cost,
    ImmutableArray<StationRecord> Stations,
    ImmutableArray<HoldPointRecord> HoldPoints,
    ImmutableArray<CautionRecord> Cautions,
    ImmutableArray<HazardRecord> Hazards,
    ImmutableArray<AssumptionRecord> Assumptions,
    ImmutableArray<GapRecord> Gaps,
    ImmutableArray<FindingRecord> Findings,
    ImmutableArray<WaiverRecord> Waivers,
    ImmutableArray<NotCheckedRecord> NotChecked);

internal sealed record PartRecord(
    string Name, string Label, string? VariantOf, string Process, string? Use, int Quantity,
    string? Mould, string? MouldLabel, int? MouldPulls, TemperatureRecord? MouldHeatLimit, ImmutableArray<string> MouldHalves,
    string? Resin, string? ResinLabel, string? Hardener, string? Axis,
    double? TargetMassKg, string? TargetMassWritten, double? TargetToleranceKg, double? TrimM, double? OverlapM, TemperatureRecord? Service);

internal sealed record ShopRecord(string Name, string Units, string Paper, string? Currency, double? ScaleResolutionKg);

internal sealed record ConditionsRecord(
    TemperatureRecord? Room, TemperatureRecord? Night, TemperatureRecord? Resin, TemperatureRecord? Film, int Laminators, double? HumidityFraction,
    double? AltitudeM, [property: System.Text.Json.Serialization.JsonPropertyName("ambient_Pa")] double? AmbientPa, TimeOnly? Start, Rests? RestsOn);

internal sealed record GeometryRecord(
    string Shape, int Sides, double? AreaM2, double? RimM, double? DepthM, double? DevelopedLengthM, double? DevelopedWidthM, bool DoublyCurved, bool Flat,
    ShapeRecord? Triangles);

internal sealed record ReleaseRecord(string Agent, string Label, string? Kind, int? Coats, double? WaitS, double? DryS);

internal sealed record CoatRecord(string Material, string Label, double? ArealWeightKgPerM2, double? MassKg, double? ToMixKg, string? MixWritten);

internal sealed record StackRecord(
    string Name, string Role, int Number, int Count, string Material, string Label, double? ArealWeightKgPerM2, double? CoreThicknessM,
    OrientationRecord? Orientation, string? At, string? After, double? SizeLengthM, double? SizeWidthM, double? StepM,
    double? NetAreaM2, double? CutAreaM2, double? NetMassKg, double? CutMassKg, double? ResinFraction, double? FibreVolumeFraction,
    double? NetResinKg, double? CutResinKg, double? ThicknessM, double? WetOutS, ImmutableArray<PieceRecord> Pieces, Rests? RestsOn);

/// <summary>Degrees, positive counter-clockwise looking at the tool face; null where the kind has none.</summary>
internal sealed record OrientationRecord(string Kind, double? FirstDeg, double? SecondDeg);

internal sealed record PieceRecord(
    double? LengthM, double? WidthM, int Count, double? RollAngleDeg, double? WidthOnRollM, double? LengthOnRollM, double? RollWidthM, int Joins, bool Mirrored);

/// <summary>How the pieces of one part lie on one roll; <c>obstacle</c> says why they do not.</summary>
internal sealed record NestRecord(
    string Material, string Label, string? Obstacle, double? UsableWidthM, double? GapM, double? LengthUsedM, double? LeastLengthM, double? WasteFraction,
    ImmutableArray<NestSizeRecord> Sizes, ImmutableArray<NestPlacementRecord> Placements, Rests? RestsOn);

internal sealed record NestSizeRecord(
    string Letter, string? Line, int? Layer, double? LengthM, double? WidthM, double? RollAngleDeg, double? AlongM, double? AcrossM, int Strips, int Count, bool Mirrored, string Turn, double? CornerM);

/// <summary>From the cut end of the roll and from its selvedge.</summary>
internal sealed record NestPlacementRecord(string Letter, int Copy, double? AlongAtM, double? AcrossAtM, double? AlongM, double? AcrossM, bool Turned);

internal sealed record LaminateRecord(
    double? FibreKg, double? ResinKg, double? CoreKg, double? CoatsKg, double? InsertsKg, double? JoinKg, double? TrimmedMassKg, double? TrimmedMassLowKg, double? TrimmedMassHighKg,
    double? ThicknessM, double? ResinFraction, double? LaidResinFraction, double? FibreVolumeFraction, Rests? RestsOn);

/// <summary>Along is 0 degrees of the part's axis; a strip's stiffness is for each metre of its width. <c>left_out</c> names lines that cover only part of the surface.</summary>
internal sealed record StiffnessRecord(
    [property: System.Text.Json.Serialization.JsonPropertyName("along_Pa")] double? AlongPa,
    [property: System.Text.Json.Serialization.JsonPropertyName("across_Pa")] double? AcrossPa,
    [property: System.Text.Json.Serialization.JsonPropertyName("shear_Pa")] double? ShearPa,
    [property: System.Text.Json.Serialization.JsonPropertyName("strip_along_N_m2_per_m")] double? StripAlong,
    [property: System.Text.Json.Serialization.JsonPropertyName("strip_across_N_m2_per_m")] double? StripAcross,
    ImmutableArray<PlyShareRecord> Lines, ImmutableArray<string> LeftOut, ImmutableArray<LoadRecord> Loads, CurlRecord? Curl, Rests? RestsOn);

/// <summary>A stated load; a pull has <c>pull_N_per_m</c>, a strip the three others. The factor is null when no limit that is known is reached.</summary>
internal sealed record LoadRecord(
    string Name,
    string Direction,
    [property: System.Text.Json.Serialization.JsonPropertyName("pull_N_per_m")] double? Pull,
    double? StripWidthM,
    double? StripSpanM,
    [property: System.Text.Json.Serialization.JsonPropertyName("strip_load_N")] double? StripLoad,
    double? FactorToFirstLimit,
    string? FirstLine,
    string? FirstMode,
    bool? FirstBagSideStretched,
    ImmutableArray<string> LinesWithoutLimits,
    ImmutableArray<string> LinesPartlyJudged,
    double? SagM,
    ImmutableArray<LineStressRecord> Lines,
    Rests? RestsOn);

/// <summary>The largest stresses in the axes of the line's yarns, of either sign.</summary>
internal sealed record LineStressRecord(
    string Name,
    [property: System.Text.Json.Serialization.JsonPropertyName("along_Pa")] double? Along,
    [property: System.Text.Json.Serialization.JsonPropertyName("across_Pa")] double? Across,
    [property: System.Text.Json.Serialization.JsonPropertyName("shear_Pa")] double? Shear);

/// <summary>A flat piece of the stack, free of everything, cooled to the room.</summary>
internal sealed record CurlRecord(
    bool Symmetric, TemperatureRecord? StressFree, TemperatureRecord? Room, double? CurvatureAlongPerM, double? CurvatureAcrossPerM, double? TwistPerM,
    double? LengthM, double? WidthM, double? RiseAlongM, double? RiseAcrossM, double? CornerRiseM, Rests? RestsOn);

/// <summary>What the stack would lose without the line, as fractions of the whole.</summary>
internal sealed record PlyShareRecord(
    string Name, double? MassFraction, double? ThicknessFraction, double? StretchingFraction, double? BendingFraction, double? BendingAsSpacerFraction);

internal sealed record ResinRecord(
    string System, string Label, string? Hardener, double? MixResinParts, double? MixHardenerParts, string? MixBasis, string? MixWritten,
    ImmutableArray<ResinLineRecord> Lines, double? NeedKg, double? ToMixKg, bool PotsStated, bool Tray, Rests? RestsOn);

internal sealed record ResinLineRecord(string Use, string Label, double? MassKg, Rests? RestsOn);

internal sealed record PotRecord(
    int Number, double? MassKg, double? ResinKg, double? HardenerKg, double? HardenerToleranceKg, ImmutableArray<string> For,
    double? MixingS, double? MixedAtS, double? UsedUpAtS, double? PotLifeS, double? DeadAtS, double? MarginS, TemperatureRecord? StandingPeak, Rests? RestsOn);

/// <summary>A liquid that is mixed on its own and not with the resin of the plies: a coat, the resin of a later seam, an adhesive. Its clock starts at the first mix of its own pots.</summary>
internal sealed record OwnMixRecord(
    string Use, string System, string Label, string? Hardener, double? MixResinParts, double? MixHardenerParts, string? MixBasis, string? MixWritten, string? Filler, double? FillerParts,
    double? LaidKg, double? LossKg, double? SpareKg, double? ToMixKg, ImmutableArray<PotRecord> Pots, Rests? RestsOn);

internal sealed record ClockRecord(
    double? WetOutS, double? BaggingS, double? DrawDownS, double? NeedS, double? FilmLifeS, double? FilmLifeLowS, double? FilmLifeHighS, double? MarginS, double? FullVacuumByS, double? PumpOnByS, Rests? RestsOn);

internal sealed record BagRecord(
    ImmutableArray<BagLayerRecord> Layers, string? SealantTape, string? SealantTapeLabel, double? SealantTapeM, double? PickupKg, double? CouldTakeKg, ImmutableArray<FittingRecord> Fittings, string? GaugeAt, int? Pleats, bool Envelope, double? TimeS, int? Bags, Rests? RestsOn);

internal sealed record BagLayerRecord(
    string Class, string Material, string Label, bool ChosenByDefault, int Count, string? Perforation, double? SmallerM, double? BeyondM,
    double? LengthM, double? WidthM, int? Sheets, double? AreaM2, double? PickupKg, Rests? RestsOn);

/// <summary><c>sits</c> says what a port sits on where the recipe does.</summary>
internal sealed record FittingRecord(string Kind, string Material, string Label, string? At, string? Sits);

internal sealed record HazardRecord(string Material, string Hazard);

internal sealed record CautionRecord(string About, string Text, string Source);

internal sealed record StationRecord(int Number, string Title);

internal sealed record HoldPointRecord(string Id, string Station, string Title, ImmutableArray<string> Checks, ImmutableArray<string> ToWrite);

internal sealed record AssumptionRecord(string Id, string Key, string What, string Value, string Source, string HowToReplace);

internal sealed record GapRecord(string Subject, string Missing);

internal sealed record WaiverRecord(string Code, string? Because, DateOnly? Until);
