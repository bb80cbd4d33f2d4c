using System.Text.Json;
using Recipe.LanguageServer.Protocol;

namespace Recipe.LanguageServer;

/// <summary>What the user chose in the editor: which hints are shown. All are, until somebody says otherwise.</summary>
internal sealed class Settings
{
    /// <summary>The section of the editor's settings that is ours.</summary>
    public const string Section = "recipe";

    /// <summary>The switches of <c>recipe.inlayHints</c>.</summary>
    public static readonly IReadOnlyList<string> HintSwitches = ["thickness", "resin", "clock", "pressure", "cure"];

    private readonly Dictionary<string, bool> _hints = new(StringComparer.Ordinal);

    /// <summary>
    /// Where findings are explained, when there is such a place: <c>recipe.documentation</c>, an address in which <c>{code}</c> and
    /// <c>{name}</c> stand for those of the finding.
    /// </summary>
    public string? Documentation { get; private set; }

    public bool Shows(string hint) => _hints.GetValueOrDefault(hint, true);

    /// <summary>
    /// Takes over what an editor says of the section; some editors wrap it in an object under its name. Whatever is no switch there is left
    /// alone.
    /// </summary>
    public void Read(JsonElement section)
    {
        if (section.ValueKind != JsonValueKind.Object)
        {
            return;
        }

        if (section.TryGetProperty(Section, out var wrapped))
        {
            Read(wrapped);
            return;
        }

        if (section.TryGetProperty("inlayHints", out var hints) && hints.ValueKind == JsonValueKind.Object)
        {
            foreach (var name in HintSwitches)
            {
                if (hints.TryGetProperty(name, out var value) && value.ValueKind is JsonValueKind.True or JsonValueKind.False)
                {
                    _hints[name] = value.GetBoolean();
                }
            }
        }

        if (section.TryGetProperty("documentation", out var documentation))
        {
            Documentation = LooseText.Of(documentation) is { Length: > 0 } address ? address : null;
        }
    }
}
