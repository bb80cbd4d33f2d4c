using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>Cloth has to lie into an inside corner that is sharper than it bends.</summary>
public sealed class CornerTooSharp : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC2107",
        Name = "corner-too-sharp",
        Severity = Severity.Advice,
        Title = "Inside corner too sharp for the cloth",
        Reason = "Cloth bridges a sharp corner, and the void behind it is found when the corner is knocked.",
        Remedy = "Fill the corner with tow or filler first, or round it in the mould.",
        Source = "common practice; the figures are from memory",
        Exceptions = """
            Silent for cloths under 200 g/m2 and where the mould gives no `radius`.
            """,
        BadExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              radius 1 mm
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              process hand
              resin slow-laminating-epoxy
              plies {
                outer carbon-twill-200 0/90
                inner carbon-twill-200 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
        GoodExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              radius 6 mm
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              process hand
              resin slow-laminating-epoxy
              plies {
                outer carbon-twill-200 0/90
                inner carbon-twill-200 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    private const double HeavyKgPerM2 = 0.2;
    private static readonly Length Least = Length.FromMillimeters(3);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part.Mould is not { } mould || context.Plan.Laminate?.Thickness is not { } thickness || EdgesOfMould.InsideRadius(context.Plan) is not { } edge
            || !(edge.IsStated || context.Plan.Shape is { IsMeasured: true }))
        {
            return;
        }

        var radius = edge.Radius;
        var heavy = part.Stack.OfType<PlyItem>().FirstOrDefault(p => p.Material.ArealWeight?.Value.KilogramsPerSquareMeter >= HeavyKgPerM2 - 1e-9);
        var wanted = Length.FromMillimeters(Math.Max(Least.Millimeters, 2 * thickness.Value.Millimeters));
        if (heavy is null || radius >= wanted)
        {
            return;
        }

        var said = mould.InsideRadius;
        var grounds = said is null ? Grounds.Sure : Grounds.Sure.And("inside radius", said);
        context.Report(
            said?.Where ?? mould.Surface?.Where ?? mould.Where,
            $"the smallest inside radius of {mould.Name} is {(said is null ? $"about {Say.About(radius)}, measured on its surface" : Say.Of(said))}; {heavy.Material.Name} in a stack of {Say.About(thickness.Value)} lies down into {Say.About(wanted, said?.Written)} or more",
            2 * thickness.Value > Least ? grounds.And<Length>(thickness) : grounds,
            [new FindingLabel(heavy.Where, "heavy cloth here")],
            [Edits.Fix("Round the corner", FixSafety.NeedsALook, FigureEdits.Rewrite(said, FormattableString.Invariant($"{Math.Ceiling(wanted.Millimeters)} mm")))]);
    }
}
