using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>Cold or damp epoxy is sanded or covered with its blush on.</summary>
public sealed class BlushLeft : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8203",
        Name = "blush-left",
        Severity = Severity.Warning,
        Title = "Blush not washed off",
        Reason = "An amine hardener sweats a waxy salt in cold or damp air; sanding smears it, solvent does not take it, and paint peels on it.",
        Remedy = "Wash the free face with warm water and a pad, dry it, then sand.",
        Source = "common practice: below 18 degC or above 70 % humidity",
        Exceptions = """
            Silent with a peel ply in the bag, which takes the blush with it, and for prepreg. Where release is not washed off either, that
            finding says it.
            """,
        BadExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of polypropylene-sheet
            }

            part tray {
              mould tray-mould
              process hand
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              wet-out {
                room 16 degC
                resin-temperature 20 degC
              }
              cure {
                hold 16 degC for 72 h
                demould
              }
              finish {
                trim
                abrade 120 grit
                paint colour white
              }
            }
            """,
        GoodExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of polypropylene-sheet
            }

            part tray {
              mould tray-mould
              process hand
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              wet-out {
                room 16 degC
                resin-temperature 20 degC
              }
              cure {
                hold 16 degC for 72 h
                demould
              }
              finish {
                wash "with warm water"
                trim
                abrade 120 grit
                paint colour white
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => part.FinishLines();

    private static readonly Temperature Cold = Temperature.FromDegreesCelsius(18);
    private const double Damp = 0.7;
    private const double Slack = 1e-6;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var (part, plan) = (context.Part, context.Plan);
        if (part.Resin is not { Chemistry: Chemistry.Epoxy } resin
            || part.Process.Value is Process.Prepreg or Process.Infused
            || !part.IsWetted()
            || part.Bag?.Layers.Any(l => l.Class == LayerClass.PeelPly) == true
            || ReleaseTraces.FirstOn(part) is not null
            || part.Finish.TakeWhile(f => !f.Washes()).FirstOrDefault(FinishWords.WorksTheFace) is not { } works)
        {
            return;
        }

        var humidity = part.WetOut?.Humidity ?? plan.Shop?.Humidity;
        var isCold = plan.Conditions.Room.Value < Cold;
        if (!isCold && !(humidity?.Value > Damp + Slack))
        {
            return;
        }

        var air = isCold ? $"at {Say.Of(plan.Conditions.Room.Value)}" : $"in air of {Say.Of(humidity!)} humidity";
        var limit = isCold ? $"below {Say.Of(Cold)}" : $"above {Say.Percent(Damp)}";
        context.Report(
            works.Where,
            $"{resin.Name} is laid {air}; {limit} it sweats, and {Say.Quoted(works.Words())} comes before any wash",
            isCold ? Grounds.Sure.And<Temperature>(plan.Conditions.Room) : Grounds.Sure.And("humidity", humidity),
            fixes: [new Fix("Wash it first", FixSafety.Safe, Edits.Before(works.Where, "wash \"with warm water\""))]);
    }
}
