using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A stack of prepreg is laid without vacuum on it in between.</summary>
public sealed class NoDebulk : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC7203",
        Name = "no-debulk",
        Severity = Severity.Warning,
        Title = "Prepreg stack without debulk",
        Reason = "Air between tacky plies has no way out once the stack is closed.",
        Remedy = "Debulk the first ply and every third to fifth after it, for ten to fifteen minutes.",
        Source = "common practice (a college course in composite repair says the first, then each three to five)",
        Exceptions = """
            Silent for one or two plies.
            """,
        BadExample = """
            fabric own-prepreg {
              fibre e-glass
              weave twill
              areal-weight 280 g/m2
              warp-share 50 %
              width 100 cm
              resin-content prepreg 40 % by weight
              out-life 30 d
            }

            resin own-prepreg-epoxy {
              chemistry epoxy
              cures-with heat
              density cured 1.20 g/cm3
              gel-time 60 min at 80 degC
              minimum-temperature 70 degC
              demould 10 h at 80 degC
            }

            release-film hot-film {
              perforation medium
              bleed 5 g/m2
              width 150 cm
              heat-limit 200 degC
            }

            breather hot-felt {
              width 150 cm
              resin-pickup 10 g/m2
              capacity 500 g/m2
              areal-weight 150 g/m2
              heat-limit 200 degC
            }

            bag-film hot-bag {
              width 150 cm
              heat-limit 200 degC
            }

            sealant-tape hot-tape {
              width 12 mm
              heat-limit 200 degC
            }

            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of aluminium
              release {
                semi-permanent-release coats 4 wait 15 min dry 60 min
              }
            }

            part tray {
              mould tray-mould
              resin own-prepreg-epoxy
              process prepreg
              plies {
                skins own-prepreg 0/90 x6
              }
              prepreg {
                thaw 12 h sealed
                out-time 5 d
              }
              bag {
                release-film hot-film
                breather hot-felt
                bag-film hot-bag
                sealant-tape hot-tape
                hose silicone-hose
              }
              vacuum {
                draw 30 mbar absolute within 15 min
                leak-check 5 min rise at-most 50 mbar isolated
              }
              cure {
                ramp 1 degC/min to 80 degC under vacuum
                hold 80 degC for 12 h under vacuum
                cool to 40 degC at 1 degC/min
                vent
                demould
              }
            }
            """,
        GoodExample = """
            fabric own-prepreg {
              fibre e-glass
              weave twill
              areal-weight 280 g/m2
              warp-share 50 %
              width 100 cm
              resin-content prepreg 40 % by weight
              out-life 30 d
            }

            resin own-prepreg-epoxy {
              chemistry epoxy
              cures-with heat
              density cured 1.20 g/cm3
              gel-time 60 min at 80 degC
              minimum-temperature 70 degC
              demould 10 h at 80 degC
            }

            release-film hot-film {
              perforation medium
              bleed 5 g/m2
              width 150 cm
              heat-limit 200 degC
            }

            breather hot-felt {
              width 150 cm
              resin-pickup 10 g/m2
              capacity 500 g/m2
              areal-weight 150 g/m2
              heat-limit 200 degC
            }

            bag-film hot-bag {
              width 150 cm
              heat-limit 200 degC
            }

            sealant-tape hot-tape {
              width 12 mm
              heat-limit 200 degC
            }

            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of aluminium
              release {
                semi-permanent-release coats 4 wait 15 min dry 60 min
              }
            }

            part tray {
              mould tray-mould
              resin own-prepreg-epoxy
              process prepreg
              plies {
                skins own-prepreg 0/90 x6
              }
              prepreg {
                thaw 12 h sealed
                out-time 5 d
                debulk every 3 for 15 min
              }
              bag {
                release-film hot-film
                breather hot-felt
                bag-film hot-bag
                sealant-tape hot-tape
                hose silicone-hose
              }
              vacuum {
                draw 30 mbar absolute within 15 min
                leak-check 5 min rise at-most 50 mbar isolated
              }
              cure {
                ramp 1 degC/min to 80 degC under vacuum
                hold 80 degC for 12 h under vacuum
                cool to 40 degC at 1 degC/min
                vent
                demould
              }
            }
            """,
    };

    private const int FewPlies = 2;
    private const int AtMostEvery = 5;

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => part.Prepreg is { } handling ? new LinesRead(handling.Where, AllOfTheLine: true) : null;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        var plies = part.Stack.OfType<PlyItem>().Where(p => !p.IsPatch && p.SizeLength is null).Sum(p => p.Count);
        if (part.Process.Value != Process.Prepreg || plies <= FewPlies)
        {
            return;
        }

        if (part.Prepreg is not { } handling)
        {
            context.NotChecked("nothing says how the prepreg is handled", part.StackWhere);
            return;
        }

        if (handling.DebulkEvery is not { } every)
        {
            context.Report(
                handling.Where,
                $"{plies} plies of prepreg are laid without a debulk",
                labels: part.StackWhere is { } stack ? [new FindingLabel(stack, "laid here")] : [],
                fixes: [Edits.Fix("Debulk every 3 plies", FixSafety.NeedsALook, Edits.Last(handling.Where, "debulk every 3 for 15 min"))]);
        }
        else if (every.Value > AtMostEvery && plies > AtMostEvery)
        {
            context.Report(
                every.Where ?? handling.Where,
                $"debulk every {every.Value} plies; every {AtMostEvery} is the most",
                Grounds.Sure.And("debulk", every),
                fixes: [Edits.Fix("Debulk every 3 plies", FixSafety.NeedsALook, FigureEdits.Rewrite(every, "3"))]);
        }
    }
}
