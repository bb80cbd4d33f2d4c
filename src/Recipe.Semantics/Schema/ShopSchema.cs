using static Recipe.Semantics.Schema.Define;

namespace Recipe.Semantics.Schema;

/// <summary>The shop, its shelf and its prices.</summary>
internal static class ShopSchema
{
    public static readonly WordSchema Shop = Word("shop", "Where the shop stands and what it has.", "shop ours { altitude 250 m }", Arg("name", Kinds.NewName(NameKind.Shop))) with
    {
        NeedsBlock = true,
        Block = new BlockSchema(
            "shop",
            "The shop.",
            [
                Word("altitude", "Height above sea level.", "altitude 250 m", Kinds.Altitude),
                WetOutSchema.Room with { Example = "room 18 to 22 degC" },
                Word("night", "The coldest the room gets at night.", "night 14 degC", Kinds.Temperature),
                WetOutSchema.Humidity,
                WetOutSchema.Laminators,
                WetOutSchema.Pace,
                Word("pump", "Free flow of the pump and the lowest pressure it reaches.", "pump 2.5 cfm ultimate 20 mbar absolute", Arg(Kinds.Flow), Clause("ultimate", new VacuumKind(OnlyAbsolute: true), "lowest absolute pressure"), Clause("exhaust", Kinds.OneOf("where it blows", ("indoors", "into the room"), ("outdoors", "out of the room")), "where its oil mist goes"), Clause("band", Kinds.Pressure, "rise at which a switched pump starts again")),
                Word("check-valve", "Whether a valve or reservoir holds the bag when the pump stops.", "check-valve yes", Kinds.YesNo),
                Word("gauge-checked", "The day the gauge was last compared with another.", "gauge-checked 2026-01-10", Kinds.Date),
                Word("scale", "Resolution of the scale.", "scale 0.1 g", Kinds.PositiveMass),
                Word("oven", "What the oven, lamp or heater can do.", "oven limit 80 degC", Needs("limit", Kinds.Temperature, "the hottest it gets"), Clause("cut-out", Kinds.YesNo, "whether a second thermostat of its own cuts it off")),
                Word("store", "Temperature where materials are kept.", "store 15 to 25 degC", Kinds.TemperatureRange),
                Word("store-humidity", "Relative humidity where materials are kept.", "store-humidity 50 %", Kinds.Share),
                Word("closes", "When the shop closes.", "closes 18:00", new TimeOfDayKind()),
                Word("safety", "Who is protected from what, and how.", "safety { gloves nitrile }").WithBlock(SafetySchema.Block),
                WetOutSchema.Loss,
                Word("resin-content", "Resin that stays in a cloth, as this shop finds it.", "resin-content glass-twill-163 bagged 43 % by weight", Arg("material", Kinds.Cloth), Arg("process", PartSchema.Processes), Arg(Kinds.ResinContent)).Repeatable(),
                Word("resin-pickup", "Resin that a layer of the bag carries away, as this shop finds it.", "resin-pickup peel-ply-nylon 38 g/m2", Arg("material", Kinds.AnyMaterial), Arg(Kinds.ArealWeight)).Repeatable(),
                Word("currency", "ISO 4217 code of sums.", "currency EUR", new AnyWordKind("a currency code")),
                Word("units", "Which units papers show beside yours.", "units metric", Kinds.OneOf("metric, us or both", ("metric", "metric"), ("us", "US customary"), ("both", "both"))).Otherwise("metric"),
                Word("paper", "Paper size.", "paper a4", Kinds.OneOf("a4 or letter", ("a4", "210 x 297 mm"), ("letter", "8.5 x 11 in"))).Otherwise("a4; letter where units are us"),
                MaterialWords.Note,
                MaterialWords.Source,
            ]),
    };

    public static readonly WordSchema Stock = Word("stock", "What is on the shelf.", "stock { glass-twill-163 12 m2 lot \"G7\" }").Repeatable() with
    {
        NeedsBlock = true,
        Block = new BlockSchema("stock", "What is on the shelf, a line for each tin or roll.")
        {
            NameHead = Kinds.AnyMaterial,
            NameLine = Word(
                "NAME",
                "An amount of a material.",
                "slow-laminating-epoxy 2.4 kg lot \"E31\" opened 2026-02-01 expires 2027-02-01",
                Optional(Define.Value, new AmountKind()),
                Clause("lot", Kinds.Text, "lot of the tin or roll"),
                Clause("offcut", Kinds.Rectangle, "an offcut of this size, along the roll x across it; it is used before the roll"),
                Clause("counted", Kinds.Date, "the day the amount was counted; what build records use from then on comes off it"),
                Clause("received", Kinds.Date, "the day it came"),
                Clause("opened", Kinds.Date, "the day it was opened"),
                Clause("expires", Kinds.Date, "the day it expires")),
        },
    };

    public static readonly WordSchema Prices = Word("prices", "Prices that stand apart from their material.", "prices { glass-twill-163 6.40 EUR/m2 on 2026-04-01 }").Repeatable() with
    {
        NeedsBlock = true,
        Block = new BlockSchema("prices", "A line for each material.")
        {
            NameHead = Kinds.AnyMaterial,
            NameLine = Word(
                "NAME",
                "What a material costs.",
                "glass-twill-163 6.40 EUR/m2 on 2026-04-01",
                Arg(new PriceKind()),
                Clause("on", Kinds.Date, "the day of the price")),
        },
    };
}
