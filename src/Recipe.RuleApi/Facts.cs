using UnitsNet;

namespace Recipe.RuleApi;

/// <summary>A typed, read-only view over a sheet of facts.</summary>
public abstract class Facts
{
    /// <summary>A view.</summary>
    /// <param name="sheet">The facts behind it.</param>
    /// <exception cref="ArgumentNullException">There is no sheet.</exception>
    private protected Facts(FactSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        Sheet = sheet;
    }

    /// <summary>The facts behind the view.</summary>
    public FactSheet Sheet { get; }

    /// <summary>Whether a fact is known.</summary>
    /// <param name="word">Its word in kebab case, such as <c>resin-content</c>.</param>
    public bool IsKnown(string word) => Sheet.Find(word) is not null;

    /// <summary>Whether a fact is known and rests on a default that nobody wrote.</summary>
    /// <param name="word">Its word in kebab case, such as <c>resin-content</c>.</param>
    public bool IsAssumed(string word) => Sheet.Find(word) is { IsAssumed: true };

    private protected static IReadOnlyList<T> List<T>(FactSheet sheet, string group, Func<FactSheet, int, T> view)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return Array.AsReadOnly(sheet.Group(group).Select(view).ToArray());
    }

    private protected double? ReadNumber(string word) => Read(word, FactKind.Number)?.Value;

    private protected string? ReadWord(string word) => Read(word, FactKind.Word)?.Text;

    private protected string? ReadText(string word) => Read(word, FactKind.Text)?.Text;

    private protected bool? ReadYesNo(string word) => Read(word, FactKind.YesNo) is { } fact ? fact.Value != 0 : null;

    private protected Length? ReadLength(string word) => Si(word) is { } si ? Length.FromMeters(si) : null;

    private protected Area? ReadArea(string word) => Si(word) is { } si ? Area.FromSquareMeters(si) : null;

    private protected Mass? ReadMass(string word) => Si(word) is { } si ? Mass.FromKilograms(si) : null;

    private protected Angle? ReadAngle(string word) => Si(word) is { } si ? Angle.FromRadians(si) : null;

    private protected Temperature? ReadTemperature(string word) => Si(word) is { } si ? Temperature.FromKelvins(si) : null;

    private protected Pressure? ReadPressure(string word) => Si(word) is { } si ? Pressure.FromPascals(si) : null;

    private protected Duration? ReadDuration(string word) => Si(word) is { } si ? Duration.FromSeconds(si) : null;

    private protected Torque? ReadTorque(string word) => Si(word) is { } si ? Torque.FromNewtonMeters(si) : null;

    private protected Density? ReadDensity(string word) => Si(word) is { } si ? Density.FromKilogramsPerCubicMeter(si) : null;

    private protected AreaDensity? ReadAreaDensity(string word) => Si(word) is { } si ? AreaDensity.FromKilogramsPerSquareMeter(si) : null;

    private protected TemperatureChangeRate? ReadTemperatureChangeRate(string word) =>
        Si(word) is { } si ? TemperatureChangeRate.FromDegreesCelsiusPerSecond(si) : null;

    private double? Si(string word) => Read(word, FactKind.Quantity)?.Value;

    // A fact of another kind than the view expects is not known to the view.
    private Fact? Read(string word, FactKind kind) => Sheet.Find(word) is { } fact && fact.Kind == kind ? fact : null;
}
