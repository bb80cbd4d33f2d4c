using System.Globalization;
using System.Text;
using Recipe.Compiler;
using Recipe.Model;
using Recipe.Semantics.Schema;

namespace Recipe.Editing;

/// <summary>Pages about words and materials, as Markdown.</summary>
internal static class Cards
{
    /// <summary>A material as it is declared, with the source of each figure; null when there is none of that name.</summary>
    public static string? Material(CompiledFile? file, string name)
    {
        var materials = file?.Bound.Model.Materials ?? ShippedTexts.Book.Materials;
        if (!materials.TryGetValue(name, out var material))
        {
            return null;
        }

        var page = Explainer.Explain(name, file, null) ?? "";
        var body = page.IndexOf("\n\n", StringComparison.Ordinal) is var at && at > 0 ? page[(at + 2)..] : page;
        var code = new StringBuilder();
        var rest = new StringBuilder();
        foreach (var line in body.Split('\n'))
        {
            (line.StartsWith("  ", StringComparison.Ordinal) ? code : rest).Append(line.StartsWith("  ", StringComparison.Ordinal) ? line[2..] : line).Append('\n');
        }

        return $"**{Plain(material.Label)}**\n\n{Brief(material)}\n\n```recipe\n{code.ToString().TrimEnd()}\n```\n\n{rest.ToString().Trim()}".TrimEnd();
    }

    /// <summary>A few words about a material: what it is and the figure that people choose it by.</summary>
    public static string Brief(Material material)
    {
        var figure = material switch
        {
            Reinforcement { ArealWeight: { } weight } cloth => Join(weight.Written, cloth.Weave, cloth.Fibre?.Label),
            Core core => Join(core.Thickness?.Written, core.Density?.Written, core.HeatLimit is { } limit ? "to " + limit.Written : null),
            ResinSystem resin => Join(resin.Mix?.Written, resin.PotLife is { } life ? "pot " + life.Written : null),
            Consumable sheet => Join(sheet.ArealWeight?.Written, sheet.HeatLimit is { } limit ? "to " + limit.Written : null),
            ReleaseAgent agent => Join(agent.Coats is { } coats ? coats.Written + " coats" : null, agent.HeatLimit is { } limit ? "to " + limit.Written : null),
            MouldMaterial stuff => Join(stuff.HeatLimit is { } limit ? "to " + limit.Written : null),
            Insert insert => Join(insert.Mass?.Written, insert.Stuff),
            Tape tape => Join(tape.Width?.Written),
            Fitting fitting => Join(fitting.InnerDiameter?.Written, fitting.Length?.Written, fitting.Volume?.Written),
            Fibre fibre => Join(fibre.Density?.Written, fibre.Modulus?.Written),
            _ => "",
        };
        return figure.Length == 0 ? material.Keyword : $"{material.Keyword}, {figure}";
    }

    /// <summary>What a word of the language says and takes.</summary>
    public static string Word(WordSchema word)
    {
        var page = new StringBuilder($"**{word.Word}**: {word.Doc}\n\n```recipe\n{word.Example}\n```");
        if (word.Default is { } otherwise)
        {
            page.Append(CultureInfo.InvariantCulture, $"\n\nWhen it is left out: {otherwise}.");
        }

        if (word.Block is { } block)
        {
            page.Append(CultureInfo.InvariantCulture, $"\n\n{block.Doc}");
        }

        return page.ToString();
    }

    /// <summary>Text that Markdown does not take for marks.</summary>
    public static string Plain(string text)
    {
        var plain = new StringBuilder(text.Length);
        foreach (var c in text)
        {
            if (c is '*' or '_' or '`' or '[' or ']' or '<' or '>' or '\\' or '|')
            {
                plain.Append('\\');
            }

            plain.Append(char.IsControl(c) ? ' ' : c);
        }

        return plain.ToString();
    }

    private static string Join(params ReadOnlySpan<string?> parts)
    {
        var text = new StringBuilder();
        foreach (var part in parts)
        {
            if (!string.IsNullOrEmpty(part))
            {
                text.Append(text.Length == 0 ? "" : ", ").Append(part);
            }
        }

        return text.ToString();
    }
}
