using System.Collections.Immutable;
using System.Globalization;
using Recipe.Compiler;
using Recipe.Semantics;
using Recipe.Semantics.Schema;
using Recipe.Syntax;
using Recipe.Text.Units;

namespace Recipe.Editing;

/// <summary>What could stand at the cursor: words of the block, names, materials with what they are for, units that fit, whole blocks to fill in.</summary>
public static class Completion
{
    private static readonly string[] UsualBag = ["peel-ply", "release-film", "breather", "bag-film", "sealant-tape", "port", "hose", "catch-pot", "gauge", "pleats", "time"];
    private static readonly string[] InfusedBag = ["peel-ply", "flow-medium", "bag-film", "sealant-tape", "port", "hose", "catch-pot", "gauge", "pleats", "time"];
    private static readonly string[] Orientations = ["0/90", "+/-45", "0", "90", "random"];

    /// <summary>The proposals at a cursor, the likeliest first; empty in comments and texts.</summary>
    public static ImmutableArray<CompletionItem> At(CompiledFile file, int offset)
    {
        ArgumentNullException.ThrowIfNull(file);
        if (LineContext.At(file, offset) is not { Block: { } block } line)
        {
            return [];
        }

        var list = new ProposalList(line.Typed);
        if (RuleHelp.At(file, line) is { } asked)
        {
            foreach (var (label, kind, newText, detail) in asked)
            {
                list.Add(label, kind, newText, detail);
            }

            if (line.AtHead)
            {
                AddHeads(file, line, block, list);
            }
        }
        else if (line.AtHead)
        {
            AddHeads(file, line, block, list);
        }
        else if (line.Before[^1].Kind is TokenKind.Number)
        {
            AddUnits(UnitsAt(line), list);
        }
        else if (line.Pattern() is { } pattern)
        {
            AddParts(file, line, pattern, list);
        }
        else if (line.Word is { Forms: { IsEmpty: false } forms } && line.Before.Length == 1)
        {
            foreach (var form in forms)
            {
                list.Add(form.Word, CompletionKind.Choice, form.Word + " ", form.Doc);
            }
        }

        return list.ToImmutable();
    }

    /// <summary>The page about a proposal, as Markdown; null when there is none.</summary>
    /// <param name="file">The file that the proposal was made for, or null for the book alone.</param>
    /// <param name="docKey">Its <see cref="CompletionItem.DocKey"/>.</param>
    public static string? Doc(CompiledFile? file, string docKey)
    {
        ArgumentNullException.ThrowIfNull(docKey);
        var parts = docKey.Split('/', 3);
        return parts switch
        {
            ["material", var name] => Cards.Material(file, name),
            ["word", var block, var word] => RecipeSchema.Blocks.FirstOrDefault(b => b.Name == block)?.Find(word) is { } schema ? Cards.Word(schema) : null,
            _ => null,
        };
    }

    private static void AddHeads(CompiledFile file, LineContext line, BlockSchema block, ProposalList list)
    {
        var written = line.Lines.OfType<EntrySyntax>().Where(e => e.Head.Span.Start != line.Typed.Start).Select(e => e.Head.Text).ToList();
        foreach (var word in Ordered(block, line, written))
        {
            if (word.IsRepeatable || word.OncePerFirstWord || !written.Contains(word.Word))
            {
                list.Add(word.Word, CompletionKind.Word, HeadText(word), word.Doc, $"word/{block.Name}/{word.Word}", isSnippet: word.NeedsBlock);
            }
        }

        if (block.NameHead is NameRefKind names)
        {
            AddNames(file, names, list);
        }

        if (line.Owner is null)
        {
            foreach (var (label, text, detail) in Snippets.TopLevel)
            {
                list.Add(label, CompletionKind.Snippet, text, detail, isSnippet: true);
            }
        }
    }

    // The bag goes on in its usual order: the layer that comes next is the first proposal.
    private static IEnumerable<WordSchema> Ordered(BlockSchema block, LineContext line, List<string> written)
    {
        if (block.Name != "bag")
        {
            return block.Words;
        }

        var infused = line.Owner?.Parent?.Entry.Block?.Entries.Any(e => e.Head.Text == "infuse") == true;
        var usual = infused ? InfusedBag : UsualBag;
        var last = usual.Select((word, i) => written.Contains(word) ? i : -1).DefaultIfEmpty(-1).Max();
        return block.Words.OrderBy(word => Array.IndexOf(usual, word.Word) is var at && at > last ? at : usual.Length + 1);
    }

    private static string HeadText(WordSchema word)
    {
        if (!word.NeedsBlock)
        {
            return word.Line.Arguments.IsEmpty && word.Line.Clauses.IsEmpty && word.Forms.IsEmpty ? word.Word : word.Word + " ";
        }

        var name = word.Line.Arguments.Any(a => a.Kind is NewNameKind) ? " ${1:name}" : "";
        return $"{word.Word}{name} {{\n  $0\n}}";
    }

