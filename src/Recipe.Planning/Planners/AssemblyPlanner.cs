using System.Collections.Immutable;
using Recipe.Planning.Ledger;
using UnitsNet;

namespace Recipe.Planning.Planners;

/// <summary>An assembly while the plan is made: what it is joined of, and all of it with the join, kg.</summary>
internal sealed record AssemblyWork(ImmutableArray<PieceWork> Parts, PieceWork Whole);

/// <summary>A mass with its band, kg.</summary>
internal readonly record struct PieceWork(string Name, double Expected, double Low, double High, Rests On)
{
    public Computed<Banded<Mass>> Publish(PlanLedger ledger) => ledger.Publish(
        new Banded<Mass>(Mass.FromKilograms(Expected), Mass.FromKilograms(Low), Mass.FromKilograms(High)), On);
}

/// <summary>
/// The mass of what is joined of finished parts: theirs, each from a plan of its own, and what the join adds. What their masses rest on, it rests
/// on too.
/// </summary>
/// <remarks>
/// Within one part what differs from line to line evens out (Recipe.Engineering MassBand, JCGM 100). The band of a laminate is the hands, the bag
/// and the room, and those are the same for all parts of an assembly, as they are for two halves of one mould: here the bands are added. The join is taken as weighed.
/// </remarks>
internal static class AssemblyPlanner
{
    private const string Subject = "mass of the part";

    public static AssemblyWork? Work(PlanContext context, JoinWork? join, AssemblyParts above)
    {
        if (!context.Part.IsAssembly || join is null)
        {
            return null;
        }

        var parts = ImmutableArray.CreateBuilder<PieceWork>(join.Join.Parts.Length);
        var within = above.Within(context.Part.Name);
        foreach (var name in join.Join.Parts)
        {
            if (Piece(context, name, within) is not { } piece)
            {
                context.Miss(Subject, $"the mass of {name} is not known");
                return null;
            }

            parts.Add(piece);
        }

        var (expected, low, high, on) = (join.Mass.Si, join.Mass.Si, join.Mass.Si, join.Mass.On);
        foreach (var part in parts)
        {
            (expected, low, high, on) = (expected + part.Expected, low + part.Low, high + part.High, on | part.On);
        }

        return new AssemblyWork(parts.MoveToImmutable(), new PieceWork(context.Part.Name, expected, low, high, on));
    }

    private static PieceWork? Piece(PlanContext context, string name, AssemblyParts within) =>
        within.Plan(name, context.Model) is { TrimmedMass: { Value: var mass } figure } plan
            ? new PieceWork(name, mass.Value.Kilograms, mass.Low.Kilograms, mass.High.Kilograms, Taken(context, plan, figure.RestsOn))
            : null;

    private static Rests Taken(PlanContext context, Plan plan, ImmutableArray<string> keys)
    {
        var on = Rests.None;
        foreach (var assumption in plan.Assumptions)
        {
            on = keys.Contains(assumption.Key, StringComparer.Ordinal) ? on | context.Ledger.Assume(assumption) : on;
        }

        return on;
    }
}
