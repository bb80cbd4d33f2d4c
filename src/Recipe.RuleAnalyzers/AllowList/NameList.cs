namespace Recipe.RuleAnalyzers.AllowList;

/// <summary>Types and members by their names in the metadata. Held by the source of a rule and, a second time, by what the compiler made of it.</summary>
internal sealed class NameList
{
    private static readonly char[] Blanks = [' ', '\n', '\r', '\t'];
    private readonly Dictionary<string, Entry> _types = new(StringComparer.Ordinal);

    private NameList()
    {
    }

    /// <summary>What an author may write.</summary>
    public static NameList Source { get; } = Make(null, NameLists.Source, NameLists.Quantities);

    /// <summary>A list that holds another one and some names more.</summary>
    public static NameList Wider(NameList list, string lines) => Make(list, lines, "");

    /// <summary>Whether a type may be named at all.</summary>
    /// <param name="type">Its name in the metadata: <c>System.Collections.Generic.List`1+Enumerator</c>.</param>
    public bool Knows(string type) => _types.ContainsKey(type);

    /// <summary>Whether a member may be used.</summary>
    /// <param name="type">The name of its type.</param>
    /// <param name="member">Its name: that of a property, not of its accessor.</param>
    /// <param name="writes">Whether a property is written.</param>
    /// <param name="parameters">The simple names of the types of its parameters, <c>!</c> for a type parameter.</param>
    public bool Allows(string type, string member, bool writes, IReadOnlyList<string> parameters)
    {
        if (!_types.TryGetValue(type, out var entry) || entry.Without.Contains(member))
        {
            return false;
        }

        return entry.IsAll
            || entry.Members.Contains(member + "=")
            || (!writes && entry.Members.Contains(member))
            || (!writes && entry.Members.Contains(member + "(" + string.Join(",", parameters) + ")"));
    }

    private static NameList Make(NameList? narrower, string lines, string quantities)
    {
        var list = new NameList();
        if (narrower is not null)
        {
            foreach (var pair in narrower._types)
            {
                list._types.Add(pair.Key, pair.Value);
            }
        }

        foreach (var line in lines.Split('\n').Select(line => line.Trim()).Where(line => line.Length > 0))
        {
            var colon = line.IndexOf(':');
            list.Add(line.Substring(0, colon), line.Substring(colon + 1).Split(Blanks, StringSplitOptions.RemoveEmptyEntries));
        }

        var without = NameLists.NotOfQuantities.Split(Blanks, StringSplitOptions.RemoveEmptyEntries).Select(name => "-" + name);
        foreach (var quantity in quantities.Split(Blanks, StringSplitOptions.RemoveEmptyEntries))
        {
            list.Add("UnitsNet." + quantity, without.Concat(["*"]));
            list.Add("UnitsNet.Units." + quantity + "Unit", ["*"]);
        }

        return list;
    }

    private void Add(string type, IEnumerable<string> members)
    {
        if (!_types.TryGetValue(type, out var known))
        {
            known = new Entry(new HashSet<string>(StringComparer.Ordinal), new HashSet<string>(StringComparer.Ordinal));
        }

        var all = members.ToList();
        _types[type] = new Entry(
            new HashSet<string>(known.Members.Concat(all.Where(name => name[0] != '-')), StringComparer.Ordinal),
            new HashSet<string>(known.Without.Concat(all.Where(name => name[0] == '-').Select(name => name.Substring(1))), StringComparer.Ordinal));
    }

    private sealed class Entry(HashSet<string> members, HashSet<string> without)
    {
        public HashSet<string> Members { get; } = members;

        public HashSet<string> Without { get; } = without;

        public bool IsAll { get; } = members.Contains("*");
    }
}
