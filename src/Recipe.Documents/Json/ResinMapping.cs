using Recipe.Documents.Shared;
using Recipe.Model;
using Recipe.Planning;
using UnitsNet;

namespace Recipe.Documents.Json;

/// <summary>From laminate, resin, pots and clock to their JSON shapes.</summary>
internal static class ResinMapping
{
    public static LaminateRecord Of(LaminatePlan laminate) => new(
        Si.Of(laminate.Fibre),
        Si.Of(laminate.Resin),
        Si.Of(laminate.Core),
        Si.Of(laminate.Coats),
        Si.Of(laminate.Inserts),
        Si.Of(laminate.Join),
        Si.Of(laminate.TrimmedMass.Value.Value),
        Si.Of(laminate.TrimmedMass.Value.Low),
        Si.Of(laminate.TrimmedMass.Value.High),
        Si.Of(laminate.Thickness),
        Si.Of(laminate.ResinFraction),
        Si.Of(laminate.LaidResinFraction),
        Si.Of(laminate.FibreVolumeFraction),
        Si.RestsOn(
            ("fibre_kg", laminate.Fibre.RestsOn),
            ("resin_kg", laminate.Resin.RestsOn),
            ("core_kg", laminate.Core.RestsOn),
            ("coats_kg", laminate.Coats.RestsOn),
            ("inserts_kg", laminate.Inserts.RestsOn),
            ("join_kg", laminate.Join?.RestsOn),
            ("trimmed_mass_kg", laminate.TrimmedMass.RestsOn),
            ("thickness_m", laminate.Thickness.RestsOn),
            ("resin_fraction", laminate.ResinFraction.RestsOn),
            ("laid_resin_fraction", laminate.LaidResinFraction?.RestsOn),
            ("fibre_volume_fraction", laminate.FibreVolumeFraction?.RestsOn)));

    public static ResinRecord Of(ResinPlan resin, bool tray)
    {
        var mix = resin.System.Mix;
        return new(
            resin.System.Name,
            resin.System.Label,
            resin.System.Hardener,
            Si.Number(mix?.Value.Resin),
            Si.Number(mix?.Value.Hardener),
            BasisOf(mix),
            mix?.Written,
            [.. resin.Lines.Select(line => new ResinLineRecord(Keys.Of(line.Use), line.Label, Si.Of(line.Mass), Si.RestsOn(("mass_kg", line.Mass.RestsOn))))],
            Si.Of(resin.Need),
            Si.Of(resin.ToMix),
            resin.PotsStated,
            tray,
            Si.RestsOn(("need_kg", resin.Need.RestsOn), ("to_mix_kg", resin.ToMix.RestsOn)));
    }

    public static OwnMixRecord Of(OwnMixPlan mix, Duration? mixing)
    {
        var (system, ratio) = (mix.System, mix.System.Mix);
        return new(
            Keys.Of(mix.Use),
            system.Name,
            system.Label,
            system.Hardener,
            Si.Number(ratio?.Value.Resin),
            Si.Number(ratio?.Value.Hardener),
            BasisOf(ratio),
            ratio?.Written,
            system.Filler,
            Si.Number(system.FillerParts?.Value),
            Si.Of(mix.Laid),
            Si.Of(mix.Loss),
            Si.Of(mix.Spare),
            Si.Of(mix.ToMix),
            [.. mix.Pots.Select(pot => Of(pot, mixing))],
            Si.RestsOn(("laid_kg", mix.Laid.RestsOn), ("loss_kg", mix.Loss.RestsOn), ("spare_kg", mix.Spare.RestsOn), ("to_mix_kg", mix.ToMix.RestsOn)));
    }

    private static string? BasisOf(Figure<MixRatio>? mix) => mix?.Value.Basis is { } basis ? "by-" + Keys.Of(basis) : null;

    public static PotRecord Of(PotPlan pot, Duration? mixing) => new(
        pot.Number,
        Si.Of(pot.Mass),
        Si.Of(pot.Resin),
        Si.Of(pot.Hardener),
        Si.Of(pot.HardenerTolerance),
        pot.For,
        Si.Of(mixing),
        Si.Of(pot.MixedAt),
        Si.Of(pot.UsedUpAt),
        Si.Of(pot.PotLife),
        Si.Of(pot.DeadAt),
        Si.Of(WorkClock.MarginOf(pot)),
        Si.Of(pot.StandingPeak),
        Si.RestsOn(
            ("mass_kg", pot.Mass.RestsOn),
            ("resin_kg", pot.Resin?.RestsOn),
            ("hardener_kg", pot.Hardener?.RestsOn),
            ("mixed_at_s", pot.MixedAt.RestsOn),
            ("used_up_at_s", pot.UsedUpAt.RestsOn),
            ("pot_life_s", pot.PotLife?.RestsOn),
            ("dead_at_s", pot.DeadAt?.RestsOn),
            ("standing_peak", pot.StandingPeak?.RestsOn)));

    public static ClockRecord Of(ClockPlan clock, WorkClock work) => new(
        Si.Of(clock.WetOut),
        Si.Of(clock.Bagging),
        Si.Of(clock.DrawDown),
        Si.Of(clock.Need),
        Si.Of(clock.FilmLife),
        Si.Of(clock.FilmLifeBand?.Value.Low),
        Si.Of(clock.FilmLifeBand?.Value.High),
        Si.Of(work.Margin),
        Si.Of(work.FullVacuumBy),
        Si.Of(work.PumpOnBy),
        Si.RestsOn(
            ("wet_out_s", clock.WetOut.RestsOn),
            ("bagging_s", clock.Bagging.RestsOn),
            ("draw_down_s", clock.DrawDown.RestsOn),
            ("need_s", clock.Need.RestsOn),
            ("film_life_s", clock.FilmLife?.RestsOn),
            ("film_life_low_s", clock.FilmLifeBand?.RestsOn)));
}
