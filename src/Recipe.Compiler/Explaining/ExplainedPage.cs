namespace Recipe.Compiler;

/// <summary>One thing that can be explained.</summary>
/// <param name="Kind">The code of a finding, the word that declares a material (<c>fabric</c>), or <c>part</c>.</param>
/// <param name="Name">What it is asked for by.</param>
/// <param name="Title">What it is in a few words; empty when nobody says.</param>
internal sealed record ExplainedPage(string Kind, string Name, string Title)
{
    public const string Part = "part";

    private const string CodePrefix = "RC";

    /// <summary>Whether it is a finding of the program; its code then begins with that of its family.</summary>
    public bool IsFinding => Kind.StartsWith(CodePrefix, StringComparison.Ordinal);

    /// <summary>Whether it is a rule of the house.</summary>
    public bool IsHouseRule => Kind.Contains(' ', StringComparison.Ordinal);

    /// <summary>It as a line of a list.</summary>
    public string Line => $"{Kind,-15} {Name}";

    /// <summary>It with its title.</summary>
    public string LineWithTitle => Title.Length == 0 ? Line : $"{Line,-48} {Title}";
}
