using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Cured laminate is cut or sanded dry with neither extraction nor mask.</summary>
public sealed class DryDust : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8213",
        Name = "dry-dust",
        Severity = Severity.Error,
        Title = "Dry dust without extraction or mask",
        Reason = "Dust of glass and resin harms the lungs, and carbon dust shorts out whatever it falls into.",
        Remedy = "Work wet, or with extraction at the tool and a dust mask; the local rules decide.",
        Source = "common practice; FAA-H-8083-31 chapter 7 (from memory); NIOSH on dust of fibrous glass",
        Exceptions = """
            Speaks only where the line itself says dry. Silent where a line of the finish speaks of extraction, a mask or wet work, and where
            the `safety` block of the shop says what becomes of dust, unless that is wet and the line is dry.
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
                trim "dry, with the angle grinder"
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
                trim "dry, with extraction and a mask"
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override bool IsSafety => true;

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => part.FinishLines();

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        // What the shop says of dust and masks is judged where it stands.
        var finish = context.Part.Finish;
        var safety = context.Plan.Shop?.Safety;
        var worksWet = safety?.Dust is { Value: DustControl.Wet } ? safety.Dust : null;
        if (worksWet is null && safety is { Dust: not null } or { Respirator: not null })
        {
            return;
        }

        var dusty = finish.FirstOrDefault(f => f.MakesDust() && SaysDry(f.Words()));
        if (dusty is null && safety?.Dust is null && !finish.Any(FinishWords.IsSafeFromDust) && finish.FirstOrDefault(f => f.Verb != "step" && f.MakesDust()) is { } cut)
        {
            context.NotChecked("neither the line nor `dust` of the shop's safety says what becomes of the dust", cut.Where);
        }

        if (dusty is null || finish.Any(FinishWords.IsSafeFromDust))
        {
            return;
        }

        if (worksWet is not null)
        {
            context.Report(
                dusty.Where,
                $"{Say.Quoted(dusty.Words())} makes dry dust; the shop says that it works wet",
                Grounds.Sure.And("dust", worksWet),
                worksWet.Where is { } said ? [new FindingLabel(said, "dust is kept wet here")] : [],
                [new Fix("Extract it and wear a mask", FixSafety.NeedsALook, FinishWords.AddWords(dusty.Where, "with extraction and a mask"))]);
            return;
        }

        context.Report(
            dusty.Where,
            $"{Say.Quoted(dusty.Words())} makes dry dust, and no line says extraction or mask",
            fixes: [new Fix("Extract it and wear a mask", FixSafety.NeedsALook, FinishWords.AddWords(dusty.Where, "with extraction and a mask"))]);
    }

    // Dry as a way of working, and not what the part or the wash water is.
    private static bool SaysDry(string words) =>
        TradeWords.Says(words, "dry")
        && !TradeWords.Says(
            words, "dry spot", "dry fit", "dry-fit", "once dry", "when dry", "until dry", "is dry", "are dry", "to dry", "it dry", "bone dry", "fully dry", "dry it", "dry off", "touch dry",
            "after dry", "dry first", "then dry", "dries", "dried", "drying", "dry cloth", "dry area", "and dry", "wipe dry");
}
