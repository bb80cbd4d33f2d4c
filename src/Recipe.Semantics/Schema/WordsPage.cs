using System.Text;
using Recipe.Text.Units;

namespace Recipe.Semantics.Schema;

/// <summary>Writes the page that lists every word of the language, from the schema.</summary>
public static class WordsPage
{
    /// <summary>The page as Markdown, lines ended by LF.</summary>
    public static string Write()
    {
        var page = new StringBuilder();
        page.Append("# Every word of the language\n\n");
        page.Append("Written from the schema in `Recipe.Semantics`; a test compares the two. Any line may end with `source \"...\"` or\n");
        page.Append("`source assumed \"...\"`. What stands in `[ ]` may be left out; `...` repeats.\n");
        page.Append("\nBlocks: ").AppendJoin(" · ", RecipeSchema.Blocks.Select(block => $"[{block.Name}](#{AnchorOf(block.Name)})")).Append(".\nThe prose is in [language.md](language.md).\n");
        foreach (var block in RecipeSchema.Blocks)
        {
            Write(page, block);
        }

        WriteKinds(page);
        WriteUnits(page);
        return page.ToString();
    }

    private static void Write(StringBuilder page, BlockSchema block)
    {
        page.Append("\n## ").Append(block.Name).Append("\n\n").Append(block.Doc);
        page.Append(block.IsOrdered ? " The order of its lines counts.\n\n" : "\n\n");
        page.Append("| word | takes | example | when left out | what it says |\n|---|---|---|---|---|\n");
        foreach (var word in block.Words)
        {
            Write(page, word);
        }

        if (block.NameLine is { } line)
        {
            Write(page, line);
        }

        WriteChoices(page, block);
    }

    private static void Write(StringBuilder page, WordSchema word)
    {
        var marks = (word.IsRequired ? "needed" : word.Default ?? "") + (word.IsRepeatable ? (word.Default is null && !word.IsRequired ? "" : "; ") + "may repeat" : "");
        page.Append("| `").Append(word.Word).Append("` | ").Append(Cell(Takes(word))).Append(" | `").Append(Cell(word.Example)).Append("` | ")
            .Append(Cell(marks)).Append(" | ").Append(Cell(word.Doc));
        if (!word.Regional.IsEmpty)
        {
            page.Append(" Also understood: ").AppendJoin(", ", word.Regional.Select(r => $"`{r}`")).Append('.');
        }

        page.Append(" |\n");
    }

    /// <summary>What a heading is reached by.</summary>
    private static string AnchorOf(string title) =>
        string.Concat(title.ToLowerInvariant().Where(c => char.IsLetterOrDigit(c) || c is ' ' or '-')).Replace(' ', '-');

    private static string Takes(WordSchema word) => word.Forms.IsEmpty
        ? Takes(word.Line) + (word.Block is { } block ? $" {{ {block.Name} }}" : "")
        : string.Join("; ", word.Forms.Select(f => $"{f.Word} {Takes(f.Line)}".TrimEnd()));

    private static string Takes(LinePattern line)
    {
        var parts = new List<string>();
        foreach (var argument in line.Arguments)
        {
            var noun = Takes(argument.Kind) + (argument.IsRepeated ? " ..." : "");
            parts.Add(argument.IsOptional ? $"[{noun}]" : noun);
        }

        foreach (var clause in line.Clauses)
        {
            var text = $"{clause.Phrase} {Takes(clause.Kind)}{(clause.IsRepeated ? " ..." : "")}";
            parts.Add(clause.IsRequired ? text : $"[{text}]");
        }

        parts.AddRange(line.Flags.Select(f => $"[{f.Phrase}]"));
        if (line.Count is not null)
        {
            parts.Add("[xN]");
        }

        return string.Join(" ", parts);
    }

    private static string Takes(ValueKind kind) => kind switch
    {
        QuantityKind { NeedsRange: true } => $"{kind.Noun} to {kind.Noun}",
        QuantityKind { TakesRange: true } => $"{kind.Noun} [to {kind.Noun}]",
        QuantityKind { TakesTolerance: true } => $"{kind.Noun} [+/- {kind.Noun}]",
        _ => kind.Noun,
    };

