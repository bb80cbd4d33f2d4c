namespace Recipe.Syntax.Merging;

/// <summary>How the lines round a conflict are written.</summary>
/// <param name="Ours">What our side is called.</param>
/// <param name="Theirs">What their side is called.</param>
/// <param name="Size">How many signs a marker has, 1 or more.</param>
public sealed record ConflictMarkers(string Ours = "ours", string Theirs = "theirs", int Size = 7)
{
    internal string Start => Line('<', Ours);

    internal string Middle => Line('=', "");

    internal string End => Line('>', Theirs);

    private string Line(char sign, string label) => (new string(sign, Math.Max(Size, 1)) + " " + label).TrimEnd();
}
