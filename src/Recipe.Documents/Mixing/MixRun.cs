using System.Collections.Immutable;
using Recipe.Documents.Shared;
using Recipe.Model;
using Recipe.Planning;
using UnitsNet;

namespace Recipe.Documents.Mixing;

/// <summary>A liquid with all its pots.</summary>
/// <param name="Name">What heads its cards: "Coat pot".</param>
/// <param name="Use">What it is for, in words.</param>
/// <param name="System">The liquid.</param>
/// <param name="Pots">Its pots in order.</param>
/// <param name="ToMix">What is to be mixed in all.</param>
/// <param name="Own">The mix of its own that it is, or null for the resin of the plies.</param>
internal sealed record MixRun(string Name, string Use, ResinSystem System, ImmutableArray<PotPlan> Pots, Computed<Mass> ToMix, OwnMixPlan? Own)
{
    /// <summary>Whether the second liquid is a peroxide, which must never meet an accelerator outside the resin.</summary>
    public bool TakesPeroxide => Liquids.TakesPeroxide(System);

    /// <summary>Everything that is mixed for one part, in the order of its use.</summary>
    public static ImmutableArray<MixRun> Of(PaperContext context)
    {
        var (plan, say) = (context.Plan, context.Wording);
        var own = plan.OwnMixes.Where(mix => !mix.Pots.IsEmpty).Select(mix => new MixRun(
            mix.Use switch
            {
                OwnMixUse.Coat => say.Say("Coat pot"),
                OwnMixUse.SeamResin => say.Say("Seam pot"),
                _ => say.Say("Adhesive pot"),
            },
            mix.Use switch
            {
                OwnMixUse.Coat => context.IsWrapped ? say.Say("coat on the mandrel") : say.Say("coat on the mould"),
                OwnMixUse.SeamResin => say.Say("tape over the seam"),
                _ => say.Say("join"),
            },
            mix.System,
            mix.Pots,
            mix.ToMix,
            mix)).ToList();
        ImmutableArray<MixRun> plies = plan.Resin is { } resin && !plan.Pots.IsEmpty ? [new(say.Say("Pot"), say.Say("plies"), resin.System, plan.Pots, resin.ToMix, null)] : [];
        return [.. own.Where(run => run.Own!.Use == OwnMixUse.Coat), .. plies, .. own.Where(run => run.Own!.Use != OwnMixUse.Coat)];
    }

    /// <summary>What the scale shows when a pot is complete: the printed resin and the printed hardener.</summary>
    public static Mass Total(QuantityText text, PotPlan pot) =>
        pot is { Resin: { } resin, Hardener: { } hardener } ? text.OnScale(resin.Value) + text.OnScale(hardener.Value) : text.OnScale(pot.Mass.Value);
}
