using System.Diagnostics;
using System.Formats.Tar;
using System.IO.Compression;
using System.Text;
using Xunit.Abstractions;

namespace Recipe.Engineering.Tests.Shapes;

/// <summary>
/// Meshes that others published, brought by the machine's own package programs when a test wants them and kept in the temporary folder.
/// CI has the programs; elsewhere a test that lacks them says so and compares nothing.
/// </summary>
/// <remarks>
/// Stanford bunny, reduced: npm package bunny 1.0.1; the scan is of the Stanford Computer Graphics Laboratory. STL samples: Debian
/// package gmsh-doc. Neither is copied into the repository.
/// </remarks>
internal static class OpenMeshes
{
    private static readonly Lock Once = new();

    private static string Folder => Path.Combine(Path.GetTempPath(), "recipe-open-meshes");

    /// <summary>The bunny as an object file.</summary>
    internal static byte[]? Bunny(ITestOutputHelper output)
    {
        byte[]? script = Cached("bunny-1.0.1.js", output, "npm", ["pack", "bunny@1.0.1"], folder =>
        {
            using GZipStream unpacked = new(File.OpenRead(Directory.GetFiles(folder, "*.tgz").Single()), CompressionMode.Decompress);
            using TarReader tar = new(unpacked);
            while (tar.GetNextEntry() is { } entry)
            {
                if (entry.Name == "package/index.js")
                {
                    using MemoryStream bytes = new();
                    entry.DataStream!.CopyTo(bytes);
                    return bytes.ToArray();
                }
            }

            throw new FileNotFoundException("package/index.js");
        });
        return script is null ? null : ToObj(Encoding.UTF8.GetString(script));
    }

    /// <summary>An STL file of gmsh-doc by its place under the package's folder.</summary>
    internal static byte[]? Gmsh(string path, ITestOutputHelper output) =>
        Cached("gmsh-" + path.Replace('/', '-'), output, "apt-get", ["download", "gmsh-doc"], folder =>
        {
            Run("dpkg-deb", ["-x", Directory.GetFiles(folder, "*.deb").Single(), folder], folder);
            using GZipStream unpacked = new(File.OpenRead(Path.Combine(folder, "usr/share/doc/gmsh-doc", path + ".gz")), CompressionMode.Decompress);
            using MemoryStream bytes = new();
            unpacked.CopyTo(bytes);
            return bytes.ToArray();
        });

    private static byte[]? Cached(string name, ITestOutputHelper output, string program, string[] arguments, Func<string, byte[]> take)
    {
        lock (Once)
        {
            string path = Path.Combine(Folder, name);
            if (File.Exists(path))
            {
                return File.ReadAllBytes(path);
            }

            DirectoryInfo folder = Directory.CreateTempSubdirectory("recipe-open-mesh-");
            try
            {
                string? wrong = IsThere(program) ? Run(program, arguments, folder.FullName) : $"{program} is not installed";
                if (wrong is not null)
                {
                    Assert.False(Environment.GetEnvironmentVariable("CI") == "true", $"NOT COMPARED: {wrong}");
                    output.WriteLine($"NOT COMPARED: {wrong}");
                    return null;
                }

                byte[] bytes = take(folder.FullName);
                Directory.CreateDirectory(Folder);
                string half = path + Path.GetRandomFileName();
                File.WriteAllBytes(half, bytes);
                File.Move(half, path, overwrite: true);
                return bytes;
            }
            finally
            {
                folder.Delete(recursive: true);
            }
        }
    }

    private static bool IsThere(string program) =>
        (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Any(folder => File.Exists(Path.Combine(folder, program)));

    /// <summary>What went wrong; nothing when it went well.</summary>
    private static string? Run(string program, string[] arguments, string folder)
    {
        ProcessStartInfo start = new(program, arguments) { WorkingDirectory = folder, RedirectStandardOutput = true, RedirectStandardError = true };
        using Process process = Process.Start(start)!;
        Task<string> error = process.StandardError.ReadToEndAsync();
        process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0 ? null : $"{program}: {error.Result}";
    }

    /// <summary>The package holds two lists of threes, of coordinates and of corners from 0.</summary>
    private static byte[] ToObj(string script)
    {
        StringBuilder text = new();
        string[] lists = script.Split("exports.");
        foreach (string point in Threes(lists.Single(list => list.StartsWith("positions="))))
        {
            text.Append("v ").Append(point.Replace(',', ' ')).Append('\n');
        }

        foreach (string cell in Threes(lists.Single(list => list.StartsWith("cells="))))
        {
            text.Append("f ").AppendJoin(' ', cell.Split(',').Select(word => int.Parse(word) + 1)).Append('\n');
        }

        return Encoding.ASCII.GetBytes(text.ToString());
    }

    private static string[] Threes(string list) =>
        list[(list.IndexOf("[[", StringComparison.Ordinal) + 2)..list.IndexOf("]]", StringComparison.Ordinal)].Split("],[");
}
