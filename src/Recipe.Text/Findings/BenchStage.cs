namespace Recipe.Text.Findings;

/// <summary>Where in the job a finding bites, in the order of the day.</summary>
public enum BenchStage
{
    /// <summary>Reading the text: nothing else can be trusted before.</summary>
    Text,

    /// <summary>What is on the shelf, and how people are protected.</summary>
    Shop,

    /// <summary>The mould and its release.</summary>
    Mould,

    /// <summary>Choosing and cutting cloth and core, and thawing prepreg.</summary>
    Cutting,

    /// <summary>Mixing resin and laying it up, against the clock.</summary>
    Laying,

    /// <summary>Closing the bag.</summary>
    Bagging,

    /// <summary>Vacuum and infusion.</summary>
    Vacuum,

    /// <summary>Cure and demould.</summary>
    Cure,

    /// <summary>Joining.</summary>
    Joining,

    /// <summary>Finishing and inspection.</summary>
    Finishing,

    /// <summary>Waivers, settings and records, which come after all of it.</summary>
    Papers,
}

/// <summary>Families of codes: the hundreds of a code say what it is about.</summary>
public static class FindingFamilies
{
    private static readonly (string Prefix, string Title, BenchStage Stage)[] Known =
    [
        ("RC10", "Reading the text", BenchStage.Text),
        ("RC11", "Units and values", BenchStage.Text),
        ("RC12", "Names and structure", BenchStage.Text),
        ("RC20", "Release", BenchStage.Mould),
        ("RC21", "The mould", BenchStage.Mould),
        ("RC30", "Plies", BenchStage.Cutting),
        ("RC31", "Cloth and stack", BenchStage.Cutting),
        ("RC32", "Cores", BenchStage.Cutting),
        ("RC40", "Resin and working time", BenchStage.Laying),
        ("RC41", "Mixing", BenchStage.Laying),
        ("RC42", "Figures of a data sheet", BenchStage.Laying),
        ("RC43", "Coats on the mould", BenchStage.Laying),
        ("RC50", "The bag, layer by layer", BenchStage.Bagging),
        ("RC51", "Materials and fittings of the bag", BenchStage.Bagging),
        ("RC60", "Vacuum", BenchStage.Vacuum),
        ("RC61", "Pump, gauge and leak check", BenchStage.Vacuum),
        ("RC62", "Infusion", BenchStage.Vacuum),
        ("RC70", "Cure", BenchStage.Cure),
        ("RC71", "Handling the heat", BenchStage.Cure),
        ("RC72", "Prepreg", BenchStage.Cutting),
        ("RC80", "Seams and stock", BenchStage.Joining),
        ("RC81", "Joining", BenchStage.Joining),
        ("RC82", "Finishing", BenchStage.Finishing),
        ("RC83", "Stock", BenchStage.Shop),
        ("RC84", "Safety", BenchStage.Shop),
        ("RC90", "Waivers and settings", BenchStage.Papers),
        ("RC91", "Build records", BenchStage.Papers),
        ("RC92", "Rules of the house", BenchStage.Papers),
    ];

    /// <summary>All families, by code: the four letters that their codes begin with, and what they are about.</summary>
    public static IEnumerable<(string Prefix, string Title)> All => Known.Select(f => (f.Prefix, f.Title));

    /// <summary>The step of the job at which a finding with this code bites; house rules, which no family knows, come last but one.</summary>
    /// <param name="code"><c>RC</c> and four digits.</param>
    public static BenchStage StageOf(string code)
    {
        ArgumentNullException.ThrowIfNull(code);
        foreach (var family in Known)
        {
            if (code.StartsWith(family.Prefix, StringComparison.Ordinal))
            {
                return family.Stage;
            }
        }

        return BenchStage.Finishing;
    }
}
