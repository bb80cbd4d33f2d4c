using Recipe.Documents.Writing;

namespace Recipe.Documents.CutPlans;

/// <summary>A length of roll as SVG in true size: a millimetre of the drawing is one of the cloth.</summary>
internal static class CutSvg
{
    public static string Write(CutPlan plan, CutSheet sheet)
    {
        var shapes = CutShapes.Of(sheet);
        return SvgWriter.WriteGroups(
            $"{plan.Name}: {sheet.Roll}",
            $"Pieces to cut, in true size, mm. {CutShapes.Caution}",
            sheet.Length.Millimeters,
            sheet.Width.Millimeters,
            Enum.GetValues<CutLayer>().Select(layer => (layer.ToString().ToLowerInvariant(), shapes.Where(shape => shape.Layer == layer).Select(shape => shape.Shape))));
    }
}
