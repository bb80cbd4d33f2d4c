using System.Collections.Immutable;
using System.Text.Json;
using Recipe.Documents.Json;
using Recipe.Documents.Layout;
using Recipe.Documents.Shapes;
using Recipe.Documents.Writing;
using Recipe.Model;
using Recipe.Planning;

namespace Recipe.Documents;

/// <summary>A surface by itself: what was read, measured and mended, and how cloth lies on it.</summary>
public static class ShapeReport
{
    /// <summary>The formats it is written in.</summary>
    public static ImmutableArray<string> Formats { get; } = ["text", "md", "html", "json", "svg"];

    /// <summary>Writes it; null when there is no picture to write.</summary>
    /// <param name="input">The part.</param>
    /// <param name="format">One of <see cref="Formats"/>; svg is the first picture alone.</param>
    /// <exception cref="ArgumentException">The part has no shaped surface that can be measured.</exception>
    public static string? Write(PaperInput input, string format)
    {
        ArgumentNullException.ThrowIfNull(input);
        if (format == "json")
        {
            return JsonSerializer.Serialize(ShapeRecord.Of(input.Plan), JsonOutput.Shapes.ShapeRecord) + "\n";
        }

        var document = ShapePaper.Build(input);
        return format switch
        {
            "md" => MarkdownWriter.Write(document),
            "html" => HtmlWriter.Write(document),
            "svg" => document.Stations.SelectMany(station => station.Blocks).OfType<Drawing>().FirstOrDefault() is { } drawing ? SvgWriter.WriteFile(drawing) : null,
            _ => PlainWriter.Write(document),
        };
    }

    /// <summary>Why a part has none, in words; null when it has one.</summary>
    /// <param name="plan">The plan of the part.</param>
    public static string? Refuse(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return plan.Shape switch
        {
            null => plan.Geometry is null ? "it has no surface" : plan.Geometry.Shape is GivenAreaShape ? "its surface is given by its area only" : "its surface is flat or rolls out flat: cloth is not sheared on it",
            { Trouble: not null } => "its surface cannot be used; `recipe check` says why",
            { Model: null } => "its surface has a size that cannot be",
            _ => null,
        };
    }
}
