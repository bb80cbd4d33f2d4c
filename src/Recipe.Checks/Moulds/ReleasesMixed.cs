using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A semi-permanent release goes over wax.</summary>
public sealed class ReleasesMixed : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC2116",
        Name = "releases-mixed",
        Severity = Severity.Warning,
        Title = "Semi-permanent release over wax",
        Reason = "It bonds to a clean face only: on wax it comes off with the first part.",
        Remedy = "Strip the wax first, and take one system or the other.",
        Source = "common practice",
        BadExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
                semi-permanent-release coats 4 wait 15 min dry 60 min
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
                semi-permanent-release coats 4 wait 15 min dry 60 min
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

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        foreach (var face in context.Part.Mould?.Faces() ?? [])
        {
            ReleaseCoat? wax = null;
            foreach (var line in face.Release)
            {
                if (line.Agent.Kind == ReleaseKind.SemiPermanent && wax is not null)
                {
                    context.Report(
                        line.Where,
                        $"{line.Agent.Name} goes over {wax.Agent.Name}; it bonds to a bare face only",
                        labels: [new FindingLabel(wax.Where, "wax here")],
                        fixes: [Edits.Fix("Leave the wax out", FixSafety.NeedsALook, Edits.Remove(wax.Where))]);
                    return;
                }

                wax = line.Agent.Kind == ReleaseKind.Wax ? line : wax;
            }
        }
    }
}
