namespace Recipe.Text.Units;

/// <summary>Finds the unit in a quantity as its author wrote it: "0.1 g", "24.9 inHg", "(2 + 3) mm".</summary>
public static class WrittenUnit
{
    /// <summary>The first unit in the text that measures the same kind of thing as the usual one, on the same scale; else the usual one.</summary>
    /// <param name="written">The text, or null.</param>
    /// <param name="usual">What to fall back on.</param>
    public static Unit Like(string? written, Unit usual)
    {
        ArgumentNullException.ThrowIfNull(usual);
        for (var i = 0; written is not null && i < written.Length; i++)
        {
            var startsAWord = i == 0 || written[i - 1] is ' ' or ')' || char.IsAsciiDigit(written[i - 1]);
            if (startsAWord
                && UnitTable.TryRead(written.AsSpan(i), out _, out var unit)
                && unit.Dimension == usual.Dimension
                && unit.Scale == usual.Scale)
            {
                return unit;
            }
        }

        return usual;
    }
}
