using Recipe.Planning;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>A pot of the record was not mixed in its ratio.</summary>
public sealed class PotOffRatio : RecordCheck
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC9113",
        Name = "pot-off-ratio",
        Severity = Severity.Warning,
        Title = "Pot off its mix ratio",
        Reason = "Resin without its hardener never cures hard, and too much hardener stays soft: the part is weaker than it looks, and no heat mends it.",
        Remedy = "Check the figures against the mix card. If they are right, try leftover and part with a nail: do not load the part until both are hard, and write what was decided.",
        Source = "common practice: a ratio of epoxy is held to 3 %; peroxide may be chosen within the range of the data sheet",
        Exceptions = """
            Silent up to 3 % of the hardener, up to the step of the scale, and for peroxide up to a half more or less than the ratio. Silent where the
            record was built with another resin than the part has today.
            """,
        BadExample = RecordExamples.Tray + """
            build tray no 3 on 2026-05-06 {
              by "K"
              used slow-laminating-epoxy 50.9 g lot "E31"
              pot 1 resin 40 g hardener 10.9 g mixed-at 09:00 dead-at 09:40
              demould after 48 h at 20 degC
              mass 88 g
              disposition use by "K"
            }
            """,
        GoodExample = RecordExamples.Tray + """
            build tray no 3 on 2026-05-06 {
              by "K"
              used slow-laminating-epoxy 52 g lot "E31"
              pot 1 resin 40 g hardener 12 g mixed-at 09:00 dead-at 09:40
              demould after 48 h at 20 degC
              mass 88 g
              disposition use by "K"
            }
            """,
    };

    private const double Share = 0.03;
    private const double ShareOfPeroxide = 0.5;

    // Figures are written to what the scale shows: half a last digit is no difference. kg.
    private const double Rounding = 0.00005;

    internal override void Examine(CheckContext context, LoggedBuild build, BuildLog log)
    {
        if (build.Part.Resin is not { } resin || (build.Record.Planned?.Resin is { } built && built != resin.Name))
        {
            return;
        }

        var share = resin.IsPeroxideCured() ? ShareOfPeroxide : Share;
        var step = context.Model.Shop?.ScaleResolution?.Value ?? Mass.Zero;
        foreach (var pot in build.Record.Pots)
        {
            if (pot is not { Resin: { } a, Hardener: { } b } || RecordedMix.HardenerFor(resin, a.Value) is not { } wanted)
            {
                continue;
            }

            var off = b.Value - wanted;
            if (Math.Abs(off.Kilograms) > Math.Max(share * wanted.Kilograms, step.Kilograms) + Rounding)
            {
                context.Report(
                    b.Where ?? pot.Where,
                    $"pot {Say.Number(pot.Number)} has {Say.Of(b)} of hardener for {Say.Of(a)} of resin; {Say.Of(resin.Mix!)} asks for {Say.About(wanted, b.Written)}",
                    labels: [new FindingLabel(a.Where ?? pot.Where, off.Kilograms < 0 ? "too little hardener for this" : "too much hardener for this")]);
            }
        }
    }
}
