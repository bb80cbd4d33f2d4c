using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>An epoxy that has been open for more than a year.</summary>
public sealed class OpenedLongAgo : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8302",
        Name = "opened-long-ago",
        Severity = Severity.Advice,
        Title = "Opened long ago",
        Reason = "Hardener takes up water and carbon dioxide from the air each time it is opened, and then cures soft and sticky.",
        Remedy = "Mix a test cup before the job, and cap the tins at once.",
        Source = "US Army TM 1-1500-204-23-11 (page file 0026): hardener and the air; 12 months is common practice",
        Exceptions = """
            Silent where another lot on the shelf was opened later or not at all, and when no day is given.
            """,
        BadExample = """
            stock {
              slow-laminating-epoxy 2 kg lot "E31" opened 2025-01-10
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
            stock {
              slow-laminating-epoxy 2 kg lot "E31" opened 2026-02-01
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

    private const int Long = 12;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        foreach (var resin in Shelf.Resins(context.Part).Where(r => r.Chemistry == Chemistry.Epoxy))
        {
            var lots = Shelf.Of(context.Model, resin.Name);
            if (lots.Count == 0 || lots.Exists(l => l.Opened is null))
            {
                continue;
            }

            var latest = lots.MaxBy(l => l.Opened)!;
            if (context.Today is not { } today)
            {
                context.NotChecked("the day of the run is not given", latest.Where);
                return;
            }

            // A lot past its date has a finding of its own.
            var months = Shelf.Months(latest.Opened!.Value, today);
            if (months <= Long || latest.Expires < today)
            {
                continue;
            }

            context.Report(
                latest.Where,
                FormattableString.Invariant($"{Shelf.Lot(latest)} was opened {months} months ago; after {Long} a test cup is mixed first"),
                labels: Shelf.Used(context.Part, resin.Name) is { } used ? [new FindingLabel(used, "used here")] : []);
        }
    }
}
