using static Recipe.Semantics.Schema.Define;

namespace Recipe.Semantics.Schema;

/// <summary>Build records: what happened at the bench.</summary>
internal static class BuildSchema
{
    /// <summary>What a cloth of the plan should weigh and hold.</summary>
    private static readonly WordSchema Cloth = Word(
        "cloth",
        "A cloth of the stack: its dry mass inside the trim line and the resin it should hold.",
        "cloth glass-twill-163 11.5 g holds 42 % by weight",
        Arg("material", Kinds.Cloth),
        Arg(Kinds.PositiveMass),
        Needs("holds", Kinds.ResinContent, "its share of resin")).Repeatable();

    private static readonly BlockSchema Planned = new(
        "planned",
        "What the plan said when the record was begun. `recipe record` writes it; leave it alone.",
        [
            Word("process", "How it is made.", "process bagged", PartSchema.Processes),
            Word("resin", "The resin.", "resin slow-laminating-epoxy", Kinds.Resin),
            Word("mass", "Mass of the trimmed part, and the band it should lie in.", "mass 148 g band 138 g to 158 g", Arg(Kinds.Mass), Clause("band", Kinds.Mass with { TakesRange = true }, "the band")),
            Word("thickness", "Thickness of the full stack.", "thickness 1.24 mm", Kinds.Length),
            Word("fibre", "Dry fibre inside the trim line.", "fibre 57 g", Kinds.Mass).Also("fiber"),
            Word("other", "What is neither fibre nor its resin: coats, cores with what they drink, inserts, join.", "other 12 g", Kinds.Mass),
            Cloth,
            Word("kit", "Dry mass of all pieces in the kit box.", "kit 61.2 g", Kinds.Mass),
            Word("mixed", "Resin to mix.", "mixed 96 g", Kinds.Mass),
            Word("wet-out", "Time to wet out.", "wet-out 47 min", Kinds.Time),
            WetOutSchema.Laminators,
            Word("bag", "A layer of the bag, from the part outwards.", "bag peel-ply-nylon", Kinds.AnyMaterial).Repeatable(),
            Word("vacuum", "The vacuum to draw.", "vacuum 25 inHg below ambient", new VacuumKind()),
            Word("rise", "Largest rise that the leak check accepts.", "rise 30 mbar in 5 min", Arg(Kinds.Pressure), Clause("in", Kinds.Time, "the time it may take")),
            Word("cure", "The hottest of the cure, and how long it lasts.", "cure hottest 50 degC lasted 18 h", Clause("hottest", Kinds.Temperature, "the hottest"), Clause("lasted", Kinds.Time, "how long")),
            Word("heat-limit", "The hottest that the weakest thing in the heat can stand.", "heat-limit 70 degC", Kinds.Temperature),
        ]);

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
            "What happened. A word that is not in this list is kept as written: a record never refuses what happened. `__` is a blank, still to be filled in; of a word that stands twice, the last counts.",
            [
                Word("revision", "Revision of the recipe it was built from.", "revision \"3f2a91c0ab\"", Kinds.Text).Repeatable(),
                Word("by", "Initials of who made it.", "by \"K\"", Kinds.Free).Repeatable(),
                Word("helper", "Initials of who helped.", "helper \"M\"", Kinds.Free).Repeatable(),
                Word("pulls-since-release", "Parts pulled since the mould was last waxed or coated, this one not counted.", "pulls-since-release 3", Kinds.CountFromZero).Repeatable(),
                Word("changed", "What was changed on purpose since the part before.", "changed \"one veil less\"", Kinds.Free).Repeatable(),
                Word("room", "Room temperature.", "room 18 degC", Kinds.TemperatureRange).Repeatable(),
                Word("humidity", "Relative humidity.", "humidity 55 %", Kinds.Share).Repeatable(),
                Word("used", "What was taken from the shelf.", "used slow-laminating-epoxy 76 g lot \"E31\"", Arg("material", Kinds.AnyMaterial), Optional(Define.Value, new AmountKind()), Clause("lot", Kinds.Text, "lot of the tin or roll")).Repeatable(),
                Word("kit", "Dry mass of all pieces in the kit box.", "kit 61.2 g", Kinds.Mass).Repeatable(),
                Word("pot", "A pot: what the scale showed, and when.", "pot 1 resin 70.8 g hardener 21.2 g mixed-at 09:05 dead-at 10:02", Arg("number", Kinds.Count), Clause("resin", Kinds.Mass, "resin weighed in"), Clause("hardener", Kinds.Mass, "hardener weighed in"), Clause("mixed-at", Kinds.TimeOfDay, "when it was mixed"), Clause("dead-at", Kinds.TimeOfDay, "when it was used up or went off")).Repeatable(),
                Word("mixed", "Resin mixed, all pots.", "mixed 92 g", Kinds.Mass).Repeatable(),
                Word("left", "Mixed resin left in pots, brush and roller.", "left 14 g", Kinds.Mass).Repeatable(),
                Word("wet-out", "Wetting out: from when until when, over how much cloth.", "wet-out from 09:08 until 09:55 over 0.55 m2 pieces 7", Clause("from", Kinds.TimeOfDay, "when it began"), Clause("until", Kinds.TimeOfDay, "when it ended"), Clause("over", Kinds.Area, "area of all plies"), Clause("pieces", Kinds.Count, "pieces laid"), Clause("laminators", Kinds.Count, "pairs of hands"), Clause("by", Kinds.Text, "initials")).Repeatable(),
                Word("vacuum", "When the pump was switched on, what it reached, when it came off.", "vacuum on 10:20 reached 25 inHg below ambient off 22:30", Clause("on", Kinds.TimeOfDay, "pump on"), Clause("reached", new VacuumKind(), "the level reached"), Clause("off", Kinds.TimeOfDay, "pump off")).Repeatable(),
                Word("rise", "Rise of absolute pressure in the leak check.", "rise 12 mbar in 5 min", Arg(Kinds.Pressure), Clause("in", Kinds.Time, "the time of the check")).Repeatable(),
                Word("pickup", "How much heavier a layer of the bag came off than it went on.", "pickup peel-ply-nylon 5 g over 0.118 m2", Arg("material", Kinds.AnyMaterial), Arg(Kinds.Mass), Clause("over", Kinds.Area, "area of it that lay on the laminate")).Repeatable(),
                Word("cure", "The hottest the part got, and how long the cure lasted.", "cure hottest 52 degC lasted 18 h", Clause("hottest", Kinds.Temperature, "the hottest"), Clause("lasted", Kinds.Time, "how long")).Repeatable(),
                Word("demould", "How long after the first mix the part left the mould, and how warm it was kept.", "demould after 22 h at 20 degC", Clause("after", Kinds.Time, "from the first mix"), Clause("at", Kinds.Temperature, "temperature until then")).Also("demold").Repeatable(),
                Word("untrimmed", "Mass before trimming.", "untrimmed 171 g", Kinds.Mass).Repeatable(),
                Word("mass", "Mass of the trimmed part.", "mass 148 g", Kinds.Mass).Repeatable(),
                Word("thickness", "Thickness, and where it was measured.", "thickness 1.3 mm at \"mark 1\"", Arg(Kinds.Length), Clause("at", Kinds.Free, "where")).Repeatable(),
                Word("pinholes", "Pinholes in the worst square decimetre.", "pinholes 3", Kinds.CountFromZero).Repeatable(),
                Word("peel-ply", "How the peel ply looked when it came off.", "peel-ply even", Kinds.OneOf("dry, even or wet", ("dry", "white patches: starved"), ("even", "the same all over"), ("wet", "shiny pools: too much resin left"))).Repeatable(),
                Word("defect", "What is wrong with the part, in words or with a code of the build record.", "defect DR at \"2 o'clock, 40 mm from the rim\" size 12 mm", Arg(Kinds.Free), Clause("at", Kinds.Text, "where on the part"), Clause("size", Kinds.Length, "how large")).Repeatable(),
                Word("deviation", "What was done otherwise than the recipe says.", "deviation \"cured a day longer\" because \"the oven was taken\"", Arg(Kinds.Free), Clause("because", Kinds.Text, "why")).Repeatable(),
                Word("cause", "Why it went as it went: guessed or confirmed.", "cause \"hinge corner bridged, confirmed by cutting\"", Kinds.Free).Repeatable(),
                Word("action", "What changes next time.", "action \"press the corner with a bead of thickened resin\"", Kinds.Free).Repeatable(),
                Word("signed", "A hold point that was signed.", "signed H4 by \"K\" at 10:31", Arg("hold", new AnyWordKind("a hold point of the traveller")), Clause("by", Kinds.Text, "initials"), Clause("at", Kinds.TimeOfDay, "when")).Repeatable(),
                Word("disposition", "What was decided.", "disposition use because \"the dull spot is under the fitting\" by \"K\"", Arg(Kinds.OneOf("use, repair or scrap", ("use", "used as it is"), ("repair", "repaired first"), ("scrap", "scrapped"))), Clause("because", Kinds.Text, "why"), Clause("by", Kinds.Text, "initials")).Repeatable(),
                Word("planned", "What the plan said when the record was begun.", "planned { mass 148 g }").WithBlock(Planned),
                MaterialWords.Note,
                MaterialWords.Source,
            ])
        {
            IsOrdered = true,
            TakesBlanks = true,
            NameHead = new NewNameKind("any word", NameKind.Value),
            NameLine = Word("WORD", "Anything else, kept as written.", "weather \"rain, door shut\"", Optional(Define.Value, Kinds.Free)),
        },
    };
}
