using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A cut edge of aramid or of an open core is left bare.</summary>
public sealed class OpenAramidEdge : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8211",
        Name = "open-aramid-edge",
        Severity = Severity.Warning,
        Title = "Open edge of aramid or core",
        Reason = "Cut aramid fuzzes and draws water along its fibres, and an open core fills like a sponge.",
        Remedy = "Seal the cut edge with resin or varnish.",
        Source = "FAA AC 43.13-1B (1998) p. 3-2 (from memory): cut edges sealed; common practice",
        Exceptions = """
            Silent where any line speaks of sealing or of the edge, where the part is painted after the trim, and for a closed-cell foam.
            """,
        BadExample = """
            fibre our-aramid { density 1.44 g/cm3; source "data sheet" }
            fabric our-aramid-170 { fibre our-aramid; weave twill; areal-weight 170 g/m2; warp-share 50 %; width 100 cm; resin-content hand 55 % by weight; pace 6 min/m2; source "data sheet" }

            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              process hand
              resin slow-laminating-epoxy
              plies {
                outer our-aramid-170 0/90
                inner our-aramid-170 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
              finish {
                wash
                trim "to the line"
              }
            }
            """,
        GoodExample = """
            fibre our-aramid { density 1.44 g/cm3; source "data sheet" }
            fabric our-aramid-170 { fibre our-aramid; weave twill; areal-weight 170 g/m2; warp-share 50 %; width 100 cm; resin-content hand 55 % by weight; pace 6 min/m2; source "data sheet" }

            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              process hand
              resin slow-laminating-epoxy
              plies {
                outer our-aramid-170 0/90
                inner our-aramid-170 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
              finish {
                wash
                trim "to the line"
                seal edges
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => part.FinishLines();

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part.Finish.LastOrDefault(f => f.Verb == "trim") is not { } trim
            || part.Finish.Any(f => f.Verb is "seal" or "prime" or "paint" || TradeWords.Says(f.Words(), "seal", "edge", "varnish", "coat", "brush"))
            || part.Stack.FirstOrDefault(IsOpen) is not { } open)
        {
            return;
        }

        context.Report(
            trim.Where,
            $"the trim cuts {(open is CoreItem ? "the core" : "aramid")} ({open.Name}) and nothing seals the edge",
            labels: [new FindingLabel(open.Where, "lies here")],
            fixes: [new Fix("Seal the edges", FixSafety.Safe, Edits.After(trim.Where, "seal edges"))]);
    }

    // A patch or a core of a stated size ends inside the trim line.
    private static bool IsOpen(StackItem item) => item is { SizeLength: null, CoversArea: null, CoversShare: null } && item switch
    {
        PlyItem { IsPatch: false } ply => Has(ply.Material.Fibre?.Name, "aramid") || Has(ply.Material.Name, "aramid"),
        CoreItem core => Has(core.Material.Family, "balsa") || Has(core.Material.Family, "honeycomb") || Has(core.Material.Family, "wood"),
        _ => false,
    };

    private static bool Has(string? text, string word) => text?.Contains(word, StringComparison.OrdinalIgnoreCase) == true;
}
