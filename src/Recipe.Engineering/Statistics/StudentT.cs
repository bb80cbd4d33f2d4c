namespace Recipe.Engineering;

/// <summary>Student's t distribution.</summary>
/// <remarks>
/// Source: Abramowitz and Stegun, Handbook of Mathematical Functions (1964), 26.7.1 with 26.5.2: the distribution is a regularised
/// incomplete beta function, here by its continued fraction 26.5.8 (evaluated after Lentz). Held to 1e-10 in the tests.
/// </remarks>
public static class StudentT
{
    private const int MostTerms = 500;
    private const double Tiny = 1e-300;

    // Coefficients of Lanczos for g = 7, n = 9 (from memory; the tests hold the function to factorials).
    private static readonly double[] Lanczos =
    [
        0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
        12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
    ];

    /// <summary>Probability that t is at most a value.</summary>
    /// <param name="t">The value; any finite number.</param>
    /// <param name="freedom">Degrees of freedom; 1 or more.</param>
    /// <returns>From 0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static double Cumulative(double t, int freedom)
    {
        Guard.Between(t, double.MinValue, double.MaxValue, string.Empty, nameof(t));
        double n = Guard.AtLeast(freedom, 1, nameof(freedom));
        double tail = IncompleteBeta(n / (n + (t * t)), n / 2, 0.5) / 2;
        return t > 0 ? 1 - tail : tail;
    }

    /// <summary>The value that t does not exceed with a probability.</summary>
    /// <param name="probability">More than 0 and less than 1.</param>
    /// <param name="freedom">Degrees of freedom; 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static double Quantile(double probability, int freedom)
    {
        Guard.Between(probability, 1e-9, 1 - 1e-9, string.Empty, nameof(probability));
        Guard.AtLeast(freedom, 1, nameof(freedom));
        if (probability < 0.5)
        {
            return -Quantile(1 - probability, freedom);
        }

        double low = 0;
        double high = 1;
        while (Cumulative(high, freedom) < probability)
        {
            high *= 2;
        }

        // Halving is slow and cannot fail.
        while (high - low > 1e-12 * high)
        {
            double middle = (low + high) / 2;
            if (Cumulative(middle, freedom) < probability)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return (low + high) / 2;
    }

    // Regularised incomplete beta function of x for a, b above 0.
    private static double IncompleteBeta(double x, double a, double b)
    {
        if (x is <= 0 or >= 1)
        {
            return x <= 0 ? 0 : 1;
        }

        // The fraction converges fast on one side of the mean; on the other the function is mirrored.
        if (x > (a + 1) / (a + b + 2))
        {
            return 1 - IncompleteBeta(1 - x, b, a);
        }

        double front = Math.Exp(LogGamma(a + b) - LogGamma(a) - LogGamma(b) + (a * Math.Log(x)) + (b * Math.Log(1 - x))) / a;
        double c = 1;
        double d = 1 / NotZero(1 - ((a + b) * x / (a + 1)));
        double fraction = d;
        for (int m = 1; m < MostTerms; m++)
        {
            double even = m * (b - m) * x / ((a + (2 * m) - 1) * (a + (2 * m)));
            d = 1 / NotZero(1 + (even * d));
            c = NotZero(1 + (even / c));
            fraction *= d * c;
            double odd = -(a + m) * (a + b + m) * x / ((a + (2 * m)) * (a + (2 * m) + 1));
            d = 1 / NotZero(1 + (odd * d));
            c = NotZero(1 + (odd / c));
            double step = d * c;
            fraction *= step;
            if (Math.Abs(step - 1) < 1e-15)
            {
                break;
            }
        }

        return front * fraction;
    }

    private static double NotZero(double value) => Math.Abs(value) < Tiny ? Tiny : value;

    private static double LogGamma(double x)
    {
        if (x < 0.5)
        {
            return Math.Log(Math.PI / Math.Sin(Math.PI * x)) - LogGamma(1 - x);
        }

        double z = x - 1;
        double sum = Lanczos[0];
        for (int i = 1; i < Lanczos.Length; i++)
        {
            sum += Lanczos[i] / (z + i);
        }

        double t = z + 7.5;
        return (0.5 * Math.Log(2 * Math.PI)) + ((z + 0.5) * Math.Log(t)) - t + Math.Log(sum);
    }
}
