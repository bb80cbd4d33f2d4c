using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Resin and no cure.</summary>
public sealed class NoCure : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC7001",
        Name = "no-cure",
        Severity = Severity.Error,
        Title = "No cure",
        Reason =
            "Without a cure there is nothing to schedule, nothing to sign, and nobody knows when the part may leave the "
            + "mould.",
        Remedy = "Write the cure down, if only the hours at room temperature from the data sheet.",
        Source = "common practice",
        Exceptions = """
            Silent for a part without plies or without resin: those are findings of their own.
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
            }
            """,
    };

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => new LinesRead(part.Cure?.Where ?? part.Where);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (!part.HasPlies() || !part.IsWetted() || part.Cure is { Steps.Length: > 0 })
        {
            return;
        }

        context.Report(
            part.Cure?.Where ?? part.Where,
            $"nothing says how {part.Name} is cured",
            labels: part.ResinWhere is { } resin ? [new FindingLabel(resin, "resin named here")] : [],
            fixes: [RoomCure(part)]);
    }

    private static Fix? RoomCure(Part part)
    {
        if (part.Resin?.Demould is not { } sheet || sheet.Value.Time <= UnitsNet.Duration.Zero)
        {
            return null;
        }

        var hold = $"hold {Say.Of(sheet.Value.At)} for {Say.Of(sheet.Value.Time)}";
        var edit = part.Cure is { } empty
            ? Edits.Last(empty.Where, hold, "demould")
            : Edits.Last(part.Where, "cure {", "  " + hold, "  demould", "}");
        return Edits.Fix($"Cure {part.Resin.Name} as its record says: {hold[5..]}", FixSafety.NeedsALook, edit);
    }
}
