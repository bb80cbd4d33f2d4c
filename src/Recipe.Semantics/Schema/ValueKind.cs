using System.Collections.Immutable;
using Recipe.Text.Units;

namespace Recipe.Semantics.Schema;

/// <summary>What a place on a line takes. Data only: the reader knows how to read each kind.</summary>
/// <param name="Noun">What it is, with its article: <c>a length</c>.</param>
public abstract record ValueKind(string Noun);

/// <summary>A quantity with a unit.</summary>
/// <param name="Noun">What it is.</param>
/// <param name="Dimension">Its dimension. A temperature is always an absolute one: no word of the language takes a bare difference.</param>
/// <param name="Units">The units people use for it, the likeliest first.</param>
public sealed record QuantityKind(string Noun, Dimension Dimension, ImmutableArray<string> Units) : ValueKind(Noun)
{
    /// <summary>The SI value must be at least this.</summary>
    public double? AtLeast { get; init; }

    /// <summary>The SI value must be more than this.</summary>
    public double? MoreThan { get; init; }

    /// <summary>The SI value must be at most this.</summary>
    public double? AtMost { get; init; }

    /// <summary>Whether <c>18 to 25 degC</c> may stand here.</summary>
    public bool TakesRange { get; init; }

    /// <summary>Whether one value alone is too little: the two ends say two things.</summary>
    public bool NeedsRange { get; init; }

    /// <summary>Whether the range may run down (the two diameters of a cone).</summary>
    public bool RangeRunsEitherWay { get; init; }

    /// <summary>Whether <c>140 g +/- 10 g</c> may stand here.</summary>
    public bool TakesTolerance { get; init; }

    /// <summary>A word that may stand instead of the quantity: <c>room</c>.</summary>
    public string? OrWord { get; init; }
}

/// <summary>A percentage of one plain thing, <paramref name="AtLeast"/> to <paramref name="AtMost"/> (1 is 100 %).</summary>
public sealed record ShareKind(string Noun, double AtMost = 1, double AtLeast = 0) : ValueKind(Noun);

/// <summary>What hangs on a test piece: a mass, whose weight it is, or a force.</summary>
public sealed record WeightKind() : ValueKind("a mass or a force");

/// <summary>How much is resin or fibre, and of what: <c>45 % by weight</c>.</summary>
/// <param name="Noun">What it is.</param>
/// <param name="OfFibre">Whether the share is that of the fibre (or else of the resin).</param>
public sealed record ContentKind(string Noun, bool OfFibre) : ValueKind(Noun);

/// <summary>A resin content or a range of them: <c>42 % by weight</c>, <c>38 to 46 % by weight</c>.</summary>
public sealed record ContentRangeKind() : ValueKind("a resin content or a range of it");

/// <summary>A whole number without a unit.</summary>
public sealed record CountKind(string Noun, int AtLeast = 1) : ValueKind(Noun);

/// <summary>A plain number without a unit.</summary>
public sealed record NumberKind(string Noun, double AtLeast, double AtMost) : ValueKind(Noun);

/// <summary>A mix ratio: <c>100:30 by weight</c>, <c>2 % of resin by weight</c>.</summary>
public sealed record MixKind() : ValueKind("a mix ratio");

/// <summary>A vacuum level with its convention.</summary>
/// <param name="OnlyAbsolute">Whether only <c>absolute</c> makes sense here.</param>
public sealed record VacuumKind(bool OnlyAbsolute = false) : ValueKind("a vacuum level");

/// <summary>Two or three lengths with <c>x</c> between them.</summary>
public sealed record SizeKind(string Noun, int Sides) : ValueKind(Noun);

/// <summary>How fibres lie: <c>0/90</c>, <c>+/-45</c>, <c>30</c>, <c>random</c>.</summary>
public sealed record OrientationKind() : ValueKind("an orientation");

/// <summary>One of a few words.</summary>
public sealed record ChoiceKind(string Noun, ImmutableArray<Choice> Choices) : ValueKind(Noun)
{
    /// <summary>The choice with this word, or with this regional word.</summary>
    public Choice? Find(string word)
    {
        foreach (var choice in Choices)
        {
            if (choice.Word == word || choice.Regional.Contains(word))
            {
                return choice;
            }
        }

        return null;
    }
}

/// <summary>One word of a choice.</summary>
/// <param name="Word">The word.</param>
/// <param name="Doc">What it means, in a few words.</param>
public sealed record Choice(string Word, string Doc)
{
    /// <summary>Other words for it that are understood and answered with a fix.</summary>
    public ImmutableArray<string> Regional { get; init; } = [];
}

/// <summary>Any one word.</summary>
public sealed record AnyWordKind(string Noun) : ValueKind(Noun);

/// <summary>The name of something declared elsewhere.</summary>
/// <param name="Noun">What it names.</param>
/// <param name="Space">In which space it is looked up.</param>
/// <param name="Keywords">For a material: the words it may have been declared with.</param>
public sealed record NameRefKind(string Noun, NameKind Space, ImmutableArray<string> Keywords) : ValueKind(Noun);

/// <summary>A new name.</summary>
public sealed record NewNameKind(string Noun, NameKind Space) : ValueKind(Noun);

/// <summary>A text in quotes.</summary>
public sealed record TextKind(string Noun) : ValueKind(Noun);

/// <summary>Words and quantities kept as written, up to the next clause of the line.</summary>
public sealed record FreeKind(string Noun) : ValueKind(Noun);

/// <summary>A date, ISO 8601.</summary>
public sealed record DateKind(string Noun) : ValueKind(Noun);

/// <summary>A time of day, <c>09:00</c>.</summary>
public sealed record TimeOfDayKind() : ValueKind("a time of day");

/// <summary>Money, alone or for a unit of something.</summary>
public sealed record PriceKind() : ValueKind("a price");

/// <summary>An amount on the shelf: mass, area, length, volume or pieces.</summary>
public sealed record AmountKind() : ValueKind("an amount");

/// <summary>An area, or a share of the surface.</summary>
public sealed record CoverKind() : ValueKind("an area or a share of the surface");

/// <summary>A quantity of any dimension, or a plain number.</summary>
public sealed record AnyQuantityKind() : ValueKind("a number or a quantity");
