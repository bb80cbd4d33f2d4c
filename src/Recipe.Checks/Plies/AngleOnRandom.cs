using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A mat or a veil is given a direction.</summary>
public sealed class AngleOnRandom : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC3104",
        Name = "angle-on-random",
        Severity = Severity.Advice,
        Title = "Angle given for cloth without direction",
        Reason = "Chopped strands run every way, so the angle says nothing, or another cloth was meant.",
        Remedy = "Write `random`, or name the cloth that was meant.",
        Source = "common practice",
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
                hidden carbon-veil-8 0/90
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
                hidden carbon-veil-8 random
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
            }
            """,
    };

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var turned = context.Part.Plies()
            .Where(p => p.Material.Form is ReinforcementForm.Mat or ReinforcementForm.Veil && p.Orientation is { Value.Kind: not OrientationKind.Random })
            .ToList();
        if (turned is not [var first, ..])
        {
            return;
        }

        var edits = turned.Select(p => context.Part.Rewrite(p.Orientation, "random")).OfType<TextEdit>().ToArray();
        context.Report(
            first.Orientation!.Where ?? first.Where,
            $"{first.Name} is given {first.Orientation.Written}, and {first.Material.Name} has no direction{Say.More(turned.Count - 1)}",
            fixes: [edits.Length == turned.Count ? new Fix("Write random", FixSafety.Safe, [.. edits]) : null]);
    }
}
