using Recipe.Model;
using Recipe.Planning;
using UnitsNet;
using static Recipe.Documents.Tests.Plans.Make;

namespace Recipe.Documents.Tests.Plans;

/// <summary>The least a plan can hold: no mould, no plies, no resin. Every paper must still come out.</summary>
internal static class Bare
{
    public static PaperInput Input => Of(Process.Bagged);

    public static PaperInput Of(Process process) => new(
        new Plan
        {
            Part = new Part { Name = "nothing", Where = Here, Process = Stated(process, "") },
            Conditions = new ConditionsPlan
            {
                Room = Known(C(20)),
                Resin = Known(C(20)),
                Laminators = Known(1),
                Altitude = Known(Length.Zero),
                Ambient = Known(Mbar(1013.25)),
            },
            Gaps = [new Gap("everything", "the part has no plies")],
        },
        [],
        [],
        null,
        null,
        "nothing.recipe");
}
