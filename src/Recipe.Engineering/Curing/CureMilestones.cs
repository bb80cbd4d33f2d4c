using UnitsNet;

namespace Recipe.Engineering;

/// <summary>The moments of a cure that the bench asks for. Times count from the start of the curve; null is not within it.</summary>
/// <param name="Gel">When the resin gels: from then on it neither flows nor lets air through.</param>
/// <param name="VacuumOff">
/// The earliest that the vacuum may go: the degree at which even a late resin has gelled, and not before 1.5 times the gel time.
/// </param>
/// <param name="Demould">
/// The earliest demould: vacuum off, degree of cure high enough, part cool enough, and its glass transition far enough above it.
/// </param>
/// <param name="DemouldByTransition">Whether the glass transition was known and judged; otherwise the demould rests on the degree and the temperature alone.</param>
/// <remarks>
/// Source: the rules of <see cref="MilestoneRules"/>, common practice. They do not replace the maker's times or a look at the witness cup.
/// </remarks>
public sealed record CureMilestones(Duration? Gel, Duration? VacuumOff, Duration? Demould, bool DemouldByTransition)
{
    /// <summary>Finds the moments on a curve.</summary>
    /// <param name="cure">The cure.</param>
    /// <param name="rules">What has to be true; the common practice when null.</param>
    /// <exception cref="ArgumentOutOfRangeException">A rule is out of range: degrees 0 to 1, the hold 1 to 100 gel times, the lead 0 to 200 K.</exception>
    public static CureMilestones Of(CureCurve cure, MilestoneRules? rules = null)
    {
        ArgumentNullException.ThrowIfNull(cure);
        rules ??= new MilestoneRules();
        double hold = Guard.Between(rules.VacuumHold, 1, 100, string.Empty, nameof(rules.VacuumHold));
        double demould = CureGuard.Degree(rules.Demould, nameof(rules.Demould));
        double lead = Guard.Between(rules.DemouldLead.Kelvins, 0, 200, "K", nameof(rules.DemouldLead));
        double hottest = CureGuard.Kelvin(rules.HottestDemould, nameof(rules.HottestDemould));

        Duration? gel = cure.TimeTo(rules.Gel);
        Duration? gelled = cure.TimeTo(rules.Gelled);
        Duration? off = gel is { } g && gelled is { } late ? Duration.FromSeconds(Math.Max(late.Seconds, hold * g.Seconds)) : null;
        off = off <= cure.Total ? off : null;
        DiBenedetto? curve = cure.Curve;
        double? pulled = off is null ? null : cure.FirstWhen(
            (a, kelvin) => a >= demould && kelvin <= hottest + 1e-6 && (curve is null || curve.KelvinAt(a) >= kelvin + lead),
            off.Value.Seconds);
        return new CureMilestones(gel, off, CureCurve.Time(pulled), curve is not null);
    }
}
