using System.Collections.Immutable;
using Recipe.Engineering;
using Recipe.Model;

namespace Recipe.Planning;

/// <summary>What a figure of the shop's records is.</summary>
public enum LearntKind
{
    /// <summary>Resin that stays in a cloth, share by weight.</summary>
    ResinContent,

    /// <summary>Resin that a layer of the bag carries away, kg/m2.</summary>
    Pickup,

    /// <summary>Time to wet out, s/m2 of each ply for one pair of hands.</summary>
    Pace,

    /// <summary>Resin left in pots, brush and roller, kg.</summary>
    Loss,

    /// <summary>Rise of absolute pressure in the leak check, Pa/s.</summary>
    LeakRise,

    /// <summary>Time from the first mix until the part left the mould, s.</summary>
    Demould,
}

/// <summary>A value that one record gives.</summary>
/// <param name="Build">The record.</param>
/// <param name="Si">The value, SI.</param>
public sealed record LearntValue(BuildRecord Build, double Si);

/// <summary>A figure of this shop, as its records tell it.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Of">Of which material (or, for a pace, by whom); null when it is of the shop as a whole.</param>
/// <param name="Process">For which process; null where that does not matter.</param>
/// <param name="Values">The values, in the order of the builds.</param>
public sealed record LearntFigure(LearntKind Kind, string? Of, Process? Process, ImmutableArray<LearntValue> Values)
{
    /// <summary>What they say together; null for a single value.</summary>
    public Estimate? Estimate { get; } = Values.Length > 1 ? Engineering.Estimate.From([.. Values.Select(value => value.Si)]) : null;

    /// <summary>Whether there are enough of them to conclude anything.</summary>
    public bool IsEnough => Estimate is { IsEnough: true };

    /// <summary>Records whose value does not belong to the others.</summary>
    public IEnumerable<LearntValue> Outliers => (Estimate?.Outliers ?? []).Select(place => Values[place]);

    /// <summary>Whether a line of the shop can hold it, so that plans take it up.</summary>
    public bool IsOfShop => Kind is LearntKind.ResinContent or LearntKind.Pickup or LearntKind.Loss || (Kind == LearntKind.Pace && Of is null);
}
