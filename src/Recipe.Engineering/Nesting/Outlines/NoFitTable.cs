namespace Recipe.Engineering;

/// <summary>Where a position may not come to lie beside another, computed once for each pair.</summary>
internal sealed class NoFitTable(double gap)
{
    // Half planes kept: some 100 MB; beyond it the table begins anew.
    private const long Most = 4_000_000;

    private readonly Dictionary<(int, int), NoFitPart[]> _known = [];
    private long _size;

    internal double Gap => gap;

    /// <summary>The regions that the origin of the moved position may not enter, the origin of the still one being zero.</summary>
    internal NoFitPart[] Of(OutlinePosition still, OutlinePosition moved)
    {
        if (_known.TryGetValue((still.Id, moved.Id), out NoFitPart[]? parts))
        {
            return parts;
        }

        parts = new NoFitPart[still.Parts.Length * moved.Parts.Length];
        for (int i = 0; i < parts.Length; i++)
        {
            parts[i] = new NoFitPart(still.Parts[i / moved.Parts.Length], moved.Parts[i % moved.Parts.Length], gap);
            _size += parts[i].Size;
        }

        if (_size > Most)
        {
            _known.Clear();
            _size = parts.Sum(part => (long)part.Size);
        }

        _known.Add((still.Id, moved.Id), parts);
        return parts;
    }
}
