using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Runtime.CompilerServices;
using System.Runtime.ExceptionServices;
using Recipe.Checks;
using Recipe.Model;
using Recipe.Planning;
using Recipe.Semantics;
using Recipe.Semantics.Findings;
using Recipe.Syntax;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Compiler;

/// <summary>
/// Files that belong together: each is read, parsed and bound once, whoever uses it and from whichever thread.
/// A workspace is one moment; when a text changes, make a new one.
/// </summary>
public sealed class Workspace
{
    /// <summary>Name of the file in which a shop says how bad it holds findings to be.</summary>
    public const string SettingsFile = "settings.recipe";

    private readonly IFileStore _files;
    private readonly Book _book;
    private readonly DateOnly? _today;
    private readonly UseScope _uses;
    private readonly ParsedTexts _parsed;
    private readonly KeptParts _parts;
    private readonly bool _findingsOnly;
    private readonly ConcurrentDictionary<string, Lazy<BoundFile?>> _settings = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<SyntaxTree, Lazy<BoundFile>> _bound = new(ReferenceEqualityComparer.Instance);
    private readonly ConcurrentDictionary<SyntaxTree, Lazy<string>> _revisions = new(ReferenceEqualityComparer.Instance);
    private readonly ConditionalWeakTable<Part, Plan> _plans = [];
    private readonly FolderRecords _records;
    private readonly ConcurrentDictionary<string, Lazy<SyntaxTree?>> _trees = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, Lazy<ShapeFile?>> _shapes = new(StringComparer.Ordinal);

    /// <summary>Makes a workspace over the shipped book.</summary>
    /// <param name="files">Where texts come from.</param>
    /// <param name="today">Today, for waivers and shelf lives that lapse; null leaves such checks unspoken.</param>
    public Workspace(IFileStore files, DateOnly? today)
        : this(files, today, ShippedTexts.Book)
    {
    }

    /// <summary>Makes a workspace over another book.</summary>
    /// <param name="files">Where texts come from.</param>
    /// <param name="today">Today, as above.</param>
    /// <param name="book">The materials always in scope.</param>
    public Workspace(IFileStore files, DateOnly? today, Book book)
        : this(files, today, book, new ParsedTexts(), new KeptParts())
    {
    }

    /// <summary>Makes a workspace that takes over the trees of texts that have not changed, and the plans of parts that rest on them.</summary>
    /// <param name="files">Where texts come from.</param>
    /// <param name="today">Today, as above.</param>
    /// <param name="book">The materials always in scope.</param>
    /// <param name="parsed">The trees of earlier workspaces; those of this one are put there too.</param>
    /// <param name="parts">The parts of earlier workspaces; those of this one are put there too.</param>
    public Workspace(IFileStore files, DateOnly? today, Book book, ParsedTexts parsed, KeptParts parts)
    {
        ArgumentNullException.ThrowIfNull(files);
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(parsed);
        ArgumentNullException.ThrowIfNull(parts);
        _parsed = parsed;
        _parts = parts;
        _files = files;
        _today = today;
        _book = book;
        _records = new FolderRecords(files, TreeOf, tree => BuildsOf(BoundOf(tree)));
        _uses = new UseScope((from, path) => TreeOf(PathNames.Resolve(from, path)), (from, path) => ShapeOf(PathNames.Resolve(from, path)));
    }

    private Workspace(IFileStore files, DateOnly? today, Book book, bool findingsOnly)
        : this(files, today, book, new ParsedTexts(), KeptParts.Nothing()) => _findingsOnly = findingsOnly;

    /// <summary>
    /// Makes a workspace for those who want to know what is wrong and nothing else: it lets a plan go when the checks have looked at it, so that a large folder
    /// takes little memory and the collector little time. A plan that is asked for all the same is made again.
    /// </summary>
    /// <param name="files">Where texts come from.</param>
    /// <param name="today">Today, as above.</param>
    public static Workspace ForFindings(IFileStore files, DateOnly? today) => new(files, today, ShippedTexts.Book, findingsOnly: true);

    /// <summary>The materials always in scope.</summary>
    public Book Book => _book;

    /// <summary>Compiles one file; false when it cannot be read.</summary>
    public bool TryCompile(string name, [NotNullWhen(true)] out CompiledFile? file)
    {
        ArgumentNullException.ThrowIfNull(name);
        file = TreeOf(PathNames.Normalize(name)) is { } tree ? Compile(tree) : null;
        return file is not null;
    }

