using Recipe.Model;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A release film lies between the laminate and the peel ply.</summary>
public sealed class FilmUnderPeelPly : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC5002",
        Name = "film-under-peel-ply",
        Severity = Severity.Error,
        Title = "Release film under the peel ply",
        Reason = "The film makes the face of the part, not the peel ply: there is no texture to bond or paint on.",
        Remedy = "Put the peel ply on the laminate and the film over it.",
        Source = "US Army TM 1-1500-204-23-11 (page file 0046): the peel ply lies on the part",
        Exceptions = """
            An error when the part is later bonded, painted or joined, else a warning. Silent when nothing is bonded later and there is no
            felt: then the peel ply is the path for the air.
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
                release-film perforated
                peel-ply
                breather
                bag-film
              }
              vacuum {
                draw 25 inHg below ambient within 10 min
                leak-check 5 min rise at-most 30 mbar isolated
              }
              finish {
                trim
                abrade 120 grit
                paint colour white
                weigh
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
                bag-film
              }
              vacuum {
                draw 25 inHg below ambient within 10 min
                leak-check 5 min rise at-most 30 mbar isolated
              }
              finish {
                trim
                abrade 120 grit
                paint colour white
                weigh
              }
              cure {
                hold 20 degC for 48 h under vacuum
                demould
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => part.Bag is { } bag ? new LinesRead(bag.Where, AllOfTheLine: true) : null;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part.Bag is not { } bag || BagOrder.IsUpsideDown(part))
        {
            return;
        }

        var film = bag.Layers.IndexOf(l => l.Class == LayerClass.ReleaseFilm);
        var peel = bag.Layers.LastIndexOf(l => l.Class == LayerClass.PeelPly);
        if (film < 0 || peel < film)
        {
            return;
        }

        var bonded = part.Finish.FirstOrDefault(f => f.Sticks() || f.Verb == "fill");
        var isBonded = bonded is not null || part.Join is not null;
        if (!isBonded && !bag.Layers.Any(l => l.Class is LayerClass.Breather or LayerClass.Bleeder))
        {
            return;
        }

        var lower = bag.Layers[film].Where;
        var upper = bag.Layers[peel].Where;
        var why = bonded is not null ? $", and {bonded.Verb} follows" : part.Join is not null ? ", and a join follows" : "";
        context.Report(
            lower,
            FormattableString.Invariant($"the release film lies under the peel ply (layers {film + 1} and {peel + 1} from the part){why}"),
            labels: Story(upper, bonded),
            fixes:
            [
                new Fix("Swap the two lines", FixSafety.NeedsALook, Edits.Replace(lower, upper.Text), Edits.Replace(upper, lower.Text)),
            ],
            severity: isBonded ? Severity.Error : Severity.Warning);
    }

    private static IEnumerable<FindingLabel> Story(SourceSpan peelPly, FinishStep? bonded)
    {
        yield return new FindingLabel(peelPly, "peel ply here");
        if (bonded is not null)
        {
            yield return new FindingLabel(bonded.Where, $"{bonded.Verb} here");
        }
    }
}
