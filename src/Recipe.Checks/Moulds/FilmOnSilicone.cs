using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A liquid film is sprayed over a release that it does not wet.</summary>
public sealed class FilmOnSilicone : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC2103",
        Name = "film-on-silicone",
        Severity = Severity.Warning,
        Title = "Release film over silicone or a semi-permanent release",
        Reason = "The film draws back into fisheyes and leaves bare spots in between.",
        Remedy = "Leave the film out, or strip the face and begin with wax.",
        Source = "common practice (fisheyes)",
        Exceptions = """
            Silent where the maker says that the pair fits: accept it with that reason.
            """,
        BadExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              release {
                semi-permanent-release coats 4 wait 15 min dry 60 min
                pva-film coats 1 dry 60 min
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
            }
            """,
        GoodExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              release {
                semi-permanent-release coats 4 wait 15 min dry 60 min
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
            }
            """,
    };

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Mould is not { } mould || !context.Part.IsWetted())
        {
            return;
        }

        foreach (var face in mould.Faces())
        {
            ReleaseCoat? slippery = null;
            foreach (var line in face.Release)
            {
                if (line.Agent.Kind == ReleaseKind.LiquidFilm && slippery is not null)
                {
                    context.Report(
                        line.Where,
                        $"{line.Agent.Name} goes over {slippery.Agent.Name}, which {(slippery.Agent.HoldsSilicone == true ? "holds silicone" : "is a semi-permanent release")}: it will not wet the face",
                        labels: [new FindingLabel(slippery.Where, "under it")],
                        fixes: [Edits.Fix("Leave the film out", FixSafety.NeedsALook, Edits.Remove(line.Where))]);
                    return;
                }

                slippery = line.Agent.Kind == ReleaseKind.SemiPermanent || line.Agent.HoldsSilicone == true ? line : slippery;
            }
        }
    }
}
