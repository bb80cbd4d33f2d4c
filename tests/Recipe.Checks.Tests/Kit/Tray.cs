namespace Recipe.Checks.Tests;

/// <summary>
/// A sound recipe of a flat tray, of which a test changes the block it is about. With nothing changed it earns no finding, which a
/// test holds.
/// </summary>
internal sealed record Tray
{
    public string Above { get; init; } = "";

    public string Shop { get; init; } = "";

    public string Surface { get; init; } = "flat 400 mm x 300 mm";

    public string MouldLines { get; init; } = "";

    public string MadeOf { get; init; } = "epoxy-glass-tooling";

    /// <summary>The lines of the release block; none leaves the block out.</summary>
    public string Release { get; init; } = "carnauba-wax coats 5 wait 30 min";

    public string Process { get; init; } = "bagged";

    public string Resin { get; init; } = "slow-laminating-epoxy";

    public string PartLines { get; init; } = "";

    public string Plies { get; init; } = "outer glass-twill-163 0/90; inner glass-twill-163 0/90";

    public string WetOut { get; init; } = "";

    public string Bag { get; init; } = "peel-ply; release-film perforated; breather; bag-film";

    public string Vacuum { get; init; } = "draw 25 inHg below ambient within 10 min; leak-check 5 min rise at-most 30 mbar isolated";

    public string Infuse { get; init; } = "";

    public string Cure { get; init; } = "hold 20 degC for 48 h; demould";

    public string Finish { get; init; } = "";

    public string Join { get; init; } = "";

    public string Below { get; init; } = "";

    /// <summary>Laid by hand, with no bag.</summary>
    public static Tray Hand { get; } = new() { Process = "hand", Bag = "", Vacuum = "" };

    /// <summary>Infused.</summary>
    public static Tray Infused { get; } = new()
    {
        Process = "infused",
        Resin = "infusion-epoxy",
        Bag = "peel-ply; flow-medium smaller 40 mm; bag-film",
        Vacuum = "draw 28 inHg below ambient within 10 min",
        Infuse = "path 300 mm; feed-line length 300 mm diameter 8 mm; drop-test 5 min rise at-most 30 mbar isolated",
    };

    public override string ToString() =>
        $"{Above}\n"
        + Block("shop ours", Shop)
        + $"mould tray-mould {{\n  surface {Surface}\n  made-of {MadeOf}\n{Lines(MouldLines)}{Block("release", Release)}}}\n"
        + $"part tray {{\n  mould tray-mould\n  process {Process}\n  resin {Resin}\n{Lines(PartLines)}"
        + Block("plies", Plies) + Block("wet-out", WetOut) + Block("bag", Bag) + Block("vacuum", Vacuum)
        + Block("infuse", Infuse) + Block("cure", Cure) + Block("finish", Finish) + Block("join", Join)
        + $"}}\n{Below}\n";

    private static string Lines(string lines) => string.Concat(lines.Split(';').Select(l => l.Trim()).Where(l => l.Length > 0).Select(l => l + "\n"));

    private static string Block(string head, string lines) => lines.Length == 0 ? "" : $"{head} {{\n{Lines(lines)}}}\n";
}
