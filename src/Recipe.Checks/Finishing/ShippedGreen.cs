using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>A room-cured part is sent off before it is fully cured.</summary>
public sealed class ShippedGreen : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8217",
        Name = "shipped-green",
        Severity = Severity.Advice,
        Title = "Shipped green",
        Reason = "It is still curing: in a hot van it moves, prints its weave and takes the shape of what it lies on.",
        Remedy = "Wait until the full cure of the sheet, or post-cure it.",
        Source = "common practice: 7 days at room temperature",
        Exceptions = """
            Speaks of parts that are shipped after a cure up to 40 degC. Silent where the line names a wait.
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
              cure {
                hold 20 degC for 48 h
                demould
              }
              finish {
                wash
                trim
                weigh
                ship
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
              finish {
                wash
                trim
                weigh
                ship "after 7 days"
              }
            }
            """,
    };

    private static readonly Temperature Warm = Temperature.FromDegreesCelsius(40);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (!part.IsWetted()
            || part.Finish.FirstOrDefault(f => f.Verb == "ship") is not { } ship
            || part.Resin?.FullCure is not { } full
            || context.Plan.Cure is not { } cure
            || cure.Peak.Value > Warm
            || part.Finish.Any(f => TradeWords.Says(f.Words(), "day", "week", "wait", "cured", "post-cure", "postcure", "full", "store"))
            || ship.Text.AsSpan().IndexOfAnyInRange('0', '9') >= 0)
        {
            return;
        }

        var room = context.Plan.Conditions.Room.Value;
        var needed = full.Value.AtTemperature(room);
        if (cure.Total.Value >= needed)
        {
            return;
        }

        context.Report(
            ship.Where,
            $"shipped after {Say.Of(cure.Total.Value)} of cure; at {Say.Of(room)} {part.Resin.Name} wants {Say.Of(needed)} to its full strength",
            Grounds.Sure.And($"full cure of {part.Resin.Name}", full).And<Duration>(cure.Total).And<Temperature>(context.Plan.Conditions.Room),
            fixes: [Edits.Fix("Wait for it", FixSafety.NeedsALook, ship.Text.Length == 0
                ? Edits.Append(ship.Where, FormattableString.Invariant($"\"after {Math.Ceiling(needed.Days)} days\""))
                : FinishWords.AddWords(ship.Where, FormattableString.Invariant($"after {Math.Ceiling(needed.Days)} days")))]);
    }
}
