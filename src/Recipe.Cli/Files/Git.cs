using System.ComponentModel;
using System.Diagnostics;
using System.Text;

namespace Recipe.Cli.Files;

/// <summary>The git that is installed, started for one question. Only <see cref="GitSetup"/> makes it write into a repository, when it was told to.</summary>
internal static class Git
{
    /// <summary>Asks git, in the current folder; what it wrote.</summary>
    /// <exception cref="CannotRunException">There is no git, or it refused.</exception>
    public static string Ask(params string[] arguments)
    {
        var (status, output, error) = Run(arguments);
        return status == 0 ? output : throw new CannotRunException($"git: {FirstLine(error)}");
    }

    /// <summary>Whether git answers without complaint.</summary>
    public static bool Agrees(params string[] arguments) => Run(arguments).Status == 0;

    /// <summary>What git answers, without the line end; null when it refuses.</summary>
    public static string? TryAsk(params string[] arguments) => Run(arguments) is (0, var output, _) ? output.TrimEnd('\n', '\r') : null;

    /// <summary>The names in an answer that ends each with a zero byte.</summary>
    public static string[] Names(params string[] arguments) => Ask(arguments).Split('\0', StringSplitOptions.RemoveEmptyEntries);

    /// <summary>The top folder of the working copy that the current folder is in; null when it is in none.</summary>
    public static string? Top() => TryAsk("rev-parse", "--show-toplevel") is { Length: > 0 } top ? top : null;

    /// <summary>A git that goes on running, for many questions.</summary>
    public static Process Start(params string[] arguments)
    {
        var start = new ProcessStartInfo("git")
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            UseShellExecute = false,
        };
        foreach (var argument in arguments)
        {
            start.ArgumentList.Add(argument);
        }

        try
        {
            return Process.Start(start)!;
        }
        catch (Win32Exception problem)
        {
            throw new CannotRunException("git is not installed, or not found; install it, or name files and no revision.", problem);
        }
    }

    private static (int Status, string Output, string Error) Run(string[] arguments)
    {
        using var git = Start(arguments);
        git.StandardInput.Close();
        var error = git.StandardError.ReadToEndAsync();
        using var reader = new StreamReader(git.StandardOutput.BaseStream, Encoding.UTF8);
        var output = reader.ReadToEnd();
        git.WaitForExit();
        return (git.ExitCode, output, error.GetAwaiter().GetResult());
    }

    private static string FirstLine(string error) => error.Split('\n').Select(line => line.Trim()).FirstOrDefault(line => line.Length > 0) ?? "it failed.";
}
