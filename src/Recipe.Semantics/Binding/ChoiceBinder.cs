using System.Collections.Immutable;
using System.Globalization;
using Recipe.Model;
using Recipe.Semantics.Findings;
using Recipe.Semantics.Reading;
using Recipe.Semantics.Schema;
using Recipe.Semantics.Values;
using Recipe.Text;

namespace Recipe.Semantics.Binding;

/// <summary>Binds the choices of an <c>explore</c>, one after another: a line that an earlier one inserts may be chosen about in a later one.</summary>
internal sealed class ChoiceBinder(Part part, FindingSink sink)
{
    private readonly List<StudyChoice> _choices = [];
    private ImmutableArray<Part> _parts = [part];

    public ImmutableArray<StudyChoice> Bind(IEnumerable<Line> lines)
    {
        var all = lines.ToList();

        // Where it starts from says which lines there are.
        foreach (var line in all.Where(line => line.Reading.Form == "part"))
        {
            _parts = [part, .. line.Reading.FindAll(Define.Value).Select(argument => (argument.Payload as PartDeclaration)?.Part).OfType<Part>()];
        }

        foreach (var line in all)
        {
            if (line.Reading.Form is { } what && Options(line, what) is { Ply: var ply, Options: { Length: > 0 } options })
            {
                Add(new StudyChoice(what, ply, options, line.Where), line);
            }
        }

        return [.. _choices];
    }

    private void Add(StudyChoice choice, Line line)
    {
        if (_choices.Find(other => other.What == choice.What && other.Ply == choice.Ply && choice.What != "insert") is { } before)
        {
            sink.Report(SaidTwice.Create(line.HeadWhere, $"choose {choice.Label}", before.Where));
            return;
        }

        _choices.Add(choice);
    }

    private (string? Ply, ImmutableArray<StudyOption> Options) Options(Line line, string what)
    {
        switch (what)
        {
            case "insert":
                return Inserted(line);
            case "resin":
                return (null, Each(line, argument => Resin(argument) is { } resin ? new PutResin(resin, argument.Where) : null));
            case "hardener":
                return (null, Each(line, Hardener));
            case "resin-content":
                return (null, SpreadBinder.Contents(line));
            case "laminators":
                return (null, Each(line, argument => new PutLaminators(Stated(argument, (int)argument.Si))));
            case "room":
                return (null, SpreadBinder.Quantities(line, (si, written, where) => new PutRoom(new(Si.Temperature(si), Basis.Stated, written, where))));
            case "part":
                return (null, Each(line, argument => (argument.Payload as PartDeclaration)?.Part is { } start ? new StartFrom(start) : null));
        }

        // The other ones are about a line of the ply list.
        if (line.Reading.Find("ply") is not { Word: { } ply } named || !Knows(named, ply))
        {
            return (null, []);
        }

        return (ply, what switch
        {
            "material" => Each(line, argument => Material(argument, ply)),
            "orientation" when Is<PlyItem>(named, ply, "it has no direction") => Each(line, argument => argument.Payload is Orientation way ? new TurnPly(ply, Stated(argument, way)) : null),
            "repeats" => Each(line, argument => Repeats(argument, ply)),
            "thickness" when Is<CoreItem>(named, ply, "a cloth is as thick as its fibre and resin make it") =>
                SpreadBinder.Quantities(line, (si, written, where) => new PutThickness(ply, new(Si.Length(si), Basis.Stated, written, where))),
            _ => [],
        });
    }

    /// <summary>The options of a line, one for each of its values; one that stands there twice is reported.</summary>
    private static ImmutableArray<StudyOption> Each(Line line, Func<Argument, PartEdit?> edit)
    {
        var options = ImmutableArray.CreateBuilder<StudyOption>();
        var first = new Dictionary<string, SourceSpan>(StringComparer.Ordinal);
        foreach (var argument in line.Reading.FindAll(Define.Value))
        {
            if (!first.TryAdd(argument.Written, argument.Where))
            {
                line.Context.Sink.Report(SaidTwice.Create(argument.Where, argument.Written, first[argument.Written]));
            }
            else if (edit(argument) is { } made)
            {
                options.Add(new StudyOption(argument.Written, made));
            }
        }

        return options.ToImmutable();
    }

    private static Figure<T> Stated<T>(Argument argument, T value) => new(value, Basis.Stated, argument.Written, argument.Where);

    private IEnumerable<StackItem> Lines => _parts.SelectMany(p => p.Stack).Concat(_choices.SelectMany(choice => choice.Options).Select(option => option.Edit).OfType<InsertLine>().Select(insert => insert.Item));

