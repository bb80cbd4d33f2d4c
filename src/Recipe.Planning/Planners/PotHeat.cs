using System.Runtime.CompilerServices;
using Recipe.Engineering;
using Recipe.Model;
using Recipe.Planning.Ledger;
using UnitsNet;

namespace Recipe.Planning.Planners;

/// <summary>
/// What the heat of a pot does to it: Recipe.Engineering PotModel, one lump of resin in a cup or tray. Its life is the time to the degree of
/// cure at which the data sheet's own pot is done.
/// </summary>
/// <remarks>
/// The lump errs late, since the middle of a real pot is hotter, and it makes less of the mass than common practice does: the plan takes
/// the shorter of this life and the rule's.
/// </remarks>
internal sealed class PotHeat
{
    // Reading the sheet's pot takes some milliseconds, and a thousand variants share one resin.
    private static readonly ConditionalWeakTable<ResinSystem, StrongBox<PotHeat?>> Known = [];

    private readonly ExothermicResin _resin;
    private readonly SheetPot _sheet;

    private PotHeat(ExothermicResin resin, SheetPot sheet) => (_resin, _sheet) = (resin, sheet);

    /// <summary>The heat of a resin's pots; null where its kinetics, its heat or its pot life are not known, or contradict each other.</summary>
    public static PotHeat? Of(ResinSystem resin) => Known.GetValue(resin, static r => new StrongBox<PotHeat?>(Make(r))).Value;

    /// <summary>What it rests on, besides the pot.</summary>
    public static Rests Basis(PlanContext context, ResinSystem resin)
    {
        var owner = Owner.Of(resin);
        var on = context.Ledger.Assume(Defaults.PotHeat) | CureModel.KineticsBasis(context, resin);
        return resin.HeatOfReaction is { } heat ? on | context.Figures.Basis(heat, owner, "heat-of-reaction") : on;
    }

    /// <summary>How long a pot can be used; null when it takes more than two months.</summary>
    public Duration? Life(Mass mass, Temperature at, PotShape shape) => Try(() => _sheet.LifeOf(new Pot(mass, at) { Shape = shape }));

    /// <summary>How hot it gets when it is left standing; null when the model does not answer for it.</summary>
    public Temperature? Peak(Mass mass, Temperature at, PotShape shape) =>
        Try<Temperature>(() => PotModel.Peak(_resin, new Pot(mass, at) { Shape = shape }, Duration.FromDays(2)));

    private static PotHeat? Make(ResinSystem resin)
    {
        if (CureModel.Find(resin) is not { } model || resin.HeatOfReaction is not { Value: var heat }
            || resin.PotLife is not { Value: { In: { } mass } sheet })
        {
            return null;
        }

        return Try(() =>
        {
            var exothermic = new ExothermicResin(model.Kinetics, heat);
            var read = SheetPot.OfPotLife(exothermic, new PotLifeReference(sheet.Time, sheet.At, mass));
            return read.PastGel ? null : new PotHeat(exothermic, read);
        });
    }

    // Figures beyond what the model answers for leave the rule of thumb to speak alone.
    private static T? Try<T>(Func<T?> work)
    {
        try
        {
            return work();
        }
        catch (ArgumentException)
        {
            return default;
        }
    }
}
