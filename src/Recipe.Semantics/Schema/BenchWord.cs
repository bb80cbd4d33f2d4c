using System.Collections.Immutable;

namespace Recipe.Semantics.Schema;

/// <summary>A word that people say at the bench and that the language writes otherwise, or cannot say.</summary>
/// <param name="Said">The word as it is said, in small letters; a hyphen stands where people may write a blank.</param>
/// <param name="Answer">How it is written here: what a message goes on with behind the word, without a full stop.</param>
public sealed record BenchWord(string Said, string Answer)
{
    /// <summary>Names of the blocks in which it is meant so (<see cref="BlockSchema.Name"/>); none when it is meant so everywhere.</summary>
    public ImmutableArray<string> Blocks { get; init; } = [];

    /// <summary>The word that begins the line on which it is meant so; null when it is meant so at the head of a line and on any line of the block.</summary>
    public string? Line { get; init; }

    /// <summary>What may be written instead of it, an empty text when it is to be left out; null when that depends on more than the word.</summary>
    public string? Write { get; init; }

    /// <summary>Whether it is meant so in a block, on a line that begins with a word.</summary>
    /// <param name="block">The block, or null where none is known.</param>
    /// <param name="line">How the line begins; null at the head of a line.</param>
    public bool IsMeantIn(BlockSchema? block, string? line) =>
        (Blocks.IsEmpty || (block is not null && Blocks.Contains(block.Name))) && (Line is null || Line == line);
}
