namespace Recipe.Syntax.Merging;

/// <summary>What the lines of one block are known by. Who knows what the words mean hands it in; the merge itself knows no word.</summary>
public abstract class MergeRules
{
    /// <summary>For a block that nobody knows: a line is known by its first word, and the order may be part of the meaning.</summary>
    public static MergeRules OfUnknownBlock { get; } = new ByFirstWord();

    /// <summary>Whether the order of the lines is part of the meaning: then two additions at one place are for a person to put in order.</summary>
    public abstract bool IsOrdered { get; }

    /// <summary>What an entry is known by among the lines of the block, whatever else it says; null when it is known by its text alone.</summary>
    /// <param name="entry">An entry of the block.</param>
    public abstract string? KeyOf(EntrySyntax entry);

    /// <summary>The rules of the block that an entry carries.</summary>
    /// <param name="entry">An entry of this block, with a block of its own.</param>
    public abstract MergeRules Inside(EntrySyntax entry);

    private sealed class ByFirstWord : MergeRules
    {
        public override bool IsOrdered => true;

        public override string? KeyOf(EntrySyntax entry) => entry.Head.Text;

        public override MergeRules Inside(EntrySyntax entry) => this;
    }
}
