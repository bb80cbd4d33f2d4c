using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Planning;
using Recipe.Text;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Documents.Tests.Plans;

/// <summary>Short forms for building plans by hand. All figures in the plans of these tests are invented.</summary>
internal static class Make
{
    public static readonly SourceText Source = new("hatch.recipe", "part hatch-lid {\n  wet-out { spare 10 % }\n}\n");

    public static SourceSpan Here => new(Source, new TextSpan(5, 9));

    public static Figure<T> Stated<T>(T value, string written) => new(value, Basis.Stated, written, Here);

    public static Figure<T> Assumed<T>(T value, string written) => new(value, Basis.Assumed, written);

    public static Computed<T> Known<T>(T value) => new(value, []);

    public static Computed<T> On<T>(T value, params ImmutableArray<string> keys) => new(value, keys);

    public static Length Mm(double value) => Length.FromMillimeters(value);

    public static Mass G(double value) => Mass.FromGrams(value);

    public static Duration Min(double value) => Duration.FromMinutes(value);

    public static Duration H(double value) => Duration.FromHours(value);

    public static Temperature C(double value) => Temperature.FromDegreesCelsius(value);

    public static Pressure Mbar(double value) => Pressure.FromMillibars(value);

    public static Area M2(double value) => Area.FromSquareMeters(value);

    public static AreaDensity Gsm(double value) => AreaDensity.FromGramsPerSquareMeter(value);

    public static Reinforcement Cloth(string name, double gsm, string title, ReinforcementForm form = ReinforcementForm.Fabric, string fibre = "e-glass") => new()
    {
        Name = name,
        Keyword = "fabric",
        Where = Here,
        Title = title,
        Form = form,
        Fibre = new Fibre { Name = fibre, Keyword = "fibre", Where = Here },
        ArealWeight = Stated(Gsm(gsm), $"{gsm} g/m2"),
        Width = Stated(Length.FromMeters(1), "100 cm"),
    };

    public static Consumable Sheet(string name, LayerClass layer, string title, double? gsm = null, string? hazard = null) => new()
    {
        Name = name,
        Keyword = "peel-ply",
        Where = Here,
        Class = layer,
        Title = title,
        ArealWeight = gsm is { } weight ? Stated(Gsm(weight), $"{weight} g/m2") : null,
        Hazard = hazard,
    };

    public static CureStep Cure(CureAction action, double? celsius = null, double? hours = null, double? rate = null, bool vacuum = false, bool room = false, string? support = null) => new()
    {
        Action = action,
        Where = Here,
        Temperature = celsius is { } t ? Stated(C(t), $"{t} degC") : null,
        Duration = hours is { } time ? Stated(H(time), $"{time} h") : null,
        Rate = rate is { } perMinute ? Stated(TemperatureChangeRate.FromDegreesCelsiusPerMinute(perMinute), $"{perMinute} degC/min") : null,
        UnderVacuum = vacuum,
        AtRoom = room,
        Support = support,
    };

    public static CureStepPlan Timed(CureStep step, double from, double to, double startHours, double endHours, bool bagged = true, bool inMould = true) =>
        new(step, C(from), C(to), Known(H(startHours)), Known(H(endHours)), bagged, inMould);

    public static FindingDescriptor Descriptor(string code, string name, Severity severity, string title, string remedy) => new()
    {
        Code = code,
        Name = name,
        Severity = severity,
        Title = title,
        Reason = "Invented for a test.",
        Remedy = remedy,
        Source = "common practice",
        BadExample = "part a { }",
        GoodExample = "part b { }",
    };
}
