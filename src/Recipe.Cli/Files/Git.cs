using System.ComponentModel;
using System.Diagnostics;
using System.Text;

namespace Recipe.Cli.Files;

/// <summary>The git that is installed, started for one question. Nothing is ever written into a repository here.</summary>
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
            throw new CannotRunException("git is not installed, or not found; comparing with a revision needs it.", problem);
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
