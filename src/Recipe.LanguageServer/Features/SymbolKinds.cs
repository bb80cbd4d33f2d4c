using Recipe.Editing;

namespace Recipe.LanguageServer.Features;

/// <summary>The protocol's numbers for kinds of symbols: the nearest of them to ours, for the picture beside the name.</summary>
internal static class SymbolKinds
{
    private const int Module = 2;
    private const int Namespace = 3;
    private const int Class = 5;
    private const int Property = 7;
    private const int Field = 8;
    private const int Interface = 11;
    private const int Constant = 14;
    private const int Object = 19;
    private const int Event = 24;

    public static int Number(SymbolKind kind) => kind switch
    {
        SymbolKind.Part => Class,
        SymbolKind.Variant => Interface,
        SymbolKind.Mould => Object,
        SymbolKind.Material => Module,
        SymbolKind.Shop or SymbolKind.Block => Namespace,
        SymbolKind.Ply => Field,
        SymbolKind.Step => Event,
        SymbolKind.Value => Constant,
        _ => Property,
    };
}
