using Recipe.Text.Findings;

namespace Recipe.Checks.Tests;

/// <summary>Tries a check on either side of its limit.</summary>
internal static class Limits
{
    /// <summary>A check fires on a tray, as bad as it is, or says nothing about it.</summary>
    public static void Speaks(string check, Tray tray, bool fires)
    {
        if (fires)
        {
            Bench.Fires(check, tray.ToString());
        }
        else
        {
            Bench.Silent(check, tray);
        }
    }

    /// <summary>A check fires on a tray with this severity, or says nothing about it.</summary>
    public static void Says(string check, Tray tray, bool fires, Severity severity = Severity.Warning)
    {
        if (fires)
        {
            Bench.Fires(check, tray, severity);
        }
        else
        {
            Bench.Silent(check, tray);
        }
    }
}
