using System.Collections.Immutable;
using Recipe.Documents.Languages;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Model;
using Recipe.Planning;

namespace Recipe.Documents.Shared;

/// <summary>What a caution is about.</summary>
internal enum Danger
{
    Skin,
    Vapour,
    Peroxide,
    Exotherm,
    Dust,
    Heat,
    Vacuum,
    Load,
    DataSheet,
}

/// <summary>A caution: short instructions, and where they come from.</summary>
internal sealed record CautionText(Danger Danger, string Text, string Source);

/// <summary>
/// The usual cautions of the work, as far as the part needs them. They stand in front of nobody's data sheet: every paper says that
/// makers' data sheets, local codes and, for parts that carry load or fly, licensed practice go first.
/// </summary>
internal static class Cautions
{
    private const string CommonPractice = "common practice";

    /// <summary>All cautions of a part, in the order of the dangers.</summary>
    public static ImmutableArray<CautionText> Of(Plan plan, Wording say)
    {
        var part = plan.Part;
        var resins = Resins(part).ToList();
        var styrene = resins.Any(resin => resin.Chemistry is Chemistry.Polyester or Chemistry.Vinylester);
        var unknown = resins.Any(resin => resin.Chemistry == Chemistry.Unknown);
        var epoxy = resins.Any(resin => resin.Chemistry == Chemistry.Epoxy);
        var list = ImmutableArray.CreateBuilder<CautionText>();
        list.Add(new(
            Danger.Skin,
            say.Say("Wear nitrile gloves and eye protection. Change gloves when splashed and every 30\u00A0min.")
            + (epoxy || unknown ? " " + say.Say("Whoever is sensitised to epoxy stays out.") : ""),
            "EU-OSHA wiki, epoxy resins; the interval is common practice"));
        list.Add(new(
            Danger.Vapour,
            styrene ? say.Say("Styrene: extract the air, and wear a respirator for organic vapour.") : say.Say("Keep the air moving. Wear a respirator where the data sheet asks for one."),
            CommonPractice));
        if (styrene || unknown)
        {
            list.Add(new(
                Danger.Peroxide,
                (unknown && !styrene ? say.Say("If this resin cures with peroxide: stir the accelerator in first and fully.") : say.Say("Stir the accelerator in first and fully."))
                + " " + say.Say("Peroxide goes in last. Never bring accelerator and peroxide together: they explode."),
                CommonPractice));
        }

        if (part.Process.Value != Process.Prepreg)
        {
            list.Add(new(Danger.Exotherm, say.Say("Mixed resin heats itself. Carry a warm pot outdoors and spread it in a tray. Never bin it."), CommonPractice));
        }

        list.Add(new(Danger.Dust, say.Say("Cut and sand with extraction and a P3 dust mask, only what is fully cured.") + (Carbon(plan) ? " " + say.Say("Carbon dust conducts: no open motors.") : ""), CommonPractice));
        if (IsHeated(plan))
        {
            list.Add(new(Danger.Heat, say.Say("Leave no heat alone without its own over-temperature cut-out and a smoke alarm."), CommonPractice));
        }

        if (part.Process.Value != Process.Hand || part.Vacuum is not null || part.Bag is not null)
        {
            list.Add(new(Danger.Vacuum, say.Say("Vacuum presses with up to 10\u00A0t/m² (14.7\u00A0psi). Wear eye protection. Use only a catch pot made for vacuum."), "1 standard atmosphere is 101.325\u00A0kPa (ISO 2533)"));
        }

        list.Add(new(Danger.Load, Load(part.Use?.Value, say), CommonPractice));
        list.Add(new(Danger.DataSheet, say.Say("The makers' data sheets and local codes go before this paper."), CommonPractice));
        return list.ToImmutable();
    }

    /// <summary>The cautions of a station.</summary>
    public static ImmutableArray<CautionText> Of(Plan plan, Wording say, params ReadOnlySpan<Danger> dangers)
    {
        var wanted = dangers.ToArray();
        return [.. Of(plan, say).Where(caution => wanted.Contains(caution.Danger))];
    }

