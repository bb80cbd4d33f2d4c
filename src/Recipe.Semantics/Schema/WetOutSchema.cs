using static Recipe.Semantics.Schema.Define;

namespace Recipe.Semantics.Schema;

/// <summary>Wetting out.</summary>
internal static class WetOutSchema
{
    public static readonly WordSchema Room = Word("room", "Room temperature, or its range.", "room 20 degC", Kinds.TemperatureRange);

    public static readonly WordSchema Humidity = Word("humidity", "Relative humidity of the room.", "humidity 55 %", Kinds.Share);

    public static readonly WordSchema Laminators = Word("laminators", "Pairs of hands.", "laminators 1", Kinds.Count);

    public static readonly WordSchema Pace = Word("pace", "Time per square metre and ply for one pair of hands.", "pace 5 min/m2", Kinds.Pace);

    public static readonly WordSchema Loss = Word("loss", "Resin lost in pot, brush and roller. Of an infusion, which has no brush, only what its own wet-out says: its reserve is what stays in the pot.", "loss 30 g", Kinds.Mass);

    public static readonly BlockSchema Block = new(
        "wet-out",
        "Wetting out: who, how warm, how fast, how much.",
        [
            Room.Otherwise("the shop's room"),
            Word("resin-temperature", "Temperature of the resin when mixed.", "resin-temperature 20 degC", Kinds.Temperature).Otherwise("the room's"),
            Word("mould-temperature", "Temperature of the mould.", "mould-temperature 20 degC", Kinds.Temperature).Also("mold-temperature").Otherwise("the room's"),
            Laminators.Otherwise("the shop's"),
            Pace.Otherwise("the cloth's, or the shop's"),
            Word("resin-content", "Resin content as laid, before bleeding.", "resin-content 45 % by weight", Kinds.ResinContent).Otherwise("the cloth's for the process"),
            Word("fibre-content", "The same, said as the fibre's share.", "fibre-content 50 % by volume", Kinds.FibreContent).Also("fiber-content"),
            Word("pots", "Number of pots you plan.", "pots 3", Kinds.Count).Otherwise("planned from the pot life"),
            Word("pot", "Mass of one pot you plan, in order.", "pot 100 g", Kinds.PositiveMass).Repeatable(),
            Word("tray", "Whether the pot is a shallow tray.", "tray yes", Kinds.YesNo).Otherwise("no"),
            Word("mixing", "Mixing time of one pot.", "mixing 3 min", Kinds.Time),
            Loss,
            Word("spare", "Spare on top of the need.", "spare 10 %", Kinds.Spare),
            Word("start", "Planned start.", "start 09:00", new TimeOfDayKind()),
            Humidity,
            MaterialWords.Note,
            MaterialWords.Source,
        ]);
}
