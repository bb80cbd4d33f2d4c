using Recipe.Model;
using Recipe.Semantics.Reading;
using Recipe.Semantics.Schema;

namespace Recipe.Semantics.Binding;

/// <summary>Fibres, cloths, cores and inserts.</summary>
internal static class ReinforcementBinder
{
    public static Fibre Fibre(MaterialDeclaration declaration, Lines lines) => new()
    {
        Name = declaration.Name,
        Keyword = declaration.Word.Word,
        Where = declaration.Where,
        Density = lines.Figure("density", Si.Density),
        Modulus = lines.Figure("modulus", Si.Pressure),
        TransverseModulus = lines.Figure("transverse-modulus", Si.Pressure),
        ShearModulus = lines.Figure("shear-modulus", Si.Pressure),
        Poisson = lines.Plain("poisson"),
        Expansion = lines.Figure("expansion", Si.Expansion),
        TransverseExpansion = lines.Figure("transverse-expansion", Si.Expansion),
    };

    public static Reinforcement Cloth(MaterialDeclaration declaration, Lines lines, ReinforcementForm form) => new()
    {
        Name = declaration.Name,
        Keyword = declaration.Word.Word,
        Where = declaration.Where,
        Density = lines.Figure("density", Si.Density),
        Form = form,
        Fibre = lines.One("fibre")?.Named<MaterialDeclaration>(Define.Value)?.Material as Fibre,
        Weave = lines.Text("weave"),
        ArealWeight = lines.Figure("areal-weight", Si.ArealWeight),
        WarpShare = lines.Plain("warp-share"),
        LockingAngle = lines.Figure("locking-angle", Si.Angle),
        FibreAngles = lines.Payload<Orientation>("fibre-angles"),
        Width = lines.Figure("width", Si.Length),
        RollLength = lines.Figure("roll-length", Si.Length),
        HandContent = Content(lines, "hand"),
        BaggedContent = Content(lines, "bagged"),
        InfusedContent = Content(lines, "infused"),
        PrepregContent = Content(lines, "prepreg"),
        Binder = lines.Text("binder"),
        Sizing = lines.Text("sizing"),
        OutLife = lines.Figure("out-life", Si.Time),
        WetOutPace = lines.Figure("pace", Si.Pace),
        Thickness = lines.Figure("thickness", Si.Length),
        Permeability = lines.Figure("permeability", Si.Area),
        StrainLimits = StrainLimits(lines),
    };

    public static Core Core(MaterialDeclaration declaration, Lines lines)
    {
        var sheet = lines.One("sheet");
        return new Core
        {
            Name = declaration.Name,
            Keyword = declaration.Word.Word,
            Where = declaration.Where,
            Density = lines.Figure("density", Si.Density),
            Family = lines.Text("family"),
            Thickness = lines.Figure("thickness", Si.Length),
            SheetLength = Sizes.Side(sheet, Define.Value, 0),
            SheetWidth = Sizes.Side(sheet, Define.Value, 1),
            CompressiveStrength = lines.Figure("compressive-strength", Si.Pressure),
            ResinUptake = lines.Figure("resin-uptake", Si.ArealWeight),
            Modulus = lines.Figure("modulus", Si.Pressure),
            ShearModulus = lines.Figure("shear-modulus", Si.Pressure),
            Expansion = lines.Figure("expansion", Si.Expansion),
            Cut = lines.Choice("cut", word => word switch
            {
                "plain" => CoreCut.Plain,
                "perforated" => CoreCut.Perforated,
                "grooved" => CoreCut.Grooved,
                _ => CoreCut.Slit,
            }),
            Cell = lines.Figure("cell", Si.Length),
            HeatStabilised = lines.YesNoFigure("heat-stabilised"),
            Moisture = lines.Plain("moisture"),
            StrainLimits = StrainLimits(lines),
        };
    }

    public static Insert Insert(MaterialDeclaration declaration, Lines lines) => new()
    {
        Name = declaration.Name,
        Keyword = declaration.Word.Word,
        Where = declaration.Where,
        Density = lines.Figure("density", Si.Density),
        Mass = lines.Figure("mass", Si.Mass),
        Stuff = lines.Text("stuff"),
    };

    private static LayerLimits? StrainLimits(Lines lines)
    {
        var limits = new LayerLimits
        {
            Stretch = Of("stretch"),
            Press = Of("press"),
            StretchAcross = Of("stretch-across"),
            PressAcross = Of("press-across"),
            Shear = Of("shear"),
        };
        return limits == new LayerLimits() ? null : limits;

        Figure<double>? Of(string way) =>
            lines.Many("strain-limit").FirstOrDefault(line => line.Text("way") == way)?.Figure(Define.Value, Si.Plain);
    }

    private static Figure<Content>? Content(Lines lines, string way)
    {
        foreach (var line in lines.Many("resin-content"))
        {
            if (line.Text("way") == way)
            {
                return line.Payload<Content>(Define.Value);
            }
        }

        return null;
    }
}
