using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Semantics.Reading;
using Recipe.Semantics.Schema;

namespace Recipe.Semantics.Binding;

/// <summary>Finishing and joining.</summary>
internal static class FinishBinder
{
    public static ImmutableArray<FinishStep> Steps((Lines Lines, Line Head)? block) =>
        block is var (lines, _)
            ? [.. lines.All.Where(l => l.Word.Word is not ("note" or "source")).Select(Step)]
            : [];

    public static Join? Join((Lines Lines, Line Head)? block)
    {
        if (block is not var (lines, head))
        {
            return null;
        }

        var tape = lines.One("tape");
        var parts = lines.One("parts");
        return new Join
        {
            Where = head.HeadWhere,
            Manner = lines.Choice("manner", word => word switch
            {
                "wet-in-wet" => JoinManner.WetInWet,
                "cured-then-taped" => JoinManner.CuredThenTaped,
                _ => JoinManner.CuredThenBonded,
            }),
            Parts = parts?.Named<PartDeclaration>("first") is { } first && parts.Named<PartDeclaration>("second") is { } second
                ? [first.Name, second.Name]
                : [],
            Overlap = lines.Figure("overlap", Si.Length),
            Seam = lines.Figure("seam", Si.Length),
            Adhesive = lines.One("adhesive")?.Named<MaterialDeclaration>(Define.Value)?.Material as ResinSystem,
            AdhesiveWhere = lines.One("adhesive")?.Where,
            BondLine = lines.Figure("bond-line", Si.Length),
            Tape = tape?.Named<MaterialDeclaration>("material")?.Material as Reinforcement,
            TapeWidth = tape?.Figure("width", Si.Length),
            TapeLayers = tape?.Reading.Count ?? 1,
            Within = lines.Figure("within", Si.Time),
            Fillet = lines.Figure("fillet", Si.LinearDensity),
            Pot = lines.Figure("pot", Si.Mass),
            Vent = lines.Figure("vent", Si.Length),
            Align = lines.Text("align"),
            Preparation = [.. lines.All.Where(l => l.Word.Word is "prepare" or "abrade").Select(Step)],
        };
    }

    private static FinishStep Step(Line line) => new(line.Word.Word, line.Text(Define.Value) ?? "", line.Where);
}
