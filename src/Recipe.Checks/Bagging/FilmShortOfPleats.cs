using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>The pleats of a bag take more film than it has.</summary>
public sealed class FilmShortOfPleats : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC5119",
        Name = "film-short-of-pleats",
        Severity = Severity.Advice,
        Title = "Bag film short of its pleats",
        Reason = "A pleat takes film up one side and down the other: with too little of it the film is stretched from pleat to pleat, or ends before it is round.",
        Remedy = "Cut the film larger, or fold fewer pleats or lower ones.",
        Source =
            "common practice: a pleat about as high as the mould is deep takes twice that; US Army TM 1-1500-204-23-11 (page file 0175): pleats, so that the film "
            + "is never stretched until it bursts",
        Exceptions = """
            Speaks only where `pleats` is written, and counts each as high as the mould is deep: lower ones take less, which is reason enough to accept it.
            Silent for an envelope bag, a mandrel and a film that stretches.
            """,
        BadExample = """
            mould tray-mould {
              surface box 400 mm x 300 mm x 80 mm
              made-of epoxy-glass-tooling
              pull-aid "air port in the floor"
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              bag {
                peel-ply
                release-film perforated
                breather
                bag-film
                pleats 10
              }
              vacuum {
                draw 25 inHg below ambient within 10 min
                leak-check 5 min rise at-most 30 mbar isolated
              }
              cure {
                hold 20 degC for 48 h under vacuum
                demould
              }
            }
            """,
        GoodExample = """
            mould tray-mould {
              surface box 400 mm x 300 mm x 80 mm
              made-of epoxy-glass-tooling
              pull-aid "air port in the floor"
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              bag {
                peel-ply
                release-film perforated
                breather
                bag-film
                pleats 4
              }
              vacuum {
                draw 25 inHg below ambient within 10 min
                leak-check 5 min rise at-most 30 mbar isolated
              }
              cure {
                hold 20 degC for 48 h under vacuum
                demould
              }
            }
            """,
    };

    // Millimetres to which an edge is cut.
    private const double Step = 5;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part is not { Bag: { IsEnvelope: false, Pleats: { Value: > 0 } pleats } bag, Mould.IsMandrel: false } part
            || BagStuff.Stretches(bag)
            || context.Plan is not { Geometry.Depth: { Meters: > 0 } depth, Bag: { TapeLine: { } line } plan }
            || plan.Layers.FirstOrDefault(l => l.Layer.Class == LayerClass.BagFilm) is not { } film)
        {
            return;
        }

        var spare = ((film.Length.Value + film.Width.Value) * 2) - (line.Value / Math.Max(1, plan.Bags));
        var taken = depth * 2 * pleats.Value;
        if (spare <= Length.Zero || taken <= spare)
        {
            return;
        }

        var like = film.Layer.Beyond?.Written;
        context.Report(
            pleats.Where ?? bag.Where,
            $"{pleats.Value} pleats as high as the mould is deep ({Say.About(depth, like)}) take {Say.About(taken, like)} of film; round its edge it has {Say.About(spare, like)} more than the tape is long",
            Grounds.Sure.And("number of pleats", pleats).And<Length>(film.Length).And<Length>(line),
            [new FindingLabel(film.Layer.Where, "film here")],
            [Larger(part, film.Layer, taken - spare), Fewer(pleats, (int)Math.Floor(spare / (depth * 2)))]);
    }

    // Each of the four sides is longer at both of its ends.
    private static Fix Larger(Part part, BagLayer film, Length missing)
    {
        var edge = film.Beyond?.Value ?? (Defaults.FilmEdge.Value - (part.Trim?.Value ?? Defaults.Trim.Value));
        var past = FormattableString.Invariant($"{Math.Max(0, Math.Ceiling((edge + (missing / 8)).Millimeters / Step) * Step)} mm");
        return new Fix($"Cut the film {past} past the plies", FixSafety.NeedsALook, LayerLines.End(film, $"beyond {past}"));
    }

    private static Fix? Fewer(Figure<int> pleats, int fit) =>
        fit < 1 ? null : Edits.Fix($"Fold {fit} of them", FixSafety.NeedsALook, FigureEdits.Rewrite(pleats, FormattableString.Invariant($"{fit}")));
}
