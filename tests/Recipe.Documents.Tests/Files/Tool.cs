using System.Diagnostics;
using Xunit.Abstractions;

namespace Recipe.Documents.Tests.Files;

/// <summary>A program of Debian's that reads what we wrote. CI has them all; elsewhere a test that lacks one says so and compares nothing.</summary>
internal static class Tool
{
    public static bool IsThere(string program, string package, ITestOutputHelper output)
    {
        var found = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Any(folder => File.Exists(Path.Combine(folder, program)));
        if (!found)
        {
            var absent = $"NOT COMPARED: {program} is not installed (Debian package {package}).";
            Assert.False(Environment.GetEnvironmentVariable("CI") == "true", absent);
            output.WriteLine(absent);
        }

        return found;
    }

    /// <summary>Runs a program and returns what it printed.</summary>
    public static string Run(string program, params string[] arguments)
    {
        var start = new ProcessStartInfo(program) { RedirectStandardOutput = true, RedirectStandardError = true, StandardOutputEncoding = System.Text.Encoding.UTF8 };
        foreach (var argument in arguments)
        {
            start.ArgumentList.Add(argument);
        }

        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, $"{program}: {error.Result}");
        return output;
    }

    /// <summary>Hands a file with these bytes to a reader and takes it away again.</summary>
    public static T With<T>(byte[] bytes, string extension, Func<string, T> read)
    {
        var folder = Directory.CreateTempSubdirectory("recipe-file-");
        try
        {
            var path = Path.Combine(folder.FullName, "file." + extension);
            File.WriteAllBytes(path, bytes);
            return read(path);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
