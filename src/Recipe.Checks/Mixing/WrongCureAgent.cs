using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The resin is cured with something that does not cure it.</summary>
public sealed class WrongCureAgent : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC4103",
        Name = "wrong-cure-agent",
        Severity = Severity.Error,
        Title = "Cure agent that does not cure this resin",
        Reason = "Peroxide never cures epoxy and amine never cures polyester: the laminate stays wet on the mould.",
        Remedy = "Take the hardener that belongs to the resin, of the same data sheet.",
        Source = "common practice",
        Exceptions = """
            Silent where the resin says no `chemistry` or no `cures-with`.
            """,
        BadExample = """
            resin own-epoxy like slow-laminating-epoxy {
              cures-with peroxide
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
              resin own-epoxy
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
            resin own-epoxy like slow-laminating-epoxy {
              cures-with amine
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
              resin own-epoxy
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
        if (context.Part.Resin is not { CuresWith: { } agent } resin || !IsWrong(resin.Chemistry, agent))
        {
            return;
        }

        var chemistry = resin.Chemistry switch
        {
            Chemistry.Epoxy => "an epoxy",
            Chemistry.Polyester => "a polyester",
            Chemistry.Vinylester => "a vinylester",
            _ => "a phenolic",
        };
        context.Report(
            context.Part.ResinWhere ?? context.Part.Where,
            $"{resin.Name} is {chemistry} and is said to cure with {agent}, which does not cure it",
            labels: [new FindingLabel(resin.Where, "declared here")]);
    }

    private static bool IsWrong(Chemistry chemistry, string agent) => chemistry switch
    {
        Chemistry.Epoxy => agent == "peroxide",
        Chemistry.Polyester or Chemistry.Vinylester => agent is "amine" or "anhydride",
        Chemistry.Phenolic => agent is "amine" or "peroxide",
        _ => false,
    };
}
