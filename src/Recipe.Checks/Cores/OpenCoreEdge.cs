using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The trim cuts through the core and nothing closes it.</summary>
public sealed class OpenCoreEdge : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC3209",
        Name = "open-core-edge",
        Severity = Severity.Warning,
        Title = "Cut edge of the core left open",
        Reason = "Water runs along an open core from the edge, freezes, rots and lifts the skins.",
        Remedy = "Fill and seal every cut edge.",
        Source = "AC 43.13-1B chapter 3: seal exposed core; common practice",
        Exceptions = """
            Speaks of a core that covers the whole part, where the finish has a `trim` line and no later `seal`, `fill`, `bond`, `paint` or
            `step`.
            """,
        BadExample = """
            core shop-foam like pvc-foam-75 {
              cut perforated
              source "data sheet"
            }

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
                heart core shop-foam thickness 5 mm
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
              cure {
                hold 20 degC for 48 h under vacuum
                demould
              }
              finish {
                trim "to the line"
              }
            }
            """,
        GoodExample = """
            core shop-foam like pvc-foam-75 {
              cut perforated
              source "data sheet"
            }

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
                heart core shop-foam thickness 5 mm
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
              cure {
                hold 20 degC for 48 h under vacuum
                demould
              }
              finish {
                trim "to the line"
                seal edges
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
        if (part.Cores().FirstOrDefault(c => c.CoversAll()) is not { } core || part.Finish.LastOrDefault(s => s.Verb == "trim") is not { } trim
            || part.Finish.Skip(part.Finish.LastIndexOf(trim) + 1).Any(s => s.Verb is "seal" or "fill" or "bond" or "paint" or "step") || part.Join is not null)
        {
            return;
        }

        context.Report(
            trim.Where,
            $"the trim cuts through {core.Name} of {core.Material.Name}, and no step seals its edge",
            labels: [new FindingLabel(core.Where, "core here")],
            fixes: [Edits.Fix("Seal the edges", FixSafety.NeedsALook, Edits.After(trim.Where, "seal edges"))]);
    }
}
