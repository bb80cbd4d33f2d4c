using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Rests = System.Collections.Immutable.ImmutableSortedDictionary<string, System.Collections.Immutable.ImmutableArray<string>>;

namespace Recipe.Documents.Json;

internal sealed record VacuumRecord(
    string? DrawWritten,
    [property: JsonPropertyName("below_ambient_Pa")] double? BelowAmbientPa,
    [property: JsonPropertyName("absolute_Pa")] double? AbsolutePa,
    [property: JsonPropertyName("ceiling_Pa")] double? CeilingPa,
    double? WithinS,
    double? SettleS,
    double? LeakCheckS,
    [property: JsonPropertyName("rise_at_most_Pa")] double? RiseAtMostPa,
    double? HoldS,
    string? Off,
    double? PumpDownS,
    double? HoseSlowsS,
    double? PumpMargin,
    [property: JsonPropertyName("pump_needed_m3_per_s")] double? PumpNeededM3PerS,
    double? HoseTakesFraction,
    [property: JsonPropertyName("leak_of_air_m3_per_s")] double? LeakOfAirM3PerS,
    double? HoleM,
    Rests? RestsOn);

internal sealed record InfusionRecord(
    double? FeedLineM, int? FeedLines, double? LineDiameterM, double? PathM, TemperatureRecord? ResinTemperature, TemperatureRecord? MouldTemperature, string? ClampFeed, string? Vent, double? ReserveFraction,
    double? DropTestS, [property: JsonPropertyName("rise_at_most_Pa")] double? RiseAtMostPa, FlowRecord? Flow, Rests? RestsOn);

internal sealed record FlowRecord(
    bool FromALine,
    [property: JsonPropertyName("drive_Pa")] double? DrivePa,
    double? PermeabilityM2,
    double? PorosityFraction,
    [property: JsonPropertyName("viscosity_Pa_s")] double? ViscosityPaS,
    double? FillS,
    double? FillLowS,
    double? FillHighS,
    double? ReachM,
    double? ThickensS,
    double? GelS,
    double? LongestPathM,
    Rests? RestsOn);

internal sealed record CureRecord(
    ImmutableArray<CureStepRecord> Steps, TemperatureRecord? Peak, double? TotalS, double? VacuumOffS, ImmutableArray<HeatLimitRecord> Limits, TemperatureRecord? Inside, double? InsideAtS, CureProgressRecord? Progress, Rests? RestsOn);

/// <summary>Times from the start of the cure; degrees of cure as fractions.</summary>
internal sealed record CureProgressRecord(
    bool OwnKinetics,
    double? GelS,
    double? VacuumOffS,
    double? DemouldS,
    double? PlannedDemouldS,
    double? DegreeAtDemouldFraction,
    TemperatureRecord? GlassTransitionAtDemould,
    double? DegreeFraction,
    TemperatureRecord? GlassTransition,
    TemperatureRecord? GlassTransitionLow,
    TemperatureRecord? GlassTransitionHigh,
    [property: JsonPropertyName("lead_off_mould_K")] double? LeadOffMouldK,
    double? LeadOffMouldAtS,
    [property: JsonPropertyName("fastest_ramp_K_per_s")] double? FastestRampKPerS,
    ImmutableArray<CureMomentRecord> Curve,
    Rests? RestsOn);

internal sealed record CureMomentRecord(double? AtS, double? DegreeFraction, TemperatureRecord? GlassTransition);

internal sealed record CureStepRecord(
    string Action, TemperatureRecord? From, TemperatureRecord? To, double? StartS, double? EndS, [property: JsonPropertyName("rate_K_per_s")] double? RateKPerS,
    bool AtRoom, bool Bagged, bool InMould, string? Support, Rests? RestsOn);

internal sealed record HeatLimitRecord(string Item, string Material, TemperatureRecord? Limit, TemperatureRecord? Hottest, int HottestStep, Rests? RestsOn);

internal sealed record FinishRecord(string Verb, string Text);

internal sealed record JoinRecord(
    string? Manner, ImmutableArray<string> Parts, double? OverlapM, double? SeamM, string? Adhesive, string? AdhesiveLabel, double? BondLineM,
    string? Tape, string? TapeLabel, double? TapeWidthM, int TapeLayers, double? WithinS, double? FilletKgPerM, double? FillerKg, double? PotKg, double? VentM, string? Align,
    ImmutableArray<FinishRecord> Preparation, double? AdhesiveKg, double? TapeAreaM2, double? TapeClothKg, double? TapeResinKg, bool? SameSession, double? MassKg,
    ImmutableArray<JoinedPartRecord> PartMasses, double? WholeKg, double? WholeLowKg, double? WholeHighKg, Rests? RestsOn);

/// <summary>A finished part of an assembly.</summary>
internal sealed record JoinedPartRecord(string Part, double? MassKg, double? MassLowKg, double? MassHighKg);

internal sealed record ShelfRecord(string Written, string? Lot, DateOnly? Received, DateOnly? Opened, DateOnly? Expires);

internal sealed record TakeoffRecord(
    string Group, string Material, string Label, AmountRecord? Net, double? WasteFraction, AmountRecord? Gross, AmountRecord? InStock, AmountRecord? ToBuy, ImmutableArray<ShelfRecord> Shelf,
    PriceRecord? Price, decimal? Cost, string? CostCurrency, double? MassKg, Rests? RestsOn);

internal sealed record PriceRecord(decimal Amount, string Currency, string Per, DateOnly? On);

internal sealed record TakeoffSumRecord(string Group, ImmutableArray<MoneyRecord> Costs, int LinesWithoutPrice, double? MassKg, int LinesWithoutMass);

internal sealed record TakeoffTotalRecord(ImmutableArray<MoneyRecord> Costs, int LinesWithoutPrice, double? MassKg, int LinesWithoutMass);

internal sealed record MoneyRecord(decimal Amount, string Currency);

internal sealed record CostRecord(decimal Total, decimal PerPart, string Currency, int LinesWithoutPrice);
