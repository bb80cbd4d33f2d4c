using UnitsNet;

namespace Recipe.Engineering;

/// <summary>
/// What a data sheet's pot life means as a degree of cure, and the life of other pots by it: so long as they take to that degree.
/// </summary>
/// <remarks>
/// Makers define pot life by feel, by viscosity or by temperature. Carrying it as a degree of cure is ours: a resin of one degree is about
/// equally workable wherever it stands, if the hotter one is a little thinner. The kinetics are mostly assumed: look at
/// <see cref="PastGel"/>.
/// A lumped pot of 100 g keeps nearly all of its heat during its life already, so that larger ones come out only some 3 to 15 % shorter,
/// where common practice has 25 to 60 %: take the shorter of this and <see cref="PotLife"/>.
/// </remarks>
public sealed class SheetPot
{
    private readonly ExothermicResin _resin;

    private SheetPot(ExothermicResin resin, Ratio degree)
    {
        _resin = resin;
        Degree = degree;
    }

    /// <summary>Degree of cure at the end of the sheet's pot life.</summary>
    public Ratio Degree { get; }

    /// <summary>Whether that degree lies at or past gel, where nobody can use a resin: then sheet and kinetics contradict each other.</summary>
    public bool PastGel => Degree >= GelPoint.Usual;

    /// <summary>Reads the degree off the pot of the sheet.</summary>
    /// <param name="resin">The resin.</param>
    /// <param name="sheet">The sheet's pot life, temperature and mass; the pot is a deep cup unless said otherwise.</param>
    /// <param name="shape">Shape of the sheet's pot.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static SheetPot OfPotLife(ExothermicResin resin, PotLifeReference sheet, PotShape shape = PotShape.DeepCup)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        PotCurve curve = PotModel.Along(resin, new Pot(sheet.Batch, sheet.At) { Shape = shape }, sheet.Life);
        return new SheetPot(resin, curve.FinalDegree);
    }

    /// <summary>Life of another pot; null when it does not reach the degree within 60 days.</summary>
    /// <param name="pot">The pot.</param>
    /// <exception cref="ArgumentOutOfRangeException">The pot is out of range.</exception>
    public Duration? LifeOf(Pot pot) => PotModel.TimeTo(_resin, pot, Degree);
}
