using System.Collections.Immutable;

namespace Recipe.Semantics.Schema;

/// <summary>A piece of a line pattern.</summary>
public abstract record LinePart;

/// <summary>A value that stands by its position.</summary>
/// <param name="Name">The key it is read under; never shown.</param>
/// <param name="Kind">What it takes.</param>
public sealed record ArgumentPattern(string Name, ValueKind Kind) : LinePart
{
    /// <summary>Whether it may be left out.</summary>
    public bool IsOptional { get; init; }

    /// <summary>Whether several may follow each other.</summary>
    public bool IsRepeated { get; init; }

    /// <summary>Whether the name of one ply must stand here: a ply may be called <c>face</c>, which behind its name would begin a clause.</summary>
    public bool IsPlyName => !IsOptional && !IsRepeated && Kind is (NewNameKind { Space: NameKind.Ply } or NameRefKind { Space: NameKind.Ply });
}

/// <summary>A word or two with a value after them, anywhere behind the positional values: <c>wait 30 min</c>.</summary>
/// <param name="Phrase">The words, a blank between them.</param>
/// <param name="Kind">What follows.</param>
/// <param name="Doc">What it says, in a few words.</param>
public sealed record ClausePattern(string Phrase, ValueKind Kind, string Doc) : LinePart
{
    /// <summary>The words one by one.</summary>
    public ImmutableArray<string> Words { get; } = [.. Phrase.Split(' ')];

    /// <summary>Whether the line makes no sense without it.</summary>
    public bool IsRequired { get; init; }

    /// <summary>Whether it may stand more than once.</summary>
    public bool IsRepeated { get; init; }
}

/// <summary>A word or two that say something by themselves: <c>under vacuum</c>.</summary>
/// <param name="Phrase">The words, a blank between them.</param>
/// <param name="Doc">What it says, in a few words.</param>
public sealed record FlagPattern(string Phrase, string Doc) : LinePart
{
    /// <summary>The words one by one.</summary>
    public ImmutableArray<string> Words { get; } = [.. Phrase.Split(' ')];
}

/// <summary>A count written <c>x2</c>, anywhere behind the positional values.</summary>
/// <param name="Doc">What is counted.</param>
public sealed record CountPattern(string Doc) : LinePart;

/// <summary>What may stand on a line behind its head.</summary>
public sealed record LinePattern
{
    /// <summary>Nothing at all.</summary>
    public static LinePattern Bare { get; } = new();

    /// <summary>Puts a pattern together.</summary>
    public LinePattern(params ReadOnlySpan<LinePart> parts)
    {
        var arguments = ImmutableArray.CreateBuilder<ArgumentPattern>();
        var clauses = ImmutableArray.CreateBuilder<ClausePattern>();
        var flags = ImmutableArray.CreateBuilder<FlagPattern>();
        foreach (var part in parts)
        {
            switch (part)
            {
                case ArgumentPattern argument:
                    arguments.Add(argument);
                    break;
                case ClausePattern clause:
                    clauses.Add(clause);
                    break;
                case FlagPattern flag:
                    flags.Add(flag);
                    break;
                case CountPattern count:
                    Count = count;
                    break;
            }
        }

        Arguments = arguments.ToImmutable();
        Clauses = clauses.ToImmutable();
        Flags = flags.ToImmutable();
    }

    /// <summary>Values by position.</summary>
    public ImmutableArray<ArgumentPattern> Arguments { get; }

    /// <summary>Clauses, in any order.</summary>
    public ImmutableArray<ClausePattern> Clauses { get; }

    /// <summary>Flags, in any order.</summary>
    public ImmutableArray<FlagPattern> Flags { get; }

    /// <summary>The <c>xN</c> count, when the line takes one.</summary>
    public CountPattern? Count { get; }
}

/// <summary>One of several forms of a line, told apart by the first word: <c>disc diameter 200 mm</c>.</summary>
/// <param name="Word">The first word.</param>
/// <param name="Doc">What it is.</param>
/// <param name="Line">What follows that word.</param>
/// <param name="Example">The whole line.</param>
public sealed record LineForm(string Word, string Doc, LinePattern Line, string Example);
