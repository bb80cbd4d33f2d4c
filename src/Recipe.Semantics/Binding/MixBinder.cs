using Recipe.Model;
using Recipe.Semantics.Reading;
using Recipe.Semantics.Schema;

namespace Recipe.Semantics.Binding;

/// <summary>Mixing a pot, and handling what comes mixed.</summary>
internal static class MixBinder
{
    public static Mixing? Mixing((Lines Lines, Line Head)? block) =>
        block is var (lines, head)
            ? new Mixing
            {
                Where = head.HeadWhere,
                Steps = [.. lines.All.Select(Step).OfType<MixStep>()],
                Cup = lines.Choice("cup", word => word switch
                {
                    "clean" => MixingCup.Clean,
                    "waxed" => MixingCup.Waxed,
                    _ => MixingCup.Foam,
                }),
                KeepsSample = lines.One("sample") is not null,
            }
            : null;

    public static PrepregHandling? Prepreg((Lines Lines, Line Head)? block)
    {
        if (block is not var (lines, head))
        {
            return null;
        }

        var thaw = lines.One("thaw");
        var debulk = lines.One("debulk");
        return new PrepregHandling
        {
            Where = head.HeadWhere,
            Freezer = lines.Figure("freezer", Si.Temperature),
            Thaw = thaw?.Figure(Define.Value, Si.Time),
            ThawsSealed = thaw is null ? null : thaw.Reading.Has("sealed") ? true : thaw.Reading.Has("unwrapped") ? false : null,
            OutTime = lines.Figure("out-time", Si.Time),
            DebulkEvery = debulk?.Figure("every", Si.Count),
            DebulkFor = debulk?.Figure("for", Si.Time),
            EdgesBreathe = lines.Choice("edges", word => word == "breathing"),
        };
    }

    private static MixStep? Step(Line line) => line.Word.Word switch
    {
        "add" => line.Text("what") switch
        {
            "resin" => Of(line, MixAction.AddResin),
            "hardener" => Of(line, MixAction.AddHardener),
            "accelerator" => Of(line, MixAction.AddAccelerator),
            "filler" => Of(line, MixAction.AddFiller),
            "pigment" => Of(line, MixAction.AddPigment),
            "solvent" => Of(line, MixAction.AddSolvent),
            _ => null,
        },
        "stir" => Of(line, MixAction.Stir) with { Time = line.Figure(Define.Value, Si.Time) },
        "scrape" => Of(line, MixAction.Scrape),
        "second-cup" => Of(line, MixAction.SecondCup),
        _ => null,
    };

    private static MixStep Of(Line line, MixAction action) => new(action, line.Where) { Parts = line.Figure("parts", Si.Plain) };
}
