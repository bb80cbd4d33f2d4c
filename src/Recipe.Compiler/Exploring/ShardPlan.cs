namespace Recipe.Compiler.Exploring;

/// <summary>One of the stretches that the candidates of a study are cut into.</summary>
/// <param name="Number">Which one, from 1.</param>
/// <param name="Of">Into how many.</param>
public readonly record struct ShardPlan(int Number, int Of)
{
    /// <summary>The most stretches.</summary>
    public const int Most = 10_000;

    /// <summary>The whole run as one stretch.</summary>
    public static ShardPlan Whole => new(1, 1);

    /// <summary>Its candidates: the first, and the one behind the last. All stretches together are all candidates, each once.</summary>
    public (long From, long Until) Range(long candidates) => (candidates * (Number - 1) / Of, candidates * Number / Of);

    /// <inheritdoc />
    public override string ToString() => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{Number}/{Of}");

    /// <summary>Reads <c>2/4</c>; null when it is none.</summary>
    public static ShardPlan? Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Split('/') is [var number, var of] && Digits(number) is { } n && Digits(of) is { } m && n >= 1 && n <= m && m <= Most ? new(n, m) : null;

        static int? Digits(string digits) => int.TryParse(digits, System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var value) ? value : null;
    }
}
