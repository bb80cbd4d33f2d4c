using System.Collections.Immutable;
using Recipe.Documents;
using Recipe.Syntax;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Compiler.Comparing;

/// <summary>Compares two versions of a file.</summary>
internal static class FileComparer
{
    // Two parts of different names are one that was renamed when at least so much of their lines is the same.
    private const double AlikeEnough = 0.6;

    /// <summary>Compares them, the texts they use included.</summary>
    /// <param name="versions">The file in both versions.</param>
    /// <param name="today">The day, as the workspaces were given it.</param>
    /// <param name="only">Only the part of this name in the later version, with the lines that belong to no other part; all when null.</param>
    public static ComparedFile Of(FileVersions versions, DateOnly? today, string? only = null)
    {
        var (before, after) = (versions.Before, versions.After);
        var pairs = Pairs(before, after);
        var wanted = pairs.Where(pair => only is null || pair.After?.Part.Name == only);
        var others = pairs.Except(wanted).Select(pair => WrittenChange.ThingOf((pair.After ?? pair.Before)!.Part)).ToHashSet(StringComparer.Ordinal);
        return new ComparedFile(
            versions.BeforeName,
            versions.AfterName,
            [.. wanted.Select(pair => new ComparedPart(Input(before, pair.Before), Input(after, pair.After)))],
            [.. Written(before, after, pairs).Where(line => !others.Contains(line.Thing))])
        {
            Name = (after ?? before)?.Source.Name ?? versions.AfterName,
            Unread = only is null ? (Unread(before), Unread(after)) : ([], []),
        };

        PaperInput? Input(CompiledFile? file, CompiledPart? part) => part is null ? null : BenchPapers.InputFor(file!, part, new PaperWish { Today = today });
    }

    /// <summary>What a part is compared with on its change note; null when the earlier file has no such part.</summary>
    public static EarlierVersion? EarlierOf(string part, FileVersions versions, DateOnly? today)
    {
        var compared = Of(versions, today, part);
        return compared.Parts is [{ Before: { } earlier }, ..] ? new EarlierVersion(earlier, versions.BeforeName, compared.Lines) : null;
    }

    /// <summary>The parts of both versions: by name, then by what is written in them; what is gone comes last.</summary>
    private static List<(CompiledPart? Before, CompiledPart? After)> Pairs(CompiledFile? before, CompiledFile? after)
    {
        List<CompiledPart> old = [.. before?.Parts ?? []];
        var pairs = new List<(CompiledPart? Before, CompiledPart? After)>();
        foreach (var now in after?.Parts ?? [])
        {
            var was = old.Find(part => part.Part.Name == now.Part.Name);
            pairs.Add((was, now));
            _ = was is not null && old.Remove(was);
        }

        for (var i = 0; i < pairs.Count && old.Count > 0; i++)
        {
            if (pairs[i].Before is null && MostAlike(old, before!, pairs[i].After!, after!) is { } same)
            {
                pairs[i] = (same, pairs[i].After);
                old.Remove(same);
            }
        }

        pairs.AddRange(old.Select(gone => ((CompiledPart?)gone, (CompiledPart?)null)));
        return pairs;
    }

    private static CompiledPart? MostAlike(List<CompiledPart> old, CompiledFile before, CompiledPart now, CompiledFile after)
    {
        var lines = LinesOf(after, now);
        var best = old.Select(part => (Part: part, Share: Alike(LinesOf(before, part), lines))).MaxBy(pair => pair.Share);
        return best.Share >= AlikeEnough ? best.Part : null;
    }

    private static double Alike(List<string> a, List<string> b) => a.Count + b.Count == 0 ? 0 : 2.0 * Alignment.Of(a, b).Length / (a.Count + b.Count);

    private static List<string> LinesOf(CompiledFile file, CompiledPart part)
    {
        var thing = WrittenChange.ThingOf(part.Part);
        return [.. WrittenLine.Of(file.Tree).Where(line => line.Word == thing).Take(1).SelectMany(Leaves)];
    }

    private static IEnumerable<string> Leaves(WrittenLine line) => line.Inside.IsEmpty ? [line.Key] : line.Inside.SelectMany(Leaves);

    private static ImmutableArray<Finding> Unread(CompiledFile? file) => file is null ? [] : [.. file.Tree.Findings, .. file.Bound.Findings];

    // A part under another name is compared as if it had kept the one it has now.
    private static IEnumerable<WrittenChange> Written(CompiledFile? before, CompiledFile? after, List<(CompiledPart? Before, CompiledPart? After)> pairs)
    {
        var renamed = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var (was, now) in pairs)
        {
            if (was is not null && now is not null && was.Part.Name != now.Part.Name)
            {
                renamed[was.Part.Name] = now.Part.Name;
            }
        }

        var own = WrittenComparison.Of([.. LinesOf(before?.Tree).Select(line => Renamed(line, renamed))], LinesOf(after?.Tree));
        return own.Concat(UsedPairs(before?.Used ?? [], after?.Used ?? []).SelectMany(pair => WrittenComparison.Of(LinesOf(pair.Before), LinesOf(pair.After))
            .Select(line => line with { From = (pair.After ?? pair.Before)!.Source.Name })));
    }

    private static ImmutableArray<WrittenLine> LinesOf(SyntaxTree? tree) => tree is null ? [] : WrittenLine.Of(tree);

    // The versions may stand in different folders: a text is known by its name without them.
    private static IEnumerable<(SyntaxTree? Before, SyntaxTree? After)> UsedPairs(ImmutableArray<SyntaxTree> before, ImmutableArray<SyntaxTree> after)
    {
        var old = before.ToList();
        foreach (var now in after)
        {
            var was = old.Find(tree => tree.Source.Name == now.Source.Name) ?? old.Find(tree => PathNames.FileName(tree.Source.Name) == PathNames.FileName(now.Source.Name));
            yield return (was, now);
            _ = was is not null && old.Remove(was);
        }

        foreach (var gone in old)
        {
            yield return (gone, null);
        }
    }

    private static WrittenLine Renamed(WrittenLine line, Dictionary<string, string> names) =>
        line.Word.Split(' ') is ["part" or "variant", var name] && names.TryGetValue(name, out var now)
            ? line with { Word = line.Word[..^name.Length] + now, Key = line.Key[..(line.Word.Length - name.Length)] + now + line.Key[line.Word.Length..] }
            : line;
}
