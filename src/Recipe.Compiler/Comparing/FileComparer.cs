using System.Collections.Immutable;
using Recipe.Documents;
using Recipe.Text.Findings;

namespace Recipe.Compiler.Comparing;

/// <summary>Compares two versions of a file.</summary>
internal static class FileComparer
{
    // Two parts of different names are one that was renamed when at least so much of their lines is the same.
    private const double AlikeEnough = 0.6;

    /// <summary>Compares them, the texts they use included.</summary>
    /// <param name="before">The earlier version; null when the file is new.</param>
    /// <param name="beforeName">What that version is called.</param>
    /// <param name="after">The later version; null when the file is gone.</param>
    /// <param name="afterName">What that version is called.</param>
    /// <param name="today">The day, as the workspaces were given it.</param>
    public static ComparedFile Of(CompiledFile? before, string beforeName, CompiledFile? after, string afterName, DateOnly? today)
    {
        var old = Inputs(before, today);
        var parts = ImmutableArray.CreateBuilder<ComparedPart>();
        foreach (var now in Inputs(after, today))
        {
            var was = old.Find(input => input.Plan.Part.Name == now.Plan.Part.Name);
            parts.Add(new ComparedPart(was, now));
            _ = was is not null && old.Remove(was);
        }

        for (var i = 0; i < parts.Count; i++)
        {
            if (parts[i] is { Before: null, After: { } now } && before is not null && after is not null
                && old.Where(was => Alike(LineOf(before, was), LineOf(after, now)) >= AlikeEnough).MaxBy(was => Alike(LineOf(before, was), LineOf(after, now))) is { } same)
            {
                parts[i] = new ComparedPart(same, now);
                old.Remove(same);
            }
        }

        parts.AddRange(old.Select(gone => new ComparedPart(gone, null)));
        return new ComparedFile(beforeName, afterName, parts.ToImmutable(), Written(before, after, parts))
        {
            Unread = (Unread(before), Unread(after)),
        };
    }

    private static ImmutableArray<Finding> Unread(CompiledFile? file) => file is null ? [] : [.. file.Tree.Findings, .. file.Bound.Findings];

    /// <summary>What a part is compared with on its change note; null when the earlier file has no such part.</summary>
    public static EarlierVersion? EarlierOf(string part, CompiledFile before, string beforeName, CompiledFile after, DateOnly? today)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        if (before.Parts.FirstOrDefault(known => known.Part.Name == part) is { } same)
        {
            return new EarlierVersion(BenchPapers.InputFor(before, same.Plan, new PaperWish { Today = today }), beforeName, Written(before, after, []));
        }

        // It may have had another name.
        var compared = Of(before, beforeName, after, "", today);
        return compared.Parts.FirstOrDefault(pair => pair.After?.Plan.Part.Name == part)?.Before is { } earlier
            ? new EarlierVersion(earlier, beforeName, compared.Lines)
            : null;
    }

    private static List<PaperInput> Inputs(CompiledFile? file, DateOnly? today) =>
        file is null ? [] : [.. file.Parts.Select(part => BenchPapers.InputFor(file, part.Plan, new PaperWish { Today = today }))];

    private static WrittenLine? LineOf(CompiledFile file, PaperInput input)
    {
        var thing = (input.Plan.Part.VariantOf is null ? "part " : "variant ") + input.Plan.Part.Name;
        return WrittenLine.Of(file.Tree).FirstOrDefault(line => line.Word == thing);
    }

    private static double Alike(WrittenLine? a, WrittenLine? b)
    {
        if (a is null || b is null)
        {
            return 0;
        }

        var (left, right) = (Leaves(a).ToList(), Leaves(b).ToList());
        return left.Count + right.Count == 0 ? 0 : 2.0 * Text.Alignment.Of(left, right).Length / (left.Count + right.Count);
    }

    private static IEnumerable<string> Leaves(WrittenLine line) => line.Inside.IsEmpty ? [line.Key] : line.Inside.SelectMany(Leaves);

    // A part under another name is compared as if it had kept the one it has now.
    private static ImmutableArray<WrittenChange> Written(CompiledFile? before, CompiledFile? after, IEnumerable<ComparedPart> parts)
    {
        var renamed = parts.Where(part => part.IsRenamed).ToDictionary(part => part.Before!.Plan.Part.Name, part => part.Name, StringComparer.Ordinal);
        var changes = ImmutableArray.CreateBuilder<WrittenChange>();
        changes.AddRange(WrittenComparison.Of(
            before is null ? [] : [.. WrittenLine.Of(before.Tree).Select(line => Renamed(line, renamed))],
            after is null ? [] : WrittenLine.Of(after.Tree)));
        var used = (before?.Used ?? []).ToDictionary(tree => tree.Source.Name, StringComparer.Ordinal);
        foreach (var tree in after?.Used ?? [])
        {
            // A used text may come from elsewhere, but it is known by its name.
            var was = used.Values.FirstOrDefault(old => PathNames.FileName(old.Source.Name) == PathNames.FileName(tree.Source.Name));
            changes.AddRange(WrittenComparison.Of(was is null ? [] : WrittenLine.Of(was), WrittenLine.Of(tree)));
        }

        return changes.ToImmutable();
    }

    private static WrittenLine Renamed(WrittenLine line, Dictionary<string, string> names) =>
        line.Word.Split(' ') is ["part" or "variant", var name] && names.TryGetValue(name, out var now)
            ? line with { Word = line.Word[..^name.Length] + now, Key = line.Key[..(line.Word.Length - name.Length)] + now + line.Key[line.Word.Length..] }
            : line;
}
