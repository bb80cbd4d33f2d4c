namespace Recipe.LanguageServer.Documents;

/// <summary>The unit of a column, as client and server agreed.</summary>
internal enum PositionEncoding
{
    /// <summary>UTF-16 code units: what every client understands.</summary>
    Utf16,

    /// <summary>Bytes of UTF-8.</summary>
    Utf8,

    /// <summary>Characters of Unicode.</summary>
    Utf32,
}

/// <summary>Agreeing on a unit.</summary>
internal static class PositionEncodings
{
    /// <summary>The protocol's word for it.</summary>
    public static string Name(PositionEncoding encoding) => encoding switch
    {
        PositionEncoding.Utf8 => "utf-8",
        PositionEncoding.Utf32 => "utf-32",
        _ => "utf-16",
    };

    /// <summary>UTF-8 when the client offers it; else UTF-16, unless it offers UTF-32 and not UTF-16.</summary>
    public static PositionEncoding Choose(string[]? offered) => offered switch
    {
        null or [] => PositionEncoding.Utf16,
        _ when offered.Contains("utf-8") => PositionEncoding.Utf8,
        _ when offered.Contains("utf-32") && !offered.Contains("utf-16") => PositionEncoding.Utf32,
        _ => PositionEncoding.Utf16,
    };
}
