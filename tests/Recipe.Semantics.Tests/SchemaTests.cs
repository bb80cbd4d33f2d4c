using Recipe.Semantics.Schema;

namespace Recipe.Semantics.Tests;

public class SchemaTests
{
    public static TheoryData<string, string> Examples
    {
        get
        {
            var data = new TheoryData<string, string>();
            foreach (var block in RecipeSchema.Blocks)
            {
                foreach (var word in block.Words)
                {
                    data.Add(block.Name, word.Example);
                    foreach (var form in word.Forms)
                    {
                        data.Add(block.Name, form.Example);
                    }
                }

                if (block.NameLine is { } line)
                {
                    data.Add(block.Name, line.Example);
                }
            }

            return data;
        }
    }

    /// <summary>Each example of the schema is read through the schema in a block of its kind; only names may be unknown.</summary>
    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_example_can_be_read_where_it_belongs(string block, string example)
    {
        var bound = Given.Bind(Frame(block, example));
        Assert.Empty(bound.Tree.Findings.Select(f => f.Message));
        Assert.Empty(bound.Findings
            .Where(f => f.Descriptor.Name is not ("unknown-name" or "unknown-ply" or "import-missing" or "variant-cycle"))
            .Select(f => $"{f.Where} {f.Message}"));
    }

    [Fact]
    public void No_regional_word_is_a_word_of_its_own_block()
    {
        foreach (var block in RecipeSchema.Blocks)
        {
            Assert.All(block.Words.SelectMany(w => w.Regional), r => Assert.Null(block.Find(r)));
        }
    }

    [Fact]
    public void Every_doc_is_one_sentence()
    {
        Assert.All(
            RecipeSchema.Blocks.SelectMany(b => b.Words).Select(w => w.Doc),
            d => Assert.Matches("^[A-Z].*[^.]\\.$", d));
    }

    private static string Frame(string block, string line) => block switch
    {
        "file" => line,
        "fabric, ud, mat, veil" => line.StartsWith("areal-weight", StringComparison.Ordinal) ? $"fabric a {{\n{line}\n}}" : $"fabric a {{\nareal-weight 100 g/m2\n{line}\n}}",
        "resin, gel-coat, surface-coat, adhesive" => $"resin a {{\n{line}\n}}",
        "peel-ply, release-film, bleeder, breather, bag-film, flow-medium, caul" => $"breather a {{\n{line}\n}}",
        "sealant-tape, flash-tape" => $"sealant-tape a {{\n{line}\n}}",
        "hose, port, catch-pot" => $"hose a {{\n{line}\n}}",
        "mould, pattern" => $"mould a {{\n{line}\n}}",
        "hardener" => $"resin a {{\nhardener b {{\n{line}\n}}\n}}",
        "kinetics" => $"resin a {{\nkinetics m {{\n{line}\n}}\n}}",
        "surface" => $"mould a {{\nsurface {(line.StartsWith("point", StringComparison.Ordinal) ? "revolved" : "swept")} {{\n{line}\n{line}\n{(line.StartsWith("path", StringComparison.Ordinal) ? "section across 0 mm height 0 mm\nsection across 1 mm height 0 mm" : "path along 0 mm height 0 mm\npath along 1 mm height 0 mm")}\n}}\n}}",
        "release" => $"mould a {{\nrelease {{\n{line}\n}}\n}}",
        "part" => $"part a {{\n{line}\n}}",
        "variant" => $"part b {{\ntitle \"b\"\n}}\nvariant a of b {{\n{line}\n}}",
        "plies of a variant" => $"part b {{\ntitle \"b\"\n}}\nvariant a of b {{\nplies {{\n{line}\n}}\n}}",
        "plies" or "wet-out" or "mix" or "prepreg" or "bag" or "infuse" or "vacuum" or "cure" or "finish" or "join" => $"part a {{\n{block} {{\n{line}\n}}\n}}",
        "shop" => $"shop a {{\n{line}\n}}",
        "safety" => $"shop a {{\nsafety {{\n{line}\n}}\n}}",
        "stock" or "prices" or "findings" => $"{block} {{\n{line}\n}}",
        "planned" => $"part a {{\ntitle \"a\"\n}}\nbuild a {{\nplanned {{\n{line}\n}}\n}}",
        "build" => $"part a {{\ntitle \"a\"\n}}\nbuild a {{\n{line}\n}}",
        "explore" => $"part b {{\nresin two-speed-epoxy with slow\n}}\nexplore a of b {{\n{(line.StartsWith("choose", StringComparison.Ordinal) ? "" : "choose laminators 3 4\n")}{(line.StartsWith("want", StringComparison.Ordinal) ? "" : "want least mass\n")}{line}\n}}",
        "rule" => $"rule a {{\n{(line.StartsWith("must", StringComparison.Ordinal) ? "" : "must mass at-most 1 kg\n")}{line}\n}}",
        "conditions" => $"rule a {{\nmust any {(line.Contains("hardener", StringComparison.Ordinal) ? "pot" : "ply")} {{\n{line}\n}}\n}}",
        _ => $"{block} a {{\n{line}\n}}",
    };
}
