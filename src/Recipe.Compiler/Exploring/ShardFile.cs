using System.Diagnostics.CodeAnalysis;
using Recipe.Documents;

namespace Recipe.Compiler.Exploring;

/// <summary>A stretch of candidates that was looked at, read from a file.</summary>
public sealed class ShardFile
{
    private ShardFile(StudyShard shard) => Shard = shard;

    /// <summary>Which stretch it is.</summary>
    public ShardPlan Plan => new(Shard.Number, Shard.Of);

    /// <summary>The day for which its candidates were checked.</summary>
    public DateOnly? Today => Shard.Today;

    /// <summary>The next candidate to be looked at.</summary>
    public long Next => Shard.Next;

    internal StudyShard Shard { get; }

    /// <summary>Reads one; false when the text is none.</summary>
    public static bool TryRead(string text, [NotNullWhen(true)] out ShardFile? file)
    {
        file = StudyShard.TryRead(text, out var shard) ? new ShardFile(shard) : null;
        return file is not null;
    }
}
