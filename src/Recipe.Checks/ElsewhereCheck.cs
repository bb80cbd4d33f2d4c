namespace Recipe.Checks;

/// <summary>A check that looks at no part but at something that stands beside parts: settings, records, rules.</summary>
public abstract class ElsewhereCheck : Check
{
    /// <summary>Nothing: what it looks at is handed to it one by one.</summary>
    public sealed override void Examine(CheckContext context)
    {
    }
}
