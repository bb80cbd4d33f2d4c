using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>A patch, an insert or a small piece of core has no place.</summary>
public sealed class PatchWithoutPlace : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC3005",
        Name = "patch-without-place",
        Severity = Severity.Advice,
        Title = "Patch or piece of core without a place",
        Reason = "A piece laid by eye is somewhere else on the next part, and under the fitting on neither.",
        Remedy = "Say where: `at 30 mm from rim`, or the name of a template.",
        Source = "common practice",
        Exceptions = """
            Full plies need no place, nor does a core of more than half the part, and a patch that covers a stated share of the surface has one in words.
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
                hinge patch glass-tape-200 0/90 size 60 mm x 40 mm x2
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
                hinge patch glass-tape-200 0/90 size 60 mm x 40 mm x2 at 30 mm from rim
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    // A sheet of more than half the face lies where the face is, whoever lays it.
    private const double MostOfTheFace = 0.5;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var face = context.Plan.Geometry?.Area;
        var loose = context.Part.Stack.Where(item => IsLoose(item, face)).ToList();
        if (loose is not [var first, ..])
        {
            return;
        }

        var named = first is CoreItem ? $"the core {first.Name}" : first.Name;
        var what = first.Count == 1 ? named : FormattableString.Invariant($"the {first.Count} pieces of {named}");
        context.Report(
            first.Where,
            $"nobody says where {what} {(first.Count == 1 ? "goes" : "go")}{Say.More(loose.Count - 1)}",
            labels: loose.Skip(1).Select(l => new FindingLabel(l.Where, $"{l.Name} too")));
    }

    private static bool IsLoose(StackItem item, Area? face) =>
        string.IsNullOrWhiteSpace(item.At) && item switch
        {
            PlyItem ply => ply.IsPatch || ply.SizeLength is not null,
            CoreItem { SizeLength: { } length, SizeWidth: { } width } core => core.Count > 1 || face is null || length.Value * width.Value < MostOfTheFace * face.Value,
            CoreItem => false,
            _ => true,
        };
}
