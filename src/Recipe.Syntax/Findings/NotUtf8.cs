using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Syntax.Findings;

/// <summary>
/// Bytes that are not UTF-8: whoever decoded the text put the replacement character in their place. It is looked for in the whole text, since in
/// a title or a remark nobody else would miss what is gone, and a paper would show it.
/// </summary>
internal static class NotUtf8
{
    public static readonly FindingDescriptor Descriptor = new()
    {
        Code = "RC1027",
        Name = "not-utf8",
        Severity = Severity.Error,
        Title = "A file that is not UTF-8",
        Reason = "What the bytes of another encoding stand for can only be guessed, so a degree sign or a letter of a name would be missing on the papers.",
        Remedy = "Save the file as UTF-8, the encoding of recipes, and write the character again where it is lost.",
        Source = "RFC 3629, UTF-8; the replacement character: The Unicode Standard, chapter 23.8",
        BadExample = "part tray {\n  title \"R\uFFFDsine\"\n  process hand\n}\n",
        GoodExample = "part tray {\n  title \"R\u00E9sine\"\n  process hand\n}\n",
    };

    private const char Replacement = '\uFFFD';

    /// <summary>Whether a stretch of text is only what could not be decoded.</summary>
    public static bool IsAll(ReadOnlySpan<char> text) => !text.IsEmpty && !text.ContainsAnyExcept(Replacement);

    /// <summary>The one finding of a text: at the first character that is lost. Null when none is.</summary>
    public static Finding? In(SourceText source) => source.Text.IndexOf(Replacement, StringComparison.Ordinal) is >= 0 and var first
        ? Finding.Of(Descriptor, new SourceSpan(source, new TextSpan(first, 1)), "what stands here is lost: the file is not UTF-8, or it was once saved by a program that took it for another encoding")
        : null;
}
