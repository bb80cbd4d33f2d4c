using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Cloth and nothing to wet it with.</summary>
public sealed class NoResin : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC4001",
        Name = "no-resin",
        Severity = Severity.Error,
        Title = "Plies without a resin",
        Reason = "Without a resin nothing can be weighed, mixed, timed or cured.",
        Remedy = "Name the resin of the part.",
        Source = "common practice",
        Exceptions = """
            Silent for prepreg, which brings its own, and when the resin named is not known, which is a finding about names.
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
    public override LinesRead? Reads(Part part) => new LinesRead(part.Where);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (!part.HasPlies() || part.Resin is not null || part.ResinWhere is not null || part.Process.Value == Process.Prepreg)
        {
            return;
        }

        context.Report(
            part.Where,
            $"{part.Name} has plies and no resin to wet them",
            labels: part.StackWhere is { } plies ? [new FindingLabel(plies, "plies here")] : [],
            fixes: [Usual(context)]);
    }

    private static Fix? Usual(CheckContext context)
    {
        const string usual = "slow-laminating-epoxy";
        var own = context.Model.Materials.Values
            .OfType<ResinSystem>()
            .Where(r => r is { Role: ResinRole.Laminating, FromBook: false })
            .Select(r => r.Name)
            .Order(StringComparer.Ordinal)
            .FirstOrDefault();
        var name = own ?? (context.Model.Materials.ContainsKey(usual) ? usual : null);
        return name is null
            ? null
            : Edits.Fix($"Wet it with {name}", FixSafety.NeedsALook, Edits.Last(context.Part.Where, "resin " + name));
    }
}
