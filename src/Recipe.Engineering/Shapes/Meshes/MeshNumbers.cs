namespace Recipe.Engineering;

/// <summary>Coordinates in words.</summary>
internal static class MeshNumbers
{
    /// <summary>Three coordinates on one line, or what is wrong with them.</summary>
    internal static MeshRefusal? Three(ref MeshWords words, out double x, out double y, out double z)
    {
        (y, z) = (0, 0);
        return One(ref words, out x) ?? One(ref words, out y) ?? One(ref words, out z);
    }

    private static MeshRefusal? One(ref MeshWords words, out double number)
    {
        ReadOnlySpan<byte> word = words.NextInLine();
        if (!MeshWords.TryNumber(word, out number))
        {
            return word.IsEmpty && words.IsAtEnd
                ? new MeshRefusal(MeshRefusalReason.Truncated, Line: words.Line)
                : new MeshRefusal(MeshRefusalReason.Malformed, MeshWords.Text(word), Line: words.Line);
        }

        return double.IsFinite(number) ? null : new MeshRefusal(MeshRefusalReason.NotANumber, MeshWords.Text(word), Line: words.Line);
    }
}
