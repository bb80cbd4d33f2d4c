using CsCheck;

namespace Recipe.Engineering.Tests;

/// <summary>Numbers that scatter normally, the same for a seed on every machine (the polar method of Box, Muller and Marsaglia).</summary>
internal sealed class NormalNumbers(int seed)
{
    private readonly PCG _random = new((uint)seed, 12345);

    public double Next(double mean, double deviation)
    {
        while (true)
        {
            double x = (2 * Uniform()) - 1;
            double y = (2 * Uniform()) - 1;
            double square = (x * x) + (y * y);
            if (square is > 0 and < 1)
            {
                return mean + (deviation * x * Math.Sqrt(-2 * Math.Log(square) / square));
            }
        }
    }

    public double[] Take(int count, double mean, double deviation) => [.. Enumerable.Range(0, count).Select(_ => Next(mean, deviation))];

    private double Uniform() => _random.Next64() / (double)ulong.MaxValue;
}
