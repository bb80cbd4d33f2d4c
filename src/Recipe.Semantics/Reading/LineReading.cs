using Recipe.Text;

namespace Recipe.Semantics.Reading;

/// <summary>What stood on a line behind its head.</summary>
internal sealed class LineReading
{
    private readonly List<Argument> _arguments = [];
    private List<string>? _unread;
    private List<(string Phrase, SourceSpan Where)>? _flags;

    /// <summary>The form that the first word chose, or null.</summary>
    public string? Form { get; set; }

    /// <summary>Whether the grammar could not read all of the line.</summary>
    public bool IsHalfRead { get; init; }

    /// <summary>The <c>xN</c> count, or null.</summary>
    public int? Count { get; set; }

    /// <summary>Where values were left as blanks.</summary>
    public List<SourceSpan>? Blanks { get; private set; }

    public void AddBlank(SourceSpan where) => (Blanks ??= []).Add(where);

    /// <summary>The <c>source</c> clause, or null.</summary>
    public SourceNote? Source { get; set; }

    public IReadOnlyList<Argument> Arguments => _arguments;

    public void Add(Argument argument) => _arguments.Add(argument);

    /// <summary>Notes a value that stood there and could not be read, which was reported.</summary>
    public void AddUnread(string name) => (_unread ??= []).Add(name);

    /// <summary>Whether a value of the line, or its rest, could not be read.</summary>
    public bool HasUnread => IsHalfRead || _unread is not null;

    /// <summary>Whether a value stood there, readable or not.</summary>
    public bool WasTried(string name) => Find(name) is not null || _unread?.Contains(name) == true;

    public void AddFlag(string phrase, SourceSpan where) => (_flags ??= []).Add((phrase, where));

    public Argument? Find(string name)
    {
        foreach (var argument in _arguments)
        {
            if (argument.Name == name)
            {
                return argument;
            }
        }

        return null;
    }

    public IEnumerable<Argument> FindAll(string name) => _arguments.Where(a => a.Name == name);

    public bool Has(string flag) => WhereOf(flag) is not null;

    public SourceSpan? WhereOf(string flag)
    {
        if (_flags is not null)
        {
            foreach (var (phrase, where) in _flags)
            {
                if (phrase == flag)
                {
                    return where;
                }
            }
        }

        return null;
    }
}
