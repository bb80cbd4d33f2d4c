using System.Text;
using System.Text.Json.Nodes;
using System.Xml.Linq;
using Recipe.Compiler;
using Recipe.TestKit;

namespace Recipe.Fuzzing.Targets;

/// <summary>
/// The whole compiler: any text is checked, what is found points into its text and says numbers, every form of the list of findings can be
/// written, safe fixes can be made and checked, and a text without an error gives papers.
/// </summary>
internal sealed class CheckTarget : IFuzzTarget
{
    private const string File = "fuzzed.recipe";
    private static readonly DateOnly Today = new(2026, 5, 14);
    private static readonly string Shop = Repository.Read("samples/shop.recipe");
    private static readonly string Lid = Repository.Read("samples/hatch-lid.recipe");

    public string Name => "check";

    public IEnumerable<string> Words => new TextTarget().Words;

    public IEnumerable<(string Name, byte[] Bytes)> Seeds() =>
    [
        .. SeedFiles.In("samples", "*.recipe", largest: 6_000),
        .. SeedFiles.In("samples/house-rules/rules", "*.recipe", largest: 6_000),
        .. SeedFiles.In("samples/shapes", "*.recipe"),
        .. SeedFiles.In("tests/corpus/sound", "*.recipe", largest: 2_500),
    ];

    public void Run(byte[] bytes)
    {
        var text = Encoding.UTF8.GetString(bytes);
        var file = Compile(text);
        foreach (var finding in file.Findings.Concat(file.Accepted))
        {
            FindingRules.Hold(finding, file.Source);
        }

        Lists([file]);
        BrokenPropertyException.ThrowUnless(file.Revision.Length == 10, "The revision has not ten letters.");
        var (mended, applied) = SafeFixes.Apply(file);
        if (applied.Length > 0)
        {
            Compile(mended);
        }

        if (!file.HasErrors && file.Parts.Length is > 0 and < 4)
        {
            var papers = BenchPapers.Write(file, new PaperWish { Today = Today, Formats = ["md", "csv"] }).ToList();
            BrokenPropertyException.ThrowUnless(papers.Count > 0, "A part without errors has no paper.");
        }
    }

    /// <summary>Programs read these lists: they are JSON and XML that can be read, and lines without control characters.</summary>
    private static void Lists(CompiledFile[] files)
    {
        JsonNode.Parse(CompiledFile.FindingsAsJson(files));
        JsonNode.Parse(CompiledFile.FindingsAsSarif(files, "0"));
        XDocument.Parse(CompiledFile.FindingsAsJUnit(files));
        var remarks = CompiledFile.FindingsAsAnnotations(files);
        BrokenPropertyException.ThrowUnless(remarks.Count(c => c == '\n') == files.Sum(file => file.Findings.Length), "A remark is not one line.");
        BrokenPropertyException.ThrowUnless(!remarks.Any(c => char.IsControl(c) && c != '\n'), "A remark holds a control character.");
    }

    private static CompiledFile Compile(string text)
    {
        var files = new MemoryFiles { [File] = text, ["shop.recipe"] = Shop, ["hatch-lid.recipe"] = Lid };
        return new Workspace(files, Today).TryCompile(File, out var file) ? file : throw new BrokenPropertyException("The file is not found.");
    }
}
