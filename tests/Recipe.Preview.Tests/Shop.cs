using Recipe.Compiler.Comparing;
using Recipe.TestKit;

namespace Recipe.Preview.Tests;

/// <summary>A folder of its own with samples in it, and previews of them.</summary>
public sealed class Shop : IDisposable
{
    public Shop()
    {
        Folder = Directory.CreateTempSubdirectory("recipe-preview-").FullName;
        Directory.CreateDirectory(PathOf("shapes"));
        foreach (var name in (string[])["hatch-lid.recipe", "shop.recipe", "shapes/seat-pan.recipe", "shapes/seat-pan.stl"])
        {
            File.Copy(Repository.PathOf($"samples/{name}"), PathOf(name));
        }
    }

    public static DateOnly Today { get; } = new(2026, 6, 1);

    public string Folder { get; }

    public string PathOf(string name) => Path.Combine(Folder, name);

    public string Read(string name = "hatch-lid.recipe") => File.ReadAllText(PathOf(name));

    /// <summary>Saves a file as an editor does.</summary>
    public void Save(string text, string name = "hatch-lid.recipe") => File.WriteAllText(PathOf(name), text);

    /// <summary>Saves a file with something in it replaced, which must be there.</summary>
    public void Replace(string old, string now, string name = "hatch-lid.recipe")
    {
        var text = Read(name);
        Assert.Contains(old, text, StringComparison.Ordinal);
        Save(text.Replace(old, now, StringComparison.Ordinal), name);
    }

    /// <summary>Who may read and write a file; nobody is told apart on Windows.</summary>
    public static UnixFileMode ModeOf(string path) => OperatingSystem.IsWindows() ? UnixFileMode.None : File.GetUnixFileMode(path);

    /// <summary>Says who may.</summary>
    public static void SetMode(string path, UnixFileMode mode)
    {
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(path, mode);
        }
    }

    public PreviewServer Serve(string name = "hatch-lid.recipe", int port = 0, bool remember = false, Func<string, OpenedRevision>? lastCommit = null) =>
        PreviewServer.Start(new PreviewWish(PathOf(name), name, new PlainFiles(), () => Today)
        {
            Port = port,
            SeatFolder = remember ? PathOf(".seats") : null,
            LastCommit = lastCommit,
        });

    public void Dispose()
    {
        if (Directory.Exists(Folder))
        {
            Directory.Delete(Folder, recursive: true);
        }
    }
}
