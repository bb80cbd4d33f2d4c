using System.Collections.Immutable;
using Recipe.Documents.Languages;

namespace Recipe.Documents.Layout;

/// <summary>A piece of a station.</summary>
internal abstract record Block;

/// <summary>A heading inside a station.</summary>
internal sealed record Heading(string Text) : Block;

/// <summary>A paragraph; fine print is for the office, not for the bench.</summary>
internal sealed record Paragraph(Phrase Text, bool Fine = false) : Block;

/// <summary>A space to write in by hand.</summary>
/// <param name="What">What is written there, for a screen reader: "weight".</param>
/// <param name="Unit">The unit printed in the space, or empty.</param>
internal readonly record struct Blank(string What, string Unit = "");

/// <summary>A named value, a space to write in, or both.</summary>
internal sealed record Fact(string Label, Phrase Value, Blank? Blank = null);

/// <summary>Named values, one a line.</summary>
internal sealed record Facts(ImmutableArray<Fact> Items) : Block;

/// <summary>A number that can be read from a metre away.</summary>
/// <param name="Label">What it is.</param>
/// <param name="Value">The number with its unit, or words when it is not known.</param>
/// <param name="Note">The same in other units, or a remark; or null.</param>
/// <param name="Blank">A space to write in, or null.</param>
/// <param name="Alarm">Whether it is out of bounds: marked by shape, not by colour.</param>
internal sealed record KeyNumber(string Label, string Value, string? Note = null, Blank? Blank = null, bool Alarm = false);

/// <summary>A panel of large numbers.</summary>
internal sealed record KeyNumbers(string Caption, ImmutableArray<KeyNumber> Items) : Block;

/// <summary>
/// A hold point: nobody goes on before every check is ticked and every space is filled in. The spaces always end with time
/// and initials: without a reading, a time and a name a hold point is only a wish.
/// </summary>
internal sealed record HoldPoint(string Id, string Title, ImmutableArray<Phrase> Checks, ImmutableArray<Blank> Readings) : Block
{
    /// <summary>The readings, then time and initials.</summary>
    public ImmutableArray<Blank> Blanks(Wording say) => [.. Readings, new Blank(say.Say("Time")), new Blank(say.Say("Initials"))];
}

/// <summary>What can hurt people, or what must stop the work.</summary>
internal sealed record Caution(string Title, ImmutableArray<Phrase> Lines) : Block;

/// <summary>What to do when it goes wrong.</summary>
internal sealed record IfThen(string If, string Then);

/// <summary>The box that a person without a supervisor looks for when it goes wrong.</summary>
internal sealed record IfBox(ImmutableArray<IfThen> Lines) : Block;

/// <summary>A list of points; fine print is for the office, not for the bench.</summary>
internal sealed record BulletList(ImmutableArray<Phrase> Items, bool Fine = false) : Block;

/// <summary>A list of things to tick.</summary>
internal sealed record TickList(ImmutableArray<Phrase> Items) : Block;
