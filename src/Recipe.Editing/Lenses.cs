using System.Collections.Immutable;
using Recipe.Compiler;
using Recipe.Planning;

namespace Recipe.Editing;

/// <summary>What is shown above each part: what it weighs, how thick it is, whether the job fits the clock; and a way to its papers.</summary>
public static class Lenses
{
    /// <summary>The lines above the parts and variants of a file.</summary>
    public static ImmutableArray<Lens> Of(CompiledFile file)
    {
        ArgumentNullException.ThrowIfNull(file);
        var lenses = ImmutableArray.CreateBuilder<Lens>();
        foreach (var part in file.Parts.Where(part => ReferenceEquals(part.Part.Where.Source, file.Source)))
        {
            var where = part.Part.Where.Span;
            if (Numbers(part.Figures) is { Length: > 0 } numbers)
            {
                lenses.Add(new Lens(where, numbers, LensAction.ShowNumbers, part.Part.Name));
            }

            if (!file.HasErrors)
            {
                lenses.Add(new Lens(where, "Make papers", LensAction.MakePapers, part.Part.Name));
            }

            lenses.Add(new Lens(where, "Compare with the last commit", LensAction.Compare, part.Part.Name));
        }

        return lenses.ToImmutable();
    }

    private static string Numbers(Plan plan)
    {
        var parts = new List<string>();
        if (plan.TrimmedMass is { } mass)
        {
            parts.Add($"{Say.Of(mass.Value.Value)} {(plan.Part.IsAssembly ? "joined" : "trimmed")}");
        }

        if (plan.Laminate is { } laminate)
        {
            parts.Add(Say.Of(laminate.Thickness.Value));
        }

        if (plan.Resin is { } resin)
        {
            parts.Add($"mix {Say.Of(resin.ToMix.Value)}");
        }

        if (plan.Clock is { FilmLife: { } life } clock)
        {
            var left = WholeMinutes.Left(life.Value, clock.Need.Value);
            parts.Add(left.Seconds >= 0 ? $"{Say.Of(left)} left on the clock" : $"{Say.Of(-left)} too late");
        }

        return string.Join(", ", parts);
    }
}
