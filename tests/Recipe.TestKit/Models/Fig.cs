using System.Globalization;
using Recipe.Model;
using Recipe.Text;
using Recipe.Text.Units;
using UnitsNet;

namespace Recipe.TestKit.Models;

/// <summary>Figures of a model written as in a recipe: <c>Fig.Length("300 mm")</c>. Stated unless said otherwise.</summary>
public static class Fig
{
    /// <summary>Where everything made by hand stands.</summary>
    public static SourceSpan Somewhere { get; } = new(new SourceText("by-hand.recipe", string.Empty), new TextSpan(0, 0));

    public static Figure<Length> Length(string written) => Of(written, static si => UnitsNet.Length.FromMeters(si));

    public static Figure<Area> Area(string written) => Of(written, static si => UnitsNet.Area.FromSquareMeters(si));

    public static Figure<Volume> Volume(string written) => Of(written, static si => UnitsNet.Volume.FromCubicMeters(si));

    public static Figure<Mass> Mass(string written) => Of(written, static si => UnitsNet.Mass.FromKilograms(si));

    public static Figure<Duration> Time(string written) => Of(written, static si => Duration.FromSeconds(si));

    public static Figure<Pressure> Pressure(string written) => Of(written, static si => UnitsNet.Pressure.FromPascals(si));

    public static Figure<Density> Density(string written) => Of(written, static si => UnitsNet.Density.FromKilogramsPerCubicMeter(si));

    public static Figure<AreaDensity> ArealWeight(string written) => Of(written, static si => AreaDensity.FromKilogramsPerSquareMeter(si));

    public static Figure<LinearDensity> LinearDensity(string written) => Of(written, static si => UnitsNet.LinearDensity.FromKilogramsPerMeter(si));

    public static Figure<VolumeFlow> Flow(string written) => Of(written, static si => VolumeFlow.FromCubicMetersPerSecond(si));

    public static Figure<Pace> Pace(string written) => Of(written, static si => new Pace(Duration.FromSeconds(si)));

    public static Figure<double> Share(string written) => Of(written, static si => si);

    public static Figure<TemperatureChangeRate> Rate(string written) => Of(written, static si => TemperatureChangeRate.FromDegreesCelsiusPerSecond(si));

    /// <summary>A temperature in degrees Celsius.</summary>
    public static Figure<Temperature> Celsius(double degrees) =>
        Stated(Temperature.FromDegreesCelsius(degrees), string.Create(CultureInfo.InvariantCulture, $"{degrees} degC"));

    public static Figure<int> Count(int count) => Stated(count, count.ToString(CultureInfo.InvariantCulture));

    /// <summary>Resin by weight, percent.</summary>
    public static Figure<Content> Resin(double percent) => Stated(
        new Content(ContentBasis.ResinByWeight, percent / 100), string.Create(CultureInfo.InvariantCulture, $"{percent} % by weight"));

    /// <summary>Fibre by volume, percent.</summary>
    public static Figure<Content> Fibre(double percent) => Stated(
        new Content(ContentBasis.FibreByVolume, percent / 100), string.Create(CultureInfo.InvariantCulture, $"{percent} % by volume"));

    public static Figure<Orientation> Pair(double first, double second) =>
        Stated(new Orientation(OrientationKind.Pair, first, second), "as written");

    public static Figure<Orientation> Single(double angle) => Stated(new Orientation(OrientationKind.Single, angle), "as written");

    public static Figure<Orientation> Random() => Stated(Orientation.Random, "random");

    public static Figure<SurfaceShape> Surface(SurfaceShape shape) => Stated(shape, "as written");

    public static Figure<TimeAt> TimeAt(string time, double celsius, string? mass = null) => Stated(
        new TimeAt(Time(time).Value, Temperature.FromDegreesCelsius(celsius), mass is null ? null : Mass(mass).Value),
        string.Create(CultureInfo.InvariantCulture, $"{time} at {celsius} degC"));

    public static Figure<VacuumLevel> Vacuum(string written, VacuumConvention? convention) =>
        Pressure(written).Map(p => new VacuumLevel(p, convention));

    /// <summary>Any figure that the author stated.</summary>
    public static Figure<T> Stated<T>(T value, string written) => new(value, Basis.Stated, written, Somewhere);

    /// <summary>The same figure out of the shipped book, with a source.</summary>
    public static Figure<T> FromBook<T>(this Figure<T> figure, string source = "a handbook") => figure with { Basis = Basis.Book, Source = source };

    /// <summary>The same figure marked as measured by nobody.</summary>
    public static Figure<T> Assumed<T>(this Figure<T> figure, string source = "from memory of the trade") =>
        figure with { Basis = Basis.Assumed, Source = source };

    private static Figure<T> Of<T>(string written, Func<double, T> fromSi)
    {
        var space = written.IndexOf(' ', StringComparison.Ordinal);
        var number = double.Parse(written.AsSpan(0, space), NumberStyles.Float, CultureInfo.InvariantCulture);
        return Stated(fromSi(UnitTable.Get(written[(space + 1)..]).ToSi(number)), written);
    }
}
