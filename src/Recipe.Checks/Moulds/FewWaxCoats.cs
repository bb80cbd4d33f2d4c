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
    public override LinesRead? Reads(Part part) => part.ReleaseLines();

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Mould is not { State.Value: MouldState.New or MouldState.Repaired } mould || !context.Part.IsWetted())
        {
            return;
        }

        var faces = mould.Faces().Select(f => new Waxed(f)).Where(f => f.Waxes.Count > 0 && !f.Face.Release.Any(r => r.Agent.Kind == ReleaseKind.SemiPermanent)).ToList();
        if (faces.SelectMany(f => f.Waxes).FirstOrDefault(w => w.Coats is null) is { } unknown)
        {
            context.NotChecked($"no number of coats is known for {unknown.Agent.Name} on {mould.Name}", unknown.Where);
            return;
        }

        var bare = faces.Where(f => f.Coats < f.Enough).ToList();
        if (bare.MinBy(f => f.Coats) is not { } worst)
        {
            return;
        }

        var grounds = worst.Waxes.Aggregate(Grounds.Sure, (sum, wax) => sum.And($"coats of {wax.Agent.Name}", wax.Coats));
        var under = worst.Film is null ? "" : $" under {worst.Film.Agent.Name}";
        context.Report(
            worst.Waxes[0].Where,
            $"{worst.Coats} wax coats{under} on the {(mould.State!.Value == MouldState.New ? "new" : "repaired")} face of {worst.Face.Name}, which wants {worst.Enough} or more{Say.More(bare.Count - 1)}",
            grounds,
            [new FindingLabel(mould.State.Where ?? mould.Where, "said here")],
            [MoreCoats(bare)]);
    }

    private static Fix? MoreCoats(List<Waxed> bare)
    {
        var wanted = FormattableString.Invariant($"{bare.Max(f => f.Enough) + 1}");
        var waxes = bare.SelectMany(f => f.Waxes).Distinct().ToList();
        var edits = waxes.Select(wax => FigureEdits.Rewrite(wax.Coats, wanted) ?? (wax.Coats == wax.Agent.Coats ? Edits.Append(wax.Where, "coats " + wanted) : null)).OfType<TextEdit>().ToArray();
        return edits.Length < waxes.Count || bare.Exists(f => f.Waxes.Count > 1) ? null : new Fix($"Lay {wanted} coats", FixSafety.NeedsALook, [.. edits]);
    }

    /// <summary>The wax on a face.</summary>
    private sealed record Waxed(MouldFace Face)
    {
        public List<ReleaseCoat> Waxes { get; } = [.. Face.Release.Where(r => r.Agent.Kind == ReleaseKind.Wax)];

        public ReleaseCoat? Film { get; } = Face.Release.FirstOrDefault(r => r.Agent.Kind == ReleaseKind.LiquidFilm);

        public int Enough => Film is null ? FewWaxCoats.Enough : EnoughUnderFilm;

        /// <summary>Coats of wax; those of which no number is known are none.</summary>
        public int Coats => Waxes.Sum(w => w.Coats?.Value ?? 0);
    }
}
