using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Something is bonded or painted on a face that nothing has keyed.</summary>
public sealed class NoKeyForBond : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8201",
        Name = "no-key-for-bond",
        Severity = Severity.Warning,
        Title = "Nothing keys the face",
        Reason = "On a slick or film-marked face glue and paint hold only by chance, and come off in sheets.",
        Remedy = "Lay a peel ply on that face, or sand it with 80 to 240 grit and wipe it before.",
        Source = "common practice; US Army TM 1-1500-204-23-11 (page file 0045): scuff before bonding, peel ply or not",
        Exceptions = """
            Silent with a peel ply in the bag, where a line before sands, scuffs or etches, and where it is done while the part is still
            green.
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
              process hand
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
              finish {
                wash "with water"
                trim
                bond hinge
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
              process hand
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
              finish {
                wash "with water"
                trim
                abrade 80 grit
                bond hinge
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => part.FinishLines();

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (!part.IsWetted()
            || part.Finish.FirstOrDefault(FinishWords.Sticks) is not { } sticks
            || part.Bag?.Layers.Any(l => l.Class == LayerClass.PeelPly) == true
            || part.Finish.TakeWhile(f => f != sticks).Any(f => f.Keys() || f.IsOfPeelPly())
            || sticks.Keys()
            || sticks.IsWhileGreen())
        {
            return;
        }

        context.Report(
            sticks.Where,
            $"{Say.Quoted(sticks.Words())} comes on a face with no peel ply on it and no sanding before",
            fixes: [new Fix("Sand it before", FixSafety.NeedsALook, Edits.Before(sticks.Where, sticks.Verb == "bond" ? "abrade 80 grit" : "abrade 240 grit"))]);
    }
}