    /// <summary>The words to choose from, below the table that they belong to.</summary>
    private static void WriteChoices(StringBuilder page, BlockSchema block)
    {
        var lines = new List<string>();
        foreach (var word in block.NameLine is { } name ? block.Words.Add(name) : block.Words)
        {
            foreach (var form in word.Forms)
            {
                lines.Add($"* `{word.Word} {form.Word}`: {form.Doc}, as in `{form.Example}`");
                lines.AddRange(Choices($"{word.Word} {form.Word}", form.Line));
            }

            lines.AddRange(Choices(word.Word, word.Line));
        }

        if (lines.Count > 0)
        {
            page.Append('\n').AppendJoin('\n', lines.Distinct(StringComparer.Ordinal)).Append('\n');
        }
    }

    private static IEnumerable<string> Choices(string head, LinePattern line) => line.Arguments.Select(a => a.Kind).Concat(line.Clauses.Select(c => c.Kind)).OfType<ChoiceKind>()
        .Where(kind => kind != Kinds.YesNo && kind.Choices.Length > 1)
        .Select(kind => $"* `{head}`, {kind.Noun}: {string.Join("; ", kind.Choices.Select(c => $"`{c.Word}` ({c.Doc})"))}");

    /// <summary>The kinds of quantity with the units that people use for them; any unit of the same dimension will do.</summary>
    private static void WriteKinds(StringBuilder page)
    {
        var words = RecipeSchema.Blocks.SelectMany(b => b.NameLine is { } name ? b.Words.Add(name) : b.Words).ToArray();
        var kinds = words.SelectMany(w => w.Forms.Select(f => f.Line).Prepend(w.Line))
            .SelectMany(l => l.Arguments.Select(a => a.Kind).Concat(l.Clauses.Select(c => c.Kind)))
            .OfType<QuantityKind>()
            .GroupBy(k => k.Noun, StringComparer.Ordinal)
            .OrderBy(g => g.Key, StringComparer.Ordinal);
        page.Append("\n## Kinds of quantity\n\nAny unit of the dimension will do; these are the usual ones.\n\n");
        page.Append("| kind | dimension | usual units |\n|---|---|---|\n");
        foreach (var kind in kinds)
        {
            page.Append("| ").Append(kind.Key).Append(" | ").Append(kind.First().Dimension.Name).Append(" | ")
                .AppendJoin(", ", kind.SelectMany(k => k.Units).Distinct(StringComparer.Ordinal).Select(u => $"`{u}`")).Append(" |\n");
        }
    }

    /// <summary>Every unit with all its spellings; money has one for each currency of ISO 4217 and is not listed.</summary>
    private static void WriteUnits(StringBuilder page)
    {
        page.Append("\n## Every spelling of a unit\n\nIn brackets, other spellings of the same unit. Units are put together with `/` and `.`, as in `g/m2`, `mPa.s`, `degC/min`. Money is a code of ISO 4217 (`EUR`), alone or for each of something (`EUR/m2`).\n\n| what | units |\n|---|---|\n");
        var spellings = UnitTable.Spellings.Order(StringComparer.Ordinal).ToLookup(spelling => UnitTable.Get(spelling).Symbol, StringComparer.Ordinal);
        foreach (var kind in UnitTable.All.Where(unit => unit.Currency is null).GroupBy(unit => unit.Dimension.Name, StringComparer.Ordinal).OrderBy(group => group.Key, StringComparer.Ordinal))
        {
            var units = kind.Select(unit => (unit.Symbol, Others: spellings[unit.Symbol].Where(spelling => spelling != unit.Symbol).Select(spelling => $"`{spelling}`").ToArray()))
                .Select(unit => $"`{unit.Symbol}`" + (unit.Others.Length == 0 ? "" : $" ({string.Join(", ", unit.Others)})"));
            page.Append("| ").Append(kind.Key).Append(" | ").AppendJoin(", ", units).Append(" |\n");
        }
    }

    private static string Cell(string text) => text.Replace("|", "\\|", StringComparison.Ordinal);
}
