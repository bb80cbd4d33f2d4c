namespace Recipe.Engineering;

/// <summary>Exponential and logarithm beside 0 and 1. The framework's own (<c>double.ExpM1</c>, <c>double.LogP1</c>) subtract and add the 1 first and lose the digits.</summary>
/// <remarks>Source: W. Kahan's correction by what the rounding did, e.g. N. J. Higham, Accuracy and Stability of Numerical Algorithms, 1.14 (from memory).</remarks>
internal static class SmallNumbers
{
    /// <summary><c>exp(x) - 1</c>, to a few last digits for every x.</summary>
    internal static double ExpM1(double x)
    {
        double power = Math.Exp(x);
        double less = power - 1;
        return power == 1 ? x : less <= -1 || double.IsInfinity(power) ? less : less * x / Math.Log(power);
    }

    /// <summary><c>ln(1 + x)</c>, to a few last digits for every x above -1.</summary>
    internal static double LogP1(double x)
    {
        double sum = 1 + x;
        return sum == 1 ? x : double.IsInfinity(sum) ? sum : Math.Log(sum) * x / (sum - 1);
    }
}
