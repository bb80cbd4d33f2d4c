using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>Trim, a gap and the sealant tape do not fit on the flange.</summary>
public sealed class FlangeTooNarrow : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC2110",
        Name = "flange-too-narrow",
        Severity = Severity.Warning,
        Title = "Flange too narrow for the bag",
        Reason = "The tape ends up on wet cloth or on the trim line, and leaks there.",
        Remedy = "Widen the flange, cut the trim allowance, or go round the mould with an envelope bag.",
        Source = "common practice (trim, 20 mm of gap, and the width of the tape)",
        Exceptions = """
            Silent for an envelope bag, a mandrel and where no `flange` is given.
            """,
        BadExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              flange 30 mm
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              resin slow-laminating-epoxy
              trim 15 mm
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
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
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              flange 75 mm
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              resin slow-laminating-epoxy
              trim 15 mm
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
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

    private static readonly Length Gap = Length.FromMillimeters(20);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part.Bag is not { IsEnvelope: false } bag || part.Mould is not { Flange: { } flange, IsMandrel: false } mould)
        {
            return;
        }

        var tape = BagStuff.TapeWidth(bag);
        var widest = part.Stack.OfType<PlyItem>().Select(p => p.Trim).OfType<Figure<Length>>().MaxBy(t => t.Value);
        var trim = (widest ?? part.Trim)?.Value ?? Defaults.Trim.Value;
        var wanted = trim + Gap + tape;
        if (flange.Value >= wanted - Length.FromMillimeters(0.5))
        {
            return;
        }

        context.Report(
            flange.Where ?? mould.Where,
            $"flange of {Say.Of(flange)}; {Say.Of(trim, flange.Written)} of trim, {Say.Of(Gap, flange.Written)} of gap and {Say.Of(tape, flange.Written)} of tape want {Say.Of(wanted, flange.Written)}",
            widest is null ? Grounds.Sure.And("flange", flange).AndTrim(part) : Grounds.Sure.And("flange", flange),
            [new FindingLabel(bag.SealantTape?.Where ?? bag.Where, "sealed here")],
            [Edits.Fix("Widen the flange", FixSafety.NeedsALook, FigureEdits.Rewrite(flange, FormattableString.Invariant($"{Math.Ceiling(wanted.Millimeters / 5) * 5} mm")))]);
    }
}
