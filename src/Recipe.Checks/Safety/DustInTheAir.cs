using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Cured laminate is cut dry and nothing catches the dust.</summary>
public sealed class DustInTheAir : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8408",
        Name = "dust-in-the-air",
        Severity = Severity.Error,
        Title = "Dry dust let into the air",
        Reason = "Glass and carbon dust harms lungs and eyes, carbon dust shorts motors, and dust of green resin makes people allergic.",
        Remedy = "Cut and sand wet, or with extraction at the tool, and wear a mask for fine dust.",
        Source = "FAA-H-8083-31 chapter 7 (from memory); common practice; local codes come first",
        Exceptions = """
            Silent where the step itself says wet, extraction or a mask, or a knife, which makes no dust.
            """,
        BadExample = """
            shop ours {
              safety {
                gloves "nitrile, changed on every splash"
                dust dry
              }
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
                trim
              }
            }
            """,
        GoodExample = """
            shop ours {
              safety {
                gloves "nitrile, changed on every splash"
                dust extracted
              }
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
                trim
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override bool IsSafety => true;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Plan.Shop?.Safety is not { Dust: { Value: DustControl.Dry } said } safety
            || context.Part.Finish.Concat(context.Part.Join?.Preparation ?? []).FirstOrDefault(s => s.MakesDust() && !s.IsSafeFromDust()) is not { } step)
        {
            return;
        }

        context.Report(
            said.Where ?? safety.Where,
            "the part is cut or sanded, and dust is let into the air",
            Grounds.Sure.And("dust", said),
            [new FindingLabel(step.Where, "cut here")],
            [Edits.Fix("Extract it at the tool", FixSafety.NeedsALook, FigureEdits.Rewrite(said, "extracted"))]);
    }
}
