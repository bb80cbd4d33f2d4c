using Recipe.Compiler.Records;
using Recipe.Semantics.Schema;
using Recipe.Syntax;
using Recipe.Syntax.Merging;

namespace Recipe.Compiler.Merging;

/// <summary>What lines are known by, from the list of words: a thing by its kind and name, a ply by its name, what stands once by its word.</summary>
internal sealed class SchemaRules : MergeRules
{
    private readonly BlockSchema _block;

    private SchemaRules(BlockSchema block) => _block = block;

    /// <summary>The rules of a file.</summary>
    public static MergeRules OfFile { get; } = new SchemaRules(RecipeSchema.File);

    public override bool IsOrdered => _block.IsOrdered;

    public override string? KeyOf(EntrySyntax entry)
    {
        var head = entry.Head.Text;
        if (WordOf(entry) is not { } word || !(word.IsRepeatable || word.OncePerFirstWord || word.NameIsKey))
        {
            return head;
        }

        // A count says how much of it there is, and not what it is.
        var name = entry.Values is [WordSyntax first, ..] && !IsCount(first.Text) ? first.Text : null;
        return name is not null ? $"{head} {name}{Serial(word, entry)}" : word.IsRepeatable ? null : head;
    }

    public override MergeRules Inside(EntrySyntax entry) => WordOf(entry)?.Block is { } block ? new SchemaRules(block) : OfUnknownBlock;

    private WordSchema? WordOf(EntrySyntax entry) => _block.Find(entry.Head.Text) ?? _block.FindRegional(entry.Head.Text);

    // One thing of several is told apart by its number: build hatch-lid no 3.
    private static string Serial(WordSchema word, EntrySyntax entry) =>
        word.Line.Clauses.Any(clause => clause.Phrase == "no") && RecordHead.SerialOf(entry) is { } number ? FormattableString.Invariant($" no {number}") : "";

    private static bool IsCount(string word) => word.Length > 1 && word[0] == 'x' && word.AsSpan(1).IndexOfAnyExceptInRange('0', '9') < 0;
}