    private static void AddParts(CompiledFile file, LineContext line, LinePattern pattern, ProposalList list)
    {
        if (line.OpenClause(pattern) is { } open)
        {
            AddValues(file, open.Kind, list);
            return;
        }

        foreach (var argument in NextArguments(line, pattern))
        {
            AddValues(file, argument.Kind, list);
            if (!argument.IsOptional)
            {
                return;
            }
        }

        foreach (var clause in pattern.Clauses.Where(c => c.IsRepeated || !line.Says(c.Words)))
        {
            list.Add(clause.Phrase, CompletionKind.Clause, clause.Phrase + " ", clause.Doc);
        }

        foreach (var flag in pattern.Flags.Where(f => !line.Says(f.Words)))
        {
            list.Add(flag.Phrase, CompletionKind.Clause, flag.Phrase, flag.Doc);
        }

        if (pattern.Count is { } count)
        {
            list.Add("x2", CompletionKind.Clause, "x2", count.Doc);
        }

        AddPhrases(line, list);
        list.Add("source", CompletionKind.Clause, "source \"$1\"", "where the figure comes from", isSnippet: true);
    }

    // The words that finish a quantity: of what, and how it is counted.
    private static void AddPhrases(LineContext line, ProposalList list)
    {
        if (line.Before[^1].Kind is not (TokenKind.Unit or TokenKind.Number))
        {
            return;
        }

        switch (KindBehind(line))
        {
            case VacuumKind { OnlyAbsolute: true }:
                list.AddFirst("absolute", "counted from nothing");
                break;
            case VacuumKind:
                list.AddFirst("below ambient", "counted down from the air outside");
                list.AddFirst("absolute", "counted from nothing");
                break;
            case ContentKind or MixKind:
                list.AddFirst("by weight", "weighed");
                list.AddFirst("by volume", "measured");
                break;
        }
    }

    /// <summary>The values by position that may come next: optional ones, and the first that has to.</summary>
    private static IEnumerable<ArgumentPattern> NextArguments(LineContext line, LinePattern pattern)
    {
        var at = Filled(line, pattern);
        for (; at < pattern.Arguments.Length; at++)
        {
            yield return pattern.Arguments[at];
            if (!pattern.Arguments[at].IsOptional)
            {
                yield break;
            }
        }
    }

    /// <summary>Index of the first value by position that is not written yet.</summary>
    private static int Filled(LineContext line, LinePattern pattern)
    {
        // The form word of a line with forms is no argument of it; nor is the name at the head of a name line.
        var first = line.Word is { Forms.IsEmpty: false } ? 2 : 1;
        if (ValuesBefore(line, pattern, first) is not { } values)
        {
            return pattern.Arguments.Length;
        }

        var at = 0;
        foreach (var value in values)
        {
            while (at < pattern.Arguments.Length && pattern.Arguments[at] is { IsOptional: true, Kind: ChoiceKind choices } && choices.Find(value) is null)
            {
                at++;
            }

            if (at < pattern.Arguments.Length && pattern.Arguments[at].IsRepeated)
            {
                return at;
            }

            at++;
        }

        return Math.Min(at, pattern.Arguments.Length);
    }

    // Quantities are several tokens; what counts is where a value begins. Null once a clause or flag has begun: values by position are over then.
    private static List<string>? ValuesBefore(LineContext line, LinePattern pattern, int first)
    {
        var values = new List<string>();
        for (var i = first; i < line.Before.Length; i++)
        {
            var token = line.Before[i];
            if (pattern.Clauses.Any(c => c.Words[0] == line.TextOf(token)) || pattern.Flags.Any(f => f.Words[0] == line.TextOf(token)))
            {
                return null;
            }

            var begins = token.Kind is TokenKind.Word or TokenKind.String or TokenKind.Date
                || (token.Kind is TokenKind.Number or TokenKind.PlusMinus
                    && (i == first || line.Before[i - 1].Kind is not (TokenKind.Slash or TokenKind.Colon or TokenKind.Plus or TokenKind.Minus or TokenKind.PlusMinus)));
            if (begins)
            {
                values.Add(line.TextOf(token));
            }
        }

        return values;
    }

    /// <summary>What kind of value the tokens just before the cursor are part of, or null.</summary>
    private static ValueKind? KindBehind(LineContext line)
    {
        if (line.Pattern() is not { } pattern)
        {
            return null;
        }

        for (var i = line.Before.Length - 1; i >= 1; i--)
        {
            var word = line.TextOf(line.Before[i]);
            var clause = pattern.Clauses.FirstOrDefault(c => c.Words[^1] == word && line.Before[i].Kind == TokenKind.Word);
            if (clause is not null)
            {
                return clause.Kind;
            }
        }

        var filled = Filled(line, pattern);
        return filled >= 1 && filled <= pattern.Arguments.Length ? pattern.Arguments[filled - 1].Kind : pattern.Arguments.LastOrDefault()?.Kind;
    }

