using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A new or repaired face has too little wax on it.</summary>
public sealed class FewWaxCoats : Check
{
    private const int Enough = 4;
    private const int EnoughUnderFilm = 3;

    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC2002",
        Name = "few-wax-coats",
        Severity = Severity.Warning,
        Title = "Too few coats of wax on a new mould face",
        Reason = "A new face has pores and missed spots, and a few square centimetres that stick hold the whole part.",
        Remedy = "Give a new or repaired face 4 to 6 coats, each buffed; or 3 coats under a film.",
        Source = "common practice (3 to 4 coats, or 4 to 5 and a film, in workshop accounts)",
        Exceptions = """
            Speaks only of a mould whose `state` is `new` or `repaired`: one or two coats do on a seasoned face. Silent when a
            semi-permanent release is used, since that has a schedule of its own.
            """,
        BadExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              state new
              release {
                carnauba-wax coats 2 wait 30 min
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
              state new
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
    public override void Examine(CheckContext context)
    {
        if (context.Part.Mould is not { State.Value: MouldState.New or MouldState.Repaired } mould || !context.Part.IsWetted())
        {
            return;
        }

        var waxes = mould.Release.Where(r => r.Agent.Kind == ReleaseKind.Wax).ToList();
        if (waxes.Count == 0 || mould.Release.Any(r => r.Agent.Kind == ReleaseKind.SemiPermanent))
        {
            return;
        }

        if (waxes.FirstOrDefault(w => w.Coats is null) is { } unknown)
        {
            context.NotChecked($"no number of coats is known for {unknown.Agent.Name} on {mould.Name}", unknown.Where);
            return;
        }

        var film = mould.Release.FirstOrDefault(r => r.Agent.Kind == ReleaseKind.LiquidFilm);
        var enough = film is null ? Enough : EnoughUnderFilm;
        var coats = waxes.Sum(w => w.Coats!.Value);
        if (coats >= enough)
        {
            return;
        }

        var grounds = waxes.Aggregate(Grounds.Sure, (sum, wax) => sum.And($"coats of {wax.Agent.Name}", wax.Coats));
        var under = film is null ? "" : $" under {film.Agent.Name}";
        context.Report(
            waxes[0].Where,
            $"{coats} wax coats{under} on the {Face(mould)} face of {mould.Name}, which wants {enough} or more",
            grounds,
            [new FindingLabel(mould.State!.Where ?? mould.Where, "said here")],
            [MoreCoats(waxes, enough)]);
    }

    private static string Face(Mould mould) => mould.State!.Value == MouldState.New ? "new" : "repaired";

    private static Fix? MoreCoats(List<ReleaseCoat> waxes, int enough)
    {
        if (waxes is not [var wax])
        {
            return null;
        }

        var wanted = FormattableString.Invariant($"{enough + 1}");
        var edit = FigureEdits.Rewrite(wax.Coats, wanted)
            ?? (wax.Coats == wax.Agent.Coats ? Edits.Append(wax.Where, "coats " + wanted) : null);
        return Edits.Fix($"Lay {wanted} coats", FixSafety.NeedsALook, edit);
    }
}
