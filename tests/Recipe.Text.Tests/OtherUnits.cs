using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;
using Recipe.Text.Units;

namespace Recipe.Text.Tests;

/// <summary>GNU units (Debian package units), a general-purpose converter with a table of its own, asked for values in SI.</summary>
internal static class OtherUnits
{
    /// <summary>Whether the program can be started here.</summary>
    internal static bool IsInstalled()
    {
        try
        {
            Ask([]);
            return true;
        }
        catch (Win32Exception)
        {
            return false;
        }
    }

    /// <summary>The value of each expression in SI units of its dimension. One that means another thing there is no number, and fails.</summary>
    internal static double[] InSi(IReadOnlyList<(string Expression, Dimension Dimension)> questions)
    {
        var answers = Ask([.. questions.SelectMany(question => new[] { question.Expression, Si(question.Dimension) })]);
        Assert.Equal(questions.Count, answers.Length);
        return [.. answers.Zip(questions, (answer, question) => double.TryParse(answer, CultureInfo.InvariantCulture, out var value)
            ? value
            : throw new InvalidOperationException($"{question.Expression} in {Si(question.Dimension)}: {answer}"))];
    }

    private static string Si(Dimension dimension)
    {
        (string Symbol, sbyte Exponent)[] parts =
            [("kg", dimension.Mass), ("m", dimension.Length), ("s", dimension.Time), ("K", dimension.Temperature), ("radian", dimension.Angle)];
        var text = string.Join(' ', parts.Where(part => part.Exponent != 0).Select(part => $"{part.Symbol}^{part.Exponent}"));
        return text.Length == 0 ? "1" : text;
    }

    private static string[] Ask(IReadOnlyList<string> lines)
    {
        // An empty file name stands for the program's own table alone; a table of whoever runs this stays out.
        var start = new ProcessStartInfo("units") { RedirectStandardInput = true, RedirectStandardOutput = true };
        foreach (var argument in new[] { "--quiet", "--terse", "--one-line", "--output-format", "%.17g", "--file", string.Empty })
        {
            start.ArgumentList.Add(argument);
        }

        start.Environment["LC_ALL"] = "C";
        using var process = Process.Start(start)!;
        process.StandardInput.Write(string.Concat(lines.Select(line => line + "\n")));
        process.StandardInput.Close();
        var said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return said.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
    }
}
