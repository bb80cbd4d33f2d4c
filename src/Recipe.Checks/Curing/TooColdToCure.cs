using Recipe.Planning;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>The first day is colder than the resin cures at.</summary>
public sealed class TooColdToCure : Check
{
    private static readonly Duration OneDay = Duration.FromDays(1);

    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC7005",
        Name = "too-cold-to-cure",
        Severity = Severity.Error,
        Title = "Too cold to cure",
        Reason =
            "Below its lowest temperature the resin stops half way: the part stays green, and later warmth does not bring all"
            + " of it back.",
        Remedy = "Heat the shop, tent the mould, or take a hardener for the cold.",
        Source = "common practice; the limit is the resin's own",
        Exceptions = """
            Silent when the part gets warm enough within a day, as with a post-cure that starts the same day.
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
                hold 10 degC for 72 h
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
        if (context.Plan.Cure is not { Steps.Length: > 0 } cure || context.Part.Resin is not { } resin)
        {
            return;
        }

        if (resin.MinimumTemperature is not { } minimum)
        {
            context.NotChecked($"no lowest curing temperature is given for {resin.Name}", context.Part.ResinWhere);
            return;
        }

        var room = context.Plan.Conditions.Room;
        var firstDay = cure.Steps.Where(s => s.Start.Value < OneDay).ToList();
        if (firstDay.MaxBy(s => Warmest(s, room.Value).Kelvins) is not { } warmest)
        {
            return;
        }

        var reached = Warmest(warmest, room.Value);
        if (reached >= minimum.Value)
        {
            return;
        }

        var written = (warmest.Step.AtRoom ? context.Plan.RoomWritten() : context.Part.CureWritten()) ?? minimum.Written;
        context.Report(
            warmest.Step.Where,
            $"the first day gets no warmer than {Say.Of(reached, written)}; {resin.Name} cures from {Say.Of(minimum.Value, written)} up",
            Grounds.Sure
                .And($"lowest curing temperature of {resin.Name}", minimum)
                .And<Temperature>(warmest.Step.AtRoom ? room : null),
            context.Part.ResinWhere is { } named ? [new FindingLabel(named, "resin named here")] : [],
            [Edits.Fix($"Cure at {Say.Of(minimum)}", FixSafety.NeedsALook, FigureEdits.Rewrite(warmest.Step.Temperature, Say.Of(minimum)))]);
    }

    // The plan cures in the room at the coldest that it gets; whether the night is too cold is another check.
    private static Temperature Warmest(CureStepPlan step, Temperature room) =>
        step.Step.AtRoom ? room : step.From > step.To ? step.From : step.To;
}
