namespace Recipe.Documents;

/// <summary>What a paper is written as.</summary>
public enum PaperFormat
{
    /// <summary>CommonMark with tables and task lists: for reading as text and for version control.</summary>
    Markdown,

    /// <summary>One file that needs nothing else, to print and to read on a screen.</summary>
    Html,

    /// <summary>One rectangular table (RFC 4180), for a spreadsheet.</summary>
    Csv,

    /// <summary>The whole plan for programs: <c>recipe/plan/1</c>.</summary>
    Json,

    /// <summary>The papers of a part in one file to print, with a bookmark for each paper and station.</summary>
    Pdf,

    /// <summary>One workbook of a part with a sheet for each paper that has a table.</summary>
    Xlsx,

    /// <summary>One file for each drawing of a part.</summary>
    Svg,
}
