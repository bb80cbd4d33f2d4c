using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>A thick stack is laid wet and pressed only once, at the end.</summary>
public sealed class TooManyPliesWet : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC3120",
        Name = "too-many-plies-wet",
        Severity = Severity.Advice,
        Title = "Many wet plies and one bag",
        Reason = "Each ply bridges its corners a little and carries a little air, and one bag at the end no longer presses a thick stack flat.",
        Remedy = "Lay it in two or three goes with a peel ply between, each under a bag of its own.",
        Source = "common practice (12 wet plies at a time)",
        Exceptions = """
            Speaks of bagged wet lay-ups of more than 12 plies that are more than 3 mm thick. Accept it where the stack was pressed in
            between.
            """,
        BadExample = """
            fabric shop-twill {
              fibre e-glass
              weave twill
              areal-weight 280 g/m2
              warp-share 50 %
              width 120 cm
              resin-content hand 50 % by weight
              resin-content bagged 42 % by weight
              pace 6 min/m2
              source "weighed"
            }

            mould tray-mould {
              surface flat 200 mm x 150 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              resin slow-laminating-epoxy
              plies {
                outer shop-twill 0/90
                body shop-twill 0/90 x13
                inner shop-twill 0/90
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
            fabric shop-twill {
              fibre e-glass
              weave twill
              areal-weight 280 g/m2
              warp-share 50 %
              width 120 cm
              resin-content hand 50 % by weight
              resin-content bagged 42 % by weight
              pace 6 min/m2
              source "weighed"
            }

            mould tray-mould {
              surface flat 200 mm x 150 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              resin slow-laminating-epoxy
              plies {
                outer shop-twill 0/90
                body shop-twill 0/90 x8
                inner shop-twill 0/90
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

    private const int Most = 12;
    private static readonly Length Thin = Length.FromMillimeters(3);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        var plies = part.FullPlies().Sum(p => p.Count);
        if (part.Process.Value != Process.Bagged || plies <= Most)
        {
            return;
        }

        if (context.Plan.Laminate?.Thickness is not { } thickness)
        {
            context.NotChecked("the thickness of the laminate is not known", part.StackWhere);
            return;
        }

        if (thickness.Value > Thin)
        {
            context.Report(
                part.StackWhere ?? part.Where,
                $"{plies} wet plies, about {Say.About(thickness.Value)} thick, are pressed once; {Most} at a time is usual");
        }
    }
}
