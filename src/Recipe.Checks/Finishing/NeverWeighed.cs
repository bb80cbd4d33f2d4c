using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A part with a target mass that nobody weighs.</summary>
public sealed class NeverWeighed : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8208",
        Name = "never-weighed",
        Severity = Severity.Advice,
        Title = "Target mass, and nobody weighs",
        Reason = "The mass of the trimmed part is the cheapest number of its quality: it shows too much resin and a missing ply.",
        Remedy = "Weigh it after the trim, and write the mass into the build record.",
        Source = "common practice",
        Exceptions = """
            Speaks where `target mass` and a finish block stand and no line weighs. Silent where a build record of the part has a mass.
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
              target mass 82 g +/- 20 g
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
              target mass 82 g +/- 20 g
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
    };

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => part.FinishLines();

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part.TargetMass is not { } target
            || part.Finish.IsEmpty
            || part.Finish.Any(f => f.Verb == "weigh" || TradeWords.Says(f.Words(), "weigh", "mass", "weight", "scale"))
            || context.Model.Builds.Any(b => b.Part == part.Name && b.Lines.Any(l => l.Word == "mass")))
        {
            return;
        }

        var trim = part.Finish.LastOrDefault(f => f.Verb == "trim") ?? part.Finish[^1];
        context.Report(
            target.Where ?? trim.Where,
            $"the target mass is {Say.Of(target)} and no line of the finish weighs the part",
            labels: [new FindingLabel(trim.Where, "weigh it after this")],
            fixes: [new Fix("Weigh it after the trim", FixSafety.Safe, Edits.After(trim.Where, "weigh"))]);
    }
}
