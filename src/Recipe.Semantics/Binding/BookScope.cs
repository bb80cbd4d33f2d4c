using Recipe.Model;
using Recipe.Syntax;

namespace Recipe.Semantics.Binding;

/// <summary>The names of the book. All its files see each other.</summary>
internal sealed class BookScope : INameScope
{
    private readonly Dictionary<string, MaterialDeclaration> _materials = new(StringComparer.Ordinal);
    private readonly Dictionary<string, MouldDeclaration> _moulds = new(StringComparer.Ordinal);
    private readonly Dictionary<string, PartDeclaration> _parts = new(StringComparer.Ordinal);
    private readonly Dictionary<string, LetDeclaration> _lets = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<MaterialDeclaration>> _byKeyword = new(StringComparer.Ordinal);

    public BookScope(IEnumerable<SyntaxTree> files)
    {
        foreach (var file in files)
        {
            var index = new FileIndex(file, isBook: true, this);
            Files.Add(index);
            Add(_materials, index.Materials);
            Add(_moulds, index.Moulds);
            Add(_parts, index.Parts);
            Add(_lets, index.Lets);
            foreach (var material in index.MaterialList)
            {
                if (!_byKeyword.TryGetValue(material.Word.Word, out var list))
                {
                    _byKeyword.Add(material.Word.Word, list = []);
                }

                list.Add(material);
            }
        }
    }

    public List<FileIndex> Files { get; } = [];

    /// <summary>Names declared in two files of the book.</summary>
    public List<(Declaration Second, Declaration First)> Duplicates { get; } = [];

    public IReadOnlyDictionary<string, MaterialDeclaration> Materials => _materials;

    // Materials are the same in every shop.
    public double? Altitude => null;

    public MaterialDeclaration? FindMaterial(string name) => _materials.GetValueOrDefault(name);

    public MouldDeclaration? FindMould(string name) => _moulds.GetValueOrDefault(name);

    public PartDeclaration? FindPart(string name) => _parts.GetValueOrDefault(name);

    public LetDeclaration? FindLet(string name) => _lets.GetValueOrDefault(name);

    // The book has no files beside it.
    public ShapeFile? FindShape(string fromName, string path) => null;

    public IEnumerable<string> NamesOf(NameKind kind) => Files.SelectMany(f => NamesOf(f, kind));

    public IEnumerable<MaterialDeclaration> DefaultsOf(string keyword) => MaterialsOf(keyword).Where(d => d.IsDefault);

    public IEnumerable<MaterialDeclaration> MaterialsOf(string keyword) => _byKeyword.GetValueOrDefault(keyword) ?? [];

    /// <summary>The names that one file declares in a space.</summary>
    public static IEnumerable<string> NamesOf(FileIndex index, NameKind kind) => kind switch
    {
        NameKind.Material => index.Materials.Keys,
        NameKind.Mould => index.Moulds.Keys,
        NameKind.Part => index.Parts.Keys,
        NameKind.Value => index.Lets.Keys,
        _ => [],
    };

    private void Add<T>(Dictionary<string, T> all, Dictionary<string, T> own)
        where T : Declaration
    {
        foreach (var (name, declaration) in own)
        {
            if (!all.TryAdd(name, declaration))
            {
                Duplicates.Add((declaration, all[name]));
            }
        }
    }
}
