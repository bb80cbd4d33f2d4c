using Recipe.Model;
using Recipe.Semantics.Reading;
using Recipe.Syntax;

namespace Recipe.Semantics.Binding;

/// <summary>
/// A file of the user: what it declares, then what the files it uses declare (their own names, not those that they use in turn),
/// then the book. Made once for a file in a <see cref="UseScope"/>; everything in it is worked out when somebody asks.
/// </summary>
internal sealed class FileScope : INameScope
{
    private readonly UseScope _uses;
    private FileIndex? _index;
    private List<UsedFile>? _used;
    private Bound<TopLevel>? _top;
    private BoundFile? _bound;

    public FileScope(SyntaxTree tree, Book book, UseScope uses)
    {
        Tree = tree;
        Book = book;
        _uses = uses;
    }

    public SyntaxTree Tree { get; }

    public Book Book { get; }

    // Each of these is looked at first: what is there already costs no delegate.
    public FileIndex Index => Volatile.Read(ref _index) ?? LazyInitializer.EnsureInitialized(ref _index, () => new FileIndex(Tree, isBook: false, this));

    /// <summary>The used files that are there, in order, each once; this file itself is not among them.</summary>
    public List<UsedFile> Used => Volatile.Read(ref _used) ?? LazyInitializer.EnsureInitialized(ref _used, FindUsed);

    /// <summary>What stands at its top level without a name: shop, stock, prices.</summary>
    public Bound<TopLevel> Top => Volatile.Read(ref _top) ?? LazyInitializer.EnsureInitialized(ref _top, () =>
        TopLevel.Bind(Index, new LineContext(Tree.Source, this, IsBook: false, FindingSink.Quiet)));

    public BoundFile Bound => Volatile.Read(ref _bound) ?? LazyInitializer.EnsureInitialized(ref _bound, () => FileBinder.Bind(this));

    public double? Altitude => UsedLevels()
        .Prepend([this])
        .SelectMany(level => level)
        .Select(file => file.OwnAltitude())
        .FirstOrDefault(height => height is not null);

    /// <summary>The files that this one uses, then those that they use in turn, and so on, each once.</summary>
    public IEnumerable<List<FileScope>> UsedLevels()
    {
        var seen = new HashSet<FileScope> { this };
        for (var level = UsedBy([this]); level.Count > 0; level = UsedBy(level))
        {
            yield return level;
        }

        List<FileScope> UsedBy(IEnumerable<FileScope> files) => [.. files.SelectMany(one => one.Used).Select(used => used.Scope).Where(seen.Add)];
    }

    /// <summary>The file that a path means, or null.</summary>
    public FileScope? Resolve(string path) => _uses.Resolve(Tree.Source.Name, path) is { } tree ? _uses.ScopeOf(tree, Book) : null;

    public MaterialDeclaration? FindMaterial(string name) => Find(name, static i => i.Materials) ?? Book.Scope.FindMaterial(name);

    public MouldDeclaration? FindMould(string name) => Find(name, static i => i.Moulds) ?? Book.Scope.FindMould(name);

    public PartDeclaration? FindPart(string name) => Find(name, static i => i.Parts) ?? Book.Scope.FindPart(name);

    public LetDeclaration? FindLet(string name) => Find(name, static i => i.Lets) ?? Book.Scope.FindLet(name);

    public ShapeFile? FindShape(string fromName, string path) => _uses.Shape(fromName, path);

    public IEnumerable<string> NamesOf(NameKind kind) =>
        Files.SelectMany(f => BookScope.NamesOf(f.Index, kind)).Concat(Book.Scope.NamesOf(kind));

    public IEnumerable<MaterialDeclaration> DefaultsOf(string keyword) => MaterialsOf(keyword).Where(d => d.IsDefault);

    public IEnumerable<MaterialDeclaration> MaterialsOf(string keyword) =>
        Files.SelectMany(f => f.Index.MaterialList).Where(d => d.Word.Word == keyword).Concat(Book.Scope.MaterialsOf(keyword));

    /// <summary>This file and those it uses.</summary>
    private IEnumerable<FileScope> Files => Used.Select(u => u.Scope).Prepend(this);

    private T? Find<T>(string name, Func<FileIndex, Dictionary<string, T>> space)
        where T : Declaration
    {
        if (space(Index).TryGetValue(name, out var own))
        {
            return own;
        }

        foreach (var used in Used)
        {
            if (space(used.Scope.Index).TryGetValue(name, out var theirs))
            {
                return theirs;
            }
        }

        return null;
    }

    // Read from the text, since a shop that is being bound asks too.
    private double? OwnAltitude() => Index.Others.FirstOrDefault(other => other.Word?.Word == "shop") is { Word: { } word, Entry: { } entry }
        ? ShopBinder.AltitudeIn(entry, word, new LineContext(Tree.Source, this, IsBook: false, FindingSink.Quiet))
        : null;

    private List<UsedFile> FindUsed()
    {
        var used = new List<UsedFile>();
        foreach (var path in Index.Uses)
        {
            if (Resolve(path.Text) is { } scope && !ReferenceEquals(scope, this) && !used.Exists(u => ReferenceEquals(u.Scope, scope)))
            {
                used.Add(new UsedFile(path, scope));
            }
        }

        return used;
    }
}

/// <summary>A file in scope and the line that brought it there.</summary>
internal sealed record UsedFile(TextSyntax Path, FileScope Scope);
