using Recipe.Text;
using UnitsNet;

namespace Recipe.Model;

/// <summary>What was taken from the shelf.</summary>
/// <param name="Material">Name of the material.</param>
/// <param name="Amount">How much, or null.</param>
/// <param name="Written">The amount as written.</param>
/// <param name="Lot">Lot of the tin or roll, or null.</param>
/// <param name="Where">The line.</param>
public sealed record UsedStock(string Material, StockAmount? Amount, string Written, string? Lot, SourceSpan Where);

/// <summary>A pot that was mixed.</summary>
/// <param name="Number">Its number, from 1.</param>
/// <param name="Resin">Resin weighed in.</param>
/// <param name="Hardener">Hardener weighed in.</param>
/// <param name="MixedAt">When it was mixed.</param>
/// <param name="DeadAt">When it was used up or went off.</param>
/// <param name="Where">The line.</param>
public sealed record RecordedPot(int Number, Figure<Mass>? Resin, Figure<Mass>? Hardener, TimeOnly? MixedAt, TimeOnly? DeadAt, SourceSpan Where)
{
    /// <summary>Both together, or null when one was not written down.</summary>
    public Mass? Total => Resin is { } resin && Hardener is { } hardener ? resin.Value + hardener.Value : null;
}

/// <summary>A stretch of wetting out.</summary>
/// <param name="From">When it began.</param>
/// <param name="Until">When it ended.</param>
/// <param name="Over">Area of all plies wetted out in it.</param>
/// <param name="Pieces">Pieces laid in it; 0 when not written down.</param>
/// <param name="Laminators">Pairs of hands; 1 when not written down.</param>
/// <param name="By">Initials, or null.</param>
/// <param name="Where">The line.</param>
public sealed record RecordedWetOut(TimeOnly? From, TimeOnly? Until, Figure<Area>? Over, int Pieces, int Laminators, string? By, SourceSpan Where)
{
    /// <summary>How long it took; over midnight too. Null when a time is missing.</summary>
    public Duration? Took => From is { } from && Until is { } until ? Duration.FromMinutes((until - from).TotalMinutes) : null;
}

/// <summary>The vacuum of a build.</summary>
/// <param name="On">When the pump was switched on.</param>
/// <param name="Reached">The level reached, below ambient or absolute; null when not written down.</param>
/// <param name="Written">What was reached, as written, or null.</param>
/// <param name="Off">When it came off.</param>
/// <param name="Where">The line.</param>
public sealed record RecordedVacuum(TimeOnly? On, VacuumLevel? Reached, string? Written, TimeOnly? Off, SourceSpan Where);

/// <summary>Resin that a layer of the bag carried away.</summary>
/// <param name="Material">Name of the consumable.</param>
/// <param name="Mass">How much heavier it came off than it went on.</param>
/// <param name="Over">Its area on the laminate.</param>
/// <param name="Where">The line.</param>
public sealed record RecordedPickup(string Material, Figure<Mass> Mass, Figure<Area> Over, SourceSpan Where);

/// <summary>Something wrong with a part.</summary>
/// <param name="What">In words, or a code of <see cref="DefectCodes"/>.</param>
/// <param name="Code">The code it begins with, or null.</param>
/// <param name="At">Where on the part, or null.</param>
/// <param name="Size">How large, or null.</param>
/// <param name="Where">The line.</param>
public sealed record RecordedDefect(string What, string? Code, string? At, Figure<Length>? Size, SourceSpan Where);

/// <summary>Something done otherwise than the recipe says.</summary>
/// <param name="What">In words.</param>
/// <param name="Because">Why, or null.</param>
/// <param name="Where">The line.</param>
public sealed record RecordedDeviation(string What, string? Because, SourceSpan Where);

/// <summary>What becomes of a part.</summary>
public enum Disposition
{
    /// <summary>It is used as it is.</summary>
    Use,

    /// <summary>It is repaired first.</summary>
    Repair,

    /// <summary>It is scrapped.</summary>
    Scrap,
}

/// <summary>What was decided about a part.</summary>
/// <param name="Decision">What becomes of it.</param>
/// <param name="Because">Why, or null.</param>
/// <param name="By">Initials, or null.</param>
/// <param name="Where">The line.</param>
public sealed record RecordedDisposition(Disposition Decision, string? Because, string? By, SourceSpan Where);

/// <summary>A hold point that was signed.</summary>
/// <param name="Hold">Its name on the traveller: <c>H4</c>.</param>
/// <param name="By">Initials, or null.</param>
/// <param name="At">When, or null.</param>
/// <param name="Where">The line.</param>
public sealed record RecordedSignature(string Hold, string? By, TimeOnly? At, SourceSpan Where);