    private static IEnumerable<string> UnitsAt(LineContext line) => KindBehind(line) switch
    {
        QuantityKind quantity => quantity.Units,
        ShareKind or ContentKind or CoverKind => ["%"],
        MixKind => ["% of resin by weight"],
        VacuumKind => ["inHg below ambient", "mbar below ambient", "mbar absolute", "kPa absolute"],
        SizeKind => ["mm", "cm", "in"],
        WeightKind => ["kg", "g", "N", "lb"],
        PriceKind => ["EUR/kg", "EUR/m2", "EUR/m", "USD/kg"],
        AmountKind => ["kg", "g", "m2", "m", "L"],
        CountKind or NumberKind or OrientationKind or TimeOfDayKind or DateKind or NewNameKind or NameRefKind => [],
        null => UnitTable.All.Select(unit => unit.Symbol),
        _ => UnitTable.All.Select(unit => unit.Symbol),
    };

    private static void AddUnits(IEnumerable<string> units, ProposalList list)
    {
        foreach (var unit in units.Distinct(StringComparer.Ordinal))
        {
            list.Add(unit, CompletionKind.Unit, unit, UnitTable.TryParse(unit, out var known) ? known.Dimension.ToString() : null);
        }
    }

    private static void AddValues(CompiledFile file, ValueKind kind, ProposalList list)
    {
        switch (kind)
        {
            case ChoiceKind choices:
                foreach (var choice in choices.Choices)
                {
                    list.Add(choice.Word, CompletionKind.Choice, choice.Word, choice.Doc);
                }

                break;
            case NameRefKind names:
                AddNames(file, names, list);
                break;
            case OrientationKind:
                foreach (var orientation in Orientations)
                {
                    list.Add(orientation, CompletionKind.Choice, orientation, null);
                }

                break;
            case QuantityKind { OrWord: { } word }:
                list.Add(word, CompletionKind.Choice, word, null);
                break;
            case DateKind or TimeOfDayKind or NewNameKind or TextKind or FreeKind:
                break;
        }

        foreach (var value in file.Bound.Names.Where(n => n is { Kind: NameKind.Value, IsDeclaration: true }).Select(n => n.Name).Distinct(StringComparer.Ordinal))
        {
            if (kind is QuantityKind or ShareKind or CountKind or NumberKind or SizeKind)
            {
                list.Add(value, CompletionKind.Name, value, "named value");
            }
        }
    }

    private static void AddNames(CompiledFile file, NameRefKind names, ProposalList list)
    {
        switch (names.Space)
        {
            case NameKind.Material:
                foreach (var material in file.Bound.Model.Materials.Values
                    .Where(m => names.Keywords.IsEmpty || names.Keywords.Contains(m.Keyword))
                    .OrderBy(m => m.FromBook)
                    .ThenBy(m => m.Name, StringComparer.Ordinal))
                {
                    list.Add(material.Name, CompletionKind.Material, material.Name, Cards.Brief(material), "material/" + material.Name);
                }

                break;
            case NameKind.Mould:
                Add(file.Bound.Model.Moulds.Keys, "mould");
                break;
            case NameKind.Part:
                Add(file.Bound.Model.Parts.Select(p => p.Name).Concat(file.Bound.Model.UsedParts.Keys), "part");
                break;
            case NameKind.Ply:
                Add(file.Bound.Model.Parts.SelectMany(p => p.Stack).Select(s => s.Name), "line of the ply list");
                break;
        }

        void Add(IEnumerable<string> found, string detail)
        {
            foreach (var name in found.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal))
            {
                list.Add(name, CompletionKind.Name, name, detail);
            }
        }
    }

    /// <summary>Proposals in the order in which they were added.</summary>
    private sealed class ProposalList(Text.TextSpan replaces)
    {
        private readonly ImmutableArray<CompletionItem>.Builder _items = ImmutableArray.CreateBuilder<CompletionItem>();
        private readonly HashSet<string> _labels = new(StringComparer.Ordinal);

        public void Add(string label, CompletionKind kind, string newText, string? detail, string? docKey = null, bool isSnippet = false) =>
            Insert("1", label, kind, newText, detail, docKey, isSnippet);

        public void AddFirst(string label, string detail) => Insert("0", label, CompletionKind.Clause, label, detail, null, false);

        public ImmutableArray<CompletionItem> ToImmutable() => [.. _items.OrderBy(item => item.SortKey, StringComparer.Ordinal)];

        private void Insert(string rank, string label, CompletionKind kind, string newText, string? detail, string? docKey, bool isSnippet)
        {
            if (_labels.Add(label))
            {
                _items.Add(new CompletionItem(label, kind, replaces, newText)
                {
                    Detail = detail,
                    DocKey = docKey,
                    IsSnippet = isSnippet,
                    SortKey = rank + _items.Count.ToString("0000", CultureInfo.InvariantCulture),
                });
            }
        }
    }
}
