using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>How bad a shop holds findings to be. The first word on a finding counts.</summary>
internal sealed class HeldSeverities(IReadOnlyList<SeveritySetting> settings)
{
    /// <summary>Whether a setting speaks of a finding.</summary>
    public static bool Names(SeveritySetting setting, FindingDescriptor finding) => setting.Code == finding.Code || setting.Code == finding.Name;

    /// <summary>What counts for a check; null when nothing is said, or when what is said is refused.</summary>
    public Severity? Of(Check check)
    {
        foreach (var setting in settings)
        {
            if (Names(setting, check.Descriptor))
            {
                return IsTooMild(setting, check) ? null : setting.Severity;
            }
        }

        return null;
    }

    /// <summary>Whether a setting would make light of what can hurt somebody.</summary>
    public static bool IsTooMild(SeveritySetting setting, Check check) => check.IsSafety && setting.Severity < Severity.Warning;
}
