using System.Globalization;
using Recipe.TestKit;

namespace Recipe.Benchmarks;

/// <summary>
/// How the time of the published binary grows with what it is given: the exponent of the power that fits best, of what each size takes more than the
/// start of the program. About 1 is what should come out.
/// </summary>
internal static class GrowthCurves
{
    private const int Runs = 3;

    public static int Measure(string binary)
    {
        var folder = Directory.CreateTempSubdirectory("recipe-growth-").FullName;
        try
        {
            var start = NativeBudgets.Times(binary, 21, ["--version"])[0];
            Console.WriteLine("| what grows | sizes | least ms | exponent |");
            Console.WriteLine("|---|---|---|---|");
            Row("lines of materials in one file, `check`", [1_000, 3_000, 10_000, 30_000], size => Write(size, "", Repeat(size / 4, i => $"fabric cloth-{i} like glass-twill-280 {{\n  areal-weight  {200 + (i % 90)} g/m2   source \"measured\"\n}}\n\n")));
            Row("plies in one part, `check`", [30, 100, 300, 1_000], size => Write(size, Lid(Repeat(size, i => $"    ply-{i}  glass-twill-163  {(i % 2 == 0 ? "0/90" : "+/-45")}\n")), ""));
            Row("variants of a part, `check`", [30, 100, 300, 1_000], size => Write(size, Lid("    body  glass-twill-163  0/90\n    face  glass-plain-105  0/90\n"), Repeat(size, i => $"variant lid-{i} of lid {{\n  plies {{\n    remove face\n  }}\n}}\n\n")));
            Row("files in a folder, `check`", [30, 100, 300, 1_000], Files);

            void Row(string what, int[] sizes, Func<int, string[]> arguments)
            {
                var times = sizes.Select(size => NativeBudgets.Times(binary, Runs, arguments(size))[0]).ToArray();
                var exponent = Slope([.. sizes.Select(size => Math.Log(size))], [.. times.Select(time => Math.Log(Math.Max(time - start, 0.1)))]);
                Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {what} | {string.Join(", ", sizes.Select(size => size.ToString("N0", CultureInfo.InvariantCulture)))} | {string.Join(", ", times.Select(time => time.ToString("0", CultureInfo.InvariantCulture)))} | {exponent:0.00} |"));
            }

            string[] Write(int size, string part, string rest)
            {
                var path = Path.Combine(folder, $"grown-{size}.recipe");
                File.WriteAllText(path, "language 1\n\n" + part + rest);
                return ["check", path];
            }

            string[] Files(int size)
            {
                var path = Path.Combine(folder, $"files-{size}");
                Directory.CreateDirectory(path);
                File.Copy(Repository.PathOf("samples/shop.recipe"), Path.Combine(path, "shop.recipe"), overwrite: true);
                for (var i = 0; i < size; i++)
                {
                    File.Copy(Repository.PathOf("samples/hatch-lid.recipe"), Path.Combine(path, $"lid-{i}.recipe"), overwrite: true);
                }

                return ["check", path];
            }
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }

        return 0;
    }

    private static string Repeat(int count, Func<int, string> make) => string.Concat(Enumerable.Range(0, count).Select(make));

    private static string Lid(string plies) => $$"""
        mould lid-mould {
          surface  flat 300 mm x 200 mm
          made-of  epoxy-glass-tooling
          release  { carnauba-wax coats 5 wait 30 min }
        }

        part lid {
          mould    lid-mould
          process  hand
          resin    slow-laminating-epoxy
          plies {
        {{plies}}  }
          cure     { hold 20 degC for 24 h }
        }


        """;

    // Ordinary least squares.
    private static double Slope(double[] x, double[] y)
    {
        var (meanX, meanY) = (x.Average(), y.Average());
        return x.Zip(y, (a, b) => (a - meanX) * (b - meanY)).Sum() / x.Sum(a => (a - meanX) * (a - meanX));
    }
}
