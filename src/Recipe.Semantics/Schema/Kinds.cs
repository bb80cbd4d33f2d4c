using System.Collections.Immutable;
using Recipe.Text.Units;

namespace Recipe.Semantics.Schema;

/// <summary>The kinds of value that many words share.</summary>
internal static class Kinds
{
    public static readonly QuantityKind Length = new("a length", DimensionNames.Length, ["mm", "cm", "m", "in"]) { AtLeast = 0 };
    public static readonly QuantityKind PositiveLength = Length with { AtLeast = null, MoreThan = 0 };
    public static readonly QuantityKind Position = Length with { Noun = "a place along an axis", AtLeast = null };
    public static readonly QuantityKind LongLength = new("a length", DimensionNames.Length, ["m", "cm", "ft", "yd"]) { MoreThan = 0 };
    public static readonly QuantityKind Altitude = new("a height", DimensionNames.Length, ["m", "ft"]) { AtLeast = -500, AtMost = 9000 };
    public static readonly QuantityKind Area = new("an area", DimensionNames.Area, ["m2", "cm2", "ft2"]) { MoreThan = 0 };
    public static readonly QuantityKind Volume = new("a volume", DimensionNames.Volume, ["L", "mL", "qt"]) { MoreThan = 0 };
    public static readonly QuantityKind Mass = new("a mass", DimensionNames.Mass, ["g", "kg", "oz"]) { AtLeast = 0 };
    public static readonly QuantityKind PositiveMass = Mass with { AtLeast = null, MoreThan = 0 };
    public static readonly QuantityKind MassAndTolerance = PositiveMass with { TakesTolerance = true };
    public static readonly QuantityKind Time = new("a time", DimensionNames.Time, ["min", "h", "s", "d"]) { AtLeast = 0 };
    public static readonly QuantityKind TimeRange = Time with { TakesRange = true };
    public static readonly QuantityKind LongTime = new("a time", DimensionNames.Time, ["h", "d", "min"]) { MoreThan = 0 };
    public static readonly QuantityKind ShelfTime = new("a time", DimensionNames.Time, ["month", "week", "d"]) { MoreThan = 0 };
    public static readonly QuantityKind Temperature = new("a temperature", DimensionNames.Temperature, ["degC", "degF"]) { AtLeast = 0, AtMost = 2000 };
    public static readonly QuantityKind TemperatureRange = Temperature with { TakesRange = true };
    public static readonly QuantityKind TemperatureOrRoom = Temperature with { OrWord = "room" };
    public static readonly QuantityKind Rate = new("a heating rate", DimensionNames.TemperatureRate, ["degC/min", "degC/h", "degF/min"]) { MoreThan = 0 };
    public static readonly QuantityKind Angle = new("an angle", DimensionNames.Angle, ["deg"]) { AtLeast = -Math.PI, AtMost = Math.PI };
    public static readonly QuantityKind ArealWeight = new("a weight per area", DimensionNames.ArealWeight, ["g/m2", "oz/yd2", "oz/ft2"]) { AtLeast = 0 };
    public static readonly QuantityKind PositiveArealWeight = ArealWeight with { AtLeast = null, MoreThan = 0 };
    public static readonly QuantityKind LinearDensity = new("a weight per length", DimensionNames.LinearDensity, ["g/m", "oz/ft"]) { AtLeast = 0 };
    public static readonly QuantityKind Density = new("a density", DimensionNames.Density, ["g/cm3", "kg/m3", "lb/ft3"]) { MoreThan = 0 };
    public static readonly QuantityKind Pressure = new("a pressure", DimensionNames.Pressure, ["mbar", "kPa", "inHg"]) { AtLeast = 0 };
    public static readonly QuantityKind Modulus = new("a modulus", DimensionNames.Pressure, ["GPa", "MPa", "Msi"]) { MoreThan = 0 };
    public static readonly QuantityKind Strength = new("a strength", DimensionNames.Pressure, ["MPa", "psi"]) { MoreThan = 0 };
    public static readonly QuantityKind Pull = new("a force per length", DimensionNames.ForcePerLength, ["N/mm", "kN/m", "lbf/in"]) { MoreThan = 0 };
    public static readonly QuantityKind Viscosity = new("a viscosity", DimensionNames.Viscosity, ["mPa.s", "cP"]) { MoreThan = 0 };
    public static readonly QuantityKind Flow = new("a volume flow", DimensionNames.VolumeFlow, ["m3/h", "cfm", "L/min"]) { MoreThan = 0 };
    public static readonly QuantityKind Expansion = new("a thermal expansion", DimensionNames.Expansion, ["ppm/K"]);
    public static readonly QuantityKind SpecificEnergy = new("a heat per mass", DimensionNames.SpecificEnergy, ["J/g", "kJ/kg"]) { MoreThan = 0 };
    public static readonly QuantityKind Pace = new("a time per area", DimensionNames.Pace, ["min/m2", "min/ft2"]) { MoreThan = 0 };
    public static readonly QuantityKind Coverage = new("an area per volume", DimensionNames.Coverage, ["m2/L", "ft2/gal"]) { MoreThan = 0 };
    public static readonly QuantityKind Permeability = new("a permeability", DimensionNames.Area, ["m2"]) { MoreThan = 0 };
    public static readonly ShareKind Share = new("a percentage");
    public static readonly ShareKind Spare = new("a percentage", 10);
    public static readonly ShareKind Strain = new("a percentage", AtLeast: 1e-5);
    public static readonly WeightKind Weight = new();
    public static readonly CountKind Count = new("a whole number");
    public static readonly CountKind CountFromZero = new("a whole number", 0);
    public static readonly NumberKind Poisson = new("a plain number", -1, 0.5);
    public static readonly ContentKind ResinContent = new("a resin content", OfFibre: false);
    public static readonly ContentKind FibreContent = new("a fibre content", OfFibre: true);
    public static readonly TextKind Text = new("a text in quotes");
    public static readonly FreeKind Free = new("a few words");
    public static readonly TimeOfDayKind TimeOfDay = new();
    public static readonly DateKind Date = new("a date");
    public static readonly SizeKind Rectangle = new("a length x a width", 2);
    public static readonly SizeKind Block = new("length x width x height", 3);
    public static readonly ChoiceKind YesNo = new("yes or no", [new("yes", "it is so"), new("no", "it is not so")]);

