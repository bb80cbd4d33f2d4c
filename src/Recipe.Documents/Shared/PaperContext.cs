using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Model;
using Recipe.Planning;

namespace Recipe.Documents.Shared;

/// <summary>What every paper needs at hand while it is being made.</summary>
internal sealed class PaperContext
{
    private readonly ImmutableDictionary<string, int> _assumptionNumbers;

    public PaperContext(PaperInput input)
    {
        Input = input;
        Text = new QuantityText(input.Plan.Shop, input.Units);
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

    public QuantityText Text { get; }

    /// <summary>The words of the paper; every sentence that stands on it goes through <c>Wording.Say</c>.</summary>
    public Languages.Wording Wording { get; }

    public PaperSize Paper => Input.Paper ?? Plan.Shop?.Paper ?? PaperSize.A4;

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
