namespace Recipe.Planning.Ledger;

/// <summary>A set of assumptions by their place in the <see cref="PlanLedger"/>. Small and cheap to unite, since every sum unites some.</summary>
internal readonly struct Rests : IEquatable<Rests>
{
    private const int BitsPerWord = 64;

    private readonly ulong[]? _words;

    private Rests(ulong[] words) => _words = words;

    /// <summary>Rests on nothing assumed.</summary>
    public static Rests None => default;

    /// <summary>The set of one assumption.</summary>
    public static Rests Of(int index)
    {
        var words = new ulong[(index / BitsPerWord) + 1];
        words[^1] = 1UL << (index % BitsPerWord);
        return new Rests(words);
    }

    /// <summary>All of both.</summary>
    public static Rests operator |(Rests a, Rests b)
    {
        if (b._words is null || a.Holds(b))
        {
            return a;
        }

        if (b.Holds(a))
        {
            return b;
        }

        var (longer, shorter) = a.Count >= b.Count ? (a._words!, b._words) : (b._words, a._words!);
        var words = (ulong[])longer.Clone();
        for (var i = 0; i < shorter.Length; i++)
        {
            words[i] |= shorter[i];
        }

        return new Rests(words);
    }

    /// <summary>The places of its members, in order.</summary>
    public IEnumerable<int> Members()
    {
        for (var word = 0; word < Count; word++)
        {
            for (var bit = 0; bit < BitsPerWord; bit++)
            {
                if ((_words![word] & (1UL << bit)) != 0)
                {
                    yield return (word * BitsPerWord) + bit;
                }
            }
        }
    }

    /// <inheritdoc />
    public bool Equals(Rests other) => _words.AsSpan().SequenceEqual(other._words);

    /// <inheritdoc />
    public override bool Equals(object? obj) => obj is Rests other && Equals(other);

    /// <inheritdoc />
    public override int GetHashCode()
    {
        var hash = 0UL;
        for (var i = 0; i < Count; i++)
        {
            hash = (hash * 31) ^ _words![i];
        }

        return hash.GetHashCode();
    }

    private int Count => _words?.Length ?? 0;

    // Never holds trailing empty words, so a longer set cannot lie inside a shorter one.
    private bool Holds(Rests other)
    {
        if (other.Count > Count)
        {
            return false;
        }

        for (var i = 0; i < other.Count; i++)
        {
            if ((other._words![i] & ~_words![i]) != 0)
            {
                return false;
            }
        }

        return true;
    }
}
