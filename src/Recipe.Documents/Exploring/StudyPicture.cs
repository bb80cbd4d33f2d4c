using Recipe.Documents.Changes;
using Recipe.Documents.Comparing;
using Recipe.Documents.Layout;
using Recipe.Planning.Exploring;

namespace Recipe.Documents.Exploring;

/// <summary>All feasible candidates as specks, the front as full points with their numbers, the part as it is written as a square.</summary>
internal static class StudyPicture
{
    // Numbers at every point of a long front would hide it.
    private const int MostNumbers = 24;

    /// <summary>The picture over the first two figures; null when there are not two, or no feasible candidate.</summary>
    public static Drawing? Of(StudyResult result, QuantityText text)
    {
        if (result.Figures.Length < 2 || result.Tally.Sketch.IsEmpty)
        {
            return null;
        }

        var points = result.Tally.Sketch.Select(point => new ScatterPoint(point.X, point.Y, PointMark.Speck)).ToList();
        var each = Math.Max(1, (int)Math.Ceiling(result.Front.Length / (double)MostNumbers));
        points.AddRange(result.Front.Select((member, i) => Point(member, PointMark.Full, i % each == 0 ? StudyTables.Number(member.Index) : "")));
        if (result.AsWritten is { Values: [{ }, { }, ..] } written)
        {
            points.Add(Point(written, PointMark.Square, "as written"));
        }

        return ScatterDrawing.Of(
            new("front", $"Candidates of {result.Study.Label}", "candidate, thinned where they crowd", (Figures.Of(result.Figures[0]), LeastOf(result, 0)), (Figures.Of(result.Figures[1]), LeastOf(result, 1))),
            points,
            text);
    }

    private static ScatterPoint Point(Candidate candidate, PointMark mark, string label) => new(candidate.Values[0]!.Value, candidate.Values[1]!.Value, mark, label);

    // A figure that is only limited is better on the side that the limit leaves free.
    private static bool LeastOf(StudyResult result, int figure) =>
        figure < result.Study.Wants.Length ? result.Study.Wants[figure].Least : result.Study.Limits.First(limit => limit.Figure == result.Figures[figure]).AtMost is not null;
}
