using Recipe.Model;
using Recipe.Semantics.Findings;
using Recipe.Semantics.Schema;
using Recipe.Syntax;
using Recipe.Text;

namespace Recipe.Semantics.Reading;

/// <summary>Reads contents and mix ratios: shares that say of what.</summary>
internal static class MixtureReader
{
    /// <summary>
    /// A content: <c>45 % by weight</c>, <c>50 % by volume</c>. The two bases of the model are resin by weight and fibre by volume;
    /// the other two readings are their complements (a laminate without voids).
    /// </summary>
    public static Argument? ReadContent(LineReader line, string name, ContentKind kind)
    {
        var value = line.Take();
        var start = value.Span;
        var percent = QuantityReader.ReadPercent(line, value, kind.Noun);
        var byWord = TakeBasis(line, out var basisSpan);
        if (percent is not { } share)
        {
            return null;
        }

        if (share is <= 0 or >= 1)
        {
            line.Report(OutOfRange.Create(line.At(value), line.Head, line.Slice(value.Span), "more than 0 % and less than 100 %"));
            return null;
        }

        if (byWord is null)
        {
            line.Report(PercentOfWhat.Content(line.Context.At(start), line.Slice(start), kind.OfFibre));
            return null;
        }

        var content = (kind.OfFibre, byWord) switch
        {
            (false, MixBasis.Weight) => new Content(ContentBasis.ResinByWeight, share),
            (false, _) => new Content(ContentBasis.FibreByVolume, 1 - share),
            (true, MixBasis.Weight) => new Content(ContentBasis.ResinByWeight, 1 - share),
            (true, _) => new Content(ContentBasis.FibreByVolume, share),
        };
        var span = start.Union(basisSpan);
        return new Argument(name, line.Context.At(span), Shown(line, value, share, byWord.Value)) { Payload = content };
    }

    /// <summary>A resin content or a range of them: <c>38 to 46 % by weight</c>.</summary>
    public static Argument? ReadContentRange(LineReader line, string name)
    {
        if (line.Peek is not RangeSyntax range)
        {
            return ReadContent(line, name, Kinds.ResinContent) is { Payload: Content { Basis: var of, Fraction: var fraction } } single
                ? single with { Payload = new Binding.ContentSpread(of == ContentBasis.ResinByWeight ? fraction : 1 - fraction, 0, of == ContentBasis.ResinByWeight ? MixBasis.Weight : MixBasis.Volume) }
                : null;
        }

        line.Take();
        var high = QuantityReader.ReadPercent(line, range.High, "a resin content");
        var low = range.Low is QuantitySyntax { Unit: null } bare ? bare.Number * Recipe.Text.Units.UnitTable.Get("%").Factor : QuantityReader.ReadPercent(line, range.Low, "a resin content");
        var basis = TakeBasis(line, out var basisSpan);
        if (high is not { } upper || low is not { } lower)
        {
            return null;
        }

        if (lower <= 0 || upper >= 1 || lower >= upper)
        {
            line.Report(OutOfRange.Create(line.At(range), line.Head, line.Slice(range.Span), "a smaller and then a larger percentage, both more than 0 % and less than 100 %"));
            return null;
        }

        if (basis is not { } by)
        {
            line.Report(PercentOfWhat.Content(line.At(range), line.Slice(range.Span), ofFibre: false));
            return null;
        }

        return new Argument(name, line.Context.At(range.Span.Union(basisSpan)), line.Slice(range.Span.Union(basisSpan)))
        {
            Payload = new Binding.ContentSpread(lower, upper, by),
            High = (upper, line.Slice(range.High.Span), line.At(range.High)),
        };
    }

    /// <summary>A mix ratio. One without a basis is kept without it: whoever knows the densities reports it.</summary>
    public static Argument? ReadMix(LineReader line, string name)
    {
        var value = line.Take();
        return value is RatioSyntax ratio ? ReadRatio(line, name, ratio) : ReadPercentMix(line, name, value);
    }

    private static Argument? ReadRatio(LineReader line, string name, RatioSyntax ratio)
    {
        var basis = TakeBasis(line, out var basisSpan);
        if (ratio.Parts.Length != 2 || ratio.Parts.Any(p => p.Unit is not null))
        {
            return ValueReader.Wrong(line, ratio, "a mix ratio of two numbers");
        }

        var (resin, hardener) = (ratio.Parts[0].Number, ratio.Parts[1].Number);
        if (resin <= 0 || hardener <= 0)
        {
            line.Report(OutOfRange.Create(line.At(ratio), line.Head, line.Slice(ratio.Span), "more than 0 parts of each"));
            return null;
        }

        var span = basis is null ? ratio.Span : ratio.Span.Union(basisSpan);
        return new Argument(name, line.Context.At(span), line.Slice(span)) { Payload = new MixRatio(resin, hardener, basis) };
    }

    private static Argument? ReadPercentMix(LineReader line, string name, ValueSyntax value)
    {
        var percent = QuantityReader.ReadPercent(line, value, "a mix ratio");
        var ofSpan = value.Span;
        string? of = null;
        if (!line.AtEnd && line.Peek is WordSyntax { Text: "of" })
        {
            ofSpan = line.Take().Span;
            if (!line.AtEnd && line.Peek is WordSyntax { Text: "resin" or "mix" } what)
            {
                of = what.Text;
                ofSpan = line.Take().Span;
            }
        }

        var basis = TakeBasis(line, out var basisSpan);
        if (percent is not { } share)
        {
            return null;
        }

        if (of is null)
        {
            line.Report(PercentOfWhat.Hardener(line.At(value), line.Slice(value.Span), share));
            return null;
        }

        if (share <= 0 || (of == "mix" && share >= 1) || share > 2)
        {
            line.Report(OutOfRange.Create(line.At(value), line.Head, line.Slice(value.Span), of == "mix" ? "more than 0 % and less than 100 % of the mix" : "more than 0 % and at most 200 % of the resin"));
            return null;
        }

        var hardener = of == "mix" ? 100 * share / (1 - share) : 100 * share;
        var span = value.Span.Union(basis is null ? ofSpan : basisSpan);
        return new Argument(name, line.Context.At(span), line.Slice(span)) { Payload = new MixRatio(100, hardener, basis) };
    }

    /// <summary>Steps over <c>by weight</c> or <c>by volume</c>.</summary>
    private static MixBasis? TakeBasis(LineReader line, out TextSpan span)
    {
        span = default;
        if (line.AtEnd || line.Peek is not WordSyntax { Text: "by" } by)
        {
            return null;
        }

        line.Take();
        if (line.AtEnd || line.Peek is not WordSyntax { Text: "weight" or "volume" or "mass" } word)
        {
            line.Report(NotUnderstood.Phrase(line.At(by), "by weight` or `by volume", "by"));
            return null;
        }

        line.Take();
        span = word.Span;
        if (word.Text == "mass")
        {
            line.Report(RegionalWord.Create(line.At(word), "mass", "weight"));
        }

        return word.Text == "volume" ? MixBasis.Volume : MixBasis.Weight;
    }

    private static string Shown(LineReader line, ValueSyntax value, double share, MixBasis basis) =>
        $"{QuantityReader.Written(line, value, new Values.Value(share, default) { Unit = Recipe.Text.Units.UnitTable.Get("%") }, ["%"])} {(basis == MixBasis.Volume ? "by volume" : "by weight")}";
}
