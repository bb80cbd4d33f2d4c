using Recipe.Model;
using Recipe.Planning;
using UnitsNet;

namespace Recipe.HouseRules;

/// <summary>The facts of the lines of the stack.</summary>
internal static class StackFacts
{
    public static FactNode Ply(PlyItem ply, StackPlan? plan, int position)
    {
        var node = new FactNode(FactTable.Ply, ply.Where)
            .Set("name", Facts.Word(ply.Name, ply.NameWhere))
            .Set("material", Facts.Word(ply.Material.Name, ply.MaterialWhere))
            .Set("form", Facts.Word(ply.Material.Form == ReinforcementForm.Unidirectional ? "ud" : PlanFacts.Kebab(ply.Material.Form)))
            .Set("fibre", Facts.Word(ply.Material.Fibre?.Name))
            .Set("weave", Facts.Word(ply.Material.Weave))
            .Set("position", Facts.Number(position))
            .Set("repeats", Facts.Number(ply.Count))
            .Set("patch", Facts.YesNo(ply.IsPatch))
            .Set("areal-weight", Facts.ArealWeight(ply.Material.ArealWeight, $"areal weight of {ply.Material.Name}"))
            .Set("overlap", Facts.Length(ply.Overlap, "overlap"))
            .Set("trim", Facts.Length(ply.Trim, "trim"))
            .Set("step", Facts.Length(ply.Step, "step"))
            .Set("face", ply.Face is { } face ? Facts.Word(PlanFacts.Kebab(face)) : null);
        if (ply.Orientation is { } orientation)
        {
            node.Set("orientation", Facts.Word(orientation.Value.ToString(), orientation.Where));
        }

        var isRandom = ply.Material.Form is ReinforcementForm.Mat or ReinforcementForm.Veil || ply.Orientation?.Value.Kind == OrientationKind.Random;
        node.Set("random", Facts.YesNo(isRandom));
        if (!isRandom && ply.Orientation is { } known)
        {
            node.Set("angle", new FactValue { Si = Angle.FromDegrees(known.Value.First).Radians, Where = known.Where });
        }

        if (plan is null)
        {
            return node;
        }

        return node
            .Set("resin-content", plan.Content is { Value.Basis: ContentBasis.ResinByWeight } content ? Facts.Of((Computed<Content>?)content, c => c.Fraction).StatedAt(ply.Content?.Where) : null)
            .Set("thickness", Facts.Length(plan.Thickness))
            .Set("area", Facts.Area(plan.NetArea))
            .Set("mass", Facts.Mass(plan.NetMass))
            .Set("wet-out-time", Facts.Time(plan.WetOut))
            .Set("joins", plan.Pieces.IsEmpty ? null : Facts.Number(plan.Pieces.Max(piece => piece.Joins)));
    }

    public static FactNode Core(CoreItem core, StackPlan? plan, int position) => new FactNode(FactTable.Core, core.Where)
        .Set("name", Facts.Word(core.Name, core.NameWhere))
        .Set("material", Facts.Word(core.Material.Name, core.MaterialWhere))
        .Set("family", Facts.Word(core.Material.Family))
        .Set("position", Facts.Number(position))
        .Set("thickness", Facts.Length(core.Thickness, "thickness"))
        .Set("density", Facts.Of(core.Material.Density, d => d.KilogramsPerCubicMeter, $"density of {core.Material.Name}"))
        .Set("heat-limit", Facts.Heat(core.Material.HeatLimit, $"heat limit of {core.Material.Name}"))
        .Set("chamfer", Facts.Of(core.Chamfer, a => a.Radians, "chamfer"))
        .Set("gap", Facts.Length(core.Gap, "gap"))
        .Set("area", Facts.Area(plan?.NetArea))
        .Set("mass", Facts.Mass(plan?.NetMass));

    public static FactNode Insert(InsertItem insert, StackPlan? plan, int position) => new FactNode(FactTable.Insert, insert.Where)
        .Set("name", Facts.Word(insert.Name, insert.NameWhere))
        .Set("material", Facts.Word(insert.Material.Name, insert.MaterialWhere))
        .Set("stuff", Facts.Word(insert.Material.Stuff))
        .Set("position", Facts.Number(position))
        .Set("pieces", Facts.Number(insert.Count))
        .Set("mass", Facts.Mass(plan?.NetMass));
}
