namespace Recipe.Engineering;

/// <summary>One step of the solver, with what its interpolant needs.</summary>
/// <param name="Piece">The piece of temperature it lies in.</param>
/// <param name="Start">Its start, s.</param>
/// <param name="End">Its end, s.</param>
/// <param name="Length">Length it was computed with, s; longer than the step where it was cut at a jump.</param>
/// <param name="FromDegree">Degree at its start.</param>
/// <param name="ToDegree">Degree at its end.</param>
/// <param name="C2">Coefficient of the interpolant.</param>
/// <param name="C3">Coefficient of the interpolant.</param>
/// <param name="C4">Coefficient of the interpolant.</param>
/// <param name="C5">Coefficient of the interpolant.</param>
internal readonly record struct CureStep(
    ThermalPath.Piece Piece,
    double Start,
    double End,
    double Length,
    double FromDegree,
    double ToDegree,
    double C2,
    double C3,
    double C4,
    double C5)
{
    /// <summary>The rest of a piece in which nothing cures.</summary>
    internal static CureStep Still(in ThermalPath.Piece piece, double start, double degree) =>
        new(piece, start, piece.End, piece.End - start, degree, degree, 0, 0, 0, 0);

    /// <summary>Degree at a time in the step.</summary>
    internal double DegreeAt(double time)
    {
        double x = Math.Clamp((time - Start) / Length, 0, 1);
        double y = 1 - x;
        return Math.Clamp(FromDegree + (x * (C2 + (y * (C3 + (x * (C4 + (y * C5))))))), FromDegree, ToDegree);
    }

    /// <summary>How far the interpolant falls back within the step, at most; 0 when it only rises. Looked at where a quartic cannot hide much.</summary>
    internal double Fall()
    {
        // Nearly always the interpolant rises all along, which its control points tell: those of a quartic (Bernstein's) that do not fall make a curve that does not.
        double one = (C2 + C3) / 4;
        double two = (C2 / 2) + (C3 / 3) + ((C4 + C5) / 6);
        double three = ((3 * C2) + C3 + C4) / 4;
        if (one >= 0 && two >= one && three >= two && C2 >= three)
        {
            return 0;
        }

        const int looks = 16;
        (double most, double fall) = (FromDegree, 0);
        for (int i = 1; i < looks; i++)
        {
            double degree = DegreeAt(Start + (Length * i / looks));
            fall = Math.Max(fall, most - degree);
            most = Math.Max(most, degree);
        }

        return fall;
    }

    /// <summary>Time in the step at which a degree between its two ends is reached.</summary>
    internal double TimeTo(double degree)
    {
        double low = Start;
        double high = End;
        for (int i = 0; i < 60 && high - low > 1e-9 * Length; i++)
        {
            double middle = (low + high) / 2;
            if (DegreeAt(middle) < degree)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return high;
    }

    /// <summary>The part of the step up to a degree.</summary>
    internal CureStep CutAt(double degree) => this with { End = TimeTo(degree), ToDegree = degree };
}
