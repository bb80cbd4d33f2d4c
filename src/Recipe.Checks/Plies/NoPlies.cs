using Recipe.Model;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A part that is laid up and has no plies.</summary>
public sealed class NoPlies : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC3001",
        Name = "no-plies",
        Severity = Severity.Warning,
        Title = "Part without plies",
        Reason = "Nothing can be cut, weighed or laid.",
        Remedy = "List the plies, the one on the mould first.",
        Source = "common practice",
        Exceptions = """
            Silent for a part that only joins other parts.
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
    public override LinesRead? Reads(Part part) => new LinesRead(part.StackWhere ?? part.Where, AllOfTheLine: part.StackWhere is not null);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (!part.Stack.IsEmpty || part.Join is { Parts.IsEmpty: false } || (part.StackWhere is { } block && BlockText.HoldsWords(block)))
        {
            return;
        }

        context.Report(
            part.StackWhere ?? part.Where,
            $"{part.Name} has no plies",
            labels: part.MouldWhere is { } mould ? [new FindingLabel(mould, "laid in this mould")] : []);
    }
}
