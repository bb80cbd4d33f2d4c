using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>A dark part for outdoors whose resin softens below what the sun makes of it.</summary>
public sealed class DarkSkinUncured : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC7111",
        Name = "dark-skin-uncured",
        Severity = Severity.Warning,
        Title = "Dark skin softer than the sun is hot",
        Reason = "A dark skin in the sun gets 70 to 80 degC: the resin softens, the weave prints through, and the part sags.",
        Remedy = "Post-cure it, make it white, or take a resin for hot service.",
        Source = "common practice: 70 to 80 degC for a dark skin in the sun",
        Exceptions = """
            Advice where nothing says that it stays outdoors; silent for `outdoors no`, and where `service` is given, since that is compared
            with the resin by itself.
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
              outdoors yes
              colour dark
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
                abrade 240 grit
                paint colour white
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
              outdoors yes
              colour white
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
                abrade 240 grit
                paint colour white
              }
            }
            """,
    };

    private static readonly Temperature InTheSun = Temperature.FromDegreesCelsius(75);
    private static readonly Temperature RoomCure = Temperature.FromDegreesCelsius(45);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part is not { Colour: { Value: PartColour.Dark } colour, Service: null, Resin: { } resin }
            || part.Outdoors is { Value: false }
            || !part.IsWetted()
            || context.Plan.Cure is not { } cure)
        {
            return;
        }

        if (cure.Progress?.Transition is { } transition)
        {
            if (transition.Value.Value >= InTheSun)
            {
                return;
            }
        }
        else if (cure.Peak.Value > RoomCure)
        {
            context.NotChecked(context.Plan.Missing("glass transition", $"no glass transition is known for {resin.Name}"), colour.Where ?? part.Where);
            return;
        }

        var softens = cure.Progress?.Transition is { } known
            ? $"{resin.Name} softens at about {Say.Of(Temperature.FromDegreesCelsius(Math.Round(known.Value.Value.DegreesCelsius)))} after this cure"
            : $"the cure goes no higher than {Say.Of(cure.Peak.Value)}";
        context.Report(
            colour.Where ?? part.Where,
            $"{softens}; the sun takes a dark skin to {Say.Of(InTheSun)}",
            Grounds.Sure.And("colour", colour).And<Planning.Banded<Temperature>>(cure.Progress?.Transition),
            part.Outdoors?.Where is { } said ? [new FindingLabel(said, "outdoors here")] : [],
            [Edits.Fix("Make it white", FixSafety.NeedsALook, FigureEdits.Rewrite(colour, "white"))],
            part.Outdoors is { Value: true } ? Severity.Warning : Severity.Advice);
    }
}
