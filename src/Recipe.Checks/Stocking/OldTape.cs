using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Sealant tape older than it keeps its tack.</summary>
public sealed class OldTape : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8304",
        Name = "old-tape",
        Severity = Severity.Warning,
        Title = "Old sealant tape",
        Reason = "Old tape has lost its tack: it lifts at the first pleat, and the bag leaks where nobody sees it.",
        Remedy = "Press a strip on the mould and pull: if it comes off clean, buy new.",
        Source = "US Army TM 1-1500-204-23-11 (page file 0046): tape keeps one year; common practice",
        Exceptions = """
            The `shelf-life` of the material counts where it is given, else 12 months. Silent for a line with a date of expiry.
            """,
        BadExample = """
            stock {
              general-sealant-tape 30 m lot "T4" received 2025-01-10
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
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              bag {
                peel-ply
                release-film perforated
                breather
                bag-film
                sealant-tape general-sealant-tape
              }
              vacuum {
                draw 25 inHg below ambient within 10 min
                leak-check 5 min rise at-most 30 mbar isolated
              }
              cure {
                hold 20 degC for 48 h under vacuum
                demould
              }
            }
            """,
        GoodExample = """
            stock {
              general-sealant-tape 30 m lot "T4" received 2026-01-10
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
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              bag {
                peel-ply
                release-film perforated
                breather
                bag-film
                sealant-tape general-sealant-tape
              }
              vacuum {
                draw 25 inHg below ambient within 10 min
                leak-check 5 min rise at-most 30 mbar isolated
              }
              cure {
                hold 20 degC for 48 h under vacuum
                demould
              }
            }
            """,
    };

    private const int Keeps = 12;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Bag?.SealantTape is not { } tape)
        {
            return;
        }

        var lots = Shelf.Of(context.Model, tape.Material.Name);
        if (lots.Count == 0 || lots.Exists(l => l.Expires is not null || l.Received is null))
        {
            return;
        }

        var latest = lots.MaxBy(l => l.Received)!;
        if (context.Today is not { } today)
        {
            context.NotChecked("the day of the run is not given", latest.Where);
            return;
        }

        var keeps = tape.Material.ShelfLife is { } stated ? Shelf.Months(stated.Value) : Keeps;
        var months = Shelf.Months(latest.Received!.Value, today);
        if (months > keeps)
        {
            context.Report(
                latest.Where,
                FormattableString.Invariant($"{Shelf.Lot(latest)} came {months} months ago; it keeps its tack for {keeps}"),
                Grounds.Sure.And($"shelf life of {tape.Material.Name}", tape.Material.ShelfLife),
                [new FindingLabel(tape.Where, "used here")]);
        }
    }
}
