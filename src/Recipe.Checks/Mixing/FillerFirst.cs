using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Filler goes into the pot before resin and hardener are mixed.</summary>
public sealed class FillerFirst : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC4104",
        Name = "filler-first",
        Severity = Severity.Warning,
        Title = "Filler before the hardener is mixed in",
        Reason = "Hardener does not reach the resin inside the lumps, and the scale shows filler instead of hardener.",
        Remedy = "Mix resin and hardener fully, then stir the filler in.",
        Source = "common practice (a light-aircraft maintenance manual says the same)",
        Exceptions = """
            Silent about pigment, which makers sell as a paste for the resin.
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
                add filler parts 20
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
                add filler parts 20
                stir 2 min
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
        if (context.Part.Mixing is not { } mixing)
        {
            return;
        }

        var steps = mixing.Steps;
        var filler = steps.IndexOf(s => s.Action == MixAction.AddFiller);
        var hardener = steps.IndexOf(s => s.Action == MixAction.AddHardener);
        if (filler < 0 || hardener < 0)
        {
            return;
        }

        var stir = steps.IndexOf(s => s.Action == MixAction.Stir && steps.IndexOf(s) > hardener);
        if (filler > hardener && stir >= 0 && stir < filler)
        {
            return;
        }

        var line = steps[filler];
        context.Report(
            line.Where,
            filler < hardener ? "the filler goes in before the hardener" : "the filler goes in before resin and hardener are stirred together",
            labels: [new FindingLabel(steps[hardener].Where, "hardener here")],
            fixes: [stir < 0 ? null : new Fix(
                "Add the filler after the stirring",
                FixSafety.NeedsALook,
                Edits.Remove(line.Where),
                Edits.After(steps[stir].Where, line.Where.Text))]);
    }
}
