using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A release with silicone is used on a part that is painted or bonded later.</summary>
public sealed class SiliconeBeforePaint : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC2106",
        Name = "silicone-before-paint",
        Severity = Severity.Warning,
        Title = "Silicone release under paint or glue",
        Reason = "Traces of silicone stay on the part and in the room, and paint crawls off them for weeks.",
        Remedy = "Take a release without silicone for parts that are painted or bonded.",
        Source = "common practice; US Army TM 1-1500-204-23-11 (page file 0067) asks for wipes free of silicone",
        Exceptions = """
            Silent where nothing is painted, primed or bonded in `finish`, and where the release agent does not say `silicone yes`.
            """,
        BadExample = """
            release-agent own-silicone-wax {
              kind wax
              silicone yes
              coats 5
              wait 30 min
              dry 60 min
              heat-limit 85 degC
            }

            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              release {
                own-silicone-wax coats 5 wait 30 min dry 60 min
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
                wash "warm water"
                abrade 180 grit
                prime
                paint colour white
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
                wash "warm water"
                abrade 180 grit
                prime
                paint colour white
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Mould is not { } mould
            || mould.Release.FirstOrDefault(r => r.Agent.HoldsSilicone == true) is not { } release
            || context.Part.Finish.FirstOrDefault(FinishWords.Sticks) is not { } later)
        {
            return;
        }

        var clean = ReleaseAgents.First(context.Model, release.Agent.Kind ?? ReleaseKind.Wax);
        context.Report(
            release.Where,
            $"{release.Agent.Name} holds silicone, and the part is to {later.Verb} later",
            labels: [new FindingLabel(later.Where, $"{later.Verb} here")],
            fixes: [clean is null ? null : Edits.Fix($"Take {clean.Name}", FixSafety.NeedsALook, LayerLines.Take(release.Where, release.Agent.Name, clean.Name))]);
    }
}