    /// <summary>Compiles many files side by side; null stands for one that is not there. The order is that of the names. What the store throws comes out as it is, that of the first name first.</summary>
    public ImmutableArray<CompiledFile?> CompileAll(IReadOnlyList<string> names)
    {
        ArgumentNullException.ThrowIfNull(names);

        // All are bound before the first is compiled: whoever asks for the records beside a file finds the others bound and does not wait.
        SideBySide(names.Count, i =>
        {
            if (TreeOf(PathNames.Normalize(names[i])) is { } tree)
            {
                BoundOf(tree);
            }
        });
        var results = new CompiledFile?[names.Count];
        SideBySide(names.Count, i => results[i] = TryCompile(names[i], out var file) ? file : null);
        return [.. results];
    }

    private static void SideBySide(int count, Action<int> work)
    {
        var failures = new ExceptionDispatchInfo?[count];
        Parallel.For(0, count, i =>
        {
            try
            {
                work(i);
            }
#pragma warning disable CA1031 // What the store throws is for the caller, who is to see it itself and not a bundle of such.
            catch (Exception failure)
#pragma warning restore CA1031
            {
                failures[i] = ExceptionDispatchInfo.Capture(failure);
            }
        });
        failures.FirstOrDefault(failure => failure is not null)?.Throw();
    }

    private BoundFile BoundOf(SyntaxTree tree) => _bound.GetOrAdd(tree, key => new Lazy<BoundFile>(() => Binder.Bind(key, _book, _uses))).Value;

    private CompiledFile Compile(SyntaxTree tree)
    {
        var bound = BoundOf(tree);
        List<Finding> findings = [.. tree.Findings, .. bound.Findings];
        var builds = _records.Of(tree);
        var shop = SettingsFor(tree);
        var settings = shop?.Model.Settings ?? [];
        var codedFiles = CodedFor(tree, shop);
        var restsOn = RestsOn(tree, codedFiles);
        HouseRule[] houseRules = [.. bound.Model.Rules, .. shop?.Model.Rules ?? []];
        var coded = new CodedRun(codedFiles, codedFiles.IsEmpty ? null : _files.Rules, houseRules.Select(rule => rule.Name));
        var checks = HouseChecks(houseRules, coded.Checks);
        var examiner = new Examiner(bound.Model, _today, checks, findings.ToArray(), settings);
        var parts = _parts.PartsOf(bound, _book, _today, restsOn, part =>
        {
            var plan = Planner.Plan(part, bound.Model);
            _plans.AddOrUpdate(part, plan);
            return (plan, examiner.Examine(plan));
        });
        var log = builds.IsEmpty ? [] : _records.LogsWith(tree);
        var rules = bound.Model.OwnRules.Select(rule => RuleExamples.Judge(rule, tree, _book, _uses)).ToArray();
        JudgedRule[] judged = [.. rules.Select(rule => rule.Judged), .. coded.Judge(tree.Source, _book, _uses)];
        var codedExaminations = ExamineCoded(coded, parts, bound.Model, settings);
        var report = examiner.Conclude(
            [.. parts.Select(part => part.Examination), .. codedExaminations],
            builds,
            log,
            judged,
            [.. coded.NotesIn(tree.Source)]);
        report = report with { NotChecked = [.. report.NotChecked, .. coded.NotesElsewhere(tree.Source).Select(note => new NotChecked(RulesAsked, note.Where, note.Said))] };
        findings.AddRange(rules.SelectMany(rule => rule.NotUnderstood));
        findings.AddRange(codedFiles.Where(file => file.Text is null && ReferenceEquals(file.Where.Source, tree.Source)).Select(file => ImportMissing.Create(file.Where, file.Name)));
        findings.AddRange(report.Findings);
        SyntaxTree[] used = [.. UsedBy(tree).Values.OfType<SyntaxTree>().Where(used => !ReferenceEquals(used, tree))];
        findings.AddRange(used.SelectMany(NotUnderstoodIn));
        findings.Sort(Finding.Compare);
        if (_findingsOnly)
        {
            parts = LetGo(parts, bound.Model, builds);
        }

        return new CompiledFile
        {
            Tree = tree,
            Bound = bound,
            Parts = parts,
            Builds = builds,
            RulesTried = (judged.Length, judged.Sum(rule => rule.Examples.Count(example => example.Fires is not null))),
            Report = report,
            Findings = [.. findings.Distinct(SameFinding.Instance)],
            RevisionWhenAsked = RevisionWhenAsked(tree),
            Used = [.. used],
            RestsOnWhenAsked = builds.IsEmpty ? new(restsOn) : RecordsWhenAsked(tree, restsOn),
            Settings = settings,
            Checks = checks,
            CodedExaminations = codedExaminations,
        };
    }

