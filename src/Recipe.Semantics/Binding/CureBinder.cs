using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Semantics.Reading;
using Recipe.Semantics.Schema;

namespace Recipe.Semantics.Binding;

/// <summary>The cure, line by line; <c>cool ... then vent</c> makes two steps of one line.</summary>
internal static class CureBinder
{
    public static Cure? Bind((Lines Lines, Line Head)? block)
    {
        if (block is not var (lines, head))
        {
            return null;
        }

        var steps = ImmutableArray.CreateBuilder<CureStep>();
        string? support = null;
        foreach (var line in lines.All)
        {
            support = line.Text("support") ?? (line.Word.Word == "support" ? line.Text(Define.Value) : null) ?? support;
            if (Step(line, support) is not { } step)
            {
                continue;
            }

            steps.Add(step);
            foreach (var then in line.Reading.FindAll("then"))
            {
                steps.Add(new CureStep { Action = ActionOf(then.Word!), Where = line.Where, Support = support });
            }
        }

        return new Cure
        {
            Where = head.HeadWhere,
            Steps = steps.ToImmutable(),
            Thermocouples = lines.Count("thermocouples"),
            Oven = lines.Text("oven"),
            OvenWhere = lines.One("oven")?.Where,
        };
    }

    private static CureStep? Step(Line line, string? support)
    {
        var step = new CureStep
        {
            Action = CureAction.Hold,
            Where = line.Where,
            UnderVacuum = line.Reading.Has("under vacuum"),
            Support = support,
        };
        return line.Word.Word switch
        {
            "hold" => step with
            {
                Temperature = Degrees(line, Define.Value),
                AtRoom = line.Reading.Find(Define.Value)?.Word is not null,
                Duration = line.Figure("for", Si.Time),
            },
            "ramp" => step with
            {
                Action = CureAction.Ramp,
                Rate = line.Figure("rate", Si.Rate),
                Temperature = line.Figure("to", Si.Temperature),
            },
            "cool" => step with
            {
                Action = CureAction.Cool,
                Rate = line.Figure("at", Si.Rate),
                Temperature = Degrees(line, "to"),
                AtRoom = line.Reading.Find("to")?.Word is not null,
            },
            "vent" or "debag" or "demould" => step with { Action = ActionOf(line.Word.Word) },
            _ => null,
        };
    }

    private static Figure<UnitsNet.Temperature>? Degrees(Line line, string name) =>
        line.Reading.Find(name) is { Word: null } ? line.Figure(name, Si.Temperature) : null;

    private static CureAction ActionOf(string word) => word switch
    {
        "vent" => CureAction.Vent,
        "debag" => CureAction.Debag,
        _ => CureAction.Demould,
    };
}
