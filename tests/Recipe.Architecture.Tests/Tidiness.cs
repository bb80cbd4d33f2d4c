using System.Text;
using System.Text.RegularExpressions;

namespace Recipe.Architecture.Tests;

/// <summary>What makes a file untidy. Each rule takes text or bytes, so that it is shown to catch an offender.</summary>
internal static partial class Tidiness
{
    /// <summary>A file longer than this needs a split, or a name in the exception list with its reason.</summary>
    public const int MaximumLines = 400;

    private static readonly UTF8Encoding StrictUtf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    // The marks are put together here, so that this file does not carry them.
    private static readonly Regex Unfinished =
        new($@"\b({string.Join('|', "TO" + "DO", "FIX" + "ME", "HA" + "CK", "XX" + "X", "NotImplemented" + "Exception")})\b");

    private static readonly Regex Untested = new("Skip" + " *= *\"|Assert\\.True" + "\\(true\\)|Assert\\.False" + "\\(false\\)");

    /// <summary>The lines that carry a mark of unfinished work.</summary>
    public static IEnumerable<string> UnfinishedMarks(string text) => LinesThatMatch(text, Unfinished);

    /// <summary>The lines that skip a test or assert nothing.</summary>
    public static IEnumerable<string> EmptyTests(string text) => LinesThatMatch(text, Untested);

    /// <summary>The lines that name a folder of somebody's machine.</summary>
    public static IEnumerable<string> MachinePaths(string text) => LinesThatMatch(text, MachinePath());

    public static int Lines(string text) => text.Count(character => character == '\n');

    /// <summary>What is wrong with the file's bytes, or null: they are UTF-8 without a byte order mark, and lines end with LF.</summary>
    public static string? EncodingFault(ReadOnlySpan<byte> bytes)
    {
        if (bytes.StartsWith(Encoding.UTF8.Preamble))
        {
            return "starts with a byte order mark";
        }

        if (bytes.Contains((byte)'\r'))
        {
            return "has a carriage return";
        }

        if (bytes.Length > 0 && bytes[^1] != '\n')
        {
            return "does not end with a line end";
        }

        try
        {
            StrictUtf8.GetCharCount(bytes);
            return null;
        }
        catch (DecoderFallbackException)
        {
            return "is not UTF-8";
        }
    }

    private static IEnumerable<string> LinesThatMatch(string text, Regex pattern) => text.Split('\n').Where(line => pattern.IsMatch(line));

    [GeneratedRegex(@"(^|[^A-Za-z0-9_.-])/(work|farm|root)/|[A-Za-z]:\\Users\\")]
    private static partial Regex MachinePath();
}
