using System.Collections.Immutable;
using System.Globalization;
using Recipe.Documents.Changes;
using Recipe.Documents.Layout;
using Recipe.Documents.Shared;
using Recipe.Model;
using Recipe.Planning.Exploring;

namespace Recipe.Documents.Exploring;

/// <summary>What came of a study, in words and cells that every format shares.</summary>
internal sealed class StudyTables(StudyResult result)
{
    private readonly QuantityText _text = new(result.Shop);

    /// <summary>What the study is: "explore lighter-lid of hatch-lid".</summary>
    public string Heading => $"explore {result.Study.Name} of {result.Study.Part!.Name}";

    /// <summary>How many candidates there were and what became of them.</summary>
    public string Counts
    {
        get
        {
            var (tally, unknown) = (result.Tally, result.Tally.Unknown.Sum(reason => reason.Count));
            var pieces = new List<string> { $"{Count(tally.Feasible)} keep every limit", $"{Count(tally.Broken)} break one" };
            if (unknown > 0)
            {
                pieces.Add($"{Count(unknown)} could not be computed");
            }

            if (tally.Repeated > 0)
            {
                pieces.Add($"{Count(tally.Repeated)} are the same part as another");
            }

            return $"{Count(tally.Tried)} candidates: {string.Join(", ", pieces)}.";
        }
    }

    /// <summary>Each limit and how many break it; each reason and how many could not be computed for it.</summary>
    public IEnumerable<(string What, string HowMany)> Troubles =>
        result.Study.Limits.Select((limit, i) => ($"limit {limit.Written}", $"broken by {Count(result.Tally.BrokenEach[i])}"))
            .Concat(result.Tally.Unknown.Select(reason => (reason.Reason, $"{Count(reason.Count)} not computed")));

    /// <summary>What the front is.</summary>
    public string FrontSays
    {
        get
        {
            var wants = string.Join(", ", result.Study.Wants.Select(want => $"{(want.Least ? "least" : "most")} {want.Figure.Word()}"));
            return result.Front.IsEmpty
                ? $"No candidate keeps every limit without an open error. Wanted: {wants}."
                : $"The front: {(result.Front.Length == 1 ? "1 candidate" : $"{Count(result.Front.Length)} candidates")} that no other beats in all that is wanted: {wants}.";
        }
    }

    /// <summary>Choices that are not the same in all members of the front that are shown: of those alike in all that is wanted the first one.</summary>
    private ImmutableArray<int> Varying { get; } = VaryingAmong(result, [.. FirstOfEach(result).Select(group => group.First)]);

    private ImmutableArray<(Candidate First, int Alike)> Shown { get; } = FirstOfEach(result);

    /// <summary>What all of the front share, and what makes no difference to what is wanted; empty when nothing.</summary>
    public string Shared
    {
        get
        {
            var all = VaryingAmong(result, result.Front);
            var shared = Shown.IsEmpty ? [] : Others(all).Select(choice => $"{choice.Label} {Written(choice, Shown[0].First)}").ToList();
            var idle = all.Where(i => !Varying.Contains(i)).Select(i => result.Study.Choices[i].Label).ToList();
            return (shared.Count == 0 ? "" : $"In all of them: {string.Join("; ", shared)}. ")
                + (idle.Count == 0 ? "" : $"No difference to what is wanted make: {string.Join("; ", idle)}.");

            IEnumerable<StudyChoice> Others(ImmutableArray<int> varying) => result.Study.Choices.Where((_, i) => !varying.Contains(i));
        }
    }

    private bool HasAlike => Shown.Any(group => group.Alike > 0);

    /// <summary>The headings of the front's table.</summary>
    public ImmutableArray<string> Columns =>
        ["No", .. HasAlike ? (string[])["Alike"] : [], .. Varying.Select(i => result.Study.Choices[i].Label), .. result.Figures.Select(figure => Figures.Of(figure).Label)];

    /// <summary>The rows of the front's table.</summary>
    public IEnumerable<ImmutableArray<string>> Rows => Shown.Select(group => (ImmutableArray<string>)
    [
        Number(group.First.Index), .. HasAlike ? (string[])[group.Alike == 0 ? "" : $"+{Count(group.Alike)}"] : [],
        .. Varying.Select(i => Written(result.Study.Choices[i], group.First)), .. group.First.Values.Select((value, i) => Value(i, value)),
    ]);

    /// <summary>Which columns hold figures, from here on.</summary>
    public int FirstFigure => (HasAlike ? 2 : 1) + Varying.Length;

