using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Recipe.Model;
using Recipe.Text;

namespace Recipe.Compiler.Exploring;

/// <summary>Writes a candidate as the variant that it is, to be put into the recipe.</summary>
internal static partial class CandidateText
{
    /// <summary>The variant, in the one layout.</summary>
    public static string Write(Study study, long index)
    {
        var candidate = study.PartOf(study.OptionsOf(index));
        var edits = study.Choices.Zip(study.OptionsOf(index), (choice, option) => choice.Options[option].Edit).ToList();
        var from = edits.OfType<StartFrom>().LastOrDefault()?.From ?? study.Part!;
        var number = index.ToString(CultureInfo.InvariantCulture);
        var text = new StringBuilder($"# Candidate {number} of `explore {study.Name}`.\nvariant {study.Name}-{number} of {from.Name} {{\n");
        if (candidate.Resin is { } resin && (resin.Name != from.Resin?.Name || resin.Hardener != from.Resin.Hardener))
        {
            text.Append($"resin {resin.Name}{(resin.Hardeners.Length > 1 ? $" with {resin.Hardener}" : "")}\n");
        }

        Block("plies", Plies(from, candidate, edits));
        Block("wet-out", WetOut(from.WetOut, candidate.WetOut));
        return TextLayout.Format("candidate", text.Append("}\n").ToString());

        void Block(string word, IEnumerable<string> lines)
        {
            if (lines.ToList() is { Count: > 0 } some)
            {
                text.Append($"{word} {{\n{string.Join('\n', some)}\n}}\n");
            }
        }
    }

    private static IEnumerable<string> Plies(Part from, Part candidate, List<PartEdit> edits)
    {
        foreach (var was in from.Stack)
        {
            var now = candidate.Stack.FirstOrDefault(item => item.Name == was.Name);
            if (now is null)
            {
                yield return $"remove {was.Name}";
            }
            else if (!ReferenceEquals(was, now) && Rest(was, now) is var rest && rest != Rest(was, was))
            {
                yield return $"replace {was.Name}   {rest}";
            }
        }

        foreach (var insert in edits.OfType<InsertLine>())
        {
            if (candidate.Stack.FirstOrDefault(item => item.Name == insert.Item.Name) is { } now)
            {
                yield return $"insert {now.Name}   {Rest(insert.Item, now)}";
            }
        }
    }

    private static IEnumerable<string> WetOut(WetOut? was, WetOut? now)
    {
        if (now?.Content is { } content && content != was?.Content)
        {
            yield return $"resin-content {content.Written}";
        }

        if (now?.Laminators is { } laminators && laminators != was?.Laminators)
        {
            yield return $"laminators {laminators.Written}";
        }

        if (now?.Room is { } room && room != was?.Room)
        {
            yield return $"room {room.Written}";
        }
    }

    /// <summary>What stands behind the name of a line, with what is different put into its place; all else as its author wrote it.</summary>
    private static string Rest(StackItem was, StackItem now)
    {
        var (material, name) = (was, now) switch
        {
            (PlyItem ply, PlyItem to) => (ply.MaterialWhere.Span, to.Material.Name),
            (CoreItem core, CoreItem to) => (core.MaterialWhere.Span, to.Material.Name),
            (InsertItem insert, InsertItem to) => (insert.MaterialWhere.Span, to.Material.Name),
            _ => (new TextSpan(was.NameWhere.Span.End, 0), ""),
        };
        var edits = new List<(TextSpan Where, string Text)> { (material, name) };
        var behind = material.End;
        if ((was, now) is (PlyItem { Orientation: var turned }, PlyItem { Orientation: { } way }))
        {
            var at = turned?.Where?.Span ?? new TextSpan(material.End, 0);
            edits.Add((at, turned is null ? $" {way.Written}" : way.Written));
            behind = Math.Max(behind, at.End);
        }

        if ((was, now) is (CoreItem { Thickness: var thick }, CoreItem { Thickness: { } thickness }) && thickness != thick)
        {
            var stated = thick?.Where is { } where && ReferenceEquals(where.Source, was.Where.Source) && where.Span.Start >= material.End && where.Span.End <= was.Where.Span.End;
            edits.Add(stated ? (thick!.Where!.Value.Span, thickness.Written) : (new TextSpan(behind, 0), $" thickness {thickness.Written}"));
        }

        var text = new StringBuilder();
        var next = was.NameWhere.Span.End;
        foreach (var (where, put) in edits.OrderBy(edit => edit.Where.Start).ThenBy(edit => edit.Where.End))
        {
            text.Append(was.Where.Source.Text, next, where.Start - next).Append(put);
            next = where.End;
        }

        text.Append(was.Where.Source.Text, next, was.Where.Span.End - next);
        var line = Blanks().Replace(text.ToString(), " ").Trim();
        var count = $"x{now.Count.ToString(CultureInfo.InvariantCulture)}";
        return was.Count == now.Count ? line : Count().IsMatch(line) ? Count().Replace(line, count, 1) : $"{line} {count}";
    }

    [GeneratedRegex(@"\s+", RegexOptions.CultureInvariant)]
    private static partial Regex Blanks();

    [GeneratedRegex(@"(?<=^|\s)[x×]\d+(?=\s|$)", RegexOptions.CultureInvariant)]
    private static partial Regex Count();
}
