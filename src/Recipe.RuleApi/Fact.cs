namespace Recipe.RuleApi;

/// <summary>One fact: what it holds, and whether somebody wrote or computed it or it rests on an assumption.</summary>
public readonly record struct Fact
{
    private Fact(FactKind kind, double number, string? text, bool isAssumed)
    {
        Kind = kind;
        Value = number;
        Text = text;
        IsAssumed = isAssumed;
    }

    /// <summary>What it holds.</summary>
    public FactKind Kind { get; }

    /// <summary>The quantity in its SI unit, or the number; 1 for yes and 0 for no; 0 for words and texts.</summary>
    public double Value { get; }

    /// <summary>The word or the text; null for the others.</summary>
    public string? Text { get; }

    /// <summary>Whether it rests on a default that nobody wrote.</summary>
    public bool IsAssumed { get; }

    /// <summary>A quantity.</summary>
    /// <param name="si">Its value in the SI unit.</param>
    /// <param name="isAssumed">Whether it rests on an assumption.</param>
    public static Fact Quantity(double si, bool isAssumed = false) => new(FactKind.Quantity, si, null, isAssumed);

    /// <summary>A plain number.</summary>
    /// <param name="value">The number; a share goes from 0 to 1.</param>
    /// <param name="isAssumed">Whether it rests on an assumption.</param>
    public static Fact Number(double value, bool isAssumed = false) => new(FactKind.Number, value, null, isAssumed);

    /// <summary>A word or a name.</summary>
    /// <param name="word">The word.</param>
    /// <param name="isAssumed">Whether it rests on an assumption.</param>
    public static Fact Word(string word, bool isAssumed = false) => new(FactKind.Word, 0, NotNull(word), isAssumed);

    /// <summary>A text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="isAssumed">Whether it rests on an assumption.</param>
    public static Fact Words(string text, bool isAssumed = false) => new(FactKind.Text, 0, NotNull(text), isAssumed);

    /// <summary>Yes or no.</summary>
    /// <param name="yes">Whether it is so.</param>
    /// <param name="isAssumed">Whether it rests on an assumption.</param>
    public static Fact YesNo(bool yes, bool isAssumed = false) => new(FactKind.YesNo, yes ? 1 : 0, null, isAssumed);

    private static string NotNull(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text;
    }
}
