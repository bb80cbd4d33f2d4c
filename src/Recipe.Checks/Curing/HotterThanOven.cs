using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The cure is hotter than the oven of the shop gets.</summary>
public sealed class HotterThanOven : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC7110",
        Name = "hotter-than-oven",
        Severity = Severity.Error,
        Title = "Cure hotter than the oven gets",
        Reason = "The part never sees the cure that is written, and nobody notices until it is soft in use.",
        Remedy = "Cure it as hot as the oven gets, for longer, or find a hotter oven.",
        Source = "common practice",
        Exceptions = """
            Silent where the shop says no `oven limit`.
            """,
        BadExample = """
            shop ours { oven limit 45 degC }

            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of aluminium
              release {
                semi-permanent-release coats 4
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
                hold 20 degC for 24 h
                ramp 10 degC/h to 50 degC
                hold 50 degC for 16 h
                cool to 30 degC
                demould
              }
            }
            """,
        GoodExample = """
            shop ours { oven limit 80 degC }

            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of aluminium
              release {
                semi-permanent-release coats 4
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
                hold 20 degC for 24 h
                ramp 10 degC/h to 50 degC
                hold 50 degC for 16 h
                cool to 30 degC
                demould
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Plan.Shop?.OvenLimit is not { } limit || context.Part.Cure is not { } cure)
        {
            return;
        }

        var over = cure.Steps.Where(s => s.Temperature is { } t && t.Value > limit.Value + Heat.Rounding).ToList();
        if (over.MaxBy(s => s.Temperature!.Value) is not { Temperature: { } hottest } step)
        {
            return;
        }

        context.Report(
            hottest.Where ?? step.Where,
            $"the cure reaches {Say.Of(hottest)}; the oven of the shop reaches {Say.Of(limit)}{Say.More(over.Select(s => s.Temperature!.Value).Distinct().Count() - 1)}",
            Grounds.Sure.And("cure temperature", hottest).And("limit of the oven", limit),
            limit.Where is { } said ? [new FindingLabel(said, "oven limit here")] : [],
            [Heat.Cap(over, limit.Value)]);
    }
}
