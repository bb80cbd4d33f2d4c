using Recipe.Model;
using Recipe.Semantics.Findings;
using Recipe.Semantics.Reading;
using Recipe.Semantics.Schema;
using Recipe.Syntax;
using Recipe.Text.Findings;
using Recipe.Text.Units;

namespace Recipe.Semantics.Binding;

/// <summary>The shop, its shelf and its prices.</summary>
internal static class ShopBinder
{
    public static Shop Shop(Line head)
    {
        var lines = BlockReader.Read(head);
        var pump = lines.One("pump");
        var name = head.Reading.Find("name");
        if (name is not null)
        {
            head.Context.Sink.Use(NameKind.Shop, name.Word!, name.Where, name.Where);
        }

        return new Shop
        {
            Name = name?.Word ?? "shop",
            Where = name?.Where ?? head.HeadWhere,
            Altitude = lines.Figure("altitude", Si.Length),
            Room = lines.Figure("room", Si.Temperature),
            RoomHigh = lines.One("room")?.High(Define.Value, Si.Temperature),
            Night = lines.Figure("night", Si.Temperature),
            Humidity = lines.Plain("humidity"),
            Laminators = lines.Count("laminators"),
            Pace = lines.Figure("pace", Si.Pace),
            Pump = pump?.Figure(Define.Value, Si.Flow),
            PumpUltimate = pump?.Figure("ultimate", Si.Pressure),
            PumpExhaust = pump?.Choice("exhaust", word => word == "indoors" ? PumpExhaust.Indoors : PumpExhaust.Outdoors),
            PumpBand = pump?.Figure("band", Si.Pressure),
            CheckValve = lines.YesNoFigure("check-valve"),
            GaugeChecked = lines.One("gauge-checked")?.Reading.Find(Define.Value)?.Date,
            GaugeCheckedWhere = lines.One("gauge-checked")?.Where,
            OvenCutOut = lines.One("oven")?.Choice("cut-out", word => word == "yes"),
            OvenWhere = lines.One("oven")?.Where,
            StoreTemperature = lines.Figure("store", Si.Temperature),
            StoreTemperatureHigh = lines.One("store")?.High(Define.Value, Si.Temperature),
            StoreHumidity = lines.Plain("store-humidity"),
            Closes = lines.Payload<TimeOnly>("closes"),
            Safety = Safety(lines.One("safety")),
            ScaleResolution = lines.Figure("scale", Si.Mass),
            OvenLimit = lines.One("oven")?.Figure("limit", Si.Temperature),
            Loss = lines.Figure("loss", Si.Mass),
            Contents = [.. lines.Many("resin-content").Select(ContentOf).OfType<ShopContent>()],
            Pickups = [.. lines.Many("resin-pickup").Select(PickupOf).OfType<ShopPickup>()],
            Currency = Currency(lines.One("currency")),
            Units = lines.Text("units") switch
            {
                "us" => Model.UnitSystem.Us,
                "both" => Model.UnitSystem.Both,
                _ => Model.UnitSystem.Metric,
            },

            // A shop that measures in inches has letter in its printer, until it says otherwise.
            Paper = (lines.Text("paper") ?? (lines.Text("units") == "us" ? "letter" : "a4")) == "letter" ? PaperSize.Letter : PaperSize.A4,
        };
    }

    /// <summary>Height above the sea in m that a shop block says; nobody is told what is wrong with it.</summary>
    public static double? AltitudeIn(EntrySyntax entry, WordSchema word, LineContext quiet) =>
        BlockReader.Read(entry.Block, word.Block!, quiet).One("altitude")?.Reading.Find(Define.Value)?.Si;

