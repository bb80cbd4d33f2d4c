using Recipe.Model;
using Recipe.Planning.Ledger;
using Recipe.Text.Units;

namespace Recipe.Planning.Planners;

/// <summary>
/// Release agents of the takeoff: every coat over surface and flange, anew for every part, in millilitres; a sheet by its area. Wax needs
/// fewer coats on a seasoned mould; the recipe's number is taken as it stands.
/// </summary>
internal static class ReleaseTakeoff
{
    public static void Add(PlanContext context, Ground? ground, int quantity, List<TakeoffWork> lines)
    {
        var mould = context.Part.Mould;
        foreach (var coat in mould?.Release ?? [])
        {
            var agent = coat.Agent;
            var owner = Owner.Of(agent);
            var isSheet = agent.Kind == ReleaseKind.Sheet;
            var one = new Num(1, Rests.None);
            var covers = isSheet ? one : context.Figures.Number(agent.CoveragePerLitre, owner, "coverage", zero: false);
            var coats = context.Figures.Count(coat.Coats, owner, "coats") ?? (isSheet ? new Known<int>(1, Rests.None) : null);
            if (covers is not { } coverage || coats is not { } count || ground is null)
            {
                context.Miss(
                    $"{agent.Label} in the takeoff",
                    covers is null ? "no coverage is known" : coats is null ? "the number of coats is not known" : "the surface is not known");
                continue;
            }

            var flange = context.Figures.Length(mould!.Flange, Owner.Of(mould), "flange", zero: true)
                ?? context.Figures.Length(context.Part.Trim, context.PartOwner, "trim", zero: true)
                ?? context.Take(Defaults.Trim);
            var area = (ground.AreaWithBorder(flange) * ground.Sides * count.Value * quantity).And(count.On);
            var net = isSheet ? area : area / coverage / 1000;
            AddLine(lines, agent, net, net + (net * context.Take(Defaults.WasteConsumable)), isSheet ? TakeoffUnits.SquareMetre : TakeoffUnits.Millilitre);
        }
    }

    private static void AddLine(List<TakeoffWork> lines, ReleaseAgent agent, Num net, Num gross, Unit unit)
    {
        for (var i = 0; i < lines.Count; i++)
        {
            if (lines[i].Group == TakeoffGroup.Release && lines[i].Name == agent.Name)
            {
                lines[i] = lines[i] with { Net = lines[i].Net + net, Gross = lines[i].Gross + gross };
                return;
            }
        }

        lines.Add(new TakeoffWork(TakeoffGroup.Release, agent, agent.Name, agent.Label, net, gross, unit, null));
    }
}
