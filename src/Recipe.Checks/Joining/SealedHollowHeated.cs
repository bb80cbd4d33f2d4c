using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>A closed hollow is heated and its air cannot get out.</summary>
public sealed class SealedHollowHeated : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8105",
        Name = "sealed-hollow-heated",
        Severity = Severity.Error,
        Title = "Closed hollow heated without a vent",
        Reason = "Warmed by 30 degC the air inside presses with a tenth of a bar on every wall: it opens a seam that is still soft, and a shell may burst when it is worked on.",
        Remedy = "Drill a hole of 2 to 3 mm where it does no harm, and plug it after the last warm step.",
        Source = "common practice; the pressure from the gas law at constant volume",
        Exceptions = """
            Speaks of shapes that close: domes, halves of ellipsoids and boxes. Silent where `vent` is given, where a line speaks of a vent or
            hole, and for cures up to 40 degC.
            """,
        BadExample = """
            mould tray-mould {
              surface half-ellipsoid 220 mm x 140 mm x 60 mm
              made-of aluminium
              halves left right
              flange 40 mm
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
              wet-out {
                laminators 2
              }
              cure {
                hold 20 degC for 24 h
                ramp 10 degC/h to 50 degC
                hold 50 degC for 16 h
                cool to 30 degC
                demould
              }
              join {
                manner wet-in-wet
                align dowels
                overlap 20 mm
                seam 572 mm
                within 60 min
              }
            }
            """,
        GoodExample = """
            mould tray-mould {
              surface half-ellipsoid 220 mm x 140 mm x 60 mm
              made-of aluminium
              halves left right
              flange 40 mm
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
              wet-out {
                laminators 2
              }
              cure {
                hold 20 degC for 24 h
                ramp 10 degC/h to 50 degC
                hold 50 degC for 16 h
                cool to 30 degC
                demould
              }
              join {
                manner wet-in-wet
                align dowels
                overlap 20 mm
                seam 572 mm
                within 60 min
                vent 3 mm
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override bool IsSafety => true;

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => part.JoinLines();

    private static readonly Temperature Warm = Temperature.FromDegreesCelsius(40);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part.Join is not { Vent: null } join
            || !IsClosedWhileItCures(context.Model, part, join)
            || context.Plan.Cure is not { } cure
            || cure.Peak.Value <= Warm
            || cure.Steps.MaxBy(s => s.To) is not { } hot
            || join.Preparation.Concat(part.Finish).Any(s => TradeWords.Says(s.Words(), "vent", "hole", "drill", "breath", "open"))
            || context.MissesAPly())
        {
            return;
        }

        var room = context.Plan.Conditions.Room;
        var rise = context.Plan.Conditions.Ambient.Value * ((cure.Peak.Value.Kelvins / room.Value.Kelvins) - 1);
        context.Report(
            hot.Step.Where,
            $"the closed hollow is warmed to {Say.Of(cure.Peak.Value, hot.Step.Temperature?.Written)} with no vent; shut at {Say.Of(room.Value, hot.Step.Temperature?.Written)} its air then presses {Say.Number(Math.Round(rise.Millibars))} mbar outwards",
            Grounds.Sure.And<Temperature>(cure.Peak),
            [new FindingLabel(join.Where, "closed here")],
            [Edits.Fix("Give it a vent of 3 mm", FixSafety.NeedsALook, Edits.Last(join.Where, "vent 3 mm"))]);
    }

    // Halves closed wet are cured closed; parts put together are cured together by the block of the part that joins them.
    private static bool IsClosedWhileItCures(RecipeModel model, Part part, Join join)
    {
        if (join.Parts.Length > 1 && !part.HasPlies())
        {
            return join.Parts.Select(model.PartNamed).All(p => p is not null && Closes(p));
        }

        return join.Manner?.Value == JoinManner.WetInWet && part.Mould?.Halves.Length > 1 && Closes(part)
            && !part.Stack.OfType<CoreItem>().Any(c => c.Thickness?.Value > Length.FromMillimeters(30));
    }

    private static bool Closes(Part part) =>
        (part.Surface ?? part.Mould?.Surface)?.Value is HalfEllipsoidShape or SphericalCapShape or ParaboloidShape or BoxShape;
}
