using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>Dark paint on a part that has only cured at room temperature.</summary>
public sealed class DarkPaintBeforeHeat : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8204",
        Name = "dark-paint-before-heat",
        Severity = Severity.Advice,
        Title = "Dark paint on a room-cured part",
        Reason = "The sun finishes the cure under a dark skin at 70 degC and more: the weave prints through the paint and the part sags.",
        Remedy = "Post-cure it before it is painted dark, or paint it white.",
        Source = "common practice: a dark skin in the sun reaches 70 to 80 degC",
        Exceptions = """
            Silent where the cure goes above 45 degC, for `outdoors no`, and where the part says `colour dark`, which is judged there.
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
                trim
                abrade 240 grit
                paint colour black
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
                trim
                abrade 240 grit
                paint colour white
              }
            }
            """,
    };

    private static readonly Temperature Warm = Temperature.FromDegreesCelsius(45);
    private static readonly string[] Darks = ["black", "navy", "dark", "anthracite", "graphite", "charcoal"];

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (!part.IsWetted()
            || context.Plan.Cure is not { } cure
            || cure.Peak.Value > Warm
            || part.Colour is { Value: PartColour.Dark }
            || part.Outdoors is { Value: false }
            || part.Finish.FirstOrDefault(f => f.Verb == "paint" && TradeWords.Says(f.Text, Darks)) is not { } paint
            || TradeWords.Says(paint.Text, "stripe", "strip", "letter", "lettering", "number", "mark", "line", "inside", "indoors"))
        {
            return;
        }

        context.Report(
            paint.Where,
            $"{Say.Quoted(paint.Words())} on a part whose cure goes no higher than {Say.Of(cure.Peak.Value)}; the sun takes a dark skin to 70 degC",
            labels: part.Cure is { } said ? [new FindingLabel(said.Where, "cure here")] : [],
            fixes: [White(paint)],
            severity: part.Outdoors is { Value: true } ? Severity.Warning : Severity.Advice);
    }

    private static Fix? White(FinishStep paint)
    {
        // Two words, as in dark navy, are the reader's to change.
        if (Darks.Where(d => TradeWords.Says(paint.Text, d)).ToList() is not [not "dark" and var word] || !paint.Where.Text.Contains(word, StringComparison.Ordinal))
        {
            return null;
        }

        var at = paint.Where.Text.IndexOf(word, StringComparison.Ordinal);
        var where = new Text.SourceSpan(paint.Where.Source, new Text.TextSpan(paint.Where.Span.Start + at, word.Length));
        return new Fix("Paint it white", FixSafety.NeedsALook, Edits.Replace(where, "white"));
    }
}
