using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;

namespace Recipe.Documents.Languages;

/// <summary>Takes an interpolated sentence apart into its key, with {0} to {9} where values stand, and the values.</summary>
[InterpolatedStringHandler]
internal readonly ref struct SentenceHandler
{
    private readonly StringBuilder _key;
    private readonly List<string> _values;

    public SentenceHandler(int literalLength, int formattedCount)
    {
        _key = new StringBuilder(literalLength + (3 * formattedCount));
        _values = new List<string>(formattedCount);
    }

    public void AppendLiteral(string text) => _key.Append(text);

    public void AppendFormatted(string? value)
    {
        _key.Append('{').Append(_values.Count.ToString(CultureInfo.InvariantCulture)).Append('}');
        _values.Add(value ?? "");
    }

    public void AppendFormatted<T>(T value) => AppendFormatted(value is IFormattable f ? f.ToString(null, CultureInfo.InvariantCulture) : value?.ToString());

    /// <summary>The key and the values.</summary>
    public (string Key, IReadOnlyList<string> Values) Take() => (_key.ToString(), _values);
}
