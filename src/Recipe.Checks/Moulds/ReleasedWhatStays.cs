using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Release agent on what the part has to hold on to.</summary>
public sealed class ReleasedWhatStays : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC2006",
        Name = "released-what-stays",
        Severity = Severity.Error,
        Title = "Release agent on what stays in the part",
        Reason = "What is laid on it has to hold on to it. On wax or film it comes off in one piece, at the first knock or under load.",
        Remedy = "Release nothing there. Pull off the peel ply or sand it matt, wipe it, and keep wax out of the room.",
        Source = "common practice",
        BadExample = """
            mould box-wall {
              surface flat 400 mm x 300 mm
              flange 100 mm
              made-of epoxy-glass-tooling
              stays-in-part yes
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part stiffener {
              mould box-wall
              process hand
              resin slow-laminating-epoxy
              plies {
                first glass-twill-163 0/90
                second glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
              }
            }
            """,
        GoodExample = """
            mould box-wall {
              surface flat 400 mm x 300 mm
              flange 100 mm
              made-of epoxy-glass-tooling
              stays-in-part yes
            }

            part stiffener {
              mould box-wall
              process hand
              resin slow-laminating-epoxy
              plies {
                first glass-twill-163 0/90
                second glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Mould is not { StaysInPart: true, Release: [var coat, ..] } mould)
        {
            return;
        }

        context.Report(
            coat.Where,
            $"{coat.Agent.Name} on {mould.Name}, which stays in {context.Part.Name}",
            fixes: [new Fix("Take the release out", FixSafety.NeedsALook, [.. mould.Release.Select(line => Edits.Remove(line.Where))])]);
    }
}
