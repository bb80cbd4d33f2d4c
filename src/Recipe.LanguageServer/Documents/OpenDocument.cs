using Recipe.LanguageServer.Protocol;
using Recipe.Text;

namespace Recipe.LanguageServer.Documents;

/// <summary>A document as the editor shows it.</summary>
/// <param name="Uri">As the client writes it; it gets the same back.</param>
/// <param name="Version">As the client counts.</param>
/// <param name="Text">The text.</param>
internal sealed record OpenDocument(string Uri, int Version, SourceText Text)
{
    public string Name => Text.Name;

    /// <summary>The document after some changes, each of which speaks of the text that the one before left.</summary>
    public OpenDocument With(int version, IEnumerable<TextDocumentContentChangeEvent> changes, Positions positions)
    {
        var text = Text;
        foreach (var change in changes)
        {
            if (change.Range is null)
            {
                text = new SourceText(Name, change.Text);
                continue;
            }

            var span = positions.Span(text, change.Range);
            text = new SourceText(Name, string.Concat(text.Text.AsSpan(0, span.Start), change.Text, text.Text.AsSpan(span.End)));
        }

        return new OpenDocument(Uri, version, text);
    }
}
