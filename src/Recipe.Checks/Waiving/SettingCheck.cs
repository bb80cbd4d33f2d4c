using Recipe.Model;

namespace Recipe.Checks;

/// <summary>A check of the lines in which a shop says how bad it holds findings to be.</summary>
public abstract class SettingCheck : ElsewhereCheck
{
    /// <summary>A setting that is wrong is put right, not accepted.</summary>
    public sealed override bool CanBeAccepted => false;

    internal abstract void Examine(CheckContext context, SeveritySetting setting, Check? about);
}
