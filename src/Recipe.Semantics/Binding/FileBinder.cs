using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Semantics.Findings;
using Recipe.Semantics.Reading;
using Recipe.Text.Findings;

namespace Recipe.Semantics.Binding;

/// <summary>Binds a whole file: all it declares, what stands at its top level, and what it takes from the files it uses.</summary>
internal static class FileBinder
{
    public static BoundFile Bind(FileScope file)
    {
        var result = new Gathering();
        var context = new LineContext(file.Tree.Source, file, IsBook: false, result.Sink);
        var top = file.Top.Value;
        result.Add(file.Top.Findings, file.Top.Names);
        GatherDeclarations(file.Index, result);
        ReportIndex(file.Index, context);
        UseChecker.Check(file, context);
        ReportDefaults(file.Index.MaterialList, result.Sink);

        var model = new RecipeModel
        {
            Materials = new ScopeView<MaterialDeclaration, Material>(file.FindMaterial, () => file.NamesOf(NameKind.Material), d => d.Material),
            Moulds = new ScopeView<MouldDeclaration, Mould>(file.FindMould, () => file.NamesOf(NameKind.Mould), d => d.Mould),
            Parts = [.. file.Index.PartList.Select(p => p.Part)],
            UsedParts = new ScopeView<PartDeclaration, Part>(
                name => file.Index.Parts.ContainsKey(name) ? null : file.FindPart(name),
                () => file.NamesOf(NameKind.Part).Except(file.Index.Parts.Keys, StringComparer.Ordinal),
                d => d.Part),
            Shop = top.Shop ?? Nearest(file, used => used.Shop is not null).Select(used => used.Shop).FirstOrDefault(shop => shop is not null),
            Stock = [.. top.Stock, .. Nearest(file, used => !used.Stock.IsEmpty).SelectMany(used => used.Stock)],

            // Of several prices of one thing the last counts: the file's own before that of a file it uses, and of those the one used first.
            Prices = [.. Nearest(file, used => !used.Prices.IsEmpty).Reverse().SelectMany(used => used.Prices), .. top.Prices],
            Studies = [.. file.Index.StudyList.Select(s => s.Study)],
            Rules = RulesOf(file),
            OwnRules = [.. file.Index.RuleList.Select(r => r.Rule)],
            Builds = top.Builds,
            Settings = top.Settings,
            Waivers = top.Waivers,
        };
        return new BoundFile(file.Tree, model, result.Findings()) { Names = result.Names() };
    }

    // The used files that say something of shop, shelf or prices; where none does, those that they use in turn: a variant in a file of its own is
    // made in the same shop as its part.
    private static TopLevel[] Nearest(FileScope file, Func<TopLevel, bool> says) =>
        file.UsedLevels().Select(level => level.Select(scope => scope.Top.Value).ToArray()).FirstOrDefault(tops => tops.Any(says)) ?? [];

    // Its own rules, then those of the files it uses; of two with one name the first counts.
    private static ImmutableArray<HouseRule> RulesOf(FileScope file) =>
    [
        .. file.Index.Rules.Values
            .Concat(file.Used.SelectMany(used => used.Scope.Index.Rules.Values))
            .DistinctBy(rule => rule.Name, StringComparer.Ordinal)
            .Select(rule => rule.Rule),
    ];

    /// <summary>What is wrong with the book: all of it is bound.</summary>
    public static ImmutableArray<Finding> FindingsOf(BookScope book)
    {
        var result = new Gathering();
        foreach (var index in book.Files)
        {
            var context = new LineContext(index.Tree.Source, book, IsBook: true, result.Sink);
            var top = TopLevel.Bind(index, context);
            result.Add(top.Findings, top.Names);
            GatherDeclarations(index, result);
            ReportIndex(index, context);
        }

        foreach (var (second, first) in book.Duplicates)
        {
            result.Sink.Report(DuplicateName.Create(second.Where, second.Name, first.Where));
        }

        ReportDefaults(book.Files.SelectMany(f => f.MaterialList), result.Sink);
        return result.Findings();
    }

    private static void GatherDeclarations(FileIndex index, Gathering result)
    {
        foreach (var let in index.LetList)
        {
            result.Add(let.Bound.Findings, let.Bound.Names);
        }

        foreach (var material in index.MaterialList)
        {
            result.Add(material.Bound.Findings, material.Bound.Names);
        }

        foreach (var mould in index.MouldList)
        {
            result.Add(mould.Bound.Findings, mould.Bound.Names);
        }

        foreach (var part in index.PartList)
        {
            result.Add(part.Bound.Findings, part.Bound.Names);
        }

        foreach (var study in index.StudyList)
        {
            result.Add(study.Bound.Findings, study.Bound.Names);
        }

        foreach (var rule in index.RuleList)
        {
            result.Add(rule.Bound.Findings, rule.Bound.Names);
        }
    }

    private static void ReportIndex(FileIndex index, LineContext context)
    {
        foreach (var (second, first) in index.Duplicates)
        {
            context.Sink.Report(DuplicateName.Create(second.Where, second.Name, first.Where));
        }

        foreach (var (head, word) in index.Regional)
        {
            context.Sink.Report(RegionalWord.Create(context.At(head.Span), head.Text, word.Word));
        }
    }

    /// <summary>Two defaults of one class; release films are told apart by their holes.</summary>
    private static void ReportDefaults(IEnumerable<MaterialDeclaration> materials, FindingSink sink)
    {
        var first = new Dictionary<(string, bool), MaterialDeclaration>();
        foreach (var material in materials.Where(m => m.IsDefault && m.Schema.Find("default") is not null))
        {
            var holes = material.Material is Consumable { Class: LayerClass.ReleaseFilm, Perforation.Value: not Perforation.None };
            if (!first.TryAdd((material.Word.Word, holes), material))
            {
                sink.Report(TwoDefaults.Create(material.Where, material.Word.Word, material.Name, first[(material.Word.Word, holes)].Where));
            }
        }
    }

    /// <summary>Findings and names of a file, put together from those of its declarations.</summary>
    private sealed class Gathering
    {
        private readonly List<Finding> _findings = [];
        private readonly List<NameUse> _names = [];

        public FindingSink Sink { get; } = new();

        public void Add(ImmutableArray<Finding> findings, ImmutableArray<NameUse> names)
        {
            _findings.AddRange(findings);
            _names.AddRange(names);
        }

        public ImmutableArray<Finding> Findings()
        {
            _findings.AddRange(Sink.Findings);
            _findings.Sort(Finding.Compare);
            return [.. _findings];
        }

        public ImmutableArray<NameUse> Names()
        {
            _names.AddRange(Sink.Names);
            return [.. _names.OrderBy(n => n.Where.Span.Start)];
        }
    }
}
