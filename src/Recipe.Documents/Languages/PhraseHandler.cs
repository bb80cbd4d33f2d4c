using System.Collections.Immutable;
using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;
using Recipe.Documents.Layout;

namespace Recipe.Documents.Languages;

/// <summary>Takes an interpolated sentence apart into its key, with {0} to {9} where values stand, and the values, of which some may stand out.</summary>
[InterpolatedStringHandler]
internal readonly ref struct PhraseHandler
{
    private readonly StringBuilder _key;
    private readonly ImmutableArray<Phrase>.Builder _values;

    public PhraseHandler(int literalLength, int formattedCount)
    {
        _key = new StringBuilder(literalLength + (3 * formattedCount));
        _values = ImmutableArray.CreateBuilder<Phrase>(formattedCount);
    }

    public void AppendLiteral(string text) => _key.Append(text);

    public void AppendFormatted(Phrase value)
    {
        _key.Append('{').Append(_values.Count.ToString(CultureInfo.InvariantCulture)).Append('}');
        _values.Add(value);
    }

    public void AppendFormatted(string? value) => AppendFormatted((Phrase)(value ?? ""));

    public void AppendFormatted<T>(T value) => AppendFormatted(value is IFormattable f ? f.ToString(null, CultureInfo.InvariantCulture) : value?.ToString());

    /// <summary>The key and the values.</summary>
    public (string Key, ImmutableArray<Phrase> Values) Take() => (_key.ToString(), _values.ToImmutable());
}
