using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Bare epoxy stays outdoors.</summary>
public sealed class EpoxyInSun : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8214",
        Name = "epoxy-in-sun",
        Severity = Severity.Warning,
        Title = "Bare epoxy in the sun",
        Reason = "Sunlight turns epoxy yellow, then chalky, then the fibres lie bare.",
        Remedy = "Paint it, or give it a clear coat that stops ultraviolet.",
        Source = "common practice",
        Exceptions = """
            Speaks of parts that say `outdoors yes`. Silent behind a gel coat of polyester or vinylester, and where any line of the finish
            paints, varnishes or covers.
            """,
        BadExample = """
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
              outdoors yes
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
              finish {
                wash
                trim
                weigh
              }
            }
            """,
        GoodExample = """
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
              outdoors yes
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
              finish {
                wash
                trim
                weigh
                abrade 240 grit
                paint colour white
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
        if (part is not { Outdoors: { Value: true } outdoors, Resin: { Chemistry: Chemistry.Epoxy } resin }
            || !part.IsWetted()
            || part.Coats.Any(c => c.Material.Role == ResinRole.GelCoat || c.Material.IsStyrenated() || TradeWords.Says(c.Material.Title, "uv", "ultraviolet", "stabilised", "stabilized"))
            || part.Finish.Any(f => f.Verb is "paint" or "prime" || TradeWords.Says(f.Words(), "paint", "varnish", "clear", "lacquer", "uv", "ultraviolet", "gelcoat", "topcoat", "coat", "wrap", "film", "enamel", "cover")))
        {
            return;
        }

        context.Report(
            outdoors.Where ?? part.Where,
            $"{part.Name} stays outdoors, and no line covers {resin.Name}, an epoxy, against the sun",
            Grounds.Sure.And("outdoors", outdoors),
            part.ResinWhere is { } mixed ? [new FindingLabel(mixed, "resin here")] : [],
            [Paint(part)]);
    }

    // Last, but before it is sent off.
    private static Fix? Paint(Part part)
    {
        const string key = "abrade 240 grit";
        const string paint = "paint colour white";
        var edit = part.Finish.FirstOrDefault(f => f.Verb == "ship") is { } ship ? Edits.Before(ship.Where, key, paint)
            : part.Finish is [.., var last] ? Edits.After(last.Where, $"{key}; {paint}")
            : null;
        return Edits.Fix("Paint it", FixSafety.NeedsALook, edit);
    }
}
