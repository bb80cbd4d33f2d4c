namespace Recipe.Planning.Ledger;

/// <summary>
/// An SI number with the assumptions behind it. Sums of it carry the assumptions of both sides, and the lifted operators of
/// <c>Num?</c> carry what is missing: a sum with an unknown in it is unknown.
/// </summary>
/// <param name="Si">The value: m, m2, kg, s, Pa, a plain number.</param>
/// <param name="On">The assumptions behind it.</param>
internal readonly record struct Num(double Si, Rests On)
{
    /// <summary>Nothing, and nothing assumed about it.</summary>
    public static Num Zero => default;

    /// <summary>The sum.</summary>
    public static Num operator +(Num a, Num b) => new(a.Si + b.Si, a.On | b.On);

    /// <summary>The difference.</summary>
    public static Num operator -(Num a, Num b) => new(a.Si - b.Si, a.On | b.On);

    /// <summary>The product.</summary>
    public static Num operator *(Num a, Num b) => new(a.Si * b.Si, a.On | b.On);

    /// <summary>The quotient.</summary>
    public static Num operator /(Num a, Num b) => new(a.Si / b.Si, a.On | b.On);

    /// <summary>So many times.</summary>
    public static Num operator *(Num a, double factor) => a with { Si = a.Si * factor };

    /// <summary>A part of it.</summary>
    public static Num operator /(Num a, double divisor) => a with { Si = a.Si / divisor };

    /// <summary>The same number, resting on these assumptions too.</summary>
    public Num And(Rests more) => this with { On = On | more };

    /// <summary>The smaller of two; which one it is depends on both.</summary>
    public static Num Min(Num a, Num b) => new(Math.Min(a.Si, b.Si), a.On | b.On);
}

/// <summary>Any value with the assumptions behind it.</summary>
/// <typeparam name="T">What kind of value.</typeparam>
/// <param name="Value">The value.</param>
/// <param name="On">The assumptions behind it.</param>
internal readonly record struct Known<T>(T Value, Rests On);
