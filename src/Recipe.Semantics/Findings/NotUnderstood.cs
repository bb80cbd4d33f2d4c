using System.Collections.Immutable;
using Recipe.Semantics.Reading;
using Recipe.Semantics.Values;
using Recipe.Text;
using Recipe.Text.Findings;
using Recipe.Text.Units;

namespace Recipe.Semantics.Findings;

/// <summary>A value that its place does not take.</summary>
public static class NotUnderstood
{
    /// <summary>What is the same for every such finding.</summary>
    public static FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC1111",
        Name = "not-understood",
        Severity = Severity.Error,
        Title = "A value of another shape than the line takes",
        Reason = "What cannot be read is left out of the plan.",
        Remedy = "Write the line as its example shows.",
        Source = "common practice",
        BadExample =
            """
            mould lid-mould {
              surface disc diameter 200 mm
              state worn
            }

            """,
        GoodExample =
            """
            mould lid-mould {
              surface disc diameter 200 mm
              state seasoned
            }

            """,
    };

    internal static Finding Shape(SourceSpan where, string head, string noun, string example) =>
        Finding.Of(Descriptor, where, $"`{head}` takes {noun} here, as in `{example}`; {Shown(where)} is something else.");

    /// <summary>A word where a quantity is wanted, and no named value: <c>for overnight</c>.</summary>
    internal static Finding WordForQuantity(SourceSpan where, string head, string noun, string example) =>
        Finding.Of(Descriptor, where, $"`{head}` takes {noun}, a number and its unit, as in `{example}`; {Shown(where)} is none, and no `let` has that name.");

    /// <summary>A word that is not one of a few.</summary>
    internal static Finding Choice(SourceSpan where, string word, string head, IReadOnlyList<string> words)
    {
        var near = Spelling.Nearest(word, words);
        return Finding.Of(Descriptor, where, $"`{head}` takes {Numbers.Or(words)}, not `{word}`.") with
        {
            Fixes = near is null ? [] : [new Fix($"Write {near}", FixSafety.NeedsALook, new TextEdit(where, near))],
        };
    }

    /// <summary>A phrase of which only the beginning stands there.</summary>
    internal static Finding Phrase(SourceSpan where, string phrase, string begun)
    {
        var finding = Finding.Of(Descriptor, where, $"`{begun}` should be `{phrase}`.");
        return phrase.StartsWith(begun + " ", StringComparison.Ordinal) && !phrase.Contains('`', StringComparison.Ordinal)
            ? finding with { Fixes = [new Fix($"Write {phrase}", FixSafety.Safe, new TextEdit(where, phrase))] }
            : finding;
    }

    /// <summary>A name in quotes.</summary>
    internal static Finding Quoted(SourceSpan where, string head, string text)
    {
        var finding = Finding.Of(Descriptor, where, $"`{head}` takes a name here, and names have no quotes.");
        return IsWord(text)
            ? finding with { Fixes = [new Fix("Take the quotes off", FixSafety.Safe, new TextEdit(where, text))] }
            : finding;
    }

    /// <summary>What people write out of habit, and how it is written here: <c>6 pm</c>, <c>18-25 degC</c>, <c>x 2</c>.</summary>
    internal static Finding Habit(SourceSpan where, string written, FixSafety safety = FixSafety.Safe) =>
        Finding.Of(Descriptor, where, $"`{Shown(where)}` is written `{written}`.") with
        {
            Fixes = [new Fix($"Write {written}", safety, new TextEdit(where, written))],
        };

    /// <summary>A count with its sign behind the number: <c>2x</c>.</summary>
    internal static Finding CountTurnedRound(SourceSpan where, int count)
    {
        var written = "x" + count.ToString(System.Globalization.CultureInfo.InvariantCulture);
        return Finding.Of(Descriptor, where, $"`{where.Text}` is written `{written}`: the x stands before the number and touches it.") with
        {
            Fixes = [new Fix($"Write {written}", FixSafety.Safe, new TextEdit(where, written))],
        };
    }

    /// <summary>A name with blanks in it: <c>part winch pocket</c>.</summary>
    internal static Finding NameOfSeveralWords(SourceSpan where, string head, string joined) =>
        Finding.Of(Descriptor, where, $"A name is one word, and `{head}` has `{Shown(where)}`; hyphens join the words of a name: `{joined}`.") with
        {
            Fixes = [new Fix($"Write {joined}", FixSafety.NeedsALook, new TextEdit(where, joined))],
        };

    /// <summary>Two angles on one ply: <c>45 -45</c>.</summary>
    internal static Finding TwoDirections(SourceSpan where, string head, string written) =>
        Finding.Of(
            Descriptor,
            where,
            $"{Shown(where)} are two directions, and `{head}` is one ply: a cloth with fibres both ways is written {written}, two plies stand on two lines.") with
        {
            Fixes = [new Fix($"Write {written}", FixSafety.NeedsALook, new TextEdit(where, written))],
        };

    /// <summary>A pair of which both lie along one line: <c>45/45</c>.</summary>
    internal static Finding OneDirectionTwice(SourceSpan where, string written) =>
        Finding.Of(Descriptor, where, $"{Shown(where)} is one direction twice; a cloth with fibres both ways is written {written}, one with fibres one way has one angle.") with
        {
            Fixes = [new Fix($"Write {written}", FixSafety.NeedsALook, new TextEdit(where, written))],
        };

    /// <summary>A size whose x touches the number behind it: <c>60 mm x40 mm</c>.</summary>
    internal static Finding SizeTogether(SourceSpan where, string number) =>
        Finding.Of(Descriptor, where, $"`{where.Text}` is a count; in a size a blank stands on both sides of the x: `x {number}`.") with
        {
            Fixes = [new Fix($"Write x {number}", FixSafety.Safe, new TextEdit(where, "x " + number))],
        };

    /// <summary>A pressure below ambient where only an absolute one makes sense.</summary>
    /// <param name="where">The pressure with its words.</param>
    /// <param name="phrase">The words before it: <c>ultimate</c>.</param>
    /// <param name="written">The pressure as written, without the words.</param>
    /// <param name="pascals">The same in Pa.</param>
    /// <param name="unit">The author's unit.</param>
    /// <param name="air">The air over the shop.</param>
    internal static Finding BelowAmbient(SourceSpan where, string phrase, string written, double pascals, Unit unit, StandardAir air)
    {
        var left = air.LeftBelow(pascals, unit).ToArray();
        return left.Length == 0
            ? Finding.Of(Descriptor, where, $"`{phrase}` takes an absolute pressure, and {written} below ambient is more than the air has: {air.SaidFrom(unit)}.")
            : Finding.Of(Descriptor, where, $"`{phrase}` takes an absolute pressure: {written} below ambient leaves {string.Join(", or ", left.Select(one => $"{one.Absolute} absolute of {one.Air}"))}.") with
            {
                Fixes = WriteAbsolute(where, left),
            };
    }

    /// <summary>The fixes that write what is left of an air as an absolute pressure.</summary>
    /// <param name="where">What is written there now.</param>
    /// <param name="left">What is left, and of which air.</param>
    internal static ImmutableArray<Fix> WriteAbsolute(SourceSpan where, IEnumerable<(string Absolute, string Air)> left) =>
        [.. left.Select(one => new Fix($"Write {one.Absolute} absolute, counted from {one.Air}", FixSafety.NeedsALook, new TextEdit(where, one.Absolute + " absolute")))];

    internal static Finding NotANumber(SourceSpan where) =>
        Finding.Of(Descriptor, where, $"{Shown(where)} is not one number that can be reckoned with.");

    internal static Finding NoBlock(SourceSpan where, string head) =>
        Finding.Of(Descriptor, where, $"`{head}` takes no block in braces.");

    internal static Finding NotHere(SourceSpan where, string what, string instead) =>
        Finding.Of(Descriptor, where, $"{what} cannot stand here; {instead}.");

    private static string Shown(SourceSpan where)
    {
        var text = where.Text;
        return text.Length <= 40 && !text.Contains('\n', StringComparison.Ordinal) ? text : text[..Math.Min(text.Length, 30)].ReplaceLineEndings(" ") + "...";
    }

    private static bool IsWord(string text) =>
        text.Length > 0 && (char.IsLetter(text[0]) || text[0] == '_') && text[^1] != '-' && !text.Contains("--", StringComparison.Ordinal)
        && text.All(c => char.IsLetterOrDigit(c) || c is '_' or '-');
}
