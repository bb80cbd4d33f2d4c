using Recipe.Model;
using Recipe.Planning;
using Recipe.Text;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>The scale reads too coarsely for the hardener.</summary>
public sealed class ScaleTooCoarse : Check
{
    private const double Ounce = 0.45359237 / 16;
    private const double Share = 0.01;

    // A step that is just fine enough is not lost in the arithmetic.
    private const double Noise = 1e-9;

    // What the mix card of a coat, a seam or an adhesive accepts at the scale, so that its band is one.
    private const double ShareOfOwnPots = 0.02;

    // The dose of a peroxide has a window, 1 to 3 % of the resin: a quarter of it more or less still lies inside.
    private const double ShareOfPeroxide = 0.25;

    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC4007",
        Name = "scale-too-coarse",
        Severity = Severity.Warning,
        Title = "Scale too coarse for the pot",
        Reason = "One percent off the hardener is all a mix stands; a scale that reads in larger steps cannot show it.",
        Remedy = "Weigh on a finer scale, or mix a larger pot.",
        Source = "a light-aircraft maintenance manual: error of 0.5 % at most; 1 % is common practice",
        Exceptions = """
            Speaks only when the shop states its `scale`; of every liquid that is mixed for the part. Coats, seam and
            adhesive are held to the band of their mix card, 2 % of the hardener, the plies' resin to 1 %.
            """,
        BadExample = """
            shop ours {
              scale 1 g
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
              wet-out {
                pot 120 g
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
        GoodExample = """
            shop ours {
              scale 0.1 g
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
              wet-out {
                pot 120 g
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
        if (context.Plan.Shop?.ScaleResolution is not { } scale)
        {
            return;
        }

        if (context.Part.Resin is { } resin && !context.Plan.Pots.IsEmpty && !context.Plan.Pots.Any(HasParts))
        {
            context.NotChecked($"no mix ratio is given for {resin.Name}", context.Part.ResinWhere);
        }

        // Of all that is mixed for the part, the pot that wants the finest scale; the others are counted.
        var coarse = Weighings(context).Where(weighing => scale.Value > weighing.Finest * (1 + Noise)).OrderBy(weighing => weighing.Finest.Kilograms).ToList();
        if (coarse is not [var worst, ..])
        {
            return;
        }

        context.Report(
            scale.Where ?? context.Part.Where,
            $"the scale reads in steps of {Say.Of(scale)}; the {Say.About(worst.Component, scale.Written)} of {worst.What} in {worst.Pot} want {Say.About(worst.Finest, scale.Written)} or finer{Say.More(coarse.Count - 1)}",
            Grounds.Sure.And("step of the scale", scale).And<Mass>(worst.Mixed),
            worst.Where is { } where ? [new FindingLabel(where, "pot here")] : [],
            [Finer(scale, worst.Finest), Larger(scale, worst)]);
    }

    // A pot of the join that is large enough for the scale; what is over is left over.
    private static Fix? Larger(Figure<Mass> scale, Weighing worst)
    {
        if (worst is not { Join: { Pot: null } join, Mixed.Value: var mixed } || worst.Finest.Kilograms <= 0)
        {
            return null;
        }

        var least = Math.Ceiling(mixed.Grams * (scale.Value / worst.Finest) / 5 * (1 - 1e-9)) * 5;
        return least > 1000 ? null : Edits.Fix(FormattableString.Invariant($"Mix at least {least} g at once for the seam"), FixSafety.NeedsALook, Edits.Last(join.Where, FormattableString.Invariant($"pot {least} g")));
    }

    // What is weighed with the smallest part of each liquid: the plies' resin in its pots, and each coat, seam resin and adhesive in theirs.
    private static IEnumerable<Weighing> Weighings(CheckContext context)
    {
        if (context.Part.Resin is { } resin && context.Plan.Pots.Where(HasParts).MinBy(Smaller) is { } pot)
        {
            yield return new(pot, resin, Share, $"pot {pot.Number}", WetOutWords.PotWhere(context.Part, pot.Number), null);
        }

        foreach (var mix in context.Plan.OwnMixes)
        {
            if (mix.Pots.Where(HasParts).MinBy(Smaller) is { } own)
            {
                var join = mix.Use == OwnMixUse.Coat ? null : context.Part.Join;
                yield return new(own, mix.System, ShareOfOwnPots, $"the pot of {mix.System.Name}", join?.AdhesiveWhere ?? join?.Where, join);
            }
        }
    }

    private static bool HasParts(PotPlan pot) => pot is { Hardener: not null, Resin: not null };

    private static double Smaller(PotPlan pot) => Math.Min(pot.Hardener!.Value.Value.Kilograms, pot.Resin!.Value.Value.Kilograms);

    private sealed record Weighing(PotPlan Planned, ResinSystem System, double OfHardener, string Pot, SourceSpan? Where, Join? Join)
    {
        public Computed<Mass> Mixed => Planned.Mass;

        public Mass Component => Mass.FromKilograms(Smaller(Planned));

        public Mass Finest => Component * (System.IsPeroxideCured() ? ShareOfPeroxide : OfHardener);

        public string What => Planned.Hardener!.Value.Value <= Planned.Resin!.Value.Value ? "hardener" : "resin";
    }

    private static Fix? Finer(Figure<Mass> scale, Mass finest)
    {
        // Steps that scales are sold with (common practice): tenths and hundredths of a gram, and in ounces thousandths and halves of them.
        (double Si, string Written)[] steps = Say.UnitLike(scale.Written, "g").Symbol is "oz" or "lb"
            ? [(Ounce * 0.01, "0.01 oz"), (Ounce * 0.005, "0.005 oz"), (Ounce * 0.001, "0.001 oz"), (Ounce * 0.0005, "0.0005 oz")]
            : [(1e-4, "0.1 g"), (1e-5, "0.01 g")];
        var step = steps.FirstOrDefault(s => s.Si <= finest.Kilograms).Written;
        return step is null ? null : Edits.Fix($"Weigh on a scale that reads {step}", FixSafety.NeedsALook, FigureEdits.Rewrite(scale, step));
    }
}
