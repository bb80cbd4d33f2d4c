using Recipe.Semantics.Findings;

namespace Recipe.Semantics.Binding;

/// <summary>Follows the <c>after</c> of ply lines.</summary>
internal static class PlyOrder
{
    /// <summary>
    /// The plies in laying order: lines without <c>after</c> in the order written; one with <c>after</c> directly on the line it
    /// names, behind others that lie on the same one.
    /// </summary>
    public static List<Ply> Arrange(List<Ply> plies)
    {
        var byName = new Dictionary<string, Ply>(StringComparer.Ordinal);
        foreach (var ply in plies)
        {
            byName.TryAdd(ply.Name, ply);
        }

        var roots = new List<Ply>();
        var above = new Dictionary<Ply, List<Ply>>(ReferenceEqualityComparer.Instance);
        foreach (var ply in plies)
        {
            if (Below(ply, byName) is not { } below)
            {
                roots.Add(ply);
            }
            else if (above.TryGetValue(below, out var others))
            {
                others.Add(ply);
            }
            else
            {
                above.Add(below, [ply]);
            }
        }

        var arranged = new List<Ply>(plies.Count);
        var pending = new Stack<Ply>(Enumerable.Reverse(roots));
        while (pending.TryPop(out var ply))
        {
            arranged.Add(ply);
            if (above.TryGetValue(ply, out var others))
            {
                for (var i = others.Count - 1; i >= 0; i--)
                {
                    pending.Push(others[i]);
                }
            }
        }

        AddCircles(plies, arranged);
        return arranged;
    }

    /// <summary>Lines that wait for each other are never reached from a root; they go to the end.</summary>
    private static void AddCircles(List<Ply> plies, List<Ply> arranged)
    {
        if (arranged.Count == plies.Count)
        {
            return;
        }

        var reached = new HashSet<Ply>(arranged, ReferenceEqualityComparer.Instance);
        foreach (var ply in plies)
        {
            if (!reached.Contains(ply))
            {
                var after = ply.Line.Reading.Find("after")!;
                ply.Line.Context.Sink.Report(UnknownPly.Circle(after.Where, ply.Name, after.Word!));
                arranged.Add(ply);
            }
        }
    }

    /// <summary>The line that a line lies on by its <c>after</c>; null when it has none, or names one that is not there.</summary>
    private static Ply? Below(Ply ply, Dictionary<string, Ply> byName)
    {
        if (ply.Line.Reading.Find("after") is not { Word: { } after } argument)
        {
            return null;
        }

        var below = byName.GetValueOrDefault(after);
        ply.Line.Context.Sink.Use(NameKind.Ply, after, argument.Where, below?.NameWhere);
        if (below is null)
        {
            ply.Line.Context.Sink.Report(UnknownPly.Create(argument.Where, after, byName.Keys));
        }

        return below;
    }
}