    // A line that cannot be read in a text that a file uses is left out of the plans of that file too: its papers would be as wrong as the other text. Of a file
    // that is no recipe no line is shown: whoever sends somebody a recipe could have it show what that somebody may read.
    private IEnumerable<Finding> NotUnderstoodIn(SyntaxTree used) => used.Source.Name.EndsWith(FileEndings.Recipe, StringComparison.Ordinal)
        ? used.Findings.Concat(BoundOf(used).Findings).Where(finding => finding.Severity == Severity.Error)
        : [];

    // What a lambda uses lives as long as the lambda, and with it whatever other lambdas of the same method use: these two are kept with each file.
    private Lazy<string> RevisionWhenAsked(SyntaxTree tree) => new(() => RevisionOf(tree));

    // Each file of a folder rests on the records of all: not listed before somebody asks, since the lists would grow with the square of the files.
    private Lazy<ImmutableArray<TextUsed>> RecordsWhenAsked(SyntaxTree tree, ImmutableArray<TextUsed> restsOn) => new(() => _records.With(tree, restsOn));

    private ImmutableArray<CompiledPart> LetGo(ImmutableArray<CompiledPart> parts, RecipeModel model, ImmutableArray<LoggedBuild> builds)
    {
        // The few figures that records beside this one ask for are taken while the plan is there.
        foreach (var build in builds.Where(build => _plans.TryGetValue(build.Part, out _)))
        {
            _ = build.Now;
        }

        foreach (var part in parts)
        {
            _plans.Remove(part.Part);
        }

        return [.. parts.Select(part => part.Light(model))];
    }

    // What rules in C# would have looked at, where they could not be asked.
    private static FindingDescriptor RulesAsked { get; } = new RuleNotRun().Descriptor;

    private ImmutableArray<PartExamination> ExamineCoded(CodedRun coded, ImmutableArray<CompiledPart> parts, RecipeModel model, ImmutableArray<SeveritySetting> settings)
    {
        if (coded.Checks.Count == 0 || parts.IsEmpty)
        {
            return [];
        }

        Plan[] plans = [.. parts.Select(part => part.Plan)];
        var examiner = new Examiner(model, _today, coded.Examine(plans), settings: settings);
        return [.. plans.Select(examiner.Examine)];
    }

    /// <summary>The files of rules in C# that count for a text: those it uses, then those of the nearest settings file.</summary>
    private ImmutableArray<CodedFile> CodedFor(SyntaxTree tree, BoundFile? settings) =>
    [
        .. CodedFile.UsedBy(tree, _files)
            .Concat(settings is null ? [] : CodedFile.UsedBy(settings.Tree, _files))
            .DistinctBy(file => file.Name, StringComparer.Ordinal),
    ];

    /// <summary>All checks of the program, then the rules of the house; of two with one name the first counts.</summary>
    private static ImmutableArray<Check> HouseChecks(HouseRule[] rules, List<CodedRuleCheck> coded) => rules.Length + coded.Count == 0
        ? CheckCatalogue.All
        : [
            .. CheckCatalogue.All,
            .. rules.DistinctBy(rule => rule.Name, StringComparer.Ordinal).Where(rule => rule.IsWhole).Select(rule => new RuleCheck(rule)),
            .. coded,
        ];

    /// <summary>The build records of a text, each beside the revision of the part's recipe today.</summary>
    private ImmutableArray<LoggedBuild> BuildsOf(BoundFile bound) =>
        LoggedBuild.Of(bound.Model, part => TreeOf(PathNames.Normalize(part.Where.Source.Name)) is { } tree ? RevisionOf(tree) : null, part => _plans.TryGetValue(part, out var plan) ? plan : null);

    /// <summary>The nearest settings file: that of the file's folder, or of the first folder above it that has one; null for settings themselves.</summary>
    private BoundFile? SettingsFor(SyntaxTree tree)
    {
        var name = tree.Source.Name;
        return PathNames.FileName(name) == SettingsFile
            ? null
            : _settings.GetOrAdd(PathNames.FolderOf(name), folder => new Lazy<BoundFile?>(() => Nearest(folder))).Value;
    }

