using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>So much fast resin in one cup that it can smoke and burn.</summary>
public sealed class RunawayPot : Check
{
    private static readonly Mass Most = Mass.FromGrams(500);
    private static readonly Duration Fast = Duration.FromMinutes(30);

    /// <inheritdoc/>
    public override bool CanBeAccepted => false;

    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC4006",
        Name = "runaway-pot",
        Severity = Severity.Error,
        Title = "Pot of fast resin that can burn",
        Reason =
            "Half a kilogram of a fast system left in a cup boils, smokes and can set fire to what it stands on, whatever the"
            + " part needs.",
        Remedy = "Mix pots of 150 g at most, or pour it into a shallow tray at once; leftover goes outdoors into a steel bucket.",
        Source =
            "common practice (100 g may pass 200 degC); the limit of 500 g from memory of the trade; the data sheet and local"
            + " rules decide",
        Exceptions = """
            Silent for a tray and for a resin that lives more than half an hour in its data-sheet pot. It cannot be accepted.
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
              resin fast-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              wet-out {
                pot 600 g
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
              resin fast-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              wet-out {
                pot 100 g
                pot 100 g
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
        var part = context.Part;
        if (part.Resin is not { } resin || part.WetOut?.Tray is { Value: true })
        {
            return;
        }

        var burning = context.Plan.Pots.Where(p => CanBurn(resin, p)).OrderByDescending(p => p.Mass.Value).ThenBy(p => p.Number).ToList();
        if (burning is not [var worst, ..])
        {
            return;
        }

        context.Report(
            WetOutWords.PotWhere(part, worst.Number),
            $"pot {worst.Number} holds {Say.Weighed(worst.Mass.Value, context.Plan.Shop)} of a resin that lives {Say.Of(resin.PotLife!.Value.Time)}; "
            + $"more than {Say.Of(Most)} of it can catch fire{Say.More(burning.Count - 1)}",
            Grounds.Sure.And($"pot life of {resin.Name}", resin.PotLife).And<Mass>(worst.Mass),
            part.ResinWhere is { } named ? [new FindingLabel(named, "resin named here")] : [],
            [Edits.Fix("Pour it into a shallow tray", FixSafety.NeedsALook, WetOutWords.Set(part, "tray", part.WetOut?.Tray, "yes"))]);
    }

    /// <summary>Whether a pot in a cup is large enough and fast enough to catch fire.</summary>
    internal static bool CanBurn(ResinSystem resin, PotPlan pot) =>
        pot.Mass.Value > Most && resin.PotLife is { } life && life.Value.Time <= Fast;
}
