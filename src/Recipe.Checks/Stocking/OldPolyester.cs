using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A polyester or vinylester older than it keeps.</summary>
public sealed class OldPolyester : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8303",
        Name = "old-polyester",
        Severity = Severity.Warning,
        Title = "Old polyester",
        Reason = "Styrenated resin gels by itself in the tin: it goes thick, then lumpy, and no longer cures as its sheet says.",
        Remedy = "Do a gel test first, use it up for what carries nothing, and store it cool and dark.",
        Source = "common practice: 3 to 6 months, cool and dark",
        Exceptions = """
            The `shelf-life` of the material counts where it is given, else 6 months from the day it was received. Silent for a line with a
            date of expiry: that is what counts then.
            """,
        BadExample = """
            resin our-polyester {
              chemistry polyester; mix 100:2 by weight; density cured 1.20 g/cm3
              pot-life 25 min at 20 degC in 100 g; film-life 30 min at 20 degC; gel-time 45 min at 20 degC
              minimum-temperature 15 degC; demould 8 h at 20 degC; largest-pot 500 g; source "data sheet"
            }

            stock {
              our-polyester 5 kg lot "P3" received 2025-09-01
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
              resin our-polyester
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              wet-out {
                pace 5 min/m2
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
        GoodExample = """
            resin our-polyester {
              chemistry polyester; mix 100:2 by weight; density cured 1.20 g/cm3
              pot-life 25 min at 20 degC in 100 g; film-life 30 min at 20 degC; gel-time 45 min at 20 degC
              minimum-temperature 15 degC; demould 8 h at 20 degC; largest-pot 500 g; source "data sheet"
            }

            stock {
              our-polyester 5 kg lot "P3" received 2026-03-01
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
              resin our-polyester
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              wet-out {
                pace 5 min/m2
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    private const int Keeps = 6;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        foreach (var resin in Shelf.Resins(context.Part).Where(r => r.IsStyrenated()))
        {
            var lots = Shelf.Of(context.Model, resin.Name);
            if (lots.Count == 0 || lots.Exists(l => l.Expires is not null || (l.Received ?? l.Opened) is null))
            {
                continue;
            }

            var latest = lots.MaxBy(l => l.Received ?? l.Opened)!;
            if (context.Today is not { } today)
            {
                context.NotChecked("the day of the run is not given", latest.Where);
                return;
            }

            var keeps = resin.ShelfLife is { } stated ? Shelf.Months(stated.Value) : Keeps;
            var months = Shelf.Months((latest.Received ?? latest.Opened)!.Value, today);
            if (months <= keeps)
            {
                continue;
            }

            context.Report(
                latest.Where,
                FormattableString.Invariant($"{Shelf.Lot(latest)} has been there for {months} months; it keeps {keeps}"),
                Grounds.Sure.And($"shelf life of {resin.Name}", resin.ShelfLife),
                Shelf.Used(context.Part, resin.Name) is { } used ? [new FindingLabel(used, "used here")] : []);
        }
    }
}
