using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Semantics.Findings;
using Recipe.Semantics.Reading;
using Recipe.Text.Units;
using UnitsNet;

namespace Recipe.Semantics.Binding;

/// <summary>Loads that the stack is compared with. A line that does not make one whole load is reported and left out.</summary>
internal static class LoadBinder
{
    // m/s2, exact (ISO 80000-3).
    private const double StandardGravity = 9.80665;

    private static readonly (string Phrase, string What)[] StripClauses =
        [("strip", "`strip` and its width"), ("span", "`span` and a length"), ("carries", "`carries` and a mass or a force")];

    public static ImmutableArray<StatedLoad> Bind(IEnumerable<Line> lines)
    {
        var loads = ImmutableArray.CreateBuilder<StatedLoad>();
        foreach (var line in lines)
        {
            if (Bind(line) is { } load)
            {
                loads.Add(load);
            }
        }

        return loads.ToImmutable();
    }

    private static StatedLoad? Bind(Line line)
    {
        var reading = line.Reading;
        var isStrip = Array.Exists(StripClauses, clause => reading.WasTried(clause.Phrase));
        if (isStrip && reading.Find("pull") is { } pulled)
        {
            line.Context.Sink.Report(ExtraValue.Create(pulled.Where, "The pull", line.Head, line.Word.Example));
            return null;
        }

        return isStrip ? Strip(line) : Pull(line);
    }

    private static PullLoad? Pull(Line line)
    {
        var pull = line.Figure("pull", Si.Pull);
        if (pull is null && !line.Reading.WasTried("pull"))
        {
            Lacks(line, "`pull`, or `strip`, `span` and `carries`");
        }

        return pull is not null && NameAndDirection(line) is var (name, direction)
            ? new PullLoad { Name = name, Where = line.Where, Direction = direction, Pull = pull }
            : null;
    }

    private static StripLoad? Strip(Line line)
    {
        foreach (var (phrase, what) in StripClauses)
        {
            if (!line.Reading.WasTried(phrase))
            {
                Lacks(line, what);
                return null;
            }
        }

        return line.Figure("strip", Si.Length) is { } width && line.Figure("span", Si.Length) is { } span && Weight(line) is { } weight
            && NameAndDirection(line) is var (name, direction)
            ? new StripLoad { Name = name, Where = line.Where, Direction = direction, Width = width, Span = span, Load = weight }
            : null;
    }

    // What is missing of these two was reported when the line was read.
    private static (string Name, LoadDirection Direction)? NameAndDirection(Line line) =>
        line.Text("name") is { } name && line.Text("direction") is { } direction
            ? (name, direction == "along" ? LoadDirection.Along : LoadDirection.Across)
            : null;

    private static Figure<Force>? Weight(Line line)
    {
        var perUnit = line.Reading.Find("carries")?.Dimension == DimensionNames.Mass ? StandardGravity : 1;
        return line.Figure("carries", si => Force.FromNewtons(si * perUnit));
    }

    // Of a line that lacks its name or direction, or that could not be read whole, enough is said.
    private static void Lacks(Line line, string what)
    {
        if (NameAndDirection(line) is not null && !line.Reading.IsHalfRead)
        {
            line.Context.Sink.Report(MissingValue.Create(line.HeadWhere, line.Head, what, line.Word.Example));
        }
    }
}
