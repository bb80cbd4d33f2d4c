namespace Recipe.Documents.Changes;

/// <summary>What happened to something, by a mark that needs no colour.</summary>
internal enum ChangeMark
{
    Changed,
    Added,
    Removed,
    Moved,
    Renamed,
}

/// <summary>One thing that is different.</summary>
/// <param name="Group">What it belongs to: the stack, a block, the figures, the findings.</param>
/// <param name="Mark">What happened.</param>
/// <param name="What">What is different.</param>
/// <param name="Was">What it was; empty when it is new.</param>
/// <param name="Now">What it is; empty when it is gone.</param>
/// <param name="Difference">The difference of two figures, or a remark; empty when there is none.</param>
internal sealed record ChangeRow(string Group, ChangeMark Mark, string What, string Was, string Now, string Difference = "")
{
    /// <summary>The mark as one letter of a listing.</summary>
    public char Letter => Mark switch
    {
        ChangeMark.Added => '+',
        ChangeMark.Removed => '-',
        ChangeMark.Moved => '>',
        ChangeMark.Renamed => '=',
        _ => '~',
    };

    /// <summary>The mark as a word.</summary>
    public string Word => Mark.Word();
}

/// <summary>Marks in words.</summary>
internal static class ChangeMarks
{
    public static string Word(this ChangeMark mark) => mark switch
    {
        ChangeMark.Added => "new",
        ChangeMark.Removed => "gone",
        ChangeMark.Moved => "moved",
        ChangeMark.Renamed => "renamed",
        _ => "changed",
    };
}
