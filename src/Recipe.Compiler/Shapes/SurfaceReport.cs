using System.Collections.Immutable;
using Recipe.Documents;

namespace Recipe.Compiler.Shapes;

/// <summary>The surface of a part: what was read and measured, and how cloth lies on it.</summary>
public static class SurfaceReport
{
    /// <summary>The formats it is written in.</summary>
    public static ImmutableArray<string> Formats => ShapeReport.Formats;

    /// <summary>Why a part has none to show, in words; null when it has one.</summary>
    /// <param name="part">The part.</param>
    public static string? Refuse(CompiledPart part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return ShapeReport.Refuse(part.Plan);
    }

    /// <summary>Writes it; null when there is no picture to write.</summary>
    /// <param name="file">The file of the part.</param>
    /// <param name="part">The part; <see cref="Refuse"/> says whether it has one.</param>
    /// <param name="format">One of <see cref="Formats"/>.</param>
    /// <param name="wish">Units, paper and day.</param>
    public static string? Write(CompiledFile file, CompiledPart part, string format, PaperWish wish)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(wish);
        return ShapeReport.Write(BenchPapers.InputFor(file, part, wish), format);
    }
}
