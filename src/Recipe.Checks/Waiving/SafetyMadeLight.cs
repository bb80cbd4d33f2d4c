using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A setting makes light of something that can hurt somebody.</summary>
public sealed class SafetyMadeLight : SettingCheck
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC9006",
        Name = "safety-made-light",
        Severity = Severity.Warning,
        Title = "Setting that makes light of a danger",
        Reason = "What burns, poisons or blinds does so in every shop.",
        Remedy = "Leave it a warning at least; where a part has a good reason, accept it there with that reason.",
        Source = "common practice",
        BadExample = """
            findings {
              runaway-pot advice
            }

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
            }
            """,
        GoodExample = """
            findings {
              runaway-pot error
            }

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
            }
            """,
    };

    internal override void Examine(CheckContext context, SeveritySetting setting, Check? about)
    {
        if (about is null or WaiverCheck or SettingCheck || !HeldSeverities.IsTooMild(setting, about))
        {
            return;
        }

        context.Report(
            setting.Where,
            $"{about.Descriptor.Code} {about.Descriptor.Name} can hurt somebody and stays a warning at least",
            fixes: [Edits.Fix("Take the line away", FixSafety.Safe, Edits.Remove(setting.Where))]);
    }
}
