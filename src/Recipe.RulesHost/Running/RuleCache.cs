using System.Collections.Immutable;
using System.IO.Hashing;
using System.Text;
using System.Text.Json;
using Recipe.RuleApi;
using Recipe.RulesHost.Compiling;
using Recipe.RulesProcess.Protocol;

namespace Recipe.RulesHost.Running;

/// <summary>
/// Compiled rules on disk, one file for each text of a file of rules. The name is the digest of all that the assembly depends on; the
/// file begins with the digest of the rest of it, so that one that was cut or changed is compiled anew. Never written in place.
/// </summary>
internal sealed class RuleCache(string? folder)
{
    private const int Digest = 16;
    private const int MostFiles = 200;

    /// <summary>Everything but the source that a compiled rule depends on.</summary>
    public static string Basis { get; } = string.Join(
        ';',
        [
            "2",
            .. new[] { typeof(RuleCache), typeof(HouseRule), typeof(UnitsNet.Mass), typeof(RuleSource) }.Select(type => type.Module.ModuleVersionId.ToString()),
            .. typeof(RuleCache).Assembly.GetReferencedAssemblies().Select(name => name.FullName).Order(StringComparer.Ordinal),
        ]);

    /// <summary>The key of a text.</summary>
    public static string Key(string text) => Convert.ToHexStringLower(XxHash128.Hash(Encoding.UTF8.GetBytes($"{Basis}\n{text}")));

    /// <summary>Loads rules, or null when they are not there or not whole.</summary>
    public LoadedRules? Find(string key, string file)
    {
        if (folder is null)
        {
            return null;
        }

        try
        {
            var bytes = File.ReadAllBytes(PathOf(key));
            if (bytes.Length < Digest + 4 || !XxHash128.Hash(bytes.AsSpan(Digest)).AsSpan().SequenceEqual(bytes.AsSpan(0, Digest)))
            {
                File.Delete(PathOf(key));
                return null;
            }

            return Read(bytes, file);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or JsonException or BadImageFormatException or TypeLoadException or ArgumentException)
        {
            return null;
        }
    }

    /// <summary>Keeps compiled rules. What cannot be kept is compiled again the next time.</summary>
    public void Keep(string key, byte[] image, ImmutableArray<RuleClass> classes, ImmutableArray<RuleDescription> descriptions)
    {
        if (folder is null)
        {
            return;
        }

        var head = Wire.Line(json =>
        {
            DescriptionWire.WriteAll(json, descriptions);
            Wire.WriteList(json, "types", classes.Select(one => one.Type), json.WriteStringValue);
        });
        byte[] rest = [.. BitConverter.GetBytes(head.Length), .. head, .. image];
        try
        {
            Directory.CreateDirectory(folder);
            var part = PathOf(key) + "." + Guid.NewGuid().ToString("N") + ".part";
            File.WriteAllBytes(part, [.. XxHash128.Hash(rest), .. rest]);
            File.Move(part, PathOf(key), overwrite: true);
            Thin();
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // A cache that cannot be written costs time and nothing else.
        }
    }

    private static LoadedRules Read(byte[] bytes, string file)
    {
        var length = BitConverter.ToInt32(bytes, Digest);
        var image = bytes[(Digest + 4 + length)..];
        using var document = Wire.Parse(bytes.AsMemory(Digest + 4, length));
        var descriptions = DescriptionWire.ReadAll(document.RootElement);
        var types = Wire.ReadList(document.RootElement, "types", type => type.GetString() ?? "");
        return types.Length != descriptions.Length
            ? throw new BadImageFormatException("not compiled rules")
            : LoadedRules.Of(file, LoadedRules.Load(image, types), descriptions);
    }

    private void Thin()
    {
        foreach (var old in new DirectoryInfo(folder!).GetFiles("*.rules").OrderByDescending(file => file.LastWriteTimeUtc).Skip(MostFiles))
        {
            old.Delete();
        }
    }

    private string PathOf(string key) => Path.Combine(folder!, key + ".rules");
}
