namespace Recipe.Preview.Http;

/// <summary>A request as it was read.</summary>
/// <param name="Method">GET or POST.</param>
/// <param name="Path">The path, still escaped, without the query.</param>
/// <param name="Query">The query without its question mark, or empty.</param>
/// <param name="Headers">Names, whatever their case, and values; none stands twice.</param>
/// <param name="Body">The body; empty when there is none.</param>
internal sealed record HttpRequest(string Method, string Path, string Query, IReadOnlyDictionary<string, string> Headers, byte[] Body)
{
    /// <summary>A header, or null.</summary>
    public string? Header(string name) => Headers.GetValueOrDefault(name);

    /// <summary>A value of the query, or null.</summary>
    public string? Asked(string name)
    {
        foreach (var pair in Query.Split('&'))
        {
            var at = pair.IndexOf('=', StringComparison.Ordinal);
            if (at > 0 && pair[..at] == name)
            {
                return Uri.UnescapeDataString(pair[(at + 1)..].Replace('+', ' '));
            }
        }

        return null;
    }
}
