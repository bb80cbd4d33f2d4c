using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Semantics.Reading;
using Recipe.Semantics.Schema;

namespace Recipe.Semantics.Binding;

/// <summary>The bag: layers by class word or by material, and the things that are no layers.</summary>
internal static class BagBinder
{
    public static Bag? Bind((Lines Lines, Line Head)? block)
    {
        if (block is not var (lines, head))
        {
            return null;
        }

        var layers = ImmutableArray.CreateBuilder<BagLayer>();
        var ports = ImmutableArray.CreateBuilder<Placed<Fitting>>();
        Placed<Tape>? tape = null;
        Placed<Fitting>? hose = null;
        Placed<Fitting>? pot = null;
        foreach (var line in lines.All)
        {
            var (material, byDefault) = MaterialOf(line);
            switch (material)
            {
                case Consumable sheet:
                    layers.Add(Layer(line, sheet, byDefault));
                    break;
                case Tape { Seals: true } seal:
                    tape ??= new(seal, byDefault, line.Text("at"), line.Where);
                    break;
                case Fitting { Kind: FittingKind.Port } port:
                    ports.Add(new(port, byDefault, line.Text("at"), line.Where) { Sits = SeatOf(line.Text("sits")) });
                    break;
                case Fitting { Kind: FittingKind.Hose } pipe:
                    hose ??= new(pipe, byDefault, line.Text("at"), line.Where);
                    break;
                case Fitting catchPot:
                    pot ??= new(catchPot, byDefault, line.Text("at"), line.Where);
                    break;
            }
        }

        return new Bag
        {
            Where = head.HeadWhere,
            Layers = layers.ToImmutable(),
            SealantTape = tape,
            Ports = ports.ToImmutable(),
            Hose = hose,
            CatchPot = pot,
            GaugeAt = lines.One("gauge")?.Text("at"),
            GaugeWhere = lines.One("gauge")?.Where,
            Pleats = lines.Count("pleats"),
            IsEnvelope = lines.YesNo("envelope") ?? false,
            EnvelopeWhere = lines.One("envelope")?.Where,
            Time = lines.Figure("time", Si.Time),
        };
    }

    private static (Material? Material, bool ByDefault) MaterialOf(Line line)
    {
        if (line.IsNameLine)
        {
            return ((line.HeadDeclaration as MaterialDeclaration)?.Material, false);
        }

        if (!BagSchema.LayerWords.Contains(line.Word.Word) && !BagSchema.PlacedWords.Contains(line.Word.Word))
        {
            return (null, false);
        }

        if (line.Reading.WasTried("material"))
        {
            return (line.Named<MaterialDeclaration>("material")?.Material, false);
        }

        return (Default(line), true);
    }

    /// <summary>
    /// The entry that says <c>default yes</c>. For <c>perforated</c> or <c>solid</c> it is the first default that fits, else the
    /// first film that does.
    /// </summary>
    private static Material? Default(Line line)
    {
        var scope = line.Context.Scope;
        var keyword = line.Word.Word;
        bool? holes = line.Reading.Has("perforated") ? true : line.Reading.Has("solid") ? false : null;
        var defaults = scope.DefaultsOf(keyword);
        if (holes is not { } wanted)
        {
            return defaults.FirstOrDefault()?.Material;
        }

        return defaults.Concat(scope.MaterialsOf(keyword)).Select(d => d.Material).FirstOrDefault(m => HasHoles(m) == wanted)
            ?? defaults.FirstOrDefault()?.Material;
    }

    private static bool? HasHoles(Material material) =>
        material is Consumable { Perforation.Value: var perforation } ? perforation != Perforation.None : null;

    private static PortSeat? SeatOf(string? word) => word switch
    {
        "breather" => PortSeat.Breather,
        "part" => PortSeat.Part,
        "flange" => PortSeat.Flange,
        "feed" => PortSeat.Line,
        _ => null,
    };

    private static BagLayer Layer(Line line, Consumable sheet, bool byDefault) => new()
    {
        Class = sheet.Class,
        Material = sheet,
        ChosenByDefault = byDefault,
        Where = line.Where,
        Count = line.Reading.Count ?? 1,
        Perforation = PerforationOf(line, sheet),
        Reused = line.Reading.Has("reused"),
        Smaller = line.Figure("smaller", Si.Length),
        Beyond = line.Figure("beyond", Si.Length),
    };

    /// <summary>
    /// The line's word, or the material's figure. <c>perforated</c> does not say how open: the material does, or it is taken as
    /// medium, which is assumed.
    /// </summary>
    private static Figure<Perforation>? PerforationOf(Line line, Consumable sheet)
    {
        if (line.Reading.WhereOf("solid") is { } solid)
        {
            return new(Perforation.None, line.Basis, "solid", solid, line.Source?.Text);
        }

        if (line.Reading.WhereOf("perforated") is { } perforated && HasHoles(sheet) != true)
        {
            return new(Perforation.Medium, Basis.Assumed, "perforated", perforated, "the line does not say how open");
        }

        return sheet.Perforation;
    }
}
