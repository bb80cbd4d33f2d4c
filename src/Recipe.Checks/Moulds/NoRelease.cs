using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Resin meets a mould and nothing keeps it from sticking.</summary>
public sealed class NoRelease : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC2001",
        Name = "no-release",
        Severity = Severity.Error,
        Title = "No release on the mould",
        Reason = "Resin is glue: without wax, film or a release coat the part and the mould become one piece.",
        Remedy = "Name the release in the mould, every coat of it.",
        Source = "common practice",
        Exceptions = """
            Silent for a mould of a material that resin does not stick to (`self-releasing yes`), for one that stays in the part
            (`stays-in-part yes`), and when the release is a sheet or tape, since that is a release line too.
            """,
        BadExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
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

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => part.ReleaseLines();

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part.Mould is not { Release.Length: 0, StaysInPart: false } mould || mould.MadeOf?.SelfReleasing == true || !part.IsWetted())
        {
            return;
        }

        var madeOf = mould.MadeOf is { } material ? $", made of {material.Name}" : "";
        context.Report(
            mould.Where,
            $"nothing releases {part.Name} from {mould.Name}{madeOf}",
            labels: part.MouldWhere is { } laid ? [new FindingLabel(laid, "laid here")] : [],
            fixes: [Wax(context, mould)]);
    }

    private static Fix? Wax(CheckContext context, Mould mould)
    {
        const string name = "carnauba-wax";
        const string line = name + " coats 5 wait 30 min";
        if (!context.Model.Materials.ContainsKey(name))
        {
            return null;
        }

        var edit = mould.ReleaseWhere is { } block
            ? Edits.Last(block, line)
            : Edits.Last(mould.Where, "release {", "  " + line, "}");
        return Edits.Fix($"Add five coats of {name} to {mould.Name}", FixSafety.NeedsALook, edit);
    }
}