    private static ShopSafety? Safety(Line? head)
    {
        if (head is null)
        {
            return null;
        }

        var lines = BlockReader.Read(head);
        return new ShopSafety
        {
            Where = head.HeadWhere,
            Gloves = lines.Text("gloves"),
            GlovesWhere = lines.One("gloves")?.Where,
            Respirator = lines.Text("respirator"),
            Ventilation = lines.Text("ventilation"),
            Dust = lines.Choice("dust", word => word switch
            {
                "wet" => DustControl.Wet,
                "extracted" => DustControl.Extracted,
                _ => DustControl.Dry,
            }),
            Leftover = lines.Choice("leftover", word => word switch
            {
                "tray" => LeftoverPlace.Tray,
                "outdoors" => LeftoverPlace.Outdoors,
                "water" => LeftoverPlace.Water,
                _ => LeftoverPlace.Bin,
            }),
            Spills = lines.Choice("spills", word => word switch
            {
                "mineral" => SpillBinder.Mineral,
                "rags" => SpillBinder.Rags,
                _ => SpillBinder.Sawdust,
            }),
            Peroxide = lines.Choice("peroxide", word => word switch
            {
                "apart" => PeroxidePlace.Apart,
                "with-accelerator" => PeroxidePlace.WithAccelerator,
                _ => PeroxidePlace.Warm,
            }),
            SolventsApart = lines.Choice("solvents", word => word == "apart"),
            ToolsEnclosed = lines.Choice("tools", word => word == "enclosed"),
        };
    }

    private static ShopContent? ContentOf(Line line) =>
        line.Named<MaterialDeclaration>("material") is { } material && line.Text("process") is { } process && line.Payload<Content>(Define.Value) is { } content
            ? new ShopContent(material.Name, PartBinder.ProcessOf(process), content, line.Where)
            : null;

    private static ShopPickup? PickupOf(Line line) =>
        line.Named<MaterialDeclaration>("material") is { } material && line.Figure(Define.Value, Si.ArealWeight) is { } pickup
            ? new ShopPickup(material.Name, pickup, line.Where)
            : null;

    public static IEnumerable<StockLine> Stock(Line block)
    {
        foreach (var line in BlockReader.Read(block).All)
        {
            if (line.HeadDeclaration is not { } material)
            {
                continue;
            }

            var amount = line.Reading.Find(Define.Value);
            CheckDates(line, "received", "expires");
            CheckDates(line, "opened", "expires");
            CheckDates(line, "received", "opened");
            var offcut = line.Reading.Find("offcut");
            var sides = offcut?.Payload as Side[];
            var counted = amount?.Payload as StockAmount? ?? (sides is null ? null : new StockAmount(sides[0].Si * sides[1].Si, DimensionNames.Area));
            yield return new StockLine(material.Name, counted, amount?.Written ?? offcut?.Written ?? "", line.Where)
            {
                Offcut = sides is null ? null : (Si.Length(sides[0].Si), Si.Length(sides[1].Si)),
                Lot = line.Text("lot"),
                Counted = line.Reading.Find("counted")?.Date,
                Received = line.Reading.Find("received")?.Date,
                Opened = line.Reading.Find("opened")?.Date,
                Expires = line.Reading.Find("expires")?.Date,
            };
        }
    }

    public static IEnumerable<PriceLine> Prices(Line block)
    {
        foreach (var line in BlockReader.Read(block).All)
        {
            if (line.HeadDeclaration is { } material && MaterialBinder.PriceOf(line) is { } price)
            {
                yield return new PriceLine(material.Name, price, line.Where);
            }
        }
    }

    public static IEnumerable<SeveritySetting> Severities(Line block)
    {
        foreach (var line in BlockReader.Read(block).All)
        {
            if (line.Text(Define.Value) is { } word)
            {
                yield return new SeveritySetting(
                    line.Head,
                    word switch
                    {
                        "advice" => Severity.Advice,
                        "warning" => Severity.Warning,
                        _ => Severity.Error,
                    },
                    line.Where);
            }
        }
    }

    private static void CheckDates(Line line, string earlier, string later)
    {
        if (line.Reading.Find(earlier) is { Date: { } first } a && line.Reading.Find(later) is { Date: { } second } b && second < first)
        {
            line.Context.Sink.Report(DatesBackwards.Create(b.Where, later, second, a.Where, earlier, first));
        }
    }

    private static string? Currency(Line? line)
    {
        if (line?.Reading.Find(Define.Value) is not { Word: { } code } argument)
        {
            return null;
        }

        if (UnitTable.TryParse(code, out var unit) && unit.Currency == code)
        {
            return code;
        }

        var finding = NotUnderstood.NotHere(argument.Where, $"`{code}`", "write an ISO 4217 code such as EUR or USD");
        var capitals = code.ToUpperInvariant();
        line.Context.Sink.Report(UnitTable.TryParse(capitals, out var meant) && meant.Currency == capitals
            ? finding with { Fixes = [new Fix($"Write {capitals}", FixSafety.Safe, new TextEdit(argument.Where, capitals))] }
            : finding);
        return null;
    }
}
