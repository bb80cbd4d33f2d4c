using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The mixing leaves out the resin or what cures it.</summary>
public sealed class MixIncomplete : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC4110",
        Name = "mix-incomplete",
        Severity = Severity.Error,
        Title = "Mixing without resin or hardener",
        Reason = "Somebody who follows the lines ends up with a part that never cures.",
        Remedy = "Write down all that goes into the pot, in order.",
        Source = "common practice",
        Exceptions = """
            Silent for a resin that cures by heat alone, and for one without a mix ratio.
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
    public override LinesRead? Reads(Part part) => part.Mixing is { } mixing ? new LinesRead(mixing.Where, AllOfTheLine: true) : null;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part is not { Mixing: { } mixing, Resin: { Mix: { } ratio } resin } || resin.CuresWith == "heat")
        {
            return;
        }

        var hasResin = mixing.Steps.Any(s => s.Action == MixAction.AddResin);
        var hasHardener = mixing.Steps.Any(s => s.Action == MixAction.AddHardener);
        if (hasResin && hasHardener)
        {
            return;
        }

        var missing = hasResin ? "hardener" : "resin";
        context.Report(
            mixing.Where,
            $"{resin.Name} is mixed {ratio.Written}, and the mixing never adds the {missing}",
            labels: ratio.Where is { } said ? [new FindingLabel(said, "ratio here")] : [],
            fixes: [Missing(mixing, hasResin, missing)]);
    }

    private static Fix? Missing(Mixing mixing, bool hasResin, string missing)
    {
        if (!hasResin)
        {
            return mixing.Steps is [var first, ..] ? Edits.Fix("Add the resin first", FixSafety.NeedsALook, Edits.Before(first.Where, "add resin")) : null;
        }

        var resin = mixing.Steps.First(s => s.Action == MixAction.AddResin);
        return Edits.Fix($"Add the {missing} after the resin", FixSafety.NeedsALook, Edits.After(resin.Where, "add hardener"));
    }
}
