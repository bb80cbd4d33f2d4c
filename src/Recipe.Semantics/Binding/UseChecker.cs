using Recipe.Semantics.Findings;
using Recipe.Semantics.Reading;

namespace Recipe.Semantics.Binding;

/// <summary>What can be wrong with the <c>use</c> lines of a file: files that are not there, circles, one name from two files.</summary>
internal static class UseChecker
{
    public static void Check(FileScope file, LineContext context)
    {
        foreach (var path in file.Index.Uses)
        {
            if (file.Resolve(path.Text) is not { } used)
            {
                context.Sink.Report(ImportMissing.Create(context.At(path.Span), path.Text));
            }
            else if (FindCircle(file, used) is { } through)
            {
                context.Sink.Report(ImportCycle.Create(context.At(path.Span), through));
            }
        }

        CheckNames(file, context, static i => i.Materials);
        CheckNames(file, context, static i => i.Moulds);
        CheckNames(file, context, static i => i.Parts);
        CheckNames(file, context, static i => i.Lets);
        CheckNames(file, context, static i => i.Rules);
    }

    /// <summary>The files on the way from a used file back to the file itself; empty for a file that uses itself, null when there is no way.</summary>
    private static List<string>? FindCircle(FileScope file, FileScope used)
    {
        if (ReferenceEquals(used, file))
        {
            return [];
        }

        var cameFrom = new Dictionary<FileScope, FileScope?> { [used] = null };
        var pending = new Queue<FileScope>();
        pending.Enqueue(used);
        while (pending.TryDequeue(out var at))
        {
            foreach (var next in at.Used)
            {
                if (ReferenceEquals(next.Scope, file))
                {
                    var way = new List<string>();
                    for (var step = at; step is not null; step = cameFrom[step])
                    {
                        way.Insert(0, step.Tree.Source.Name);
                    }

                    return way;
                }

                if (cameFrom.TryAdd(next.Scope, at))
                {
                    pending.Enqueue(next.Scope);
                }
            }
        }

        return null;
    }

    /// <summary>A name that this file and a used one declare, or two used ones.</summary>
    private static void CheckNames<T>(FileScope file, LineContext context, Func<FileIndex, Dictionary<string, T>> space)
        where T : Declaration
    {
        var own = space(file.Index);
        Dictionary<string, T>? seen = null;
        foreach (var used in file.Used)
        {
            foreach (var (name, declaration) in space(used.Scope.Index))
            {
                if (own.TryGetValue(name, out var mine))
                {
                    context.Sink.Report(DuplicateName.Between(mine.Where, name, mine.Where, declaration.Where));
                }
                else if (file.Used.Count > 1 && !(seen ??= new(StringComparer.Ordinal)).TryAdd(name, declaration))
                {
                    context.Sink.Report(DuplicateName.Between(context.At(used.Path.Span), name, seen[name].Where, declaration.Where));
                }
            }
        }
    }
}