    /// <summary>The hazard lines of the materials used, each once.</summary>
    public static ImmutableArray<(string Material, string Hazard)> Hazards(Plan plan) =>
    [
        .. plan.Takeoff.Select(line => line.Material).Concat(Resins(plan.Part))
            .Where(material => material.Hazard is { Length: > 0 })
            .Select(material => (material.Label, material.Hazard!))
            .Distinct(),
    ];

    /// <summary>The hazard lines for a paper: materials with the same line share it.</summary>
    public static ImmutableArray<Phrase> HazardLines(Plan plan) =>
    [
        .. Hazards(plan).GroupBy(hazard => hazard.Hazard, StringComparer.Ordinal)
            .Select(group => Phrase.Strong(string.Join("; ", group.Select(hazard => WrittenText.InTitle(hazard.Material)))) + $": {WrittenText.InTitle(group.Key)}"),
    ];

    /// <summary>What the shop itself says it does, in its own words.</summary>
    public static ImmutableArray<Phrase> OfTheShop(Plan plan, Wording say)
    {
        if (plan.Shop?.Safety is not { } safety)
        {
            return [];
        }

        var lines = ImmutableArray.CreateBuilder<Phrase>();
        Add(say.Say("Gloves"), safety.Gloves);
        Add(say.Say("Mask"), safety.Respirator);
        Add(say.Say("Air"), safety.Ventilation);
        Add(say.Say("Dust"), safety.Dust?.Value switch
        {
            DustControl.Wet => say.Say("cut and sand wet"),
            DustControl.Extracted => say.Say("cut and sand with extraction at the tool"),
            _ => null,
        });
        Add(say.Say("Left-over resin"), safety.Leftover?.Value switch
        {
            LeftoverPlace.Tray => say.Say("spread thin in the tray"),
            LeftoverPlace.Outdoors => say.Say("outdoors, on stone or in sand"),
            LeftoverPlace.Water => say.Say("into the steel bucket of water"),
            _ => null,
        });
        return lines.ToImmutable();

        void Add(string what, string? how)
        {
            if (how is not null)
            {
                lines.Add(Phrase.Strong(what) + $": {WrittenText.InTitle(how.Trim('"'))}");
            }
        }
    }

    private static string Load(PartUse? use, Wording say) => use switch
    {
        PartUse.Cosmetic => say.Say("Planned for looks only. If it carries load or flies, licensed practice decides."),
        PartUse.Structural => say.Say("Load-bearing: this paper tells mass and time, not strength. Licensed practice decides on the design."),
        PartUse.Flying => say.Say("Flying part: build and inspect only under approved data and licensed practice."),
        _ => say.Say("If it carries load or flies, licensed practice decides; this paper tells mass and time, not strength."),
    };

    private static IEnumerable<ResinSystem> Resins(Part part)
    {
        if (part.Resin is { } resin)
        {
            yield return resin;
        }

        foreach (var coat in part.Coats)
        {
            yield return coat.Material;
        }

        if (part.Join?.Adhesive is { } adhesive)
        {
            yield return adhesive;
        }
    }

    /// <summary>Whether a ply is of carbon: its dust conducts, and no light goes through it.</summary>
    public static bool Carbon(Plan plan) => plan.Part.Stack.OfType<PlyItem>()
        .Any(ply => ply.Material.Fibre?.Name.Contains("carbon", StringComparison.OrdinalIgnoreCase) ?? ply.Material.Name.Contains("carbon", StringComparison.OrdinalIgnoreCase));

    // Warmer than any room: a ramp, an oven, or a hold above 30 degC.
    private static bool IsHeated(Plan plan) => plan.Part.Cure is { } cure
        && (cure.Oven is not null || cure.Steps.Any(step => step.Action == CureAction.Ramp || step.Temperature?.Value.DegreesCelsius > 30));
}
