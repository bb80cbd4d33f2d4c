using System.Text;
using Recipe.Compiler;
using Recipe.Compiler.Records;
using Recipe.TestKit;

namespace Recipe.Fuzzing.Targets;

/// <summary>
/// Build records: any text beside a recipe and a sound record is checked, told as history in every form, learnt from, counted off the shelf,
/// and what was learnt can be put into a text.
/// </summary>
internal sealed class RecordsTarget : IFuzzTarget
{
    private const string File = "records/fuzzed.recipe";
    private static readonly DateOnly Today = new(2026, 6, 30);
    private static readonly string Shop = Repository.Read("samples/shop.recipe");
    private static readonly string Lid = Repository.Read("samples/hatch-lid.recipe");
    private static readonly string Before = Repository.Read("samples/records/hatch-lid-004.recipe");
    private static readonly string BeforeThat = Repository.Read("samples/records/hatch-lid-003.recipe");

    public string Name => "records";

    public IEnumerable<string> Words => SeedFiles.WordsOfTheLanguage();

    public IEnumerable<(string Name, byte[] Bytes)> Seeds() => SeedFiles.In("samples/records", "*.recipe");

    public void Run(byte[] bytes)
    {
        var text = Encoding.UTF8.GetString(bytes);
        var files = new MemoryFiles
        {
            [File] = text,
            ["records/hatch-lid-003.recipe"] = BeforeThat,
            ["records/hatch-lid-004.recipe"] = Before,
            ["hatch-lid.recipe"] = Lid,
            ["shop.recipe"] = Shop,
        };
        CompiledFile[] compiled = [.. new Workspace(files, Today).CompileAll(["hatch-lid.recipe", "records/hatch-lid-003.recipe", "records/hatch-lid-004.recipe", File]).OfType<CompiledFile>()];
        BrokenPropertyException.ThrowUnless(compiled.Length == 4, "A file is not found.");
        foreach (var finding in compiled[3].Findings)
        {
            FindingRules.Hold(finding, compiled[3].Source);
        }

        var records = ShopRecords.Of(compiled);
        foreach (var part in records.Parts)
        {
            foreach (var format in (string[])["text", "md", "html", "json", "csv", "svg"])
            {
                records.History(part, format, "mass");
            }

            foreach (var chart in ShopRecords.Charts)
            {
                records.History(part, "svg", chart);
            }
        }

        foreach (var format in (string[])["text", "md", "json"])
        {
            records.Learnt(format);
            ShopShelf.Report(compiled, [], 2, Today, format);
        }

        if (records.WithLearnt("shop.recipe", Shop) is { } learnt)
        {
            BrokenPropertyException.ThrowUnless(records.WithLearnt("shop.recipe", learnt) == learnt, "Putting in what was learnt twice changes something.");
        }

        records.WithLearnt("shop.recipe", text);
        foreach (var part in compiled[3].Parts.Take(2))
        {
            RecordForm.Write(compiled[3], part.Name, 5, Today, name => name);
        }
    }
}
