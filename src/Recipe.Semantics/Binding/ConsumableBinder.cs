using Recipe.Model;
using Recipe.Semantics.Reading;

namespace Recipe.Semantics.Binding;

/// <summary>Sheets, tapes and fittings of the bag.</summary>
internal static class ConsumableBinder
{
    /// <summary>What a layer word stands for.</summary>
    public static LayerClass ClassOf(string word) => word switch
    {
        "peel-ply" => LayerClass.PeelPly,
        "release-film" => LayerClass.ReleaseFilm,
        "bleeder" => LayerClass.Bleeder,
        "breather" => LayerClass.Breather,
        "bag-film" => LayerClass.BagFilm,
        "flow-medium" => LayerClass.FlowMedium,
        "caul" => LayerClass.Caul,
        _ => throw new ArgumentOutOfRangeException(nameof(word), word, "Not a layer of a bag."),
    };

    public static Consumable Sheet(MaterialDeclaration declaration, Lines lines, LayerClass layer) => new()
    {
        Name = declaration.Name,
        Keyword = declaration.Word.Word,
        Where = declaration.Where,
        Density = lines.Figure("density", Si.Density),
        Class = layer,
        IsDefault = declaration.IsDefault,
        ArealWeight = lines.Figure("areal-weight", Si.ArealWeight),
        Width = lines.Figure("width", Si.Length),
        RollLength = lines.Figure("roll-length", Si.Length),
        Thickness = lines.Figure("thickness", Si.Length),
        ResinPickup = lines.Figure("resin-pickup", Si.ArealWeight),
        Capacity = lines.Figure("capacity", Si.ArealWeight),
        Perforation = lines.Choice("perforation", word => word switch
        {
            "none" => Perforation.None,
            "pin-prick" => Perforation.PinPrick,
            "medium" => Perforation.Medium,
            _ => Perforation.Open,
        }),
        Bleed = lines.Figure("bleed", Si.ArealWeight),
        Permeability = lines.Figure("permeability", Si.Area),
        Stuff = lines.Text("stuff"),
        Coated = lines.YesNo("coated"),
    };

    public static Tape Tape(MaterialDeclaration declaration, Lines lines, bool seals) => new()
    {
        Name = declaration.Name,
        Keyword = declaration.Word.Word,
        Where = declaration.Where,
        Density = lines.Figure("density", Si.Density),
        Seals = seals,
        IsDefault = declaration.IsDefault,
        Width = lines.Figure("width", Si.Length),
        RollLength = lines.Figure("roll-length", Si.Length),
    };

    public static Fitting Fitting(MaterialDeclaration declaration, Lines lines, FittingKind kind) => new()
    {
        Name = declaration.Name,
        Keyword = declaration.Word.Word,
        Where = declaration.Where,
        Density = lines.Figure("density", Si.Density),
        Kind = kind,
        IsDefault = declaration.IsDefault,
        InnerDiameter = lines.Figure("inner-diameter", Si.Length),
        Length = lines.Figure("length", Si.Length),
        Volume = lines.Figure("volume", Si.Volume),
        Reinforced = lines.YesNo("reinforced"),
    };
}
