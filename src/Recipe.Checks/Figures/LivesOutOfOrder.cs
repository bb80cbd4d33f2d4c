using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The times on one sheet contradict each other.</summary>
public sealed class LivesOutOfOrder : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC4204",
        Name = "lives-out-of-order",
        Severity = Severity.Warning,
        Title = "Times of the resin out of order",
        Reason = "A pot dies before the film, the film before it gels, and it gels before the part comes off; one of the figures is wrong.",
        Remedy = "Read the times off the sheet again, each with its unit and temperature.",
        Source = "common practice; resin in a pot warms itself and goes off before resin in a film",
        Exceptions = """
            Speaks of times that the recipe itself gives, not of those it takes over from the book. Times at different temperatures are
            compared at one, with a factor of 2 in hand.
            """,
        BadExample = """
            resin shop-epoxy like slow-laminating-epoxy {
              pot-life 60 min at 20 degC in 100 g
              film-life 150 min at 20 degC
              gel-time 50 min at 20 degC
              source "data sheet"
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
              resin shop-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              wet-out {
                pace 1 min/m2
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
        GoodExample = """
            resin shop-epoxy like slow-laminating-epoxy {
              pot-life 60 min at 20 degC in 100 g
              film-life 150 min at 20 degC
              gel-time 5 h at 20 degC
              source "data sheet"
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
              resin shop-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              wet-out {
                pace 1 min/m2
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    private const double SameTemperature = 0.5;
    private const double InHand = 1.02;
    private const double InHandElsewhere = 2;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part.Resin is not { FromBook: false } resin || resin.CuresWith == "heat")
        {
            return;
        }

        var times = new[] { ("pot life", resin.PotLife), ("film life", resin.FilmLife), ("gel time", resin.GelTime), ("demould time", resin.Demould) }
            .Where(t => t.Item2 is { Basis: not Basis.Book })
            .Select(t => (Word: t.Item1, Figure: t.Item2!))
            .ToList();
        foreach (var (first, second) in times.Zip(times.Skip(1)))
        {
            var at = second.Figure.Value.At;
            var isSame = Math.Abs(first.Figure.Value.At.Kelvins - at.Kelvins) <= SameTemperature;
            if (first.Figure.Value.AtTemperature(at).Seconds <= second.Figure.Value.Time.Seconds * (isSame ? InHand : InHandElsewhere))
            {
                continue;
            }

            var grounds = Grounds.Sure.And($"{first.Word} of {resin.Name}", first.Figure).And($"{second.Word} of {resin.Name}", second.Figure);
            context.Report(
                part.FigureWhere(second.Figure),
                $"{first.Word} of {resin.Name} is {Say.Of(first.Figure)}, and its {second.Word} is {Say.Of(second.Figure)}, which should be the longer",
                isSame ? grounds : grounds.AndThat("times halve for each 10 degC warmer"),
                part.ResinNamed(),
                [Slip(part, first.Figure, second.Figure)]);
            return;
        }
    }

    // Hours that were written as minutes, where that puts them in order.
    private static Fix? Slip(Part part, Figure<TimeAt> first, Figure<TimeAt> second)
    {
        const double minutesOfAnHour = 60;
        return second.Value.Time.Seconds * minutesOfAnHour > first.Value.Time.Seconds * InHandElsewhere
            && SheetFigures.Exchanged(second.Written, "min", "h") is { } text
            ? Edits.Fix($"Write {text}", FixSafety.NeedsALook, part.Rewrite(second, text))
            : null;
    }
}
