using static Recipe.Semantics.Schema.Define;

namespace Recipe.Semantics.Schema;

/// <summary>Build records.</summary>
internal static class BuildSchema
{
    public static readonly WordSchema Build = Word(
        "build",
        "What happened at the bench.",
        "build hatch-lid no 3 on 2026-05-14 { mass 148 g }",
        Arg("part", Kinds.Part),
        Clause("no", Kinds.CountFromZero, "serial number"),
        Clause("on", Kinds.Date, "the day")) with
    {
        IsRepeatable = true,
        Block = new BlockSchema(
            "build",
            "What happened. A word that is not in this list is kept as written: a record never refuses what happened.",
            [
                Word("room", "Room temperature.", "room 18 degC", Kinds.TemperatureRange).Repeatable(),
                Word("humidity", "Relative humidity.", "humidity 55 %", Kinds.Share).Repeatable(),
                Word("mixed", "Resin mixed, all pots.", "mixed 92 g", Kinds.Mass).Repeatable(),
                Word("mass", "Mass of the trimmed part.", "mass 148 g", Kinds.Mass).Repeatable(),
                Word("rise", "Rise of absolute pressure in the leak check.", "rise 12 mbar", Kinds.Pressure).Repeatable(),
                Word("defect", "What is wrong with the part.", "defect \"dry spot at the hinge\"", Kinds.Free).Repeatable(),
                MaterialWords.Note,
                MaterialWords.Source,
            ])
        {
            IsOrdered = true,
            NameHead = new NewNameKind("any word", NameKind.Value),
            NameLine = Word("WORD", "Anything else, kept as written.", "weather \"rain, door shut\"", Optional(Define.Value, Kinds.Free)),
        },
    };
}