    // Every part that it may start from must have the line.
    private bool Knows(Argument named, string ply)
    {
        var item = Lines.FirstOrDefault(item => item.Name == ply);
        sink.Use(NameKind.Ply, ply, named.Where, item?.NameWhere);
        var inserted = item is not null && !_parts.Any(p => p.Stack.Contains(item));
        if (item is null || (!inserted && _parts.Any(p => p.Stack.All(other => other.Name != ply))))
        {
            sink.Report(UnknownPly.Create(named.Where, ply, Lines.Select(other => other.Name).Where(name => name != ply)));
            return false;
        }

        return true;
    }

    private bool Is<T>(Argument named, string ply, string because)
        where T : StackItem
    {
        if (Lines.Where(item => item.Name == ply).All(item => item is T))
        {
            return true;
        }

        sink.Report(NotUnderstood.NotHere(named.Where, $"`{ply}`", because));
        return false;
    }

    private PutMaterial? Material(Argument argument, string ply)
    {
        if (argument.Payload is not MaterialDeclaration declaration)
        {
            return null;
        }

        var material = declaration.Material;
        foreach (var item in Lines.Where(item => item.Name == ply))
        {
            var (fits, wanted) = item switch
            {
                PlyItem => (material is Reinforcement, "a fabric, ud, mat or veil"),
                CoreItem => (material is Core, "a core"),
                _ => (material is Insert, "an insert"),
            };
            if (!fits)
            {
                sink.Report(WrongKindOfName.Create(argument.Where, material.Name, wanted, Numbers.A(material.Keyword), declaration.Where));
                return null;
            }
        }

        return new PutMaterial(ply, material, argument.Where);
    }

    private RepeatLine? Repeats(Argument argument, string ply)
    {
        if (argument.Si > Counts.Most)
        {
            sink.Report(OutOfRange.Create(argument.Where, "repeats", argument.Written, string.Create(CultureInfo.InvariantCulture, $"at most {Counts.Most}")));
            return null;
        }

        if (argument.Si == 0 && Lines.FirstOrDefault(item => item.After == ply) is { } above)
        {
            sink.Report(UnknownPly.Removed(argument.Where, above.Name, ply, above.Where));
        }

        return new RepeatLine(ply, (int)argument.Si);
    }

    private (string? Ply, ImmutableArray<StudyOption> Options) Inserted(Line line)
    {
        if (line.Reading.Find("name") is not { Word: { } name } named)
        {
            return (null, []);
        }

        sink.Use(NameKind.Ply, name, named.Where, named.Where);
        if (Lines.FirstOrDefault(item => item.Name == name) is { } taken)
        {
            sink.Report(DuplicateName.Ply(named.Where, name, taken.NameWhere));
            return (null, []);
        }

        if (line.Reading.Find("after") is { Word: { } after } below)
        {
            if (!Knows(below, after))
            {
                return (null, []);
            }

            if (_choices.Find(choice => choice.Ply == after && choice.PutsLine && choice.Options.Any(option => option.Edit is RepeatLine { Count: 0 } or KeepAsIs)) is not null)
            {
                sink.Report(UnknownPly.Removed(below.Where, name, after, line.Where));
            }
        }

        return StackBinder.Item(new Ply(line, name, named.Where), part.Overlap, part.Trim) is { } item
            ? (name, [new StudyOption("no", new KeepAsIs()), new StudyOption("yes", new InsertLine(item))])
            : (null, []);
    }

    /// <summary>A resin that needs no word which hardener: it has one, or the part says which.</summary>
    private ResinSystem? Resin(Argument argument)
    {
        if (argument.Payload is not MaterialDeclaration { Material: ResinSystem resin })
        {
            return null;
        }

        if (part.Resin?.Name == resin.Name)
        {
            return part.Resin;
        }

        if (resin.Hardeners.Length > 1)
        {
            sink.Report(NotUnderstood.NotHere(
                argument.Where, $"`{resin.Name}`, which has the hardeners {string.Join(", ", resin.Hardeners.Select(h => h.Hardener))},", "write a variant that says `resin ... with ...` and choose among parts"));
            return null;
        }

        return resin.Hardeners.Length == 1 ? resin.Hardeners[0] with { Hardeners = resin.Hardeners } : resin;
    }

    private PutResin? Hardener(Argument argument)
    {
        if (part.Resin is not { } resin)
        {
            sink.Report(NotUnderstood.NotHere(argument.Where, $"`{argument.Word}`", "the part has no resin"));
            return null;
        }

        var chosen = resin.Hardeners.FirstOrDefault(hardener => hardener.Hardener == argument.Word);
        sink.Use(NameKind.Hardener, argument.Word!, argument.Where, chosen is null ? null : resin.Where);
        if (chosen is null)
        {
            sink.Report(UnknownName.Create(argument.Where, argument.Word!, $"a hardener of `{resin.Name}`", resin.Hardeners.Select(hardener => hardener.Hardener!)));
            return null;
        }

        return new PutResin(chosen with { Hardeners = resin.Hardeners }, argument.Where);
    }
}
