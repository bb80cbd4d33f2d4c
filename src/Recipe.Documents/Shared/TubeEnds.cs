using UnitsNet;

namespace Recipe.Documents.Shared;

/// <summary>Diameters of the mandrel at the two ends of a part that is closed round it.</summary>
/// <param name="A">At the end that the papers call A: the base of a cone.</param>
/// <param name="B">At the other.</param>
internal readonly record struct TubeEnds(Length A, Length B)
{
    private const double Same = 1e-6;

    /// <summary>1 where A is the wide end, -1 where B is, 0 where both are alike.</summary>
    public int Taper => Math.Abs((A - B).Millimeters) < Same ? 0 : A > B ? 1 : -1;
}
