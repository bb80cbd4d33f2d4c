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
}
