using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>There is more pigment in the pot than the resin carries.</summary>
public sealed class TooMuchPigment : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC4105",
        Name = "too-much-pigment",
        Severity = Severity.Warning,
        Title = "Too much pigment",
        Reason = "Pigment paste takes the place of resin that cures: the film stays soft and chalks.",
        Remedy = "Keep to five parts in a hundred, and try strong colours on a test cup first.",
        Source = "common practice (up to 5 parts in epoxy, 15 in gel coat); the maker of the paste says how much",
        Exceptions = """
            Counts 15 parts for polyester and vinylester, all pigments of the pot together. Silent where no `parts` are given.
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
              mix {
                add resin
                add pigment parts 12
                add hardener
                stir 3 min
                scrape
              }
              cure {
                hold 20 degC for 48 h
                demould
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
              mix {
                add resin
                add pigment parts 3
                add hardener
                stir 3 min
                scrape
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    private const double MostInEpoxy = 5;
    private const double MostInPolyester = 15;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        // One pot may be given two colours.
        var lines = (context.Part.Mixing?.Steps ?? []).Where(s => s is { Action: MixAction.AddPigment, Parts: not null }).ToList();
        var most = context.Part.Resin.IsStyrenated() ? MostInPolyester : MostInEpoxy;
        var total = lines.Sum(line => line.Parts!.Value);
        if (lines is not [.., { Parts: { } parts } last] || total <= most)
        {
            return;
        }

        context.Report(
            parts.Where ?? last.Where,
            $"{Say.Number(total)} parts of pigment to 100 of resin; it carries {Say.Number(most)}",
            lines.Aggregate(Grounds.Sure, (grounds, line) => grounds.And("pigment", line.Parts)),
            context.Part.ResinNamed(),
            [lines.Count == 1 ? Edits.Fix($"Add {Say.Number(most)} parts", FixSafety.NeedsALook, FigureEdits.Rewrite(parts, Say.Number(most))) : null]);
    }
}
