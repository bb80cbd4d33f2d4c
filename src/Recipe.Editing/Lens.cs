using Recipe.Text;

namespace Recipe.Editing;

/// <summary>What happens when a line above a part is clicked.</summary>
public enum LensAction
{
    /// <summary>Nothing: it only shows numbers.</summary>
    ShowNumbers,

    /// <summary>The papers are written.</summary>
    MakePapers,

    /// <summary>The part is compared with the last commit, where there is one.</summary>
    Compare,
}

/// <summary>A line that an editor shows above a part.</summary>
/// <param name="Where">The part's name.</param>
/// <param name="Title">The line.</param>
/// <param name="Action">What a click does.</param>
/// <param name="Part">The part.</param>
public sealed record Lens(TextSpan Where, string Title, LensAction Action, string Part);
