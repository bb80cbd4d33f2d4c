namespace Recipe.Engineering;

/// <summary>
/// Carlson's symmetric elliptic integrals by duplication, for the exact area of an ellipsoid and perimeter of an ellipse.
/// </summary>
/// <remarks>
/// Source: NIST Digital Library of Mathematical Functions, chapter 19 (19.19, 19.21.10, 19.26.18, 19.30.5, 19.33.1, 19.36);
/// B. C. Carlson, Numerical computation of real or complex elliptic integrals, Numerical Algorithms 10 (1995) 13.
/// </remarks>
internal static class EllipticIntegrals
{
    // The truncation error of the fifth-order series falls with the sixth power of this spread.
    private const double Spread = 1e-3;

    /// <summary>Area of the whole ellipsoid with the three half axes, each greater than zero.</summary>
    internal static double EllipsoidArea(double a, double b, double c)
    {
        double ab = a * b;
        double ac = a * c;
        double bc = b * c;
        return 4 * Math.PI * Rg(ab * ab, ac * ac, bc * bc);
    }

    /// <summary>Perimeter of the ellipse with the two half axes, each greater than zero.</summary>
    internal static double EllipsePerimeter(double a, double b) => 8 * Rg(0, a * a, b * b);

    /// <summary>The integral of the second kind that is symmetric in all three arguments, at most one of them zero.</summary>
    internal static double Rg(double x, double y, double z)
    {
        // With the middle argument in the special place every term is positive and nothing cancels.
        double low = Math.Min(x, Math.Min(y, z));
        double high = Math.Max(x, Math.Max(y, z));
        double middle = Math.Max(Math.Min(x, y), Math.Min(Math.Max(x, y), z));
        double sum = (middle * Rf(low, high, middle))
            + ((middle - low) * (high - middle) * Rd(low, high, middle) / 3)
            + Math.Sqrt(low * high / middle);
        return sum / 2;
    }

    /// <summary>The integral of the first kind, symmetric in all three arguments.</summary>
    internal static double Rf(double x, double y, double z)
    {
        double mean;
        double dx;
        double dy;
        double dz;
        while (true)
        {
            mean = (x + y + z) / 3;
            dx = 1 - (x / mean);
            dy = 1 - (y / mean);
            dz = 1 - (z / mean);
            if (Math.Max(Math.Abs(dx), Math.Max(Math.Abs(dy), Math.Abs(dz))) < Spread)
            {
                break;
            }

            double shift = Shift(x, y, z);
            x = (x + shift) / 4;
            y = (y + shift) / 4;
            z = (z + shift) / 4;
        }

        double e2 = (dx * dy) - (dz * dz);
        double e3 = dx * dy * dz;
        double series = 1 - (e2 / 10) + (e3 / 14) + (e2 * e2 / 24) - (3 * e2 * e3 / 44);
        return series / Math.Sqrt(mean);
    }

    /// <summary>The degenerate integral of the third kind, symmetric in its first two arguments.</summary>
    internal static double Rd(double x, double y, double z)
    {
        double sum = 0;
        double factor = 1;
        double mean;
        double dx;
        double dy;
        double dz;
        while (true)
        {
            mean = (x + y + (3 * z)) / 5;
            dx = 1 - (x / mean);
            dy = 1 - (y / mean);
            dz = 1 - (z / mean);
            if (Math.Max(Math.Abs(dx), Math.Max(Math.Abs(dy), Math.Abs(dz))) < Spread)
            {
                break;
            }

            double shift = Shift(x, y, z);
            sum += factor / (Math.Sqrt(z) * (z + shift));
            factor /= 4;
            x = (x + shift) / 4;
            y = (y + shift) / 4;
            z = (z + shift) / 4;
        }

        double xy = dx * dy;
        double zz = dz * dz;
        double e2 = xy - (6 * zz);
        double e3 = ((3 * xy) - (8 * zz)) * dz;
        double e4 = 3 * (xy - zz) * zz;
        double e5 = xy * zz * dz;
        double series = 1 - (3 * e2 / 14) + (e3 / 6) + (9 * e2 * e2 / 88) - (3 * e4 / 22) - (9 * e2 * e3 / 52)
            + (3 * e5 / 26);
        return (3 * sum) + (factor * series / (mean * Math.Sqrt(mean)));
    }

    private static double Shift(double x, double y, double z) =>
        (Math.Sqrt(x) * Math.Sqrt(y)) + (Math.Sqrt(x) * Math.Sqrt(z)) + (Math.Sqrt(y) * Math.Sqrt(z));
}
