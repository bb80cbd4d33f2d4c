using Recipe.Documents.Languages;
using Recipe.Documents.Quantities;

namespace Recipe.Documents.Shared;

/// <summary>Numbers of things, one and many, each a sentence of its own: languages differ in how they count. A no-break space holds the two together.</summary>
internal static class Counts
{
    public static string Pieces(int count, Wording say) => count == 1 ? say.Say("1\u00A0piece") : say.Say($"{Numbers.Whole(count)}\u00A0pieces");

    public static string Plies(int count, Wording say) => count == 1 ? say.Say("1\u00A0ply") : say.Say($"{Numbers.Whole(count)}\u00A0plies");

    public static string Layers(int count, Wording say) => count == 1 ? say.Say("1\u00A0layer") : say.Say($"{Numbers.Whole(count)}\u00A0layers");

    public static string Coats(int count, Wording say) => count == 1 ? say.Say("1\u00A0coat") : say.Say($"{Numbers.Whole(count)}\u00A0coats");

    public static string Laminators(int count, Wording say) => count == 1 ? say.Say("1\u00A0laminator") : say.Say($"{Numbers.Whole(count)}\u00A0laminators");

    /// <summary>Days, of one or more.</summary>
    public static string Days(int count, Wording say) => count == 1 ? say.Say("1\u00A0day") : say.Say($"{Numbers.Whole(count)}\u00A0days");
}
