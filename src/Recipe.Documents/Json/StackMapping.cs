using Recipe.Documents.Shared;
using Recipe.Model;
using Recipe.Planning;

namespace Recipe.Documents.Json;

/// <summary>From a line of the stack to its JSON shape.</summary>
internal static class StackMapping
{
    public static StiffnessRecord Of(StiffnessPlan stiffness) => new(
        Si.Of(stiffness.Along),
        Si.Of(stiffness.Across),
        Si.Of(stiffness.Shear),
        Si.Number(stiffness.StripAlong.Value.NewtonMeters),
        Si.Number(stiffness.StripAcross.Value.NewtonMeters),
        [
            .. stiffness.Lines.Select(line => new PlyShareRecord(
                line.Name, Si.Number(line.Mass), Si.Number(line.Thickness), Si.Number(line.Stretching), Si.Number(line.Bending), Si.Number(line.AsSpacer))),
        ],
        stiffness.LeftOut,
        [.. stiffness.Loads.Select(LoadMapping.Of)],
        stiffness.Curl is { } curl ? LoadMapping.Of(curl) : null,
        Si.RestsOn(
            ("along_Pa", stiffness.Along.RestsOn),
            ("across_Pa", stiffness.Across.RestsOn),
            ("shear_Pa", stiffness.Shear.RestsOn),
            ("strip_along_N_m2_per_m", stiffness.StripAlong.RestsOn),
            ("strip_across_N_m2_per_m", stiffness.StripAcross.RestsOn)));

    public static StackRecord Of(StackPlan line)
    {
        var item = line.Item;
        var ply = item as PlyItem;
        var content = line.Content?.Value;
        return new(
            item.Name,
            Role(item),
            line.Number,
            item.Count,
            StackNames.MaterialOf(item).Name,
            StackNames.MaterialOf(item).Label,
            Si.Of(ply?.Material.ArealWeight?.Value),
            Si.Of((item as CoreItem)?.Thickness?.Value),
            ply?.Orientation is { } orientation ? Of(orientation.Value) : null,
            item.At,
            item.After,
            Si.Of(item.SizeLength?.Value),
            Si.Of(item.SizeWidth?.Value),
            Si.Of(ply?.Step?.Value),
            Si.Of(line.NetArea),
            Si.Of(line.CutArea),
            Si.Of(line.NetMass),
            Si.Of(line.CutMass),
            content is { Basis: ContentBasis.ResinByWeight } resin ? Si.Number(resin.Fraction) : null,
            content is { Basis: ContentBasis.FibreByVolume } fibre ? Si.Number(fibre.Fraction) : null,
            Si.Of(line.NetResin),
            Si.Of(line.CutResin),
            Si.Of(line.Thickness),
            Si.Of(line.WetOut),
            [.. line.Pieces.Select(Of)],
            Si.RestsOn(
                ("net_area_m2", line.NetArea?.RestsOn),
                ("cut_area_m2", line.CutArea?.RestsOn),
                ("net_mass_kg", line.NetMass?.RestsOn),
                ("cut_mass_kg", line.CutMass?.RestsOn),
                (content is { Basis: ContentBasis.FibreByVolume } ? "fibre_volume_fraction" : "resin_fraction", line.Content?.RestsOn),
                ("net_resin_kg", line.NetResin?.RestsOn),
                ("cut_resin_kg", line.CutResin?.RestsOn),
                ("thickness_m", line.Thickness?.RestsOn),
                ("wet_out_s", line.WetOut?.RestsOn)));
    }

    private static string Role(StackItem item) => item switch
    {
        CoreItem => "core",
        InsertItem => "insert",
        PlyItem { IsPatch: true } => "patch",
        _ => "ply",
    };

    private static OrientationRecord Of(Orientation orientation) => orientation.Kind switch
    {
        OrientationKind.Random => new("random", null, null),
        OrientationKind.Single => new("single", Si.Number(orientation.First), null),
        _ => new("pair", Si.Number(orientation.First), Si.Number(orientation.Second)),
    };

    private static PieceRecord Of(PiecePlan piece) => new(
        Si.Of(piece.Length),
        Si.Of(piece.Width),
        piece.Count,
        Si.Number(piece.RollAngle),
        Si.Of(piece.WidthOnRoll),
        Si.Of(piece.LengthOnRoll),
        Si.Of(piece.RollWidth),
        piece.Joins,
        piece.Mirrored);
}
