using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;
using System.Text;

namespace Recipe.Engineering.Tests;

/// <summary>
/// A strip of layered shell elements for CalculiX, a general-purpose finite element program: held at one end, and loaded at
/// the other or cooled. It tells the curvature along the strip half-way, well away from both ends.
/// </summary>
/// <remarks>
/// The program's shells are solid elements inside, so the material's Poisson's ratios through the thickness are nil: then plane
/// stress and the solid agree, and what is compared is the layering, the turning and the coupling.
/// </remarks>
internal sealed class FiniteElementStrip(Lamina lamina, double plyThickness, IReadOnlyList<double> degrees)
{
    private const double Length = 0.2;
    private const double Width = 0.04;
    private const int Along = 40;
    private const int Across = 8;

    /// <summary>Nodes that lie this many half elements to each side of the middle give the curvature.</summary>
    private const int Reach = 12;

    /// <summary>Moment per unit of width half-way along under the end load, N.</summary>
    internal static double MomentHalfWay => EndLoad * Length / 2 / Width;

    private static double EndLoad => 1;

    /// <summary>Whether the program can be started here.</summary>
    internal static bool IsInstalled()
    {
        try
        {
            using Process? process = Process.Start(Start("-v", Path.GetTempPath()));
            process!.StandardOutput.ReadToEnd();
            process.WaitForExit();
            return true;
        }
        catch (Win32Exception)
        {
            return false;
        }
    }

    /// <summary>Curvature -w,xx half-way along under a force at the free end, 1/m; the force points from the mould to the bag.</summary>
    internal double CurvatureUnderLoad()
    {
        StringBuilder step = new("*CLOAD\n");
        for (int j = 0; j <= 2 * Across; j++)
        {
            // Even load on quadratic edges: one sixth, four sixths, one sixth.
            double share = (j % 2 == 1 ? 4 : j is 0 or 2 * Across ? 1 : 2) / (6.0 * Across);
            step.Append(CultureInfo.InvariantCulture, $"{Node(2 * Along, j)},3,{EndLoad * share:R}\n");
        }

        return Curvature(step.ToString());
    }

    /// <summary>Curvature -w,xx half-way along after a change of temperature, 1/m.</summary>
    internal double CurvatureFromTemperature(double kelvins) =>
        Curvature(string.Create(CultureInfo.InvariantCulture, $"*TEMPERATURE\nNALL,{kelvins:R}\n"));

    private static int Node(int i, int j) => 1 + (i * ((2 * Across) + 1)) + j;

    private static ProcessStartInfo Start(string argument, string folder) =>
        new("ccx", argument) { WorkingDirectory = folder, RedirectStandardOutput = true, RedirectStandardError = false };

    private double Curvature(string step)
    {
        DirectoryInfo folder = Directory.CreateTempSubdirectory("recipe-strip-");
        try
        {
            File.WriteAllText(Path.Combine(folder.FullName, "strip.inp"), Input(step));
            using Process process = Process.Start(Start("strip", folder.FullName))!;
            string said = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            Assert.True(process.ExitCode == 0 && said.Contains("Job finished"), said);
            double[] w = [.. File.ReadLines(Path.Combine(folder.FullName, "strip.dat"))
                .Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries))
                .Where(words => words.Length == 4 && int.TryParse(words[0], out _))
                .Select(words => double.Parse(words[3], CultureInfo.InvariantCulture))];
            Assert.Equal(3, w.Length);

            // Exact for the cubic of a strip under an end load, whatever the spacing.
            double spacing = Reach * Length / (2 * Along);
            return -(w[0] - (2 * w[1]) + w[2]) / (spacing * spacing);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private string Input(string step)
    {
        StringBuilder text = new("*NODE\n");
        void Line(FormattableString line) => text.Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');
        for (int i = 0; i <= 2 * Along; i++)
        {
            for (int j = 0; j <= 2 * Across; j++)
            {
                if (i % 2 == 0 || j % 2 == 0)
                {
                    Line($"{Node(i, j)},{Length * i / (2 * Along):R},{(Width * j / (2 * Across)) - (Width / 2):R},0.");
                }
            }
        }

        // The shell's normal is +z, from the mould to the bag; its first layer lies at the lower side.
        Line($"*ELEMENT,TYPE=S8R,ELSET=ALL");
        int element = 0;
        for (int i = 0; i < 2 * Along; i += 2)
        {
            for (int j = 0; j < 2 * Across; j += 2)
            {
                Line($"{++element},{Node(i, j)},{Node(i + 2, j)},{Node(i + 2, j + 2)},{Node(i, j + 2)},{Node(i + 1, j)},{Node(i + 2, j + 1)},{Node(i + 1, j + 2)},{Node(i, j + 1)}");
            }
        }

        Line($"*NSET,NSET=NALL,GENERATE\n1,{Node(2 * Along, 2 * Across)}\n*NSET,NSET=ROOT,GENERATE\n1,{(2 * Across) + 1}");
        Line($"*NSET,NSET=READ\n{Node(Along - Reach, Across)}\n{Node(Along, Across)}\n{Node(Along + Reach, Across)}");
        for (int i = 0; i < degrees.Count; i++)
        {
            (double s, double c) = Math.SinCos(degrees[i] * Math.PI / 180);
            Line($"*ORIENTATION,NAME=TURN{i},SYSTEM=RECTANGULAR\n{c:F15},{s:F15},0.,{-s:F15},{c:F15},0.");
        }

        (double e1, double e2, double g) = (lamina.Along.Pascals, lamina.Across.Pascals, lamina.Shear.Pascals);
        Line($"*MATERIAL,NAME=PLY\n*ELASTIC,TYPE=ENGINEERING CONSTANTS\n{e1:R},{e2:R},{e2:R},{lamina.Poisson:R},0.,0.,{g:R},{g:R},\n{g:R},20");
        double a2 = lamina.ExpansionAcross!.Value.PerKelvin;
        Line($"*EXPANSION,TYPE=ORTHO,ZERO=0.\n{lamina.ExpansionAlong!.Value.PerKelvin:R},{a2:R},{a2:R}\n*SHELL SECTION,COMPOSITE,ELSET=ALL");
        for (int i = 0; i < degrees.Count; i++)
        {
            Line($"{plyThickness:R},,PLY,TURN{i}");
        }

        Line($"*BOUNDARY\nROOT,1,6\n*INITIAL CONDITIONS,TYPE=TEMPERATURE\nNALL,0.\n*STEP\n*STATIC");
        return text.Append(step).Append("*NODE PRINT,NSET=READ\nU\n*END STEP\n").ToString();
    }
}
