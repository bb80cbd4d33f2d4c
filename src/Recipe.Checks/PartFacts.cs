using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>Short questions that several checks ask of a part.</summary>
internal static class PartFacts
{
    /// <summary>Whether there is cloth to wet out.</summary>
    public static bool HasPlies(this Part part) => part.Stack.OfType<PlyItem>().Any();

    /// <summary>Whether resin meets the mould: a resin, a coat, or cloth that brings its own.</summary>
    public static bool IsWetted(this Part part) =>
        part.Coats.Length > 0
        || (part.HasPlies() && (part.Resin is not null || part.ResinWhere is not null || part.Process.Value == Process.Prepreg));

    /// <summary>Whether it is laid up or put together from other parts.</summary>
    public static bool IsLaidOrJoins(this Part part) => part.HasPlies() || part.Join is { Parts.IsEmpty: false };

    /// <summary>Whether it says that load goes through it.</summary>
    public static bool CarriesLoad(this Part part) => part.Use?.Value is PartUse.Structural or PartUse.Flying;

    /// <summary>The part of a name, of the file itself or of one that it uses; null when there is none.</summary>
    public static Part? PartNamed(this RecipeModel model, string name) =>
        model.Parts.FirstOrDefault(p => p.Name == name) ?? model.UsedParts.GetValueOrDefault(name);

    /// <summary>Whether a resin boils off styrene.</summary>
    public static bool IsStyrenated(this ResinSystem? resin) => resin?.Chemistry is Chemistry.Polyester or Chemistry.Vinylester;

    /// <summary>Whether a resin sets with peroxide, of which the data sheet leaves a range.</summary>
    public static bool IsPeroxideCured(this ResinSystem? resin) => resin.IsStyrenated() || resin?.CuresWith == "peroxide";

    /// <summary>The styrenated liquid that is laid: the resin of the plies, else a coat; null where there is none.</summary>
    public static ResinSystem? LaidStyrene(this Part part) =>
        part.LaysStyrene() ? part.Resin : part.Coats.Select(c => c.Material).FirstOrDefault(m => m.IsStyrenated());

    /// <summary>Whether the plies are wetted with a styrenated resin.</summary>
    public static bool LaysStyrene(this Part part) => part.HasPlies() && part.Resin.IsStyrenated();

    /// <summary>Where the part names the styrenated liquid that is laid, as a second place of a story.</summary>
    public static IEnumerable<FindingLabel> StyreneNamed(this Part part) =>
        part.LaysStyrene() ? part.ResinNamed()
        : part.Coats.FirstOrDefault(c => c.Material.IsStyrenated()) is { } coat ? [new FindingLabel(coat.Where, "coat here")]
        : [];

    /// <summary>What the plan says it misses for a subject, or a word of ours.</summary>
    public static string Missing(this Plan plan, string subject, string otherwise) =>
        plan.Gaps.FirstOrDefault(g => g.Subject.Contains(subject, StringComparison.OrdinalIgnoreCase))?.Missing ?? otherwise;

    /// <summary>A temperature of the cure as it was written, for messages in the same scale; null where there is none.</summary>
    public static string? CureWritten(this Part part) => part.Cure?.Steps.FirstOrDefault(s => s.Temperature is not null)?.Temperature?.Written;

    /// <summary>The temperature of the room as it was written, for messages in the same scale; null where nobody says it.</summary>
    public static string? RoomWritten(this Plan plan) => (plan.Part.WetOut?.Room ?? plan.Shop?.Room)?.Written;

    /// <summary>
    /// A time that holds at one temperature, at another: half as long for each 10 K more (common practice for amine-cured resins).
    /// </summary>
    public static Duration AtTemperature(this TimeAt time, Temperature actual) =>
        time.Time * Math.Pow(2, (time.At.Kelvins - actual.Kelvins) / 10);
}
