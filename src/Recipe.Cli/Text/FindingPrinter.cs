using System.Globalization;
using System.Text;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Cli.Text;

/// <summary>Writes findings for people: what, where with the line and a caret, other places, why, and what to do.</summary>
internal sealed class FindingPrinter(TextWriter output, Style style)
{
    private const int TabWidth = 4;

    public void Print(Finding finding)
    {
        var word = Word(finding.Severity);
        output.WriteLine($"{style.Of(finding.Severity, $"{word} {finding.Descriptor.ShortCode}")} {style.Strong($"{finding.Descriptor.Name}: {Shown.Line(finding.Message)}")}");
        PrintPlace(finding.Where, null, finding.Severity);
        foreach (var label in finding.Labels)
        {
            PrintPlace(label.Where, label.Text, null);
        }

        output.WriteLine($"  why: {Shown.Line(finding.Descriptor.Reason)}");
        if (finding.Fixes.IsEmpty)
        {
            output.WriteLine($"  fix: {Shown.Line(finding.Descriptor.Remedy)}");
        }

        foreach (var fix in finding.Fixes)
        {
            output.WriteLine($"  fix: {Shown.Line(fix.Title)}{(fix.Safety == FixSafety.Safe ? "" : " (have a look)")}");
        }

        output.WriteLine();
    }

    public static string Word(Severity severity) => severity switch
    {
        Severity.Error => "error",
        Severity.Warning => "warning",
        _ => "advice",
    };

    private void PrintPlace(SourceSpan where, string? label, Severity? severity)
    {
        var start = where.Start;
        var number = (start.Line + 1).ToString(CultureInfo.InvariantCulture);
        var margin = new string(' ', Math.Max(number.Length, 4));
        output.WriteLine(style.Faint($"  {margin}--> {Shown.Line(where.Source.Name)}:{start}"));
        var lineSpan = where.Source.LineSpan(start.Line);
        var (line, columns) = Expand(where.Source.Slice(lineSpan));
        output.WriteLine($"  {style.Faint($"{number.PadLeft(margin.Length)} |")} {line}");
        var from = columns[Math.Min(start.Column, columns.Length - 1)];
        var to = columns[Math.Clamp(where.Span.End - lineSpan.Start, 0, columns.Length - 1)];
        var carets = new string('^', Math.Max(1, to - from));
        var mark = severity is { } known ? style.Of(known, carets) : style.Strong(carets.Replace('^', '-'));
        output.WriteLine($"  {style.Faint($"{margin} |")} {new string(' ', from)}{mark}{(label is null ? "" : " " + Shown.Line(label))}");
    }

    /// <summary>The line as a terminal shows it, and the column at which each character starts.</summary>
    private static (string Line, int[] Columns) Expand(string line)
    {
        var text = new StringBuilder(line.Length);
        var columns = new int[line.Length + 1];
        for (var i = 0; i < line.Length; i++)
        {
            columns[i] = text.Length;
            if (line[i] == '\t')
            {
                text.Append(' ', TabWidth - (text.Length % TabWidth));
            }
            else
            {
                // A control character in a file must not reach the terminal as a command.
                text.Append(Shown.IsCommand(line[i]) ? '?' : line[i]);
            }
        }

        columns[line.Length] = text.Length;
        return (text.ToString(), columns);
    }
}
