using System.ComponentModel;
using System.Diagnostics;

namespace Recipe.Cli.Files;

/// <summary>The browser that the user has chosen, asked by the system's own opener and by no shell.</summary>
internal static class Browser
{
    /// <summary>Opens an address; whether something took it.</summary>
    public static bool TryOpen(Uri address)
    {
        try
        {
            if (OperatingSystem.IsWindows())
            {
                using var opened = Process.Start(new ProcessStartInfo(address.AbsoluteUri) { UseShellExecute = true });
                return true;
            }

            var start = new ProcessStartInfo(OperatingSystem.IsMacOS() ? "open" : "xdg-open") { RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
            start.ArgumentList.Add(address.AbsoluteUri);
            using var process = Process.Start(start)!;

            // An opener that finds no browser says so soon; one that has become the browser goes on running.
            return !process.WaitForExit(TimeSpan.FromSeconds(2)) || process.ExitCode == 0;
        }
        catch (Exception problem) when (problem is Win32Exception or InvalidOperationException or PlatformNotSupportedException)
        {
            return false;
        }
    }
}
