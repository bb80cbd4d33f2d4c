using Recipe.Semantics.Reading;
using Recipe.Semantics.Schema;
using Recipe.Syntax;
using Recipe.Text;

namespace Recipe.Semantics.Binding;

/// <summary>What a file declares, by name: found by looking at the heads of its entries only, so that nothing is bound for it.</summary>
internal sealed class FileIndex
{
    private readonly LineContext _context;

    public FileIndex(SyntaxTree tree, bool isBook, INameScope scope)
    {
        Tree = tree;
        _context = new LineContext(tree.Source, scope, isBook, FindingSink.Quiet);
        foreach (var statement in tree.Root.Statements)
        {
            if (statement is LetSyntax let)
            {
                Add(Lets, LetList, new LetDeclaration(let.Name.Text, let, _context));
            }
            else if (BlockReader.EntryOf(statement) is { } entry)
            {
                Add(entry.Entry, entry.HalfRead);
            }
        }
    }

    public SyntaxTree Tree { get; }

    public Dictionary<string, MaterialDeclaration> Materials { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, MouldDeclaration> Moulds { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, PartDeclaration> Parts { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, StudyDeclaration> Studies { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, RuleDeclaration> Rules { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, LetDeclaration> Lets { get; } = new(StringComparer.Ordinal);

    /// <summary>All declarations in order, second ones of a name included: they are bound too, so that their faults are found.</summary>
    public List<MaterialDeclaration> MaterialList { get; } = [];

    public List<MouldDeclaration> MouldList { get; } = [];

    public List<PartDeclaration> PartList { get; } = [];

    public List<StudyDeclaration> StudyList { get; } = [];

    public List<RuleDeclaration> RuleList { get; } = [];

    public List<LetDeclaration> LetList { get; } = [];

    /// <summary>Entries that declare no name, with their word: <c>use</c>, <c>stock</c>, and heads that no schema knows (null).</summary>
    public List<(EntrySyntax Entry, WordSchema? Word, bool HalfRead)> Others { get; } = [];

    /// <summary>Declarations whose name was taken.</summary>
    public List<(Declaration Second, Declaration First)> Duplicates { get; } = [];

    /// <summary>Top-level words of other regions.</summary>
    public List<(WordSyntax Head, WordSchema Word)> Regional { get; } = [];

    /// <summary>The paths of its <c>use</c> lines; rules in C# are no recipes, and the workspace looks after them.</summary>
    public IEnumerable<TextSyntax> Uses => Others
        .Where(o => o.Word?.Word == "use")
        .Select(o => o.Entry.Values.Length > 0 ? o.Entry.Values[0] as TextSyntax : null)
        .OfType<TextSyntax>()
        .Where(path => !FileEndings.IsCodedRules(path.Text));

    private void Add(EntrySyntax entry, bool halfRead)
    {
        var word = RecipeSchema.File.Find(entry.Head.Text);
        if (word is null && RecipeSchema.File.FindRegional(entry.Head.Text) is { } canonical)
        {
            word = canonical;
            Regional.Add((entry.Head, canonical));
        }

        var name = entry.Values.Length > 0 ? entry.Values[0] as WordSyntax : null;
        if (word is null || name is null || word.Line.Arguments is not [{ Kind: NewNameKind { Space: var space } }, ..] || space == NameKind.Shop)
        {
            Others.Add((entry, word, halfRead));
            return;
        }

        switch (space)
        {
            case NameKind.Material:
                Add(Materials, MaterialList, new MaterialDeclaration(name.Text, entry, word, halfRead, name.Span, _context) { IsDefault = SaysDefault(entry) });
                break;
            case NameKind.Mould:
                Add(Moulds, MouldList, new MouldDeclaration(name.Text, entry, word, halfRead, name.Span, _context));
                break;
            case NameKind.Study:
                Add(Studies, StudyList, new StudyDeclaration(name.Text, entry, word, halfRead, name.Span, _context));
                break;
            case NameKind.Rule:
                Add(Rules, RuleList, new RuleDeclaration(name.Text, entry, word, halfRead, name.Span, _context));
                break;
            default:
                Add(Parts, PartList, new PartDeclaration(name.Text, entry, word, halfRead, name.Span, _context));
                break;
        }
    }

    private void Add<T>(Dictionary<string, T> byName, List<T> list, T declaration)
        where T : Declaration
    {
        list.Add(declaration);
        if (!byName.TryAdd(declaration.Name, declaration))
        {
            Duplicates.Add((declaration, byName[declaration.Name]));
        }
    }

    private static bool SaysDefault(EntrySyntax entry) =>
        entry.Block is { } block && block.Entries.Any(e => e.Head.Text == "default" && e.Values is [WordSyntax { Text: "yes" }, ..]);
}
