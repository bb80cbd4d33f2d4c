using Recipe.Documents.Languages;
using Recipe.Documents.Quantities;
using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;

namespace Recipe.Documents.Shared;

/// <summary>Choices of the model in the trade's words.</summary>
internal static class Words
{
    /// <summary>What papers call a material.</summary>
    public static string Of(Material material) => WrittenText.InTitle(material.Label);

    /// <summary>A resin with its hardener, where it has several.</summary>
    public static string Of(ResinSystem resin, Wording say) => resin.Hardener is { } hardener ? say.Say($"{Of((Material)resin)} with {hardener}") : Of((Material)resin);

    /// <summary>A mix ratio as it was written, its basis in the language of the paper.</summary>
    public static string Of(Figure<MixRatio> mix, Wording say)
    {
        const string weight = "\u00A0by weight", volume = "\u00A0by volume";
        var text = QuantityText.Written(mix);
        return text.EndsWith(weight, StringComparison.Ordinal) ? say.Say($"{text[..^weight.Length]}\u00A0by weight")
            : text.EndsWith(volume, StringComparison.Ordinal) ? say.Say($"{text[..^volume.Length]}\u00A0by volume")
            : text;
    }

    /// <summary>Whether a label says a figure already: "80 g/m2" in "Glass cloth, 80 g/m2", and not in "Glass cloth, 280 g/m2".</summary>
    public static bool Says(string label, string written)
    {
        var at = label.IndexOf(written, StringComparison.Ordinal);
        return written.Length > 0 && at >= 0 && (at == 0 || !(char.IsAsciiDigit(label[at - 1]) || label[at - 1] is '.' or ','));
    }

    /// <summary>A place as the author put it: a distance gets "at" in front, words stand as they are.</summary>
    public static string Place(string at)
    {
        var text = WrittenText.ForReading(at);
        return text.Length > 0 && char.IsAsciiDigit(text[0]) ? "at " + text : text;
    }

    /// <summary>Words as a sentence: a capital in front and a full stop behind, unless they have them.</summary>
    public static string Sentence(string words)
    {
        var text = words.Trim();
        return text.Length == 0 ? "" : char.ToUpperInvariant(text[0]) + text[1..] + (text[^1] is '.' or '!' or '?' or ':' ? "" : ".");
    }

    public static string Of(Process process, Wording say) => process switch
    {
        Process.Hand => say.Say("hand lay-up, no bag"),
        Process.Bagged => say.Say("wet lay-up under a vacuum bag"),
        Process.Infused => say.Say("infusion"),
        Process.Prepreg => say.Say("prepreg under vacuum"),
        _ => process.ToString(),
    };

    public static string Of(TakeoffGroup group) => group switch
    {
        TakeoffGroup.Reinforcement => "Cloth, mat and veil",
        TakeoffGroup.Core => "Core",
        TakeoffGroup.Resin => "Resin and hardener",
        TakeoffGroup.Coat => "Coats",
        TakeoffGroup.Adhesive => "Adhesive and filler",
        TakeoffGroup.Insert => "Inserts",
        TakeoffGroup.Bag => "Bag",
        TakeoffGroup.Release => "Release",
        _ => group.ToString(),
    };

    public static string Of(LayerClass layer) => layer switch
    {
        LayerClass.PeelPly => "peel ply",
        LayerClass.ReleaseFilm => "release film",
        LayerClass.Bleeder => "bleeder",
        LayerClass.Breather => "breather",
        LayerClass.BagFilm => "bag film",
        LayerClass.FlowMedium => "flow medium",
        LayerClass.Caul => "caul",
        _ => layer.ToString(),
    };

    public static string Of(Perforation perforation) => perforation switch
    {
        Perforation.None => "solid",
        Perforation.PinPrick => "pin-prick perforation",
        Perforation.Medium => "medium perforation",
        Perforation.Open => "open perforation",
        _ => perforation.ToString(),
    };

    public static string Of(JoinManner manner, Wording say) => manner switch
    {
        JoinManner.WetInWet => say.Say("wet in wet: both halves wet, closed together"),
        JoinManner.CuredThenTaped => say.Say("cured, then taped"),
        JoinManner.CuredThenBonded => say.Say("cured, then bonded"),
        _ => manner.ToString(),
    };

    public static string Of(Severity severity, Wording say) => severity switch
    {
        Severity.Error => say.Say("error"),
        Severity.Warning => say.Say("warning"),
        _ => say.Say("advice"),
    };

    public static string Of(ResinUse use) => use switch
    {
        ResinUse.Laminate => "laminate",
        ResinUse.CoreFaces => "core faces",
        ResinUse.Pickup => "carried away",
        ResinUse.Lines => "lines and trap",
        ResinUse.Loss => "loss",
        ResinUse.Spare => "spare",
        _ => use.ToString(),
    };

    public static string Of(SurfaceShape shape) => shape switch
    {
        FlatShape => "flat",
        DiscShape => "disc",
        CylinderShape => "cylinder",
        ConeShape => "cone",
        SphericalCapShape => "spherical cap",
        HalfEllipsoidShape => "half ellipsoid",
        ParaboloidShape => "paraboloid",
        BoxShape => "open box",
        GivenAreaShape => "measured area",
        MeshShape => "shape from a file",
        RevolvedShape => "revolved profile",
        SweptShape => "swept section",
        _ => shape.GetType().Name,
    };

    /// <summary>The word of a finishing line. A word that is not of the language of recipes stays as it is.</summary>
    public static string Finishing(string verb, Wording say) => verb switch
    {
        "abrade" => say.Say("abrade"),
        "bond" => say.Say("bond"),
        "debag" => say.Say("debag"),
        "demould" => say.Say("demould"),
        "drill" => say.Say("drill"),
        "fill" => say.Say("fill"),
        "inspect" => say.Say("inspect"),
        "paint" => say.Say("paint"),
        "peel" => say.Say("peel"),
        "prime" => say.Say("prime"),
        "scarf" => say.Say("scarf"),
        "seal" => say.Say("seal"),
        "ship" => say.Say("ship"),
        "trim" => say.Say("trim"),
        "wash" => say.Say("wash"),
        "weigh" => say.Say("weigh"),
        _ => verb,
    };

    /// <summary>"1 ply", "3 plies": for papers that are English only; <see cref="Counts"/> has the others.</summary>
    public static string Count(int number, string one, string many) =>
        $"{Numbers.Whole(number)}\u00A0{(number == 1 ? one : many)}";
}