    private BoundFile? Nearest(string folder) =>
        SettingsNames(folder).Select(TreeOf).FirstOrDefault(tree => tree is not null) is { } settings ? BoundOf(settings) : null;

    /// <summary>Where settings are looked for, nearest first.</summary>
    private IEnumerable<string> SettingsNames(string folder)
    {
        for (string? at = folder; at is not null; at = _files.FolderAbove(at))
        {
            yield return at.Length == 0 || at.EndsWith('/') ? at + SettingsFile : $"{at}/{SettingsFile}";
        }
    }

    private SyntaxTree? TreeOf(string name) => _trees.GetOrAdd(
        name,
        key => new Lazy<SyntaxTree?>(() => _files.TryRead(key, out var text) ? _parsed.TreeOf(key, text) : null)).Value;

    private ShapeFile? ShapeOf(string name) => _shapes.GetOrAdd(name, key => new Lazy<ShapeFile?>(() => ShapesUsed.FileOf(_files.ShapeOf(key)))).Value;

    /// <summary>
    /// The revision of a text with every text it uses, in order of name, so that a change of the shop file changes the revision of the
    /// papers that rest on it.
    /// </summary>
    private string RevisionOf(SyntaxTree root) => _revisions.GetOrAdd(root, key => new Lazy<string>(() =>
    {
        List<SyntaxTree> trees = [key, .. UsedBy(key).Values.OfType<SyntaxTree>().Where(used => !ReferenceEquals(used, key))];
        return RecipeRevision.Of(trees, ShapesIn(trees).Select(shape => shape.Text ?? ""));
    })).Value;

    /// <summary>The files of shapes that texts name, in order of name.</summary>
    private IEnumerable<TextUsed> ShapesIn(IEnumerable<SyntaxTree> trees) => trees.SelectMany(tree => TreeFacts.Of(tree).Shapes)
        .Distinct(StringComparer.Ordinal)
        .Order(StringComparer.Ordinal)
        .Select(name => new TextUsed(name, ShapesUsed.DigestOf(ShapeOf(name)), IsShape: true));

    /// <summary>Every text whose change, coming or going would change what the parts of a file are compiled to.</summary>
    private ImmutableArray<TextUsed> RestsOn(SyntaxTree root, IEnumerable<CodedFile> coded)
    {
        var names = UsedBy(root);
        if (PathNames.FileName(root.Source.Name) != SettingsFile)
        {
            foreach (var name in SettingsNames(PathNames.FolderOf(root.Source.Name)))
            {
                var settings = TreeOf(name);
                names.TryAdd(name, settings);
                if (settings is not null)
                {
                    foreach (var (used, tree) in UsedBy(settings))
                    {
                        names.TryAdd(used, tree);
                    }

                    break;
                }
            }
        }

        return
        [
            .. names.Select(pair => pair.Value is { } tree ? TreeFacts.Of(tree).AsUsed : new TextUsed(pair.Key, null)),
            .. ShapesIn(names.Values.OfType<SyntaxTree>()),
            .. coded.Select(file => new TextUsed(file.Name, file.Text)),
        ];
    }

    /// <summary>A text and all that it uses, directly or through others, in order of name; null stands for one that is not there.</summary>
    private SortedDictionary<string, SyntaxTree?> UsedBy(SyntaxTree root)
    {
        var seen = new SortedDictionary<string, SyntaxTree?>(StringComparer.Ordinal) { [root.Source.Name] = root };
        var open = new Stack<SyntaxTree>([root]);
        while (open.Count > 0)
        {
            var tree = open.Pop();
            foreach (var name in TreeFacts.Of(tree).Uses)
            {
                var used = TreeOf(name);
                if (seen.TryAdd(name, used) && used is not null)
                {
                    open.Push(used);
                }
            }
        }

        return seen;
    }

    /// <summary>
    /// A mistake in a line that a part and its variant share is one mistake: the same code at the same place is said once. A rule of the house may find several
    /// things wrong with a part, all at its name.
    /// </summary>
    private sealed class SameFinding : IEqualityComparer<Finding>
    {
        public static readonly SameFinding Instance = new();

        public bool Equals(Finding? x, Finding? y) =>
            x is not null && y is not null && x.Descriptor.Code == y.Descriptor.Code && x.Where == y.Where && (!x.Descriptor.IsHouseRule || x.Message == y.Message);

        public int GetHashCode(Finding obj) => HashCode.Combine(obj.Descriptor.Code, obj.Where);
    }
}