    /// <summary>How far the recipe as written is from the front.</summary>
    public IEnumerable<string> AsWritten
    {
        get
        {
            var written = result.AsWritten;
            var figures = string.Join(", ", result.Figures.Select((figure, i) => $"{Figures.Of(figure).Label.ToLowerInvariant()} {Value(i, written.Values[i])}"));
            yield return $"The recipe as written: {figures}.";
            if (result.Figures.Any(PartialLines.IsStiffness) && PartialLines.Say(result.LeftOutOfStiffness) is { } partial)
            {
                yield return partial;
            }

            if (!result.ErrorsAsWritten.IsEmpty)
            {
                yield return $"It has open errors itself: {string.Join(", ", result.ErrorsAsWritten)}. A candidate that keeps them is left off the front.";
            }

            if (written.Fate == CandidateFate.Unknown)
            {
                yield return $"It cannot be held against the front: {written.Missing}.";
                yield break;
            }

            foreach (var limit in written.Breaks.Select(i => result.Study.Limits[i]))
            {
                yield return $"It breaks the limit {limit.Written}.";
            }

            if (written.Fate != CandidateFate.Feasible || result.Front.IsEmpty)
            {
                yield break;
            }

            var better = result.Better;
            yield return better.IsEmpty
                ? "No candidate of the front is better in one thing that is wanted and as good in all others."
                : $"{(better.Length == 1 ? "1 of the front is" : $"{Count(better.Length)} of the front are")} better in something that is wanted and worse in nothing of it. Best of them in each:";
            for (var i = 0; i < result.Study.Wants.Length && !better.IsEmpty; i++)
            {
                // The best in this one; of equals the first, which is the better in what is wanted before.
                var best = better.MinBy(member => result.Costs(member)[i])!;
                if (result.Costs(best)[i] < result.Costs(written)[i])
                {
                    yield return $"  {Figures.Of(result.Figures[i]).Label.ToLowerInvariant()} {Value(i, best.Values[i])} ({Difference(i, written, best)}), no {Number(best.Index)}";
                }
            }
        }
    }

    /// <summary>What was checked, and what an error kept off the front.</summary>
    public IEnumerable<string> Checked
    {
        get
        {
            yield return "Members of the front were checked as `recipe check` would and have no open error; the others were not.";
            if (!result.Refused.IsEmpty)
            {
                const int most = 8;
                var named = result.Refused.Take(most).Select(refused => $"{Number(refused.Candidate.Index)} ({string.Join(", ", refused.Codes)})");
                yield return $"An error keeps off the front: no {string.Join(", ", named)}{(result.Refused.Length > most ? $" and {Count(result.Refused.Length - most)} more" : "")}.";
            }
        }
    }

    /// <summary>The picture; null when there are not two figures, or no feasible candidate.</summary>
    public Drawing? Picture => StudyPicture.Of(result, _text);

    /// <summary>The number of a candidate.</summary>
    public static string Number(long index) => index.ToString(CultureInfo.InvariantCulture);

    private string Written(StudyChoice choice, Candidate candidate) =>
        Quantities.WrittenText.ForReading(choice.Options[result.Study.OptionsOf(candidate.Index)[result.Study.Choices.IndexOf(choice)]].Written);

    // The front is sorted by what is wanted: those alike stand side by side.
    private static ImmutableArray<(Candidate First, int Alike)> FirstOfEach(StudyResult result)
    {
        var groups = ImmutableArray.CreateBuilder<(Candidate First, int Alike)>();
        foreach (var member in result.Front)
        {
            if (groups.Count > 0 && result.Costs(groups[^1].First).SequenceEqual(result.Costs(member)))
            {
                groups[^1] = (groups[^1].First, groups[^1].Alike + 1);
            }
            else
            {
                groups.Add((member, 0));
            }
        }

        return groups.ToImmutable();
    }

    private static ImmutableArray<int> VaryingAmong(StudyResult result, ImmutableArray<Candidate> members)
    {
        var options = members.Select(member => result.Study.OptionsOf(member.Index)).ToList();
        return [.. Enumerable.Range(0, result.Study.Choices.Length).Where(choice => options.Select(taken => taken[choice]).Distinct().Skip(1).Any())];
    }

    private string Value(int figure, double? value) => value is { } si ? Figures.Of(result.Figures[figure]).Text(_text, si) : "not known";

    // It stands in brackets: the share needs none of its own.
    private string Difference(int figure, Candidate was, Candidate now) =>
        Figures.Difference(Figures.Of(result.Figures[figure]), _text, was.Values[figure]!.Value, now.Values[figure]!.Value).Replace(" (", ", ", StringComparison.Ordinal).TrimEnd(')');

    private static string Count(long count) => count.ToString(CultureInfo.InvariantCulture);
}
