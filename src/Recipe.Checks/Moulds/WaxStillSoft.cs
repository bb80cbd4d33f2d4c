using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>The laminate comes on wax that has had less than an hour to harden.</summary>
public sealed class WaxStillSoft : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC2101",
        Name = "wax-still-soft",
        Severity = Severity.Advice,
        Title = "Wax still soft when the laminate comes on it",
        Reason = "Soft wax is wiped into the first ply by brush and roller, and the face is bare where it was.",
        Remedy = "Leave the last coat of wax an hour, or a night on a new mould, or lay a film over it.",
        Source = "common practice; the hour is from memory",
        Exceptions = """
            Silent where a film or a sheet lies over the wax, and where nothing says how long the wax stands.
            """,
        BadExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min dry 20 min
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
            }
            """,
        GoodExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min dry 60 min
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
            }
            """,
    };

    private static readonly Duration Enough = Duration.FromHours(1);

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => part.ReleaseLines();

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Mould is not { } mould || !context.Part.IsWetted())
        {
            return;
        }

        foreach (var face in mould.Faces())
        {
            if (face.Release is not [.., { Agent.Kind: ReleaseKind.Wax, Dry: { } dry } last] || dry.Value >= Enough)
            {
                continue;
            }

            context.Report(
                dry.Where ?? last.Where,
                $"{last.Agent.Name} on {face.Name} stands {Say.Of(dry.Value)} before the laminate comes on it; {Say.Of(Enough)} lets it harden",
                Grounds.Sure.And($"drying time of {last.Agent.Name}", dry),
                fixes: [Edits.Fix("Leave it 60 min", FixSafety.Safe, FigureEdits.Rewrite(dry, "60 min"))]);
            return;
        }
    }
}
