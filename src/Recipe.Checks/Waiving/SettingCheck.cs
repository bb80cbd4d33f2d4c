using Recipe.Model;

namespace Recipe.Checks;

/// <summary>A check of the lines in which a shop says how bad it holds findings to be. It looks at no part.</summary>
public abstract class SettingCheck : Check
{
    /// <summary>A setting that is wrong is put right, not accepted.</summary>
    public sealed override bool CanBeAccepted => false;

    /// <summary>Nothing: settings are looked at one by one.</summary>
    public sealed override void Examine(CheckContext context)
    {
    }

    internal abstract void Examine(CheckContext context, SeveritySetting setting, Check? about);
}
