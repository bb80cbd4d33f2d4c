using Recipe.Text;
using UnitsNet;

namespace Recipe.Model;

/// <summary>One change of a part, as a variant would make it.</summary>
public abstract record PartEdit
{
    /// <summary>The part with the change made; an edit of a line that is not there changes nothing.</summary>
    public abstract Part Apply(Part part);

    private protected static Part WithLine(Part part, string name, Func<StackItem, StackItem?> change)
    {
        ArgumentNullException.ThrowIfNull(part);
        for (var i = 0; i < part.Stack.Length; i++)
        {
            if (part.Stack[i].Name == name)
            {
                return part with { Stack = change(part.Stack[i]) is { } item ? part.Stack.SetItem(i, item) : part.Stack.RemoveAt(i) };
            }
        }

        return part;
    }

    private protected static Part WithWetOut(Part part, SourceSpan where, Func<WetOut, WetOut> change)
    {
        ArgumentNullException.ThrowIfNull(part);
        return part with { WetOut = change(part.WetOut ?? new WetOut { Where = where }) };
    }
}

/// <summary>Changes nothing: the option not to insert a line.</summary>
public sealed record KeepAsIs : PartEdit
{
    /// <inheritdoc />
    public override Part Apply(Part part) => part;
}

/// <summary>Starts from another part or variant.</summary>
/// <param name="From">That one.</param>
public sealed record StartFrom(Part From) : PartEdit
{
    /// <inheritdoc />
    public override Part Apply(Part part) => From;
}

/// <summary>Makes a line of another material of its kind: a cloth, a core, an insert.</summary>
/// <param name="Line">Name of the line.</param>
/// <param name="Material">The material.</param>
/// <param name="Where">Where it is named.</param>
public sealed record PutMaterial(string Line, Material Material, SourceSpan Where) : PartEdit
{
    /// <inheritdoc />
    public override Part Apply(Part part) => WithLine(part, Line, item => (item, Material) switch
    {
        (PlyItem ply, Reinforcement cloth) => ply with { Material = cloth, MaterialWhere = Where },

        // A thickness that the line does not state is the sheet's.
        (CoreItem core, Core sheet) => core with { Material = sheet, MaterialWhere = Where, Thickness = ReferenceEquals(core.Thickness, core.Material.Thickness) ? sheet.Thickness : core.Thickness },
        (InsertItem insert, Insert thing) => insert with { Material = thing, MaterialWhere = Where },
        _ => item,
    });
}

/// <summary>Turns a ply.</summary>
/// <param name="Line">Name of the line.</param>
/// <param name="Orientation">How it lies.</param>
public sealed record TurnPly(string Line, Figure<Orientation> Orientation) : PartEdit
{
    /// <inheritdoc />
    public override Part Apply(Part part) => WithLine(part, Line, item => item is PlyItem ply ? ply with { Orientation = Orientation } : item);
}

/// <summary>Lays a line so many times, or leaves it out.</summary>
/// <param name="Line">Name of the line.</param>
/// <param name="Count">How often; 0 leaves it out.</param>
public sealed record RepeatLine(string Line, int Count) : PartEdit
{
    /// <inheritdoc />
    public override Part Apply(Part part) => WithLine(part, Line, item => Count == 0 ? null : item with { Count = Count });
}

/// <summary>Makes a core thicker or thinner.</summary>
/// <param name="Line">Name of the line.</param>
/// <param name="Thickness">The thickness.</param>
public sealed record PutThickness(string Line, Figure<Length> Thickness) : PartEdit
{
    /// <inheritdoc />
    public override Part Apply(Part part) => WithLine(part, Line, item => item is CoreItem core ? core with { Thickness = Thickness } : item);
}

/// <summary>Lays another line: on the one that it says it lies after, behind others that lie there; else on top of all.</summary>
/// <param name="Item">The line.</param>
public sealed record InsertLine(StackItem Item) : PartEdit
{
    /// <inheritdoc />
    public override Part Apply(Part part)
    {
        ArgumentNullException.ThrowIfNull(part);
        var at = part.Stack.Length;
        if (Item.After is { } after && part.Stack.Select((line, i) => line.Name == after ? i : -1).FirstOrDefault(i => i >= 0, -1) is >= 0 and var below)
        {
            var above = new HashSet<string>(StringComparer.Ordinal) { after };
            at = below + 1;
            while (at < part.Stack.Length && part.Stack[at].After is { } on && above.Contains(on))
            {
                above.Add(part.Stack[at].Name);
                at++;
            }
        }

        return part with { Stack = part.Stack.Insert(at, Item) };
    }
}

/// <summary>Takes another resin.</summary>
/// <param name="Resin">The resin with its hardener.</param>
/// <param name="Where">Where it is named.</param>
public sealed record PutResin(ResinSystem Resin, SourceSpan Where) : PartEdit
{
    /// <inheritdoc />
    public override Part Apply(Part part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return part with { Resin = Resin, ResinWhere = Where };
    }
}

/// <summary>Lays it drier or wetter.</summary>
/// <param name="Content">Content as laid.</param>
public sealed record PutContent(Figure<Content> Content) : PartEdit
{
    /// <inheritdoc />
    public override Part Apply(Part part) => WithWetOut(part, Content.Where!.Value, wetOut => wetOut with { Content = Content });
}

/// <summary>Lays it with more or fewer hands.</summary>
/// <param name="Laminators">Pairs of hands.</param>
public sealed record PutLaminators(Figure<int> Laminators) : PartEdit
{
    /// <inheritdoc />
    public override Part Apply(Part part) => WithWetOut(part, Laminators.Where!.Value, wetOut => wetOut with { Laminators = Laminators });
}

/// <summary>Lays it in a warmer or colder room.</summary>
/// <param name="Room">Room temperature.</param>
public sealed record PutRoom(Figure<Temperature> Room) : PartEdit
{
    /// <inheritdoc />
    public override Part Apply(Part part) => WithWetOut(part, Room.Where!.Value, wetOut => wetOut with { Room = Room, RoomHigh = null });
}
