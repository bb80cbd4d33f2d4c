using System.Collections.Immutable;
using Recipe.Semantics.Values;
using static Recipe.Semantics.Schema.Define;

namespace Recipe.Semantics.Schema;

/// <summary>The words that every material takes.</summary>
internal static class MaterialWords
{
    public static readonly WordSchema Title = Word("title", "What papers call it.", "title \"Twill 163 g/m2\"", Kinds.Text);

    public static readonly WordSchema Note = Word("note", "A remark, kept as written.", "note \"sold by the roll only\"", Kinds.Text).Repeatable();

    /// <summary>Where the figures of a block come from.</summary>
    public static readonly WordSchema Source = Word(
        "source",
        "Where the figures of the block come from, unless a line says otherwise; `assumed` says that nobody measured them.",
        "source \"data sheet, 2026-01\"",
        Optional("assumed", Kinds.OneOf("the word assumed", ("assumed", "nobody measured it"))),
        Arg(Kinds.Text));

    public static readonly WordSchema HeatLimit = Word(
        "heat-limit", "The hottest it can stand.", "heat-limit 120 degC", Kinds.Temperature)
        .Also("max-temperature", "temperature-limit");

    public static readonly WordSchema Density = Word("density", "Density of the solid.", "density 75 kg/m3", Kinds.Density);

    public static readonly WordSchema StrainLimit = Word(
        "strain-limit",
        "The strain that a cured layer of it is taken to bear one way, as a percentage of its length; from tests of your own layers, not of dry fibre.",
        "strain-limit stretch 1.2 %",
        Arg("way", Kinds.OneOf(
            "a way of straining",
            ("stretch", "pulled along its yarns; a mat, veil or core any way"),
            ("press", "pressed along its yarns; a mat, veil or core any way"),
            ("stretch-across", "pulled across the yarns of a layer"),
            ("press-across", "pressed across the yarns of a layer"),
            ("shear", "sheared in its plane"))),
        Arg(Kinds.Strain)) with
    { OncePerFirstWord = true };

    public static readonly WordSchema Width = Word("width", "Usable width of the roll.", "width 100 cm", Kinds.PositiveLength);

    public static readonly WordSchema RollLength = Word("roll-length", "Length of a whole roll.", "roll-length 50 m", Kinds.LongLength);

    public static readonly WordSchema Default = Word(
        "default", "Whether a recipe that names only the class gets this one.", "default yes", Kinds.YesNo)
        .Otherwise("no");

    private static readonly ImmutableArray<WordSchema> Shared =
    [
        Title,
        HeatLimit,
        Word("price", "What it costs, and since when.", "price 6.40 EUR/m2 on 2026-04-01", Arg(new PriceKind()), Clause("on", Kinds.Date, "the day of the price")),
        Word("shelf-life", "How long it keeps unopened.", "shelf-life 12 month", Kinds.ShelfTime),
        Word("hazard", "A hazard line for the papers.", "hazard \"corrosive: gloves and goggles\"", Kinds.Text).Repeatable(),
        Note,
        Source,
    ];

    /// <summary>A block of a material: its own words, then those of every material.</summary>
    public static BlockSchema Block(string name, string doc, params ReadOnlySpan<WordSchema> own)
    {
        var words = ImmutableArray.CreateBuilder<WordSchema>();
        words.AddRange(own);
        if (!words.Any(w => w.Word == Density.Word))
        {
            words.Add(Density);
        }

        words.AddRange(Shared);
        return new BlockSchema(name, doc, words.ToImmutable());
    }

    /// <summary>The line that declares a material of this kind.</summary>
    public static WordSchema Declaration(string word, string doc, BlockSchema block, string example) =>
        new(
            word,
            doc,
            new LinePattern(
                Arg("name", Kinds.NewName(NameKind.Material)),
                Clause("like", Kinds.Material(Numbers.A(word), [word]), "another declaration whose lines are copied")),
            example)
        {
            Block = block,
            IsRepeatable = true,
        };
}
