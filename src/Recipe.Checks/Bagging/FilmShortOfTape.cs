using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>The bag film ends before it reaches the sealant tape.</summary>
public sealed class FilmShortOfTape : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC5118",
        Name = "film-short-of-tape",
        Severity = Severity.Error,
        Title = "Bag film short of its tape",
        Reason = "Film that does not lie on the tape all round seals nothing, and a strip patched on in a hurry leaks.",
        Remedy = "Cut the film 75 mm past the part on each side, and more over a deep one: it has to lie on the whole tape, with a pleat where it climbs.",
        Source = "common practice: the tape lies 50 mm outside the rim, the film runs 75 mm past the part",
        Exceptions = """
            Silent for an envelope bag, and where the line of the film says neither `smaller` nor `beyond`: it is then cut to reach.
            """,
        BadExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
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
                bag-film beyond 10 mm
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
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
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
                bag-film beyond 75 mm
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

    private static readonly Length TapeLine = Defaults.TapeOffset.Value;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part.Bag is not { IsEnvelope: false } bag || bag.Layers.FirstOrDefault(layer => layer.Class == LayerClass.BagFilm) is not { } film)
        {
            return;
        }

        if (film.Smaller is { } smaller)
        {
            context.Report(
                smaller.Where ?? film.Where,
                $"the film is {Say.Of(smaller)} smaller than the layer under it; it has to lie on the tape, outside of everything",
                fixes: [Edits.Fix("Cut it to reach the tape", FixSafety.NeedsALook, LayerLines.End(film, "beyond 75 mm"))]);
            return;
        }

        var trim = part.Trim?.Value ?? Defaults.Trim.Value;

        // It covers the tape, not only its near edge.
        if (film.Beyond is not { } beyond || beyond.Value + trim >= TapeLine + BagStuff.TapeWidth(bag))
        {
            return;
        }

        context.Report(
            beyond.Where ?? film.Where,
            $"the film ends {Say.Of(beyond)} past the plies, {Say.Of(beyond.Value + trim, beyond.Written)} past the part; it has to cover the tape, which lies {Say.Of(TapeLine, beyond.Written)} out",
            Grounds.Sure.And("edge of the film", beyond).AndTrim(part).AndThat("the tape lies 50 mm outside the rim"),
            fixes: [Edits.Fix("Cut it 75 mm past the plies", FixSafety.NeedsALook, LayerLines.End(film, "beyond 75 mm"))]);
    }
}
