namespace Recipe.Engineering;

/// <summary>Sums of products of coordinates, whose own directions say how points are spread.</summary>
/// <remarks>Source: the Jacobi method of rotations, any textbook of numerical analysis.</remarks>
internal readonly record struct SymmetricMatrix(double XX, double XY, double XZ, double YY, double YZ, double ZZ)
{
    internal SymmetricMatrix Plus(Point3 p, double weight) => new(
        XX + (weight * p.X * p.X),
        XY + (weight * p.X * p.Y),
        XZ + (weight * p.X * p.Z),
        YY + (weight * p.Y * p.Y),
        YZ + (weight * p.Y * p.Z),
        ZZ + (weight * p.Z * p.Z));

    /// <summary>The direction in which points are spread least.</summary>
    internal Point3 LeastDirection()
    {
        double[,] a = { { XX, XY, XZ }, { XY, YY, YZ }, { XZ, YZ, ZZ } };
        double[,] v = { { 1, 0, 0 }, { 0, 1, 0 }, { 0, 0, 1 } };
        for (int sweep = 0; sweep < 30; sweep++)
        {
            for (int p = 0; p < 2; p++)
            {
                for (int q = p + 1; q < 3; q++)
                {
                    Rotate(a, v, p, q);
                }
            }
        }

        int least = a[0, 0] <= a[1, 1] && a[0, 0] <= a[2, 2] ? 0 : a[1, 1] <= a[2, 2] ? 1 : 2;
        return new Point3(v[0, least], v[1, least], v[2, least]).Unit();
    }

    private static void Rotate(double[,] a, double[,] v, int p, int q)
    {
        if (a[p, q] == 0)
        {
            return;
        }

        double theta = (a[q, q] - a[p, p]) / (2 * a[p, q]);
        double t = (theta >= 0 ? 1 : -1) / (Math.Abs(theta) + double.Hypot(theta, 1));
        double c = 1 / double.Hypot(t, 1);
        double s = t * c;
        for (int k = 0; k < 3; k++)
        {
            (a[k, p], a[k, q]) = ((c * a[k, p]) - (s * a[k, q]), (s * a[k, p]) + (c * a[k, q]));
        }

        for (int k = 0; k < 3; k++)
        {
            (a[p, k], a[q, k]) = ((c * a[p, k]) - (s * a[q, k]), (s * a[p, k]) + (c * a[q, k]));
            (v[k, p], v[k, q]) = ((c * v[k, p]) - (s * v[k, q]), (s * v[k, p]) + (c * v[k, q]));
        }
    }
}
