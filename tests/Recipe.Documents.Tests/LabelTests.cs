using System.Diagnostics;
using System.Text;
using System.Text.RegularExpressions;
using Recipe.Documents.Labels;
using Recipe.Documents.Layout;
using Recipe.Documents.Shared;
using Recipe.Documents.Tests.Plans;
using Recipe.Model;
using Recipe.Planning;
using static Recipe.Documents.Tests.Plans.Make;
using Process = System.Diagnostics.Process;

namespace Recipe.Documents.Tests;

/// <summary>The labels: another program reads from each drawn code what the label is on.</summary>
public sealed class LabelTests
{
    private const int PixelsPerMm = 12;

    // zbarimg of the Debian package zbar-tools, a reader that has nothing to do with the library that writes the codes.
    [Fact]
    public void Another_program_reads_part_revision_and_serial_from_every_label()
    {
        var input = HatchLid.Input with { Serial = "2026-017" };
        var labels = LabelsPaper.Of(new PaperContext(input));
        Assert.True(labels.Length > 4);
        var sheets = Papers.Labels.Build(input).Stations.SelectMany(station => station.Blocks).OfType<Drawing>().ToList();
        var read = sheets.SelectMany(Read).ToList();
        Assert.Equal(labels.Select(label => label.Code).Order(StringComparer.Ordinal), read.Order(StringComparer.Ordinal));
        Assert.All(read, text => Assert.StartsWith("part: hatch-lid\nrevision: 3f2a91c\nserial: 2026-017\non: ", text, StringComparison.Ordinal));
    }

    [Fact]
    public void Every_pot_has_a_label_and_so_has_its_witness_cup()
    {
        var context = new PaperContext(HatchLid.Input);
        var pots = Mixing.MixRun.Of(context).Sum(run => run.Pots.Length);
        Assert.True(pots > 0);
        Assert.Equal(pots, LabelsPaper.Of(context).Count(label => label.Head == "Witness cup"));
        Assert.Equal(pots, LabelsPaper.Of(context).Count(label => label.Head.StartsWith("Pot ", StringComparison.Ordinal) || label.Head.StartsWith("Coat pot", StringComparison.Ordinal) || label.Head.StartsWith("Seam pot", StringComparison.Ordinal) || label.Head.StartsWith("Adhesive pot", StringComparison.Ordinal)));
    }

    // ISO/IEC 18004: four modules of white all round; the largest text still makes a code.
    // A cup that tells when the clamps may come off is of no use at H7, which is long over.
    [Theory]
    [InlineData(JoinManner.CuredThenBonded, "keep until the join is unclamped")]
    [InlineData(JoinManner.WetInWet, "keep until H7")]
    public void A_witness_cup_of_a_join_is_kept_until_its_own_step(JoinManner manner, string until)
    {
        var plan = HatchLid.Input.Plan;
        var pot = plan.Pots[0];
        var glue = new OwnMixPlan { Use = OwnMixUse.Adhesive, System = plan.Resin!.System, Laid = pot.Mass, Loss = pot.Mass, Spare = pot.Mass, ToMix = pot.Mass, Pots = [pot] };
        var part = plan.Part with { Join = new Join { Where = Here, Manner = Stated(manner, "manner") } };
        var labels = Papers.Write(HatchLid.Input with { Plan = plan with { Part = part, OwnMixes = [glue] } }, Papers.Labels, PaperFormat.Html);
        Assert.Contains(until, labels, StringComparison.Ordinal);
        Assert.Equal(plan.Pots.Length + (until.EndsWith("H7", StringComparison.Ordinal) ? 1 : 0), Regex.Count(labels, "keep until H7"));
    }

    [Fact]
    public void A_code_keeps_its_white_border_inside_its_square()
    {
        foreach (var text in (string[])["a", new string('x', 900), "\u00e9\u4e2d"])
        {
            var shapes = QrCode.Draw(text, 10, 20, 36).OfType<PathShape>().SelectMany(path => path.Points).ToList();
            var height = shapes.Select(spot => spot.Y).Distinct().Order().Take(2).ToList();
            var module = height[1] - height[0];
            Assert.Equal(10 + (4 * module), shapes.Min(spot => spot.X), 6);
            Assert.Equal(46 - (4 * module), shapes.Max(spot => spot.X), 6);
            Assert.Equal(20 + (4 * module), shapes.Min(spot => spot.Y), 6);
        }
    }

    private static IEnumerable<string> Read(Drawing drawing)
    {
        var folder = Directory.CreateTempSubdirectory("recipe-labels-");
        try
        {
            var picture = Path.Combine(folder.FullName, "labels.pgm");
            File.WriteAllBytes(picture, Picture(drawing));
            var start = new ProcessStartInfo("zbarimg") { RedirectStandardOutput = true, RedirectStandardError = true };
            foreach (var argument in (string[])["--xml", "-q", "-Sdisable", "-Sqrcode.enable", picture])
            {
                start.ArgumentList.Add(argument);
            }

            using var process = Process.Start(start)!;
            var said = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            Assert.True(process.ExitCode == 0, said);
            var document = System.Xml.Linq.XDocument.Parse(said);
            return [.. document.Descendants().Where(element => element.Name.LocalName == "data").Select(element => element.Value)];
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    // The black boxes of the drawing as a grey map; letters are left out, lines too.
    private static byte[] Picture(Drawing drawing)
    {
        var (width, height) = ((int)(drawing.WidthMm * PixelsPerMm), (int)(drawing.HeightMm * PixelsPerMm));
        var pixels = new byte[width * height];
        Array.Fill(pixels, (byte)255);
        foreach (var box in drawing.Shapes.OfType<PathShape>().Where(path => path.Fill == Fill.Black))
        {
            var (left, right) = ((int)Math.Round(box.Points.Min(spot => spot.X) * PixelsPerMm), (int)Math.Round(box.Points.Max(spot => spot.X) * PixelsPerMm));
            var (top, bottom) = ((int)Math.Round(box.Points.Min(spot => spot.Y) * PixelsPerMm), (int)Math.Round(box.Points.Max(spot => spot.Y) * PixelsPerMm));
            for (var y = top; y < bottom; y++)
            {
                pixels.AsSpan((y * width) + left, right - left).Clear();
            }
        }

        return [.. Encoding.ASCII.GetBytes($"P5\n{width} {height}\n255\n"), .. pixels];
    }
}
