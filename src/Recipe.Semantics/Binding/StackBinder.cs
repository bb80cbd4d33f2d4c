using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Semantics.Findings;
using Recipe.Semantics.Reading;
using Recipe.Semantics.Schema;
using Recipe.Text;
using UnitsNet;

namespace Recipe.Semantics.Binding;

/// <summary>The ply list: a variant's edits made, lines anchored where they say, materials found.</summary>
internal static class StackBinder
{
    /// <summary>Most layers of one part, repeats counted: our own limit, far above any part that is laid by hand.</summary>
    public const int MostLayers = 1_000;

    /// <summary>Binds the ply lists of a part and the variants above it into one, and names the plies that could not be understood.</summary>
    public static (ImmutableArray<StackItem> Stack, ImmutableArray<string> Unread) Bind(PartLines part, Figure<Length>? overlap, Figure<Length>? trim)
    {
        var plies = new List<Ply>();
        foreach (var level in part.Chain)
        {
            if (level.One("plies") is not { } block)
            {
                continue;
            }

            var lines = BlockReader.Read(block);
            if (ReferenceEquals(block.Word.Block, PlySchema.Edits))
            {
                PlyEdits.Apply(plies, lines);
            }
            else
            {
                plies = [.. lines.All.Where(l => l.IsNameLine).Select(l => new Ply(l, l.Head, l.HeadWhere))];
                ReportSameNames(plies);
            }
        }

        var items = PlyOrder.Arrange(plies).Select(p => (Ply: p, Item: Item(p, overlap, trim))).ToArray();
        return (
            Within([.. items.Select(i => i.Item).OfType<StackItem>()], plies),
            [.. items.Where(i => i.Item is null || i.Ply.Line.Reading.HasUnread).Select(i => i.Ply.Name)]);
    }

    /// <summary>The items up to the most that a part may have. Planning many more would take hours, and nobody would lay them.</summary>
    private static ImmutableArray<StackItem> Within(ImmutableArray<StackItem> items, List<Ply> plies)
    {
        var layers = 0L;
        for (var i = 0; i < items.Length; i++)
        {
            layers += items[i].Count;
            if (layers > MostLayers)
            {
                ReportTooMany(items, i, plies);
                return items[..i];
            }
        }

        return items;
    }

    // Those of the part below are quiet: where they alone are too many, it was said there. Else the variant's own lines made them so.
    private static void ReportTooMany(ImmutableArray<StackItem> items, int first, List<Ply> plies)
    {
        var own = plies.FindAll(ply => !ply.Line.Context.Sink.IsQuiet);
        if ((own.Find(ply => ply.NameWhere == items[first].NameWhere) ?? own.FirstOrDefault()) is { } ply)
        {
            ply.Line.Context.Sink.Report(OutOfRange.TooMany(ply.NameWhere, "plies", items.Sum(item => (long)item.Count), MostLayers, "part"));
        }
    }

    private static void ReportSameNames(List<Ply> plies)
    {
        var first = new Dictionary<string, Ply>(StringComparer.Ordinal);
        foreach (var ply in plies)
        {
            ply.Line.Context.Sink.Use(NameKind.Ply, ply.Name, ply.NameWhere, ply.NameWhere);
            if (!first.TryAdd(ply.Name, ply))
            {
                ply.Line.Context.Sink.Report(DuplicateName.Ply(ply.NameWhere, ply.Name, first[ply.Name].NameWhere));
            }
        }
    }

    /// <summary>One line, its material found; null when it has none.</summary>
    public static StackItem? Item(Ply ply, Figure<Length>? overlap, Figure<Length>? trim)
    {
        var line = ply.Line;
        if (line.Named<MaterialDeclaration>("material") is not { } declaration || line.Reading.Find("material") is not { } named)
        {
            return null;
        }

        var role = line.Text("role");
        var material = declaration.Material;
        var wanted = role switch
        {
            "core" => "a core",
            "insert" => "an insert",
            "patch" => "a fabric, ud, mat or veil",
            _ => null,
        };
        var fits = role switch
        {
            "core" => material is Core,
            "insert" => material is Insert,
            "patch" => material is Reinforcement,
            _ => true,
        };
        if (!fits)
        {
            line.Context.Sink.Report(WrongKindOfName.Create(named.Where, material.Name, wanted!, Values.Numbers.A(material.Keyword), declaration.Where));
        }

        StackItem? item = material switch
        {
            Reinforcement cloth => new PlyItem
            {
                Name = ply.Name,
                Where = line.Where,
                NameWhere = ply.NameWhere,
                Material = cloth,
                MaterialWhere = named.Where,
                Orientation = line.Payload<Orientation>("orientation"),
                IsPatch = role == "patch",
                Overlap = line.Figure("overlap", Si.Length) ?? overlap,
                Trim = line.Figure("trim", Si.Length) ?? trim,
                Step = line.Figure("step", Si.Length),
                Content = line.Payload<Content>("resin-content"),
                JoinLines = line.Figure("join-lines", Si.Count)?.Value,
                CutsDarts = line.Reading.Has("darts"),
                Face = line.Text("face") switch
                {
                    "up" => PlyFace.Up,
                    "down" => PlyFace.Down,
                    _ => null,
                },
            },
            Core core => new CoreItem
            {
                Name = ply.Name,
                Where = line.Where,
                NameWhere = ply.NameWhere,
                Material = core,
                MaterialWhere = named.Where,
                Thickness = line.Figure("thickness", Si.Length) ?? core.Thickness,
                Gap = line.Figure("gap", Si.Length),
                Chamfer = line.Figure("chamfer", Si.Angle),
            },
            Insert insert => new InsertItem
            {
                Name = ply.Name,
                Where = line.Where,
                NameWhere = ply.NameWhere,
                Material = insert,
                MaterialWhere = named.Where,
            },
            _ => null,
        };
        return item is null ? null : item with
        {
            Count = line.Reading.Count ?? 1,
            At = line.Text("at"),
            After = line.Text("after"),
            CoversShare = Cover(line, isShare: true)?.Map(si => si),
            CoversArea = Cover(line, isShare: false)?.Map(Si.Area),
            SizeLength = Sizes.Side(line, "size", 0),
            SizeWidth = Sizes.Side(line, "size", 1),
        };
    }

    private static Figure<double>? Cover(Line line, bool isShare) =>
        line.Reading.Find("covers") is { } covers && (covers.Dimension == Recipe.Text.Units.Dimension.None) == isShare
            ? line.Figure("covers", Si.Plain)
            : null;
}

/// <summary>A line of the ply list with the name it has in the stack (a replaced line keeps the name of the one it replaces).</summary>
internal sealed record Ply(Line Line, string Name, SourceSpan NameWhere);
