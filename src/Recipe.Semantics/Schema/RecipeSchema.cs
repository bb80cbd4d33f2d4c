using System.Collections.Immutable;
using static Recipe.Semantics.Schema.Define;

namespace Recipe.Semantics.Schema;

/// <summary>Every word of the language: what a file may hold, and so on down.</summary>
public static class RecipeSchema
{
    private static readonly BlockSchema Findings = new("findings", "A line for each finding that the shop holds to be worse or milder than it is.")
    {
        NamesOnce = true,
        NameHead = new NewNameKind("the code or name of a finding", NameKind.Value),
        NameLine = Word(
            "NAME",
            "How bad a finding is held to be.",
            "cold-night advice",
            Arg(Kinds.OneOf("a severity", ("advice", "good practice that is missing"), ("warning", "usually wrong"), ("error", "stops the build")))),
    };

    /// <summary>The top level of a file.</summary>
    public static BlockSchema File { get; } = new(
        "file",
        "What stands at the top level of a file.",
        [
            Word("language", "Version of the language.", "language 1", Kinds.Count).Otherwise("1"),
            Word("use", "Brings all names of another file into scope; the path is relative to this file.", "use \"shop.recipe\"", Kinds.Text).Repeatable(),
            ReinforcementSchema.Fibre,
            ReinforcementSchema.Fabric,
            ReinforcementSchema.Unidirectional,
            ReinforcementSchema.Mat,
            ReinforcementSchema.Veil,
            CoreSchema.Core,
            CoreSchema.Insert,
            ResinSchema.Resin,
            ResinSchema.GelCoat,
            ResinSchema.SurfaceCoat,
            ResinSchema.Adhesive,
            MouldSchema.ReleaseAgent,
            MouldSchema.MouldMaterial,
            ConsumableSchema.PeelPly,
            ConsumableSchema.ReleaseFilm,
            ConsumableSchema.Bleeder,
            ConsumableSchema.Breather,
            ConsumableSchema.BagFilm,
            ConsumableSchema.FlowMedium,
            ConsumableSchema.Caul,
            ConsumableSchema.SealantTape,
            ConsumableSchema.FlashTape,
            ConsumableSchema.Hose,
            ConsumableSchema.Port,
            ConsumableSchema.CatchPot,
            MouldSchema.Mould,
            MouldSchema.Pattern,
            PartSchema.Part,
            PartSchema.Variant,
            ExploreSchema.Explore,
            RuleSchema.Rule,
            ShopSchema.Shop,
            ShopSchema.Stock,
            ShopSchema.Prices,
            BuildSchema.Build,
            PartSchema.Accept,
            Word("findings", "How bad the shop holds a finding to be; in `settings.recipe`, for every file of the folder and below.", "findings { cold-night advice }").WithBlock(Findings),
        ]);

    /// <summary>All blocks, the file first, each once, in reading order.</summary>
    public static ImmutableArray<BlockSchema> Blocks { get; } = Collect();

    /// <summary>The blocks whose lines may begin with this word, in reading order; empty when no block knows it.</summary>
    public static IEnumerable<BlockSchema> BlocksWith(string word) => Blocks.Where(b => b.Find(word) is not null);

    private static ImmutableArray<BlockSchema> Collect()
    {
        var found = ImmutableArray.CreateBuilder<BlockSchema>();
        Add(File);
        return found.ToImmutable();

        void Add(BlockSchema block)
        {
            if (found.Contains(block))
            {
                return;
            }

            found.Add(block);
            foreach (var word in block.Words)
            {
                if (word.Block is { } inner)
                {
                    Add(inner);
                }
            }
        }
    }
}
