using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>More vacuum is asked for than there is air outside.</summary>
public sealed class MoreVacuumThanAir : Check
{
    private const double AlmostAll = 0.98;
    private const double FineDay = 1.02;

    /// <summary>Standard air at sea level (ISO 2533).</summary>
    private static readonly Pressure SeaLevel = Pressure.FromPascals(101325);

    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC6002",
        Name = "more-vacuum-than-air",
        Severity = Severity.Error,
        Title = "More vacuum than the air outside gives",
        Reason =
            "A bag is pressed by the air outside and by nothing else: the level is misread, or it is not below ambient that "
            + "is meant.",
        Remedy = "Ask for no more than the height of the shop allows, or write `absolute` when that is meant.",
        Source = "ISO 2533 standard atmosphere; 2 % more for a day of high pressure is common practice",
        Exceptions = """
            Up to 2 % more than the standard air is a fine day, and only a warning from 98 % up. A level counted as `absolute` can always
            be. Without an altitude the sea is meant: what is too much there is too much everywhere.
            """,
        BadExample = """
            shop ours {
              altitude 1500 m
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
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              bag {
                peel-ply
                release-film perforated
                breather
                bag-film
              }
              vacuum {
                draw 28 inHg below ambient within 10 min
                leak-check 5 min rise at-most 30 mbar isolated
              }
              cure {
                hold 20 degC for 48 h under vacuum
                demould
              }
            }
            """,
        GoodExample = """
            shop ours {
              altitude 1500 m
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
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              bag {
                peel-ply
                release-film perforated
                breather
                bag-film
              }
              vacuum {
                draw 23 inHg below ambient within 10 min
                leak-check 5 min rise at-most 30 mbar isolated
              }
              cure {
                hold 20 degC for 48 h under vacuum
                demould
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Vacuum?.Draw is not { Value: { Convention: VacuumConvention.BelowAmbient } level } draw)
        {
            return;
        }

        var conditions = context.Plan.Conditions;
        var ambient = conditions.Ambient.Value;
        var share = level.Value / ambient;
        if (share <= AlmostAll)
        {
            return;
        }

        var isTooMuch = share > FineDay;
        var tooMuchAnywhere = level.Value > SeaLevel * FineDay;
        var height = conditions.Altitude.Value;
        context.Report(
            draw.Where ?? context.Part.Vacuum.Where,
            $"{Say.Of(draw)} is asked for; all the air at {Say.Of(height, context.Plan.Shop?.Altitude?.Written, "m")} "
            + $"is {Say.Of(ambient, draw.Written)}",
            tooMuchAnywhere ? null : Grounds.Sure.And($"level", draw).And<Pressure>(conditions.Ambient).And<Length>(conditions.Altitude),
            context.Plan.Shop?.Altitude?.Where is { } said ? [new FindingLabel(said, "height of the shop here")] : [],
            [Less(draw, ambient)],
            isTooMuch ? Severity.Error : Severity.Warning);
    }

    private static Fix? Less(Figure<VacuumLevel> draw, Pressure ambient)
    {
        const double goodPump = 0.95;
        var level = VacuumWords.Below(ambient * goodPump, draw.Written);
        return Edits.Fix($"Draw {level}", FixSafety.NeedsALook, FigureEdits.Rewrite(draw, level));
    }
}
