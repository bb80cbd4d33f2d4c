namespace Recipe.Engineering;

/// <summary>What follows from the sums of a stack.</summary>
/// <param name="InverseA">Inverse of A alone: strains of a laminate that is held flat, m/N.</param>
/// <param name="Shift"><c>A^-1 B</c>, m.</param>
/// <param name="FreeBending">Bending stiffness when the in-plane forces are nil, <c>D - B A^-1 B</c>: the same about any reference plane, N m.</param>
/// <param name="Bending">The inverse of <paramref name="FreeBending"/>, 1/(N m).</param>
internal readonly record struct StackInverse(
    PlaneMatrix InverseA, CouplingMatrix Shift, PlaneMatrix FreeBending, PlaneMatrix Bending);
