using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A new mould meets a styrenated resin with nothing but wax between.</summary>
public sealed class FirstPullsUnshielded : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC2113",
        Name = "first-pulls-unshielded",
        Severity = Severity.Advice,
        Title = "First pulls off a new mould without a film",
        Reason = "Styrene finds every pore of a fresh face, and the first parts are the ones that stick.",
        Remedy = "Lay a film over the wax for the first three pulls.",
        Source = "common practice",
        Exceptions = """
            Speaks only of a mould whose `state` is `new`. Silent with a semi-permanent release, and after three pulls.
            """,
        BadExample = """
            resin own-polyester {
              chemistry polyester
              mix 100:2 by weight
              density cured 1.20 g/cm3
              pot-life 60 min at 20 degC in 100 g
              film-life 150 min at 20 degC
              gel-time 5 h at 20 degC
              minimum-temperature 15 degC
              demould 24 h at 20 degC
              largest-pot 500 g
            }

            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              state new
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              process hand
              resin own-polyester
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
        GoodExample = """
            resin own-polyester {
              chemistry polyester
              mix 100:2 by weight
              density cured 1.20 g/cm3
              pot-life 60 min at 20 degC in 100 g
              film-life 150 min at 20 degC
              gel-time 5 h at 20 degC
              minimum-temperature 15 degC
              demould 24 h at 20 degC
              largest-pot 500 g
            }

            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              state new
              release {
                carnauba-wax coats 5 wait 30 min
                pva-film coats 1 dry 60 min
              }
            }

            part tray {
              mould tray-mould
              process hand
              resin own-polyester
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    private const int FirstPulls = 3;

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => part.ReleaseLines();

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part.Mould is not { State.Value: MouldState.New, StaysInPart: false } mould || mould.Pulls is { Value: >= FirstPulls }
            || part.LaidStyrene() is null
            || mould.Faces().FirstOrDefault(f => !f.Release.IsEmpty && f.Release.All(r => r.Agent.Kind == ReleaseKind.Wax)) is not { Release: [.., var last] } face)
        {
            return;
        }

        var film = ReleaseAgents.First(context.Model, ReleaseKind.LiquidFilm);
        context.Report(
            last.Where,
            $"{face.Name} is new, and nothing but wax lies between its face and styrene",
            labels: [new FindingLabel(mould.State.Where ?? mould.Where, "said here")],
            fixes: [film is null ? null : Edits.Fix($"Lay {film.Name} over the wax", FixSafety.NeedsALook, Edits.After(last.Where, $"{film.Name} coats 1 dry 60 min{last.OnTheSame()}"))]);
    }
}
