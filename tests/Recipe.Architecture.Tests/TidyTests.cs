using System.Text;

namespace Recipe.Architecture.Tests;

/// <summary>What a visitor sees is in order.</summary>
public sealed class TidyTests
{
    private static readonly string[] TopLevel =
        ["DEVELOPERS.md", "LICENSE", "README.md", "Recipe.sln", "editors", "grammar", "samples", "src", "tests"];

    private static readonly string[] TextExtensions =
    [
        ".cs", ".csproj", ".props", ".targets", ".md", ".txt", ".json", ".recipe", ".ebnf", ".js", ".ts", ".xml", ".svg", ".html",
        ".css", ".lua", ".vim", ".toml", ".yml", ".yaml", ".editorconfig", ".gitattributes", ".gitignore",
    ];

    /// <summary>Files of <c>src</c> that may be longer than <see cref="Tidiness.MaximumLines"/>, each with its reason.</summary>
    private static readonly Dictionary<string, string> LongFiles = [];

    private static IReadOnlyList<string> TextFiles { get; } =
        [.. Repository.Files().Where(file => TextExtensions.Contains(Path.GetExtension(file)) && !KeepsItsOwnBytes(file))];

    [Fact]
    public void The_top_level_shows_only_what_the_design_names() => Assert.Empty(Repository.VisibleTopLevel().Except(TopLevel));

    [Fact]
    public void The_files_are_found()
    {
        Assert.Contains("src/BannedSymbols.txt", TextFiles);
        Assert.Contains("tests/Recipe.Architecture.Tests/TidyTests.cs", TextFiles);
        Assert.DoesNotContain(TextFiles, file => file.Contains("/obj/", StringComparison.Ordinal));
    }

    [Fact]
    public void A_source_file_is_short()
    {
        var tooLong = TextFiles
            .Where(file => file.StartsWith("src/", StringComparison.Ordinal) && file.EndsWith(".cs", StringComparison.Ordinal))
            .Where(file => Tidiness.Lines(Repository.Read(file)) > Tidiness.MaximumLines)
            .ToList();
        Assert.Empty(tooLong.Except(LongFiles.Keys));

        // An exception that is no longer needed goes.
        Assert.Empty(LongFiles.Keys.Except(tooLong));
        Assert.All(LongFiles.Values, reason => Assert.NotEmpty(reason));
    }

    [Fact]
    public void No_file_carries_a_mark_of_unfinished_work() => Assert.Empty(Offences(Tidiness.UnfinishedMarks));

    [Fact]
    public void No_test_is_skipped_or_asserts_nothing() => Assert.Empty(Offences(Tidiness.EmptyTests));

    [Fact]
    public void No_file_names_a_folder_of_a_machine() => Assert.Empty(Offences(Tidiness.MachinePaths));

    [Fact]
    public void Every_text_file_is_plain_utf8_with_unix_line_ends() =>
        Assert.Empty(TextFiles
            .Select(file => (file, fault: Tidiness.EncodingFault(File.ReadAllBytes(Repository.Absolute(file)))))
            .Where(found => found.fault is not null)
            .Select(found => $"{found.file} {found.fault}"));

    [Fact]
    public void The_rules_catch_offenders()
    {
        Assert.Single(Tidiness.UnfinishedMarks("a\n// TO" + "DO: later\nTODOS are fine"));
        Assert.Single(Tidiness.UnfinishedMarks("throw new NotImplemented" + "Exception();"));
        Assert.Single(Tidiness.EmptyTests("[Fact(Skip" + " = \"slow\")]"));
        Assert.Single(Tidiness.EmptyTests("Assert.True" + "(true);"));
        Assert.Single(Tidiness.MachinePaths("see /wo" + "rk/main\nand net/work/load"));
        Assert.Single(Tidiness.MachinePaths("C:\\Us" + "ers\\somebody"));
        Assert.Equal(2, Tidiness.Lines("a\nb\n"));
    }

    [Theory]
    [InlineData("", null)]
    [InlineData("a 25 µm film\n", null)]
    [InlineData("\uFEFFa\n", "starts with a byte order mark")]
    [InlineData("a\r\n", "has a carriage return")]
    [InlineData("a", "does not end with a line end")]
    public void The_encoding_rule_catches_offenders(string text, string? fault) =>
        Assert.Equal(fault, Tidiness.EncodingFault(Encoding.UTF8.GetBytes(text)));

    [Fact]
    public void Bytes_that_are_not_utf8_are_caught() => Assert.Equal("is not UTF-8", Tidiness.EncodingFault([0xB5, (byte)'\n']));

    private static IEnumerable<string> Offences(Func<string, IEnumerable<string>> rule) =>
        TextFiles.SelectMany(file => rule(Repository.Read(file)).Select(line => $"{file}: {line.Trim()}"));

    // The package manager writes the lock files; and the very bytes of some test inputs are the point, as .gitattributes says.
    private static bool KeepsItsOwnBytes(string file) =>
        file.EndsWith(".lock.json", StringComparison.Ordinal)
        || (file.StartsWith("tests/", StringComparison.Ordinal)
            && file.Split('/').Any(part => part.StartsWith("crlf", StringComparison.Ordinal)));
}
