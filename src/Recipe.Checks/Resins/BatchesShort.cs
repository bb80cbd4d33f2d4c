using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>The pots together hold less than the part needs.</summary>
public sealed class BatchesShort : Check
{
    private const double Slack = 0.02;

    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC4004",
        Name = "batches-short",
        Severity = Severity.Error,
        Title = "Less resin mixed than needed",
        Reason = "The last ply is laid dry, or a pot is mixed in a hurry while the first ones go off.",
        Remedy = "Mix another pot, or larger ones.",
        Source = "common practice",
        Exceptions = """
            Speaks only of pots whose mass the recipe states. Two percent short is weighing. What part of the need rests on defaults makes
            only a warning.
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
              wet-out {
                pot 20 g
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
                pot 60 g
                pot 60 g
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
        var part = context.Part;
        if (part.WetOut is not { PotMasses.IsEmpty: false } wetOut || part.Process.Value == Process.Prepreg)
        {
            return;
        }

        if (context.Plan.Resin is not { } resin)
        {
            context.NotChecked(context.Plan.Missing("resin", "the need of resin is not known"), wetOut.Where);
            return;
        }

        var mixed = Mass.FromKilograms(wetOut.PotMasses.Sum(p => p.Value.Kilograms));
        var need = resin.Need.Value;
        if (mixed >= need * (1 - Slack))
        {
            return;
        }

        var certain = Certain(context.Plan, resin);
        var pot = wetOut.PotMasses[^1];
        var dry = Short(context.Plan, resin, mixed);
        context.Report(
            pot.Where ?? wetOut.Where,
            $"{In(mixed)} is mixed and {In(need)} needed: {In(need - mixed)} short{(dry is null ? "" : $", from {dry.Name} on")}",
            mixed < certain * (1 - Slack) ? null : Grounds.Sure.And<Mass>(resin.Need),
            dry is null ? [] : [new FindingLabel(dry.Where, "runs dry here")],
            [MorePots(part, wetOut, resin.System, need - mixed)]);

        string In(Mass mass) => Say.About(mass, pot.Written);
    }

    /// <summary>
    /// What is needed for certain: what is laid and what is lost, as far as nothing assumed is in it. Being short of that alone is an error.
    /// What the layers of a bag carry away was laid before.
    /// </summary>
    private static Mass Certain(Plan plan, ResinPlan resin)
    {
        var laid = plan.Stack.Select(l => l.LaidResin ?? l.CutResin);
        var isBled = plan.Stack.Any(l => l.LaidResin is not null);
        var rest = resin.Lines
            .Where(l => l.Use is not (ResinUse.Laminate or ResinUse.CoreFaces or ResinUse.Spare) && !(isBled && l.Use == ResinUse.Pickup))
            .Select(l => (Computed<Mass>?)l.Mass);
        return Mass.FromKilograms(laid.Concat(rest).Sum(m => m is { IsAssumed: false } sure ? sure.Value.Kilograms : 0));
    }

    /// <summary>The first line of the stack that the mixed resin does not reach, what never comes out of the pot taken off first.</summary>
    private static StackItem? Short(Plan plan, ResinPlan resin, Mass mixed)
    {
        var left = mixed.Kilograms - resin.Lines.Where(l => l.Use == ResinUse.Loss).Sum(l => l.Mass.Value.Kilograms);
        foreach (var line in plan.Stack)
        {
            left -= (line.LaidResin ?? line.CutResin)?.Value.Kilograms ?? 0;
            if (left < 0)
            {
                return line.Item;
            }
        }

        return null;
    }

    // What is missing, in pots that the resin stands in a cup.
    private static Fix? MorePots(Part part, WetOut wetOut, ResinSystem resin, Mass missing)
    {
        var last = wetOut.PotMasses[^1];
        if (last.Where is not { } where)
        {
            return null;
        }

        const double step = 5;
        const int most = 9;
        var largest = wetOut.Tray is { Value: true } ? null : PotTooBig.Largest(part, resin)?.Most;
        var pots = largest is { } cup ? (int)Math.Min(most + 1, Math.Ceiling(missing.Grams / Math.Max(step, Math.Floor(cup.Grams / step) * step))) : 1;
        var text = FormattableString.Invariant($"pot {Math.Ceiling(missing.Grams / pots / step) * step} g");
        return pots > most ? null : Edits.Fix(
            pots == 1 ? $"Mix another {text}" : FormattableString.Invariant($"Mix another {pots} pots: {text} each"),
            FixSafety.NeedsALook,
            Edits.After(where, string.Join("; ", Enumerable.Repeat(text, pots))));
    }
}
