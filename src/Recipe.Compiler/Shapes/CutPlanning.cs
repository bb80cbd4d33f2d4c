using System.Collections.Immutable;
using System.Globalization;
using Recipe.Documents;
using Recipe.Engineering;
using Recipe.Planning;
using UnitsNet;

namespace Recipe.Compiler.Shapes;

/// <summary>What a cut plan is made of, and how.</summary>
/// <param name="Formats">Some of <see cref="CutPlanning.Formats"/>.</param>
/// <param name="Seed">Start of the random numbers of the search.</param>
/// <param name="Effort">How much work the search does, from 0 to <see cref="CutPlanning.MostEffort"/>; the same effort gives the same layout on any machine.</param>
/// <param name="Offcuts">Whether the offcuts of the shop are used up first.</param>
public sealed record CutWish(ImmutableArray<string> Formats, ulong Seed, int Effort, bool Offcuts);

/// <summary>The pieces of one cloth as they came to lie.</summary>
/// <param name="Cloth">Name of the cloth.</param>
/// <param name="Lines">What to say of it, one line for each roll or offcut, and one for what has no room.</param>
/// <param name="IsWhole">Whether every piece has room.</param>
public sealed record ClothCut(string Cloth, ImmutableArray<string> Lines, bool IsWhole);

/// <summary>Lays the pieces of a part out on rolls and offcuts, and draws the cut plan.</summary>
public static class CutPlanning
{
    /// <summary>The formats.</summary>
    public static ImmutableArray<string> Formats => ClothCutPlan.Formats;

    /// <summary>The greatest effort; each step is about three seconds of search for a cloth.</summary>
    public const int MostEffort = 100;

    private const long StepsOfEffort = 100_000_000;

    // A length that is a whole number but for the last bit is that number.
    private const double Hair = 1e-6;

    /// <summary>Lays out and draws. Takes a while; the work is the same for the same recipe and wish.</summary>
    /// <param name="file">The file of the part.</param>
    /// <param name="part">The part.</param>
    /// <param name="wish">How to lay out.</param>
    /// <param name="papers">Units, paper, day and quantity.</param>
    /// <param name="said">Hears what is going on, in words.</param>
    /// <param name="stop">Ends the search; the best layouts so far are drawn.</param>
    /// <exception cref="ArgumentException">There are more pieces than anybody would cut from a drawing.</exception>
    public static (ImmutableArray<ClothCut> Cloths, ImmutableArray<WrittenPaper> Papers) Run(
        CompiledFile file, CompiledPart part, CutWish wish, PaperWish papers, Action<string> said, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(wish);
        ArgumentNullException.ThrowIfNull(papers);
        ArgumentNullException.ThrowIfNull(said);
        said("outlines");
        var pieces = PiecesToCut.Of(part.Plan);
        var cloths = ClothLayout.Of(part.Plan, file.Bound.Model, pieces, papers.Quantity ?? Math.Max(1, part.Part.Quantity), wish.Offcuts);
        var layouts = new List<(ClothLayout Cloth, OutlineNest Nest)>();
        var us = BenchPapers.UnitsFor(file, papers) == Model.UnitSystem.Us;
        foreach (var cloth in cloths)
        {
            var progress = new Told(better => said($"{cloth.Cloth.Name}: {AtLeast(Length.FromMeters(better.Uses.Sum(use => use.LengthUsed.Meters)), us)}"));
            layouts.Add((cloth, cloth.Lay(wish.Seed, wish.Effort * StepsOfEffort, progress, stop)));
        }

        return (
            [.. layouts.Select(layout => Tell(layout.Cloth, layout.Nest, us))],
            [.. ClothCutPlan.Write(BenchPapers.InputFor(file, part, papers), layouts, wish.Formats).Select(written => new WrittenPaper(written.FileName, written.Bytes))]);
    }

    private static ClothCut Tell(ClothLayout cloth, OutlineNest nest, bool us)
    {
        var lines = nest.Uses.Select(use => string.Create(
            CultureInfo.InvariantCulture,
            $"{cloth.Stock[use.Stock].Name}: {use.Pieces} {(use.Pieces == 1 ? "piece" : "pieces")} on {AtLeast(use.LengthUsed, us)} of {About(cloth.Stock[use.Stock].Width, us)}, {use.Waste.Percent:F0} % waste; none can be shorter than {AtLeast(use.LeastLength, us)}"));
        string[] missing = nest.Missing.IsEmpty
            ? []
            : [string.Create(CultureInfo.InvariantCulture, $"no room for {string.Join(", ", nest.Missing.Select(piece => cloth.Pieces[piece.Piece].Mark).Distinct())}")];
        string[] rough = [.. cloth.Pieces.Where(piece => piece.Origin == OutlineOrigin.Surrounded).Select(piece => piece.Mark).Distinct()];
        return new ClothCut(
            cloth.Cloth.Name,
            [.. lines, .. missing, .. rough.Length == 0 ? Array.Empty<string>() : [$"{string.Join(", ", rough)}: the rectangle round it, since the surface gives no outline"], .. nest.EndedEarly ? ["stopped early; another run may lay it otherwise"] : Array.Empty<string>()],
            nest.Missing.IsEmpty);
    }

    // Rounded up, since what is cut off by it must not be too short.
    private static string AtLeast(Length length, bool us) => Whole(length, us, steps => Math.Ceiling(steps - Hair));

    private static string About(Length length, bool us) => Whole(length, us, Math.Round);

    // In steps of a millimetre or of a sixteenth of an inch.
    private static string Whole(Length length, bool us, Func<double, double> round) => us
        ? string.Create(CultureInfo.InvariantCulture, $"{round(length.Inches * 16) / 16:0.####} in")
        : string.Create(CultureInfo.InvariantCulture, $"{round(length.Millimeters):0} mm");

    // At once and in order, unlike Progress<T>, which hands over to another thread.
    private sealed class Told(Action<OutlineNest> hear) : IProgress<OutlineNest>
    {
        public void Report(OutlineNest value) => hear(value);
    }
}
