using System.Collections.Immutable;
using Recipe.Documents.Bags;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Model;
using Recipe.Planning;
using UnitsNet;

namespace Recipe.Documents.Shared;

/// <summary>What every paper needs at hand while it is being made.</summary>
internal sealed class PaperContext
{
    private readonly ImmutableDictionary<string, int> _assumptionNumbers;

    public PaperContext(PaperInput input)
    {
        Input = input;
        Text = new QuantityText(input.Plan.Shop, input.Units)
        {
            // The author's gauge, unless the papers were asked for in other units.
            GaugeInInches = input.Units is null && input.Plan.Part.Vacuum?.Draw is { } draw && WrittenText.IsUs(draw.Written),
        };
        Wording = WordingOf(input);
        _assumptionNumbers = input.Plan.Assumptions
            .Select((assumption, i) => (assumption.Key, Number: i + 1))
            .DistinctBy(pair => pair.Key, StringComparer.Ordinal)
            .ToImmutableDictionary(pair => pair.Key, pair => pair.Number, StringComparer.Ordinal);
    }

    public PaperInput Input { get; }

    public Plan Plan => Input.Plan;

    public Part Part => Plan.Part;

    /// <summary>How many good parts the job is for: the number asked for, or else the recipe's.</summary>
    public int Parts => Input.Quantity ?? Math.Max(1, Part.Quantity);

    /// <summary>Names of the halves; empty when the mould is in one piece. Two nameless sides are called 1 and 2.</summary>
    public ImmutableArray<string> Sides => Part.Mould is { Halves: { IsEmpty: false } halves }
        ? halves
        : Plan.Geometry is { Sides: > 1 } geometry ? [.. Enumerable.Range(1, geometry.Sides).Select(Numbers.Whole)] : [];

    /// <summary>Whether the part comes under a bag at all.</summary>
    public bool IsBagged => BagPaper.Applies(Input);

    /// <summary>
    /// Whether the part is wrapped round its mould, a mandrel. This alone decides which words its papers have; a male mould that a part lies on and is
    /// lifted off, half a round say, is none.
    /// </summary>
    public bool IsWrapped => Part.Mould is { IsMandrel: true };

    /// <summary>
    /// Whether the part is laid on what stays in it: a repair, or a skin that cured before. Nothing may release there, and nothing comes off.
    /// </summary>
    public bool StaysOn => !IsWrapped && Part.Mould is { StaysInPart: true };

    /// <summary>Whether it is left where it was laid: no line takes it off, and it lies on what stays in it or no line needs it off its mould.</summary>
    public bool IsLeftOn => !Part.IsDemoulded && (StaysOn || Part is { Mould: not null, Cure.Steps.IsEmpty: false, Join: null, OffTheMould: null });

    /// <summary>The thickness of the full stack; null where nothing that is laid covers the whole part.</summary>
    public Computed<Length>? Thickness => Plan.Laminate is { Thickness: { Value: var thickness } known } && thickness > Length.Zero ? known : null;

    /// <summary>The laminate where cloth is in it, so that it has a share of resin; null where core or inserts are all that is laid.</summary>
    public LaminatePlan? Laminate => Plan.Laminate is { } laminate && laminate.Fibre.Value > Mass.Zero ? laminate : null;

    /// <summary>The ends of a part that is closed round a mandrel, a tube or a cone; null for any other part.</summary>
    public TubeEnds? Tube => !IsWrapped || Sides.Length > 1 ? null : Plan.Geometry?.Shape switch
    {
        CylinderShape tube => new TubeEnds(tube.Diameter, tube.Diameter),
        ConeShape cone => new TubeEnds(cone.BaseDiameter, cone.TopDiameter),
        _ => null,
    };

    /// <summary>Whether sealant tape is laid on the mould: an envelope bag is closed on itself.</summary>
    public bool HasTapeLand => IsBagged && Part.Bag is not { IsEnvelope: true };

    /// <summary>Names of the bags: a half is a bag of its own; one without a name where there is one bag.</summary>
    public ImmutableArray<string> Bags => Sides.Length > 1 ? Sides : [""];

    /// <summary>Feed lines of one bag of an infusion.</summary>
    public int FeedsOfABag => Math.Max(1, Plan.Feed is { } feed ? feed.Lines.Value / Bags.Length : Part.Infusion?.FeedLines?.Value ?? 1);

    public QuantityText Text { get; }

    /// <summary>The words of the paper; every sentence that stands on it goes through <c>Wording.Say</c>.</summary>
    public Languages.Wording Wording { get; }

    public PaperSize Paper => Input.Paper ?? Plan.Shop?.Paper ?? PaperSize.A4;

    /// <summary>Boxes for something that is done to each half, so many times.</summary>
    public TickCell TickEach(int times = 1) => Sides.Length > 1 ? new TickCell([.. Enumerable.Range(0, times).SelectMany(_ => Sides)]) : TickCell.Of(times);

    public Identity Identity(bool ofOneBuild) => new(Part.Label, Part.Name, Input.Revision, Input.Printed, Input.SourceName, ofOneBuild, Input.Serial) { Wording = Wording };

    /// <summary>The words of the papers of an input.</summary>
    public static Languages.Wording WordingOf(PaperInput input) => input.Wording ?? Languages.Wordings.Of(input.Language);

    /// <summary>What an assumption is called on this paper: "A3".</summary>
    public static string AssumptionId(int number) => "A" + Numbers.Whole(number);

    /// <summary>"rests on A1, A4", or null when every input was stated or comes from the book with a source.</summary>
    public string? RestsOn(params IEnumerable<ImmutableArray<string>> keys)
    {
        var numbers = keys.Where(list => !list.IsDefault).SelectMany(list => list)
            .Where(_assumptionNumbers.ContainsKey).Select(key => _assumptionNumbers[key]).Distinct().Order().ToList();
        return numbers.Count == 0 ? null : Wording.Say($"rests on {string.Join(", ", numbers.Select(AssumptionId))}");
    }
}
