using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Solvent is stirred into a laminating resin.</summary>
public sealed class ThinnedResin : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC4106",
        Name = "thinned-resin",
        Severity = Severity.Warning,
        Title = "Solvent in the laminating resin",
        Reason = "Solvent stays in a laminate: it softens it, shrinks it and boils under vacuum.",
        Remedy = "Warm the resin to 25 to 30 degC, or take a thinner one.",
        Source = "US Army TM 1-1500-204-23-11 (page file 0169)",
        Exceptions = """
            Where a thin first coat on wood is wanted, accept it with that reason.
            """,
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
              process hand
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              mix {
                add resin
                add hardener
                add solvent parts 5
                stir 3 min
                scrape
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
              mix {
                add resin
                add hardener
                stir 3 min
                scrape
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
        if (context.Part.Mixing?.Steps.FirstOrDefault(s => s.Action == MixAction.AddSolvent) is not { } line)
        {
            return;
        }

        var how = line.Parts is { } parts ? $"{Say.Number(parts.Value)} parts of solvent go into 100 of" : "solvent goes into";
        context.Report(
            line.Where,
            $"{how} {context.Part.Resin?.Name ?? "the resin"}, which is to wet cloth",
            labels: context.Part.ResinWhere is { } named ? [new FindingLabel(named, "resin named here")] : [],
            fixes: [Edits.Fix("Leave the solvent out", FixSafety.NeedsALook, Edits.Remove(line.Where))]);
    }
}
