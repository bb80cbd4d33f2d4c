using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>The layers of the bag could carry away more resin than the laminate can lose.</summary>
public sealed class BleedsDry : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC5009",
        Name = "bleeds-dry",
        Severity = Severity.Warning,
        Title = "Bag takes more resin than the plies can spare",
        Reason = "A laminate that is sucked dry has open weave, pinholes and no strength between its plies.",
        Remedy = "Lay it wetter, leave a bleeder out, or take a film with smaller holes.",
        Source = "common practice; how dry a bag makes a cloth is from memory of the trade",
        Exceptions = """
            Speaks when the layers could take at least a tenth more than the plies can give. Silent for prepreg and for infusion, and where no cloth covers the part.
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
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              wet-out {
                resin-content 36 % by weight
                room 20 degC
                laminators 2
              }
              bag {
                peel-ply
                release-film perforated
                bleeder
                bleeder
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
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              wet-out {
                resin-content 50 % by weight
                room 20 degC
                laminators 2
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

    private const double Slack = 1.1;

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => part.Bag is { } bag ? new LinesRead(bag.Where, AllOfTheLine: true) : null;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var (part, plan) = (context.Part, context.Plan);
        if (part.Process.Value != Process.Bagged || part.Bag is not { } bag || BagOrder.IsUpsideDown(part)
            || plan.Bag is not { Pickup: { } given, CouldTake: { } could } || plan.Laminate is not { LaidResinFraction: { } laid })
        {
            return;
        }

        if (given.Value.Kilograms <= 0 || could.Value < given.Value * Slack)
        {
            return;
        }

        var thirsty = Thirstiest(plan.Bag);
        var where = thirsty is null ? "" : $", {Say.About(thirsty.CouldTake!.Value)} of it in {thirsty.Layer.Material.Name}";
        context.Report(
            thirsty?.Layer.Where ?? bag.Where,
            $"the bag could carry away {Say.About(could.Value)} of resin{where}; plies laid at {Say.Percent(Math.Round(laid.Value, 2))} by weight give {Say.About(given.Value)} and are dry then",
            Grounds.Sure.And<Mass>(could).And<Mass>(given),
            part.WetOut?.Content?.Where is { } said ? [new FindingLabel(said, "laid like this")] : [],
            [Wetter(part, plan, could.Value - given.Value)]);
    }

    // What somebody would leave out or change: the peel ply last, since it has to be there.
    private static BagLayerPlan? Thirstiest(BagPlan bag) => bag.Layers
        .Where(l => l.CouldTake is { Kilograms: > 0 })
        .OrderBy(l => l.Layer.Class == LayerClass.PeelPly)
        .ThenByDescending(l => l.CouldTake!.Value)
        .FirstOrDefault();

    // As much resin more as the bag still wants, and as the cloth should keep.
    private static Fix? Wetter(Part part, Plan plan, Mass missing)
    {
        const double kept = 0.06;
        if (plan.Resin is null || part.WetOut?.Content is { Value.Basis: not ContentBasis.ResinByWeight })
        {
            return null;
        }

        var laid = plan.Stack.Sum(line => line.LaidResin?.Value.Kilograms ?? 0) + missing.Kilograms;
        var dry = plan.Stack.Where(line => line.LaidResin is not null).Sum(line => line.CutMass?.Value.Kilograms ?? 0);
        var percent = Math.Ceiling(((laid / (laid + dry)) + kept) * 100);
        return percent < 65
            ? Edits.Fix(
                $"Lay it at {Say.Number(percent)} % by weight",
                FixSafety.NeedsALook,
                WetOutWords.Set(part, "resin-content", part.WetOut?.Content, $"{Say.Number(percent)} % by weight"))
            : null;
    }
}
