using System.Collections.Immutable;
using Recipe.Model;

namespace Recipe.Planning;

/// <summary>A build record beside the recipe as it stands today.</summary>
/// <param name="record">The record.</param>
/// <param name="part">The part as it stands today.</param>
/// <param name="revisionNow">Revision of its recipe today, or null when not known.</param>
/// <param name="now">The figures of today's plan, when they are asked for; all records of a part share them.</param>
public sealed class LoggedBuild(BuildRecord record, Part part, string? revisionNow, Lazy<PlannedFigures> now)
{

    /// <summary>The build records that stand in a file, in order.</summary>
    /// <param name="model">What the file means.</param>
    /// <param name="revisionOf">Revision of a part's recipe today, or null when not known.</param>
    /// <param name="planOf">The plan of a part where it is made already when somebody asks for its figures; else, and where not given, they are planned then.</param>
    public static ImmutableArray<LoggedBuild> Of(RecipeModel model, Func<Part, string?> revisionOf, Func<Part, Plan?>? planOf = null)
    {
        ArgumentNullException.ThrowIfNull(model);
        ArgumentNullException.ThrowIfNull(revisionOf);
        var builds = ImmutableArray.CreateBuilder<LoggedBuild>(model.Builds.Length);
        var planned = new Dictionary<Part, Lazy<PlannedFigures>>(ReferenceEqualityComparer.Instance);
        foreach (var record in model.Builds)
        {
            if ((model.Parts.FirstOrDefault(part => part.Name == record.Part) ?? model.UsedParts.GetValueOrDefault(record.Part)) is { } part)
            {
                if (!planned.TryGetValue(part, out var now))
                {
                    planned.Add(part, now = new Lazy<PlannedFigures>(() => PlannedFiguresOf.Plan(planOf?.Invoke(part) ?? Planner.Plan(part, model, PlannedFiguresOf.Pieces))));
                }

                builds.Add(new LoggedBuild(record, part, revisionOf(part), now));
            }
        }

        return builds.ToImmutable();
    }

    /// <summary>The record.</summary>
    public BuildRecord Record { get; } = record;

    /// <summary>The part as it stands today.</summary>
    public Part Part { get; } = part;

    /// <summary>Revision of its recipe today, or null when not known.</summary>
    public string? RevisionNow { get; } = revisionNow;

    /// <summary>What the plan says today.</summary>
    public PlannedFigures Now => now.Value;

    /// <summary>Whether it was built from the recipe as it stands, as far as the record tells: one that names no revision is taken to be.</summary>
    public bool IsOfToday => Record.Revision is null || Record.Revision.Value == RevisionNow;

    /// <summary>What the plan said when it was built: as the record kept it, else today's where the revision is the same; null when nobody knows any more.</summary>
    public PlannedFigures? Planned => Record.Planned ?? (IsOfToday ? Now : null);
}
