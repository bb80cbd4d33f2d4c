using Recipe.Semantics.Findings;
using Recipe.Semantics.Reading;

namespace Recipe.Semantics.Binding;

/// <summary>
/// The lines of a part, or of a variant over the part it comes from. Lines from below are read quietly: their faults are reported
/// where they stand.
/// </summary>
/// <param name="All">The lines of the part, blocks among them.</param>
/// <param name="Chain">The blocks of each word from the part up to this variant, to be merged by their own rules.</param>
/// <param name="VariantOf">Name of the part it is a variant of, or null.</param>
internal sealed record PartLines(Lines All, IReadOnlyList<Lines> Chain, string? VariantOf)
{
    /// <summary>Blocks that a variant changes line by line.</summary>
    private static readonly string[] MergedBlocks = ["wet-out", "vacuum", "infuse", "join"];

    public static PartLines Read(PartDeclaration declaration, LineContext context)
    {
        var head = declaration.ReadHead(context, NameKind.Part);
        var own = declaration.ReadLines(context);
        if (!declaration.IsVariant)
        {
            return new PartLines(own, [own], null);
        }

        var below = new List<PartDeclaration>();
        var seen = new HashSet<PartDeclaration> { declaration };
        var next = Next(declaration);
        while (next is not null && seen.Add(next))
        {
            below.Add(next);
            next = Next(next);
        }

        if (next is not null)
        {
            if (ReferenceEquals(next, declaration))
            {
                context.Sink.Report(VariantCycle.Create(head.Find("of")?.Where ?? declaration.Where, [declaration.Name, .. below.Select(b => b.Name), declaration.Name]));
            }

            return new PartLines(own, [own], below.Count > 0 ? below[0].Name : null);
        }

        var chain = new List<Lines>();
        var lines = new Lines([]);
        for (var i = below.Count - 1; i >= 0; i--)
        {
            var theirs = below[i].ReadLines(below[i].Context);
            chain.Add(theirs);
            lines = Lines.Over(lines, theirs, "accept");
        }

        // Waivers add up; everything else of the same word is replaced.
        var waivers = chain.SelectMany(c => c.Many("accept")).ToArray();
        lines = Lines.Over(lines, own, "accept");
        chain.Add(own);
        return new PartLines(new Lines([.. lines.All.Where(l => l.Word.Word != "accept"), .. waivers, .. own.Many("accept")]), chain, head.Find("of")?.Word);
    }

    /// <summary>The lines of a block and the place of its head, or null when there is none.</summary>
    public (Lines Lines, Line Head)? Block(string word)
    {
        if (All.One(word) is not { } head)
        {
            return null;
        }

        if (!MergedBlocks.Contains(word))
        {
            return (BlockReader.Read(head), head);
        }

        var merged = new Lines([]);
        foreach (var level in Chain)
        {
            if (level.One(word) is { } block)
            {
                merged = Lines.Over(merged, BlockReader.Read(block));
            }
        }

        return (merged, head);
    }

    /// <summary>The part a variant comes from, by its text.</summary>
    private static PartDeclaration? Next(PartDeclaration declaration) =>
        declaration.IsVariant && declaration.NameBehind("of") is { } name ? declaration.Context.Scope.FindPart(name.Text) : null;
}
