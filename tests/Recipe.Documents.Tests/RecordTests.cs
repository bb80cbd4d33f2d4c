using System.Text.RegularExpressions;
using Recipe.Documents.Layout;
using Recipe.Documents.Tests.Plans;
using Recipe.Model;

namespace Recipe.Documents.Tests;

/// <summary>The build record and the passport of the mould.</summary>
public sealed class RecordTests
{
    [Fact]
    public void The_formula_of_the_resin_share_takes_off_what_is_neither_fibre_nor_resin()
    {
        var laminate = HatchLid.Input.Plan.Laminate!;
        var page = Write(HatchLid.Input, Papers.Record);
        var other = Grams(page, @"trimmed mass less ([\d.]+) g of coats");
        var fibre = Grams(page, @"L less ([\d.]+) g of fibre");
        var faces = UnitsNet.Mass.FromKilograms(HatchLid.Input.Plan.Stack.Where(line => line.Item is Model.CoreItem).Sum(line => line.NetResin?.Value.Kilograms ?? 0));
        Assert.Equal((laminate.Core.Value + laminate.Coats.Value + laminate.Inserts.Value + (laminate.Join?.Value ?? UnitsNet.Mass.Zero) + faces).Grams, other, 1);
        Assert.Equal(laminate.Fibre.Value.Grams, fibre, 1);

        // A part that weighs just what fibre, resin and the rest weigh has the share that fibre and its own resin give.
        var own = laminate.Resin.Value - faces;
        var mass = laminate.Fibre.Value.Grams + own.Grams + other;
        Assert.Equal(own / (own + laminate.Fibre.Value), (mass - other - fibre) / (mass - other), 2);
    }

    // Carbon lets no light through, glass does: common practice.
    [Fact]
    public void Only_what_lets_light_through_is_held_to_it()
    {
        var lid = HatchLid.Input.Plan.Part;
        var glass = lid with { Stack = [.. lid.Stack.OfType<PlyItem>().Where(ply => !ply.Material.Name.Contains("carbon", StringComparison.Ordinal) && ply.Material.Fibre?.Name.Contains("carbon", StringComparison.Ordinal) != true)] };
        var ply = glass.Stack.OfType<PlyItem>().First();
        var carbon = lid with { Stack = [.. glass.Stack, ply with { Material = ply.Material with { Name = "carbon-twill-200", Fibre = null } }] };
        foreach (var kind in (PaperKind[])[Papers.Record, Papers.Traveller])
        {
            Assert.Contains("to the light", Write(Of(glass), kind), StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain("to the light", Write(Of(carbon), kind), StringComparison.OrdinalIgnoreCase);
            Assert.Contains("under a low lamp", Write(Of(carbon), kind), StringComparison.Ordinal);
        }

        static PaperInput Of(Part part) => HatchLid.Input with { Plan = HatchLid.Input.Plan with { Part = part } };
    }

    [Fact]
    public void Every_code_stands_on_the_record_once()
    {
        Assert.Equal(18, DefectCodes.All.Select(code => code.Code).Distinct().Count());
        var cells = Papers.Record.Build(HatchLid.Input).Stations.SelectMany(station => station.Blocks).OfType<Table>().Single(table => table.Caption == "Codes")
            .Rows.OfType<CellRow>().SelectMany(row => row.Cells).OfType<TextCell>().Select(cell => cell.Text.Plain).ToList();
        Assert.All(DefectCodes.All, code => Assert.Single(cells, code.Code));
        Assert.Equal(36, cells.Count);
    }

    [Fact]
    public void The_map_has_an_outline_for_each_half_and_the_hours_round_each()
    {
        foreach (var input in (PaperInput[])[HatchLid.Input, RudderHalves.Input])
        {
            var map = Papers.Record.Build(input).Stations.SelectMany(station => station.Blocks).OfType<Drawing>().Single(drawing => drawing.Name == "part-map");
            var halves = Math.Max(1, input.Plan.Part.Mould!.Halves.Length);
            for (var hour = 1; hour <= 12; hour++)
            {
                Assert.Equal(halves, map.Shapes.OfType<TextShape>().Count(text => text.Text == hour.ToString(System.Globalization.CultureInfo.InvariantCulture)));
            }
        }
    }

    [Fact]
    public void The_passport_states_what_the_recipe_says_and_leaves_a_space_for_the_rest()
    {
        var mould = HatchLid.Input.Plan.Part.Mould!;
        var facts = Papers.Passport.Build(HatchLid.Input).Stations[0].Blocks.OfType<Facts>().Single().Items;
        Assert.All(facts, fact => Assert.NotEqual(fact.Value.IsEmpty, fact.Blank is null));
        Assert.Equal(mould.MadeOn is null, facts.Single(fact => fact.Label == "Made on").Blank is not null);
        var page = Write(HatchLid.Input, Papers.Passport);
        Assert.All(mould.Release, line => Assert.Contains(line.Agent.Label, page, StringComparison.Ordinal));
    }

    private static double Grams(string page, string pattern) =>
        double.Parse(Regex.Match(page, pattern).Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture);

    private static string Write(PaperInput input, PaperKind kind) => Papers.Write(input, kind, PaperFormat.Markdown).Replace('\u00A0', ' ');
}