    public static readonly NameRefKind Fibre = Material("a fibre", "fibre");
    public static readonly NameRefKind Cloth = Material("a fabric, ud, mat or veil", "fabric", "ud", "mat", "veil");
    public static readonly NameRefKind StackMaterial = Material("a cloth, a core or an insert", "fabric", "ud", "mat", "veil", "core", "insert");
    public static readonly NameRefKind Resin = Material("a resin", "resin");
    public static readonly NameRefKind CoatMaterial = Material("a gel coat or surface coat", "gel-coat", "surface-coat", "resin");
    public static readonly NameRefKind Adhesive = Material("an adhesive or resin", "adhesive", "resin");
    public static readonly NameRefKind ReleaseAgent = Material("a release agent", "release-agent");
    public static readonly NameRefKind MouldMaterial = Material("a mould material", "mould-material");
    public static readonly NameRefKind AnyMaterial = Material("a material");
    public static readonly NameRefKind Mould = new("a mould", NameKind.Mould, []);
    public static readonly NameRefKind Part = new("a part", NameKind.Part, []);
    public static readonly NameRefKind Ply = new("a line of the ply list", NameKind.Ply, []);
    public static readonly NewNameKind NewPly = new("a name for the line", NameKind.Ply);

    public static NameRefKind Material(string noun, params ImmutableArray<string> keywords) => new(noun, NameKind.Material, keywords);

    public static NewNameKind NewName(NameKind space) => new("a name", space);

    /// <summary>Words with what they mean: <c>("wax", "paste or liquid wax")</c>.</summary>
    public static ChoiceKind OneOf(string noun, params ReadOnlySpan<(string Word, string Doc)> words)
    {
        var choices = ImmutableArray.CreateBuilder<Choice>(words.Length);
        foreach (var (word, doc) in words)
        {
            choices.Add(new Choice(word, doc));
        }

        return new ChoiceKind(noun, choices.MoveToImmutable());
    }
}
