using Recipe.Model;
using Recipe.Planning;
using Recipe.Text;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>A room cure runs through a night that is too cold for the resin.</summary>
public sealed class ColdNight : Check
{
    private static readonly Duration OneDay = Duration.FromDays(1);
    private static readonly Duration Night = Duration.FromHours(8);

    // As far as a room is from what is written of it, K.
    private const double AsTheRoom = 3;

    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC7006",
        Name = "cold-night",
        Severity = Severity.Warning,
        Title = "Night too cold for a room cure",
        Reason = "The reaction stops in the cold hours: blush and a green part in the morning.",
        Remedy = "Tent the mould with a heater that has its own cut-out, start in the morning, or take a faster hardener.",
        Source = "common practice",
        Exceptions = """
            Speaks only of a cure in the room of 8 hours or more that starts within the first day: `hold room ...`, or a hold within 3 K of the
            room. A cure that names its `oven` (a tent with a heater is one) is heated.
            """,
        BadExample = """
            shop ours {
              room 20 degC
              night 10 degC
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
                hold room for 48 h
                demould
              }
            }
            """,
        GoodExample = """
            shop ours {
              room 20 degC
              night 16 degC
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
                hold room for 48 h
                demould
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Plan.Cure is not { } cure || context.Part.Resin is not { } resin || context.Part.Cure?.Oven is not null)
        {
            return;
        }

        var room = context.Plan.Conditions.Room.Value;
        var overnight = cure.Steps.FirstOrDefault(s => IsInTheRoom(s, room) && s.Start.Value < OneDay && s.End.Value - s.Start.Value >= Night);
        if (overnight is null)
        {
            return;
        }

        if (resin.MinimumTemperature is not { } minimum || context.Plan.Conditions.Night is not { } night)
        {
            var missing = resin.MinimumTemperature is null
                ? $"no lowest curing temperature is given for {resin.Name}"
                : "no night temperature is given for the shop";

            // Of a stated temperature something unnamed may take care.
            if (overnight.Step.AtRoom)
            {
                context.NotChecked(missing, overnight.Step.Where);
            }

            return;
        }

        if (night.Value >= minimum.Value || room < minimum.Value)
        {
            return;
        }

        var written = context.Plan.Shop?.Night?.Written ?? minimum.Written;
        context.Report(
            overnight.Step.Where,
            $"the night falls to {Say.Of(night.Value, written)}; {resin.Name} cures from {Say.Of(minimum.Value, written)} up",
            Grounds.Sure.And($"lowest curing temperature of {resin.Name}", minimum).And<Temperature>(night),
            context.Plan.Shop?.Night?.Where is { } said ? [new FindingLabel(said, "night here")] : [],
            [Heated(overnight.Step, room)]);
    }

    // A temperature that the room has anyway, and nothing named that keeps it: that is the room.
    private static bool IsInTheRoom(CureStepPlan step, Temperature room) =>
        step.Step.Action == CureAction.Hold && (step.Step.AtRoom || Math.Abs((step.To - room).Kelvins) <= AsTheRoom);

    private static Fix? Heated(CureStep step, Temperature room)
    {
        const string word = "room";
        var heater = Edits.Before(step.Where, "oven \"say what heats it, with its own cut-out\"");
        if (!step.AtRoom)
        {
            return new Fix("Say what keeps it warm", FixSafety.NeedsALook, heater);
        }

        var at = step.Where.Text.IndexOf(word, StringComparison.Ordinal);
        return at < 0
            ? null
            : new Fix(
                $"Keep it at {Say.Of(room)} through the night",
                FixSafety.NeedsALook,
                heater,
                Edits.Replace(new SourceSpan(step.Where.Source, new TextSpan(step.Where.Span.Start + at, word.Length)), Say.Of(room)));
    }
}
