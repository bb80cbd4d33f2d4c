using Recipe.Model;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>What the lines of a finish or of a join's preparation do.</summary>
internal static class FinishWords
{
    /// <summary>Everything a line says: its first word and the rest.</summary>
    public static string Words(this FinishStep step) => step.Text.Length == 0 ? step.Verb : $"{step.Verb} {step.Text}";

    /// <summary>Whether something is stuck or painted on.</summary>
    public static bool Sticks(this FinishStep step) => step.Verb is "bond" or "prime" or "paint";

    /// <summary>Whether it sands, fills or covers the face.</summary>
    public static bool WorksTheFace(this FinishStep step) => step.Sticks() || step.Verb is "abrade" or "fill";

    /// <summary>Whether it makes dust: a line that cuts or sands, or a step that says so. A knife makes none, but takes away none that sanding makes.</summary>
    public static bool MakesDust(this FinishStep step) =>
        step.Verb is "abrade" or "drill" or "scarf"
        || (step.Verb is "trim" or "step" && TradeWords.Says(step.Text, "sand", "grind", "saw", "rout", "drill", "abrad"))
        || ((step.Verb == "trim" || (step.Verb == "step" && TradeWords.Says(step.Text, "cut", "cutt")))
            && !TradeWords.Says(step.Words(), "knife", "scissors", "shears"));

    /// <summary>Whether it gives the face a key.</summary>
    public static bool Keys(this FinishStep step) => step.Verb is "abrade" or "scarf" || (step.Verb is not ("weigh" or "inspect") && TradeWords.Says(
        step.Words(), "sand", "sandpaper", "abrad", "scuff", "key", "rough", "roughen", "grit", "blast", "flat", "flatt", "rub", "etch", "scrap", "fil", "grind", "ground", "scour"));

    /// <summary>Whether it washes or wipes.</summary>
    public static bool Washes(this FinishStep step) => step.Verb == "wash" || TradeWords.Says(
        step.Words(), "wash", "wip", "rins", "clean", "degreas", "solvent", "acetone", "alcohol", "scrub", "dewax", "water", "soap", "detergent");

    /// <summary>Whether it speaks of the peel ply.</summary>
    public static bool IsOfPeelPly(this FinishStep step) => step.Verb == "peel" || TradeWords.Says(step.Words(), "peel", "tear ply", "tear-ply");

    /// <summary>Whether it speaks of work done before the resin is hard, when nothing has to be keyed.</summary>
    public static bool IsWhileGreen(this FinishStep step) =>
        TradeWords.Says(step.Words(), "tack", "green", "wet on wet", "wet-on-wet", "still wet", "wet laminate", "wet resin", "chemical", "same day", "uncured", "fresh");

    /// <summary>Whether it says what keeps dust out of the lungs: wet work, extraction, a mask.</summary>
    public static bool IsSafeFromDust(this FinishStep step) => TradeWords.Says(
        step.Words(), "wet", "extract", "extraction", "extractor", "mask", "respirator", "dustmask", "vacuum", "hoover", "hood", "downdraft", "booth", "ffp2", "ffp3", "p2", "p3", "p100", "n95", "air-fed", "under water");

    /// <summary>The lines of the finish, for a check that misses one.</summary>
    public static LinesRead? FinishLines(this Part part) => part.FinishWhere is { } head ? new LinesRead(head) : null;

    /// <summary>Puts words at the end of a line, inside its quotes where it ends with them.</summary>
    public static TextEdit AddWords(SourceSpan line, string words) => line.Text.EndsWith('"')
        ? Edits.Replace(new SourceSpan(line.Source, new TextSpan(line.Span.End - 1, 0)), ", " + words)
        : Edits.Append(line, words);
}
