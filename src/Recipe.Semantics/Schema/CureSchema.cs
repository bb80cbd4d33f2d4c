using static Recipe.Semantics.Schema.Define;

namespace Recipe.Semantics.Schema;

/// <summary>The cure, down the page.</summary>
internal static class CureSchema
{
    private static readonly FlagPattern UnderVacuum = Flag("under vacuum", "the vacuum is on");
    private static readonly ClausePattern Support = Clause("support", new AnyWordKind("a word for the support"), "what supports the part off its mould");

    private static readonly ChoiceKind Ends = new("vent, debag or demould",
    [
        new("vent", "the vacuum goes"),
        new("debag", "the bag comes off"),
        new("demould", "the part leaves the mould") { Regional = ["demold"] },
    ]);

    public static readonly BlockSchema Block = new(
        "cure",
        "The cure, from the first hold down.",
        [
            Word("hold", "Holds a temperature for a time.", "hold 20 degC for 12 h under vacuum", Arg(Kinds.TemperatureOrRoom), Needs("for", Kinds.LongTime, "how long"), UnderVacuum, Support)
                .Repeatable().Also("dwell", "soak"),
            Word("ramp", "Goes to a temperature at a rate.", "ramp 0.5 degC/min to 50 degC", Optional("rate", Kinds.Rate), Needs("to", Kinds.Temperature, "where to"), UnderVacuum, Support)
                .Repeatable(),
            Word(
                "cool",
                "Goes down to a temperature, at a rate or by itself.",
                "cool to 30 degC then vent",
                Needs("to", Kinds.TemperatureOrRoom, "where to"),
                Clause("at", Kinds.Rate, "how fast"),
                Clause("then", Ends, "what follows") with { IsRepeated = true },
                UnderVacuum,
                Support).Repeatable(),
            Word("vent", "Lets the vacuum go.", "vent").Repeatable(),
            Word("debag", "Takes the bag off.", "debag").Repeatable(),
            Word("demould", "Takes the part off the mould; what follows is cured free-standing.", "demould", Support).Repeatable().Also("demold"),
            Word("support", "What supports the part once it is off the mould.", "support cradle", new AnyWordKind("a word for the support")),
            Word("oven", "What heats, in words.", "oven \"heat-lamp box\"", Kinds.Free),
            Word("thermocouples", "Number of thermocouples.", "thermocouples 2", Kinds.CountFromZero),
            MaterialWords.Note,
            MaterialWords.Source,
        ])
    {
        IsOrdered = true,
    };
}
