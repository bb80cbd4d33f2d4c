using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Carbon is cut with electric tools that breathe its dust.</summary>
public sealed class OpenMotorsWithCarbon : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8409",
        Name = "open-motors-with-carbon",
        Severity = Severity.Advice,
        Title = "Open motors in carbon dust",
        Reason = "Carbon dust conducts: it shorts an open motor, and the housing can become live.",
        Remedy = "Take tools with enclosed motors, or air tools, with extraction.",
        Source = "common practice (aviation maintenance handbooks say the same)",
        Exceptions = """
            Silent where no carbon is cut, or where nothing is said of the tools.
            """,
        BadExample = """
            shop ours {
              safety {
                gloves "nitrile, changed on every splash"
                dust wet
                tools open
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
                outer carbon-twill-200 0/90
                inner carbon-twill-200 0/90
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
                dust wet
                tools enclosed
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
                outer carbon-twill-200 0/90
                inner carbon-twill-200 0/90
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
        if (context.Plan.Shop?.Safety is not { ToolsEnclosed: { Value: false } said } safety
            || context.Part.Plies().FirstOrDefault(p => p.Material.IsOf("carbon")) is not { } carbon
            || !context.Part.Finish.Concat(context.Part.Join?.Preparation ?? []).Any(FinishWords.MakesDust))
        {
            return;
        }

        context.Report(
            said.Where ?? safety.Where,
            "carbon is cut with tools whose motors are open; its dust conducts",
            Grounds.Sure.And("tools", said),
            [new FindingLabel(carbon.Where, "carbon here")],
            [Edits.Fix("Take enclosed tools", FixSafety.NeedsALook, FigureEdits.Rewrite(said, "enclosed"))]);
    }
}
