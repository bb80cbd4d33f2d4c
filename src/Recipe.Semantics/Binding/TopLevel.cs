using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Semantics.Findings;
using Recipe.Semantics.Reading;
using Recipe.Semantics.Schema;
using Recipe.Semantics.Values;

namespace Recipe.Semantics.Binding;

/// <summary>The entries of a file that declare no name of a thing: shop, stock, prices, builds, waivers, the language.</summary>
internal sealed record TopLevel(
    Shop? Shop,
    ImmutableArray<StockLine> Stock,
    ImmutableArray<PriceLine> Prices,
    ImmutableArray<BuildRecord> Builds,
    ImmutableArray<Waiver> Waivers,
    ImmutableArray<SeveritySetting> Settings)
{
    /// <summary>Binds them, with a sink of their own.</summary>
    public static Bound<TopLevel> Bind(FileIndex index, LineContext where)
    {
        var context = where with { Sink = new FindingSink() };
        var stock = ImmutableArray.CreateBuilder<StockLine>();
        var prices = ImmutableArray.CreateBuilder<PriceLine>();
        var builds = ImmutableArray.CreateBuilder<BuildRecord>();
        var settings = ImmutableArray.CreateBuilder<SeveritySetting>();
        var waivers = new List<Line>();
        Line? shop = null;
        Line? language = null;
        Shop? bound = null;
        foreach (var (entry, word, halfRead) in index.Others)
        {
            if (word is null)
            {
                context.Sink.Report(UnknownWord.Line(context.At(entry.Head.Span), entry.Head.Text, RecipeSchema.File));
                continue;
            }

            if (entry.Block is { } block && word.Block is null)
            {
                context.Sink.Report(NotUnderstood.NoBlock(context.At(block.OpenBrace), entry.Head.Text));
            }
            else if (entry.Block is null && word.NeedsBlock && !halfRead)
            {
                context.Sink.Report(MissingValue.Create(context.At(entry.Head.Span), entry.Head.Text, "a block in braces", word.Example));
            }

            var line = new Line(word, entry, LineReader.Read(entry, word, RecipeSchema.File, context, halfRead, out _), context, null);
            switch (word.Word)
            {
                case "shop":
                    if (ReportSecond(ref shop, line))
                    {
                        bound = ShopBinder.Shop(line);
                    }

                    break;
                case "language":
                    if (ReportSecond(ref language, line) && line.Reading.Find(Define.Value) is { } version && version.Si != 1)
                    {
                        context.Sink.Report(UnknownLanguage.Create(version.Where, Numbers.Format(version.Si)));
                    }

                    break;
                case "stock":
                    stock.AddRange(ShopBinder.Stock(line));
                    break;
                case "prices":
                    prices.AddRange(ShopBinder.Prices(line));
                    break;
                case "build" when BuildBinder.Build(line) is { } build:
                    builds.Add(build);
                    break;
                case "findings":
                    settings.AddRange(ShopBinder.Severities(line));
                    break;
                case "accept":
                    waivers.Add(line);
                    break;
            }
        }

        var top = new TopLevel(bound, stock.ToImmutable(), prices.ToImmutable(), builds.ToImmutable(), WaiverBinder.Bind(waivers), settings.ToImmutable());
        return new(top, context.Sink.Findings, context.Sink.Names);
    }

    /// <summary>Whether this is the first one; a second one is reported.</summary>
    private static bool ReportSecond(ref Line? first, Line line)
    {
        if (first is null)
        {
            first = line;
            return true;
        }

        line.Context.Sink.Report(SaidTwice.Create(line.HeadWhere, line.Word.Word, first.HeadWhere));
        return false;
    }
}
