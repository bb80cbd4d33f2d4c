using Recipe.Engineering;
using Recipe.Model;
using Recipe.Planning.Ledger;
using UnitsNet;

namespace Recipe.Planning.Planners;

/// <summary>A resin content and what it is of.</summary>
/// <param name="Content">The content.</param>
/// <param name="IsAsLaid">Whether it is the one laid by hand, before a bag takes its share; else it is what stays.</param>
internal readonly record struct HeldContent(Known<Content> Content, bool IsAsLaid);

/// <summary>
/// How much resin each ply is given. In work laid wet, a content that the part states is the one laid, since that is what the hands
/// can weigh; the figure of a material for the process, and the default, are what is found afterwards in the part.
/// <see cref="Bleeding"/> turns one into the other. What is infused or comes as prepreg is not laid wet: there all are what stays.
/// </summary>
/// <remarks>
/// For cloth the order is: the ply's own line, the part's <c>wet-out</c>, what the shop found in that cloth, the cloth's figure for the
/// process, the default. A mat or veil keeps far more than a cloth, so the part's figure is not for it: the ply's own line, the shop's
/// and the material's figure for the process, the default; but in a stack of nothing else the part's figure comes before the material's.
/// </remarks>
internal sealed class PlyContents
{
    private readonly PlanContext _context;
    private readonly bool _onlyMats;

    public PlyContents(PlanContext context)
    {
        _context = context;
        _onlyMats = OnlyMats(context.Part);
        CuredDensity = Cured(context);
    }

    /// <summary>Density of the cured resin, kg/m3.</summary>
    public Num CuredDensity { get; }

    /// <summary>Content of a ply, or null where a stated one makes no sense.</summary>
    public HeldContent? Of(PlyItem ply)
    {
        var figures = _context.Figures;
        var material = Owner.Of(ply.Material);
        var process = _context.Process;
        var word = $"resin-content {Word(process)}";
        Known<Content>? part = ply.Material.Form is ReinforcementForm.Mat or ReinforcementForm.Veil && !_onlyMats
            ? null
            : figures.Any(_context.Part.WetOut?.Content, _context.PartOwner, "resin-content");
        var stated = figures.Any(ply.Content, _context.PartOwner, "resin-content") ?? part;
        var content = stated
            ?? figures.Any(_context.Shop?.ContentOf(ply.Material.Name, process), _context.ShopOwner, $"resin-content {ply.Material.Name}")
            ?? figures.Any(OfProcess(ply.Material, process), material, word)
            ?? Default(ply.Material.Form, process);
        if (content.Value.Fraction is >= 0 and < 1 && (content.Value.Basis == ContentBasis.ResinByWeight || content.Value.Fraction > 0))
        {
            return new HeldContent(content, stated is not null && process is (Process.Hand or Process.Bagged));
        }

        _context.Miss($"resin in {ply.Name}", "its content is not between 0 and 100 %");
        return null;
    }

    /// <summary>Resin per area that a content means, kg/m2; null when a density is missing for it.</summary>
    public Num? ResinPerArea(PlyItem ply, Known<Content> content, Num arealWeight, Num? fibreDensity)
    {
        var cloth = AreaDensity.FromKilogramsPerSquareMeter(arealWeight.Si);
        var share = Ratio.FromDecimalFractions(content.Value.Fraction);
        if (content.Value.Basis == ContentBasis.ResinByWeight)
        {
            return new Num(FibreContent.ResinPerArea(cloth, share).KilogramsPerSquareMeter, arealWeight.On | content.On);
        }

        if (fibreDensity is not { } fibre)
        {
            _context.Miss($"resin in {ply.Name}", $"{ply.Material.Name} names no fibre, so its content by volume says nothing of its weight");
            return null;
        }

        var resin = FibreContent.ResinPerAreaAtVolumeFraction(
            cloth, share, Density.FromKilogramsPerCubicMeter(fibre.Si), Density.FromKilogramsPerCubicMeter(CuredDensity.Si));
        return new Num(resin.KilogramsPerSquareMeter, arealWeight.On | content.On | fibre.On | CuredDensity.On);
    }

    /// <summary>Density of the ply's fibre, or null.</summary>
    public Num? FibreDensity(Reinforcement material)
    {
        var fibre = material.Fibre;
        return (fibre is null ? null : _context.Figures.Density(fibre.Density, Owner.Of(fibre), "density"))
            ?? _context.Figures.Density(material.Density, Owner.Of(material), "density");
    }

    private static bool OnlyMats(Part part)
    {
        foreach (var item in part.Stack)
        {
            if (item is PlyItem { Material.Form: not (ReinforcementForm.Mat or ReinforcementForm.Veil) })
            {
                return false;
            }
        }

        return true;
    }

    private static Num Cured(PlanContext context)
    {
        var resin = context.Part.Resin;
        var stated = resin is null ? null : context.Figures.Density(resin.CuredDensity, Owner.Of(resin), "density cured");
        return stated ?? context.Take(Defaults.CuredDensity(resin?.Chemistry ?? Chemistry.Unknown));
    }

    private Known<Content> Default(ReinforcementForm form, Process process)
    {
        var value = _context.Take(Defaults.ResinContent(process, form));
        return new Known<Content>(new Content(ContentBasis.ResinByWeight, value.Si), value.On);
    }

    private static Figure<Content>? OfProcess(Reinforcement material, Process process) => process switch
    {
        Process.Hand => material.HandContent,
        Process.Bagged => material.BaggedContent,
        Process.Infused => material.InfusedContent,
        _ => material.PrepregContent,
    };

    private static string Word(Process process) => process switch
    {
        Process.Hand => "hand",
        Process.Bagged => "bagged",
        Process.Infused => "infused",
        _ => "prepreg",
    };
}
