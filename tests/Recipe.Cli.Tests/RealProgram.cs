using System.Diagnostics;

namespace Recipe.Cli.Tests;

/// <summary>The program as a process of its own, for what a process alone can meet: signals, closed streams, its environment.</summary>
internal static class RealProgram
{
    /// <summary>A shell that runs a line in a folder; <c>$recipe</c> in it is the program.</summary>
    public static Outcome Shell(string folder, string line, params (string Name, string? Value)[] environment) =>
        Start(folder, "/bin/sh", ["-c", line], [("recipe", $"dotnet {Path.Combine(AppContext.BaseDirectory, "recipe.dll")}"), ("LC_ALL", "C.UTF-8"), .. environment]);

    /// <summary>Runs a program in a folder to its end.</summary>
    public static Outcome Start(string folder, string program, string[] arguments, params (string Name, string? Value)[] environment)
    {
        var start = new ProcessStartInfo(program, arguments) { WorkingDirectory = folder, RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var (name, value) in environment)
        {
            start.Environment[name] = value;
        }

        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return new Outcome(process.ExitCode, output, error.Result);
    }
}
