using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>More parts were pulled since the last release than it stands.</summary>
public sealed class TooManyPulls : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC2115",
        Name = "too-many-pulls",
        Severity = Severity.Warning,
        Title = "Too many pulls since the release",
        Reason = "Each pull takes a little release along, and the one that sticks costs the mould.",
        Remedy = "Put the release on again before this part.",
        Source = "common practice (one to three pulls from a waxed new face, about eight from a seasoned one)",
        Exceptions = """
            Counts against the `lasts` of the release agent where it is given. Silent where the pulls since the release are not given.
            """,
        BadExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              state seasoned
              pulls-since-release 12
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
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              state seasoned
              pulls-since-release 2
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

    private const int FromNew = 3;
    private const int FromSeasoned = 8;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Mould is not { PullsSinceRelease: { } pulls, Release.IsEmpty: false } mould || !context.Part.IsWetted())
        {
            return;
        }

        var lasts = mould.Release.Select(r => r.Agent.Lasts).OfType<Figure<int>>().MinBy(l => l.Value);
        if (lasts is null && mould.Release.Any(r => r.Agent.Kind != ReleaseKind.Wax))
        {
            context.NotChecked($"nothing says how many pulls {mould.Release[0].Agent.Name} lasts", pulls.Where);
            return;
        }

        var most = lasts?.Value ?? (mould.State is { Value: MouldState.New or MouldState.Repaired } ? FromNew : FromSeasoned);
        if (pulls.Value < most)
        {
            return;
        }

        context.Report(
            pulls.Where ?? mould.Where,
            $"{pulls.Value} pulls since the release of {mould.Name}, which stands {most}",
            Grounds.Sure.And("pulls since the release", pulls).And("pulls it lasts", lasts),
            [new FindingLabel(mould.Release[0].Where, "released with this")],
            [Edits.Fix("Release it again, and count from 0", FixSafety.NeedsALook, FigureEdits.Rewrite(pulls, "0"))]);
    }
}
