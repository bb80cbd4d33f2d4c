using System.Collections.Immutable;
using System.Globalization;

namespace Recipe.Compiler.Previewing;

/// <summary>The difference of two texts line by line, in the unified form that <c>diff -u</c> and <c>git diff</c> write.</summary>
public static class UnifiedDiff
{
    private const int Context = 3;

    /// <summary>The lines of the difference: hunk heads (<c>@@</c>), lines that stay (blank), go (<c>-</c>) and come (<c>+</c>). None when the texts are the same.</summary>
    /// <param name="before">The earlier text; its lines may end in any way.</param>
    /// <param name="after">The later text.</param>
    public static ImmutableArray<string> Of(string before, string after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        var lines = MarkedLines.Of(Split(before), Split(after));
        var said = ImmutableArray.CreateBuilder<string>();
        for (var i = 0; i < lines.Count;)
        {
            if (lines[i].Mark == ' ')
            {
                i++;
                continue;
            }

            // A hunk ends where more than twice the context stays the same.
            var (from, last) = (Math.Max(0, i - Context), i);
            for (var j = i; j < lines.Count && j <= last + (2 * Context); j++)
            {
                last = lines[j].Mark == ' ' ? last : j;
            }

            var to = Math.Min(lines.Count, last + 1 + Context);
            Hunk(lines, from, to, said);
            i = to;
        }

        return said.ToImmutable();
    }

    private static void Hunk(List<(char Mark, string Text)> lines, int from, int to, ImmutableArray<string>.Builder said)
    {
        var (oldAt, newAt) = (Count(0, from, '+'), Count(0, from, '-'));
        var (oldCount, newCount) = (Count(from, to, '+'), Count(from, to, '-'));
        said.Add($"@@ -{Range(oldAt, oldCount)} +{Range(newAt, newCount)} @@");
        for (var i = from; i < to; i++)
        {
            said.Add(lines[i].Mark + lines[i].Text);
        }

        int Count(int start, int end, char besides) => lines.Skip(start).Take(end - start).Count(line => line.Mark != besides);
    }

    // An empty range names the line before it.
    private static string Range(int before, int count) => (count, at: before + (count == 0 ? 0 : 1)) switch
    {
        (1, var at) => at.ToString(CultureInfo.InvariantCulture),
        (_, var at) => string.Create(CultureInfo.InvariantCulture, $"{at},{count}"),
    };

    private static string[] Split(string text)
    {
        var lines = text.ReplaceLineEndings("\n").Split('\n');
        return lines is [.., ""] ? lines[..^1] : lines;
    }
}
