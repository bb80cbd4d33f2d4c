using System.Text;

namespace Recipe.RulesHost.Tests;

/// <summary>One file of many cases, each in a namespace of its own: compiling is what takes the time.</summary>
internal sealed class ManyRules
{
    private readonly StringBuilder _text = new();
    private readonly List<(string Case, int Start, int End)> _places = [];

    /// <summary>The file.</summary>
    public string Text => _text.ToString();

    /// <summary>Adds a case. Its rule is named after its number.</summary>
    public void Add(string name, string body, string members, string types)
    {
        var start = _text.Length;
        _text.Append("namespace N").Append(_places.Count).Append("\n{\n")
            .Append(Write.Rule(body, members, types).Replace("Name => \"one\"", $"Name => \"{RuleOf(_places.Count)}\"", StringComparison.Ordinal))
            .Append("}\n");
        _places.Add((name, start, _text.Length));
    }

    /// <summary>The name of the rule of a case.</summary>
    public string RuleOf(string name) => RuleOf(_places.FindIndex(place => place.Case == name));

    /// <summary>The case that stands at an offset.</summary>
    public string? CaseAt(int offset) => _places.Find(place => place.Start <= offset && offset < place.End).Case;

    private static string RuleOf(int index) => $"case-{index}";
}
