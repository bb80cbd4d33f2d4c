namespace Recipe.RulesProcess;

/// <summary>The user's own folders of this program.</summary>
public static class UserFolders
{
    /// <summary>For what can be made again; null when the user has no such folder.</summary>
    public static string? Cache => Of("XDG_CACHE_HOME", Environment.SpecialFolder.LocalApplicationData, ".cache");

    /// <summary>For settings; null when the user has no such folder.</summary>
    public static string? Settings => Of("XDG_CONFIG_HOME", Environment.SpecialFolder.ApplicationData, ".config");

    private static string? Of(string variable, Environment.SpecialFolder windows, string below)
    {
        if (Environment.GetEnvironmentVariable(variable) is { Length: > 0 } set && Path.IsPathRooted(set))
        {
            return Path.Combine(set, "recipe");
        }

        var home = Environment.GetFolderPath(OperatingSystem.IsWindows() ? windows : Environment.SpecialFolder.UserProfile);
        return home.Length == 0 ? null : OperatingSystem.IsWindows() ? Path.Combine(home, "recipe") : Path.Combine(home, below, "recipe");
    }
}
