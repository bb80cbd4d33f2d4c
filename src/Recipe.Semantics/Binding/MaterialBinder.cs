using Recipe.Model;
using Recipe.Semantics.Findings;
using Recipe.Semantics.Reading;
using Recipe.Semantics.Schema;

namespace Recipe.Semantics.Binding;

/// <summary>Binds a material: its lines by the schema, then the record of its family.</summary>
internal static class MaterialBinder
{
    public static Bound<Material> Bind(MaterialDeclaration declaration)
    {
        var sink = new FindingSink();
        var context = declaration.Context with { Sink = sink };
        var lines = CopyChain.Read(declaration, context);
        foreach (var word in declaration.Schema.Words)
        {
            if (word.IsRequired && lines.One(word.Word) is null && !declaration.HalfRead)
            {
                sink.Report(MissingValue.Line(declaration.Where, declaration.Name, word.Word, word.Example));
            }
        }

        var material = Family(declaration, lines) with
        {
            FromBook = declaration.Context.IsBook,
            Title = lines.Text("title"),
            HeatLimit = lines.Figure("heat-limit", Si.Temperature),
            Price = PriceOf(lines.One("price")),
            ShelfLife = lines.Figure("shelf-life", Si.Time),
            Hazard = lines.Joined("hazard"),
            Note = lines.Joined("note"),
        };
        return new(material, sink.Findings, sink.Names);
    }

    /// <summary>A price with the day of its <c>on</c> clause.</summary>
    public static Figure<Price>? PriceOf(Line? line) =>
        line?.Reading.Find(Define.Value) is { Payload: Price price } argument
            ? new Figure<Price>(price with { On = line.Reading.Find("on")?.Date }, line.Basis, argument.Written, argument.Where, line.Source?.Text)
            : null;

    private static Material Family(MaterialDeclaration declaration, Lines lines) => declaration.Word.Word switch
    {
        "fibre" => ReinforcementBinder.Fibre(declaration, lines),
        "fabric" => ReinforcementBinder.Cloth(declaration, lines, ReinforcementForm.Fabric),
        "ud" => ReinforcementBinder.Cloth(declaration, lines, ReinforcementForm.Unidirectional),
        "mat" => ReinforcementBinder.Cloth(declaration, lines, ReinforcementForm.Mat),
        "veil" => ReinforcementBinder.Cloth(declaration, lines, ReinforcementForm.Veil),
        "core" => ReinforcementBinder.Core(declaration, lines),
        "insert" => ReinforcementBinder.Insert(declaration, lines),
        "resin" => ResinBinder.Bind(declaration, lines, ResinRole.Laminating),
        "gel-coat" => ResinBinder.Bind(declaration, lines, ResinRole.GelCoat),
        "surface-coat" => ResinBinder.Bind(declaration, lines, ResinRole.SurfaceCoat),
        "adhesive" => ResinBinder.Bind(declaration, lines, ResinRole.Adhesive),
        "release-agent" => ReleaseAgent(declaration, lines),
        "mould-material" => MouldMaterial(declaration, lines),
        "sealant-tape" => ConsumableBinder.Tape(declaration, lines, seals: true),
        "flash-tape" => ConsumableBinder.Tape(declaration, lines, seals: false),
        "hose" => ConsumableBinder.Fitting(declaration, lines, FittingKind.Hose),
        "port" => ConsumableBinder.Fitting(declaration, lines, FittingKind.Port),
        "catch-pot" => ConsumableBinder.Fitting(declaration, lines, FittingKind.CatchPot),
        var layer => ConsumableBinder.Sheet(declaration, lines, ConsumableBinder.ClassOf(layer)),
    };

    private static ReleaseAgent ReleaseAgent(MaterialDeclaration declaration, Lines lines) => new()
    {
        Name = declaration.Name,
        Keyword = declaration.Word.Word,
        Where = declaration.Where,
        Density = lines.Figure("density", Si.Density),
        Kind = lines.Text("kind") switch
        {
            "wax" => ReleaseKind.Wax,
            "liquid-film" => ReleaseKind.LiquidFilm,
            "semi-permanent" => ReleaseKind.SemiPermanent,
            "sheet" => ReleaseKind.Sheet,
            _ => null,
        },
        HoldsSilicone = lines.YesNo("silicone"),
        Lasts = lines.Count("lasts"),
        Coats = lines.Count("coats"),
        Wait = lines.Figure("wait", Si.Time),
        Dry = lines.Figure("dry", Si.Time),
        CoveragePerLitre = lines.Figure("coverage", Si.CoveragePerLitre),
    };

    private static MouldMaterial MouldMaterial(MaterialDeclaration declaration, Lines lines) => new()
    {
        Name = declaration.Name,
        Keyword = declaration.Word.Word,
        Where = declaration.Where,
        Density = lines.Figure("density", Si.Density),
        Family = lines.Text("family"),
        Chemistry = ResinBinder.Chemistry(lines),
        Expansion = lines.Figure("expansion", Si.Expansion),
        Porous = lines.YesNo("porous"),
        SelfReleasing = lines.YesNo("self-releasing"),
    };
}
