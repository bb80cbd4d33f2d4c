using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>The resin is too thick for an infusion.</summary>
public sealed class TooThickToInfuse : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC6201",
        Name = "too-thick-to-infuse",
        Severity = Severity.Warning,
        Title = "Resin too thick to infuse",
        Reason = "The front slows with the viscosity: thick resin stops on the way, gels there, and leaves the far side dry.",
        Remedy = "Take an infusion resin, or warm resin and mould.",
        Source = "common practice (500 mPa.s at the temperature of the resin)",
        Exceptions = """
            Silent for a path of less than 150 mm, and in the cold, which is another finding.
            """,
        BadExample = """
            resin shop-epoxy like infusion-epoxy {
              viscosity 900 mPa.s at 22 degC
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
              resin shop-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              bag {
                peel-ply
                flow-medium smaller 40 mm
                bag-film
              }
              infuse {
                path 160 mm
                feed-line length 300 mm diameter 8 mm
                resin-temperature 22 degC
                clamp-feed "at full wet"
                drop-test 5 min rise at-most 30 mbar isolated
              }
              vacuum {
                draw 28 inHg below ambient within 10 min
              }
              cure {
                hold 20 degC for 48 h under vacuum
                demould
              }
            }
            """,
        GoodExample = """
            resin shop-epoxy like infusion-epoxy {
              viscosity 280 mPa.s at 22 degC
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
              resin shop-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              bag {
                peel-ply
                flow-medium smaller 40 mm
                bag-film
              }
              infuse {
                path 160 mm
                feed-line length 300 mm diameter 8 mm
                resin-temperature 22 degC
                clamp-feed "at full wet"
                drop-test 5 min rise at-most 30 mbar isolated
              }
              vacuum {
                draw 28 inHg below ambient within 10 min
              }
              cure {
                hold 20 degC for 48 h under vacuum
                demould
              }
            }
            """,
    };

    private static readonly DynamicViscosity Most = DynamicViscosity.FromMillipascalSeconds(500);
    private static readonly DynamicViscosity Thin = DynamicViscosity.FromMillipascalSeconds(350);
    private static readonly Length Short = Length.FromMillimeters(150);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part is not { Process.Value: Process.Infused, Infusion: { } infusion, Resin: { } resin } || (infusion.Path is { } path && path.Value < Short) || InfusedCold.Cold(part, context.Plan.Shop).Count > 0)
        {
            return;
        }

        var flow = context.Plan.Flow;
        if ((flow?.Viscosity.Value ?? resin.Viscosity?.Value) is not { } viscosity)
        {
            context.NotChecked($"no viscosity is given for {resin.Name}", part.ResinWhere);
            return;
        }

        if (viscosity <= Most)
        {
            return;
        }

        context.Report(
            part.ResinWhere ?? infusion.Where,
            $"{resin.Name} has about {Say.Number(Math.Ceiling(viscosity.MillipascalSeconds / 10) * 10)} mPa.s as the feed opens; {Say.Number(Most.MillipascalSeconds)} is the most for an infusion",
            Grounds.Sure.And<DynamicViscosity>(flow?.Viscosity).And($"viscosity of {resin.Name}", resin.Viscosity),
            [new FindingLabel(infusion.Where, "infused here")],
            [Thinner(context, resin)]);
    }

    private static Fix? Thinner(CheckContext context, ResinSystem resin)
    {
        var other = context.Model.Materials.Values.OfType<ResinSystem>()
            .Where(r => r.Role == ResinRole.Laminating && r.Chemistry == resin.Chemistry && r.Hardeners.IsEmpty && r.Name != resin.Name && r.Viscosity is { } v && v.Value <= Thin && r.PotLife is { Value.Time.Hours: >= 2 })
            .OrderBy(r => r.Name, StringComparer.Ordinal)
            .FirstOrDefault();
        return other is null || context.Part.ResinWhere is not { } named || !ReferenceEquals(named.Source, context.Part.Where.Source)
            ? null
            : new Fix($"Infuse with {other.Name}", FixSafety.NeedsALook, Edits.Replace(named, other.Name));
    }
}
