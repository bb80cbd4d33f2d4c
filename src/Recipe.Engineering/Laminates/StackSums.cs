namespace Recipe.Engineering;

/// <summary>The integrals of stiffness over the thickness, layer by layer, and what can be read off them.</summary>
internal struct StackSums
{
    private PlaneMatrix _a;
    private PlaneMatrix _b;
    private PlaneMatrix _d;

    internal readonly PlaneMatrix A => _a;

    internal readonly PlaneMatrix B => _b;

    internal readonly PlaneMatrix D => _d;

    internal readonly bool IsEmpty => _a.M11 == 0;

    /// <summary>Adds a layer between two heights (m) above the reference plane.</summary>
    internal void Add(in PlaneMatrix stiffness, double low, double high)
    {
        double t = high - low;
        double middle = (high + low) / 2;

        // t (z^2 + t^2/12) is (high^3 - low^3)/3 without the difference of cubes, which loses digits far from the reference plane.
        _a += t * stiffness;
        _b += t * middle * stiffness;
        _d += t * ((middle * middle) + (t * t / 12)) * stiffness;
    }

    /// <summary>The sums of layers that stand in one stack.</summary>
    public static StackSums operator +(in StackSums one, in StackSums other) => new() { _a = one._a + other._a, _b = one._b + other._b, _d = one._d + other._d };

    /// <summary>The sums of the same layers, all of them lower (m) above the reference plane: Steiner's shift of moments.</summary>
    internal readonly StackSums Lowered(double by) => new() { _a = _a, _b = _b + (-by * _a), _d = _d + (-2 * by * _b) + (by * by * _a) };

    /// <summary>Solves for what follows from the sums.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The plies are too unlike for the accuracy of a double.</exception>
    internal readonly StackInverse Invert(string parameter)
    {
        PlaneMatrix inverseA = _a.InverseOrNull() ?? throw TooUnlike(parameter);
        CouplingMatrix shift = CouplingMatrix.Product(inverseA, _b);
        PlaneMatrix free = _d + (-1 * shift.SymmetricTransposeTimes(_b));

        // What is left after the subtraction must be more than its rounding.
        bool kept = free.M11 > 1e-11 * _d.M11 && free.M22 > 1e-11 * _d.M22 && free.M66 > 1e-11 * _d.M66;
        PlaneMatrix? bending = kept ? free.InverseOrNull() : null;
        return new StackInverse(inverseA, shift, free, bending ?? throw TooUnlike(parameter));
    }

    private static ArgumentOutOfRangeException TooUnlike(string parameter) =>
        new(
            parameter,
            $"The stiffness of '{parameter}' cannot be worked out: the plies differ in thickness or stiffness by more than eleven powers of ten.");
}
