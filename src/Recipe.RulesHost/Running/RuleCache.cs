using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using Recipe.RuleApi;
using Recipe.RulesHost.Compiling;
using Recipe.RulesProcess;
using Recipe.RulesProcess.Protocol;

namespace Recipe.RulesHost.Running;

/// <summary>
/// Compiled rules on disk, one file for each text of a file of rules. The name is the digest of all that the assembly depends on. What is
/// found is not held to the list again: it was when it was kept, and whoever can write into the user's cache can do without a rule.
/// </summary>
internal sealed class RuleCache(string? folder)
{
    private const int MostFiles = 200;
    private readonly KeptFiles? _kept = folder is null ? null : new KeptFiles(folder, ".rules", MostFiles);

    /// <summary>Everything but the source that a compiled rule depends on.</summary>
    public static string Basis { get; } = string.Join(
        ';',
        [
            "2",
            .. new[] { typeof(RuleCache), typeof(HouseRule), typeof(UnitsNet.Mass), typeof(RuleSource) }.Select(type => type.Module.ModuleVersionId.ToString()),
            .. typeof(RuleCache).Assembly.GetReferencedAssemblies().Select(name => name.FullName).Order(StringComparer.Ordinal),
        ]);

    /// <summary>The key of a text.</summary>
    public static string Key(string text) => KeptFiles.Key(Encoding.UTF8.GetBytes($"{Basis}\n{text}"));

    /// <summary>Loads rules, or null when they are not there or not whole.</summary>
    public LoadedRules? Find(string key, string file)
    {
        try
        {
            return _kept?.Find(key) is { } bytes ? Read(bytes.ToArray(), file) : null;
        }
        catch (Exception problem) when (problem is JsonException or InvalidOperationException or BadImageFormatException or TypeLoadException or ArgumentException)
        {
            return null;
        }
    }

    /// <summary>Keeps compiled rules. What cannot be kept is compiled again the next time.</summary>
    public void Keep(string key, byte[] image, ImmutableArray<RuleClass> classes, ImmutableArray<RuleDescription> descriptions)
    {
        var head = Wire.Line(json =>
        {
            DescriptionWire.WriteAll(json, descriptions);
            Wire.WriteList(json, "types", classes.Select(one => one.Type), json.WriteStringValue);
        });
        _kept?.Keep(key, [.. BitConverter.GetBytes(head.Length), .. head, .. image]);
    }

    private static LoadedRules Read(byte[] bytes, string file)
    {
        var length = BitConverter.ToInt32(bytes, 0);
        var image = bytes[(4 + length)..];
        using var document = Wire.Parse(bytes.AsMemory(4, length));
        var descriptions = DescriptionWire.ReadAll(document.RootElement);
        var types = Wire.ReadList(document.RootElement, "types", type => type.GetString() ?? "");
        return types.Length != descriptions.Length
            ? throw new BadImageFormatException("not compiled rules")
            : LoadedRules.Of(file, LoadedRules.Load(image, types), descriptions);
    }
}
