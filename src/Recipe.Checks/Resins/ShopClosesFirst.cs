using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>The bag is not under vacuum when the shop closes.</summary>
public sealed class ShopClosesFirst : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC4010",
        Name = "shop-closes-first",
        Severity = Severity.Advice,
        Title = "Shop closes before the bag holds",
        Reason = "What cannot be put off is hurried, and the leak is left to itself.",
        Remedy = "Start earlier, or take fewer plies on the day.",
        Source = "common practice",
        Exceptions = """
            Silent where the shop gives no `closes` or the part no `start`.
            """,
        BadExample = """
            shop ours {
              closes 18:00
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
              wet-out {
                room 20 degC
                start 17:45
              }
              bag {
                peel-ply
                release-film perforated
                breather
                bag-film
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
            shop ours {
              closes 18:00
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
              wet-out {
                room 20 degC
                start 09:00
              }
              bag {
                peel-ply
                release-film perforated
                breather
                bag-film
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

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.WetOut?.Start is not { } start || context.Plan.Shop?.Closes is not { } closes)
        {
            return;
        }

        if (context.Plan.Clock is not { } clock)
        {
            return;
        }

        // A span of the day: a start behind the closing would count round the clock.
        var left = closes.Value - start.Value;
        if (clock.Need.Value.Minutes <= left.TotalMinutes && start.Value < closes.Value)
        {
            return;
        }

        context.Report(
            start.Where ?? context.Part.Where,
            $"started at {Say.Of(start)} the bag holds {Say.Of(clock.Need.Value)} later; the shop closes at {Say.Of(closes)}",
            Grounds.Sure.And<Duration>(clock.Need).And("start", start),
            closes.Where is { } said ? [new FindingLabel(said, "closes here")] : [],
            [Earlier(start, closes.Value, clock.Need.Value)]);
    }

    // Nine in the morning, where that is early enough.
    private static Fix? Earlier(Figure<TimeOnly> start, TimeOnly closes, Duration need)
    {
        var nine = new TimeOnly(9, 0);
        return nine < start.Value && nine < closes && need.Minutes <= (closes - nine).TotalMinutes
            ? Edits.Fix("Start at 09:00", FixSafety.NeedsALook, FigureEdits.Rewrite(start, "09:00"))
            : null;
    }
}
