using System.Collections.Immutable;
using Recipe.Text;

namespace Recipe.Model;

/// <summary>An <c>explore</c>: a part, what may be chosen in it, what it has to keep, what is wanted of it.</summary>
public sealed record Study
{
    /// <summary>The most candidates that are tried.</summary>
    public const long MostCandidates = 10_000_000;

    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>Where its name is declared.</summary>
    public required SourceSpan Where { get; init; }

    /// <summary>A title for papers, or null.</summary>
    public string? Title { get; init; }

    /// <summary>The part or variant as it is written; null when there is none of that name.</summary>
    public Part? Part { get; init; }

    /// <summary>The choices, in the order they are written. The candidates are every way to make all of them.</summary>
    public ImmutableArray<StudyChoice> Choices { get; init; } = [];

    /// <summary>What a candidate must keep.</summary>
    public ImmutableArray<StudyLimit> Limits { get; init; } = [];

    /// <summary>What is wanted of it, in the order it is written.</summary>
    public ImmutableArray<StudyWant> Wants { get; init; } = [];

    /// <summary>Whether all of it was understood and it can be run.</summary>
    public bool IsWhole { get; init; }

    /// <summary>What papers call it.</summary>
    public string Label => Title ?? Name;

    /// <summary>The figures that are limited or wanted, each once: the wanted ones first, then the others, as they are written.</summary>
    public ImmutableArray<PartFigure> Figures => [.. Wants.Select(want => want.Figure).Concat(Limits.Select(limit => limit.Figure)).Distinct()];

    /// <summary>
    /// How many candidates there are: the product of the options. Never more than a long holds; <see cref="MostCandidates"/> is the limit of what is tried.
    /// </summary>
    public long Candidates
    {
        get
        {
            var product = 1L;
            foreach (var choice in Choices)
            {
                product = choice.Options.Length == 0 || product > long.MaxValue / choice.Options.Length ? long.MaxValue : product * choice.Options.Length;
            }

            return product;
        }
    }

    /// <summary>Which option of each choice a candidate takes. The last choice changes fastest, like the last digit of a number.</summary>
    /// <param name="candidate">From 0 to <see cref="Candidates"/>, that one excluded.</param>
    public ImmutableArray<int> OptionsOf(long candidate)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(candidate);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(candidate, Candidates);
        var options = new int[Choices.Length];
        for (var i = options.Length - 1; i >= 0; i--)
        {
            (candidate, var option) = Math.DivRem(candidate, Choices[i].Options.Length);
            options[i] = (int)option;
        }

        return ImmutableArray.Create(options);
    }

    /// <summary>The part that a candidate is.</summary>
    /// <exception cref="InvalidOperationException">The study names no part.</exception>
    public Part PartOf(ImmutableArray<int> options)
    {
        var part = Part ?? throw new InvalidOperationException("A study without a part has no candidates.");

        // Where it starts from comes first, wherever it is written: it would undo what was done before.
        foreach (var starts in (bool[])[true, false])
        {
            for (var i = 0; i < Choices.Length; i++)
            {
                var edit = Choices[i].Options[options[i]].Edit;
                part = edit is StartFrom == starts ? edit.Apply(part) : part;
            }
        }

        return part;
    }

    /// <summary>
    /// Whether another candidate is the same part: a choice is made in a line that is left out. The one that makes the first choice there
    /// stands for all of them.
    /// </summary>
    public bool IsRepeated(ImmutableArray<int> options)
    {
        for (var i = 0; i < Choices.Length; i++)
        {
            if (Choices[i].Ply is { } ply && options[i] > 0 && !Choices[i].PutsLine && IsLeftOut(ply, options))
            {
                return true;
            }
        }

        return false;
    }

    private bool IsLeftOut(string ply, ImmutableArray<int> options)
    {
        for (var i = 0; i < Choices.Length; i++)
        {
            if (Choices[i].Ply == ply && Choices[i].PutsLine && Choices[i].Options[options[i]].Edit is RepeatLine { Count: 0 } or KeepAsIs)
            {
                return true;
            }
        }

        return false;
    }
}

/// <summary>One thing that may be chosen.</summary>
/// <param name="What">The word behind <c>choose</c>: <c>material</c>, <c>resin-content</c>.</param>
/// <param name="Ply">The line of the ply list that it is about, or null.</param>
/// <param name="Options">What there is to choose from, in order; at least one.</param>
/// <param name="Where">The line.</param>
public sealed record StudyChoice(string What, string? Ply, ImmutableArray<StudyOption> Options, SourceSpan Where)
{
    /// <summary>Whether it decides if the line is there at all.</summary>
    public bool PutsLine => What is "repeats" or "insert";

    /// <summary>What people call it: <c>material of body</c>.</summary>
    public string Label => Ply is null ? What : $"{What} of {Ply}";
}

/// <summary>One of the things to choose from.</summary>
/// <param name="Written">As it is written.</param>
/// <param name="Edit">What it does to the part.</param>
public sealed record StudyOption(string Written, PartEdit Edit);

/// <summary>A figure that a candidate must keep within.</summary>
/// <param name="Figure">The figure.</param>
/// <param name="AtLeast">No less than this, SI (money in the shop's currency); null when it may be as little as it likes.</param>
/// <param name="AtMost">No more than this; null when it may be as much as it likes.</param>
/// <param name="Written">As it is written.</param>
/// <param name="Where">The line.</param>
public sealed record StudyLimit(PartFigure Figure, double? AtLeast, double? AtMost, string Written, SourceSpan Where)
{
    /// <summary>ISO 4217 code of a limit of money; null for others.</summary>
    public string? Currency { get; init; }

    /// <summary>Whether a value keeps it.</summary>
    public bool Holds(double value) => !(value < AtLeast) && !(value > AtMost);
}

/// <summary>A figure that is wanted small or large.</summary>
/// <param name="Figure">The figure.</param>
/// <param name="Least">Whether as little of it as can be is wanted, or as much.</param>
/// <param name="Where">The line.</param>
public sealed record StudyWant(PartFigure Figure, bool Least, SourceSpan Where)
{
    /// <summary>The value so that less is better.</summary>
    public double Cost(double value) => Least ? value : -value;
}
