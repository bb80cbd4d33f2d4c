using System.Globalization;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;

namespace Recipe.Documents.Writing.Pdf;

/// <summary>What a PDF says about itself to programs.</summary>
/// <param name="Title">Its title.</param>
/// <param name="Subject">The revision of the recipe.</param>
/// <param name="Printed">The day, or null.</param>
/// <param name="Id">16 characters below U+0100 that follow from the content.</param>
internal sealed record PdfAbout(string Title, string Subject, DateOnly? Printed, string Id)
{
    public static PdfAbout Of(IReadOnlyList<Document> documents)
    {
        var identity = documents[0].Identity;
        var title = PlainText.Spaced(documents.Count == 1 ? documents[0].Title : identity.Wording.Say($"{identity.Part}: papers"));
        var subject = PlainText.Spaced(IdentityLine.Revision(identity, identity.Revision));
        var named = string.Join('\n', documents.Select(document => document.Kind)) + $"\n{title}\n{subject}\n{identity.Serial}\n{identity.Source}\n{identity.PartName}"
            + (identity.Printed is { } day ? Numbers.Day(day) : "");
        return new PdfAbout(title, subject, identity.Printed, Hash(named, 0xcbf29ce484222325) + Hash(named, 0x84222325cbf29ce4));
    }

    /// <summary>The id as 32 hexadecimal digits.</summary>
    public string IdInHex => string.Concat(Id.Select(c => ((int)c).ToString("x2", CultureInfo.InvariantCulture)));

    // FNV-1a, 64 bits: it tells files apart and protects nothing.
    private static string Hash(string text, ulong basis)
    {
        var hash = basis;
        foreach (var b in System.Text.Encoding.UTF8.GetBytes(text))
        {
            hash = unchecked((hash ^ b) * 0x100000001b3);
        }

        return string.Concat(Enumerable.Range(0, 8).Select(i => (char)((hash >> (8 * i)) & 0xFF)));
    }
}
