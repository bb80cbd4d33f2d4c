using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The sun is the oven.</summary>
public sealed class SunAsOven : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC7109",
        Name = "sun-as-oven",
        Severity = Severity.Warning,
        Title = "Cured in the sun",
        Reason = "The face in the sun cures and shrinks first and the part bows; a cloud or a gust ends the cure without anybody noticing.",
        Remedy = "Warm it with air, in the shade of a box or tent, and turn or support it.",
        Source = "common practice",
        BadExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of aluminium
              release {
                semi-permanent-release coats 4
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
                oven "on the lawn in the sun"
                hold 20 degC for 24 h
                ramp 10 degC/h to 50 degC
                hold 50 degC for 16 h
                cool to 30 degC
                demould
              }
            }
            """,
        GoodExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of aluminium
              release {
                semi-permanent-release coats 4
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
                oven "warm-air box with its own over-temperature cut-out"
                hold 20 degC for 24 h
                ramp 10 degC/h to 50 degC
                hold 50 degC for 16 h
                cool to 30 degC
                demould
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Cure is not { Oven: { } oven } cure
            || !TradeWords.Says(oven, "sun", "sunshine", "sunlight", "solar")
            || TradeWords.Says(oven, "shade", "out of the sun", "tent", "box", "cabinet")
            || TradeWords.Forbids(oven))
        {
            return;
        }

        context.Report(
            cure.OvenWhere ?? cure.Where,
            $"what warms the part is {Say.Quoted(oven)}: one face, as long as it shines",
            fixes: [cure.OvenWhere is { } written
                ? Edits.Fix("Warm it with air", FixSafety.NeedsALook, Edits.Replace(written, "oven \"warm-air box with its own over-temperature cut-out\""))
                : null]);
    }
}
