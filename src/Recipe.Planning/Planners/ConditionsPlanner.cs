using Recipe.Engineering;
using Recipe.Planning.Ledger;
using UnitsNet;

namespace Recipe.Planning.Planners;

/// <summary>Room, hands and height, as the other planners use them.</summary>
/// <param name="Room">Room at lay-up; the upper end of a range.</param>
/// <param name="RoomLow">Room in the cure: the night's temperature, else the lower end of the range.</param>
/// <param name="Night">Coldest the room gets, when the shop says so.</param>
/// <param name="Resin">Resin when mixed.</param>
/// <param name="Film">Of resin spread on the part: that of the room, or of a mould that is stated to be warmer.</param>
/// <param name="Laminators">Pairs of hands.</param>
/// <param name="Altitude">Height above sea level, m.</param>
/// <param name="Ambient">Pressure of the air, Pa.</param>
internal sealed record Conditions(
    Known<Temperature> Room, Known<Temperature> RoomLow, Known<Temperature>? Night, Known<Temperature> Resin, Known<Temperature> Film, Known<int> Laminators, Num Altitude, Num Ambient);

/// <summary>Where and by whom: what `wet-out` says, else the shop, else a default.</summary>
internal static class ConditionsPlanner
{
    public static Conditions Work(PlanContext context)
    {
        var room = RoomHigh(context) ?? context.TakeKnown(Defaults.Room);
        var night = context.Shop is { } shop ? context.Figures.Temperature(shop.Night, context.ShopOwner, "night") : null;
        var altitude = Altitude(context);
        var ambient = Atmosphere.AtAltitude(Length.FromMeters(altitude.Si)).Pascals;
        return new Conditions(
            room,
            night ?? RoomLow(context) ?? room,
            night,
            ResinTemperature(context, room),
            FilmTemperature(context, room),
            Laminators(context),
            altitude,
            new Num(ambient, altitude.On));
    }

    public static ConditionsPlan Publish(PlanLedger ledger, Conditions conditions) => new()
    {
        Room = ledger.Publish(conditions.Room),
        Night = ledger.Publish(conditions.Night),
        Resin = ledger.Publish(conditions.Resin),
        Film = ledger.Publish(conditions.Film),
        Laminators = ledger.Publish(conditions.Laminators),
        Altitude = ledger.PublishLength(conditions.Altitude),
        Ambient = ledger.PublishPressure(conditions.Ambient),
    };

    // The upper end, since resin goes off soonest there.
    private static Known<Temperature>? RoomHigh(PlanContext context)
    {
        var wetOut = context.Part.WetOut;
        var shop = context.Shop;
        return context.Figures.Temperature(wetOut?.RoomHigh ?? wetOut?.Room, context.PartOwner, "room")
            ?? context.Figures.Temperature(shop?.RoomHigh ?? shop?.Room, context.ShopOwner, "room");
    }

    private static Known<Temperature>? RoomLow(PlanContext context) =>
        context.Figures.Temperature(context.Part.WetOut?.Room, context.PartOwner, "room")
        ?? context.Figures.Temperature(context.Shop?.Room, context.ShopOwner, "room");

    private static Known<Temperature> ResinTemperature(PlanContext context, Known<Temperature> room)
    {
        var figures = context.Figures;
        var stated = figures.Temperature(context.Part.Infusion?.ResinTemperature, context.PartOwner, "resin-temperature")
            ?? figures.Temperature(context.Part.WetOut?.ResinTemperature, context.PartOwner, "resin-temperature");
        return stated ?? new Known<Temperature>(room.Value, room.On | context.Ledger.Assume(Defaults.ResinTemperature));
    }

    // A thin film is as warm as what it lies on. A mould that is colder than the room is let warm up: on it the film lives longer.
    private static Known<Temperature> FilmTemperature(PlanContext context, Known<Temperature> room) =>
        context.Figures.Temperature(context.Part.WetOut?.MouldTemperature, context.PartOwner, "mould-temperature") is { } mould && mould.Value > room.Value ? mould : room;

    private static Known<int> Laminators(PlanContext context) =>
        context.Figures.Count(context.Part.WetOut?.Laminators, context.PartOwner, "laminators")
        ?? context.Figures.Count(context.Shop?.Laminators, context.ShopOwner, "laminators")
        ?? context.TakeKnown(Defaults.Laminators);

    private static Num Altitude(PlanContext context)
    {
        if (context.Shop?.Altitude is not { } figure)
        {
            return context.Take(Defaults.Altitude);
        }

        // Not through the reader: a shop may lie below the sea.
        if (figure.Value >= Atmosphere.LowestAltitude && figure.Value <= Atmosphere.HighestAltitude)
        {
            return new Num(figure.Value.Meters, context.Figures.Basis(figure, context.ShopOwner, "altitude"));
        }

        context.Miss("pressure of the air outside", $"no air pressure is known at {figure.Written}");
        return context.Take(Defaults.Altitude);
    }
}
