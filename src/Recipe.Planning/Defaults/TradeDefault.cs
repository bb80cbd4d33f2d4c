namespace Recipe.Planning;

/// <summary>A figure that the program takes when nobody gives one. All of them stand in <see cref="Defaults"/>.</summary>
public abstract record TradeDefault
{
    private protected TradeDefault(string key, string what, string written, string source, string howToReplace)
    {
        Key = key;
        What = what;
        Written = written;
        Source = source;
        HowToReplace = howToReplace;
    }

    /// <summary>Stable key: <c>default.trim-allowance</c>.</summary>
    public string Key { get; }

    /// <summary>What is assumed, in words.</summary>
    public string What { get; }

    /// <summary>The value as people write it: <c>15 mm</c>.</summary>
    public string Written { get; }

    /// <summary>Where it comes from: a handbook and page, "common practice", "from memory of the trade".</summary>
    public string Source { get; }

    /// <summary>What to write to replace it.</summary>
    public string HowToReplace { get; }

    /// <summary>The line of the assumptions list.</summary>
    public Assumption ToAssumption() => new(Key, What, Written, Source, HowToReplace);
}

/// <summary>A default with its value.</summary>
/// <typeparam name="T">A UnitsNet quantity, a number, a count, a choice.</typeparam>
public sealed record TradeDefault<T> : TradeDefault
{
    /// <summary>Makes a default.</summary>
    /// <param name="key">Stable key.</param>
    /// <param name="what">What is assumed, in words.</param>
    /// <param name="value">The value.</param>
    /// <param name="written">The value as people write it.</param>
    /// <param name="source">Where it comes from.</param>
    /// <param name="howToReplace">What to write to replace it.</param>
    public TradeDefault(string key, string what, T value, string written, string source, string howToReplace)
        : base(key, what, written, source, howToReplace) => Value = value;

    /// <summary>The value.</summary>
    public T Value { get; }
}
