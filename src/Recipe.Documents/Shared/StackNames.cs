using Recipe.Documents.Quantities;
using Recipe.Model;
using Recipe.Planning;

namespace Recipe.Documents.Shared;

/// <summary>What lines of the stack are called on the bench.</summary>
internal static class StackNames
{
    /// <summary>"3", or "2-4" for a line that is repeated, or "core", "insert".</summary>
    public static string Number(Plan plan, StackPlan line) => line switch
    {
        { Item: CoreItem } => "core",
        { Item: InsertItem } => "ins.",
        { Number: 0 } => "-",
        _ when Last(plan, line) is var last && last > line.Number => $"{Numbers.Whole(line.Number)}-{Numbers.Whole(last)}",
        _ => Numbers.Whole(line.Number),
    };

    /// <summary>What a line is made of.</summary>
    public static Material MaterialOf(StackItem item) => item switch
    {
        PlyItem ply => ply.Material,
        CoreItem core => core.Material,
        InsertItem insert => insert.Material,
        _ => throw new ArgumentException($"No material in {item.GetType().Name}.", nameof(item)),
    };

    /// <summary>Plies of a line: its repeats; a patch is one ply however many pieces it has.</summary>
    public static int Plies(StackItem item) => item is PlyItem { IsPatch: false } ? item.Count : 1;

    // The next numbered line tells whether repeats have numbers of their own.
    private static int Last(Plan plan, StackPlan line)
    {
        var next = plan.Stack.SkipWhile(other => !ReferenceEquals(other, line)).Skip(1).FirstOrDefault(other => other.Number > 0);
        return next is null ? line.Number + Plies(line.Item) - 1 : Math.Max(line.Number, Math.Min(next.Number - 1, line.Number + Plies(line.Item) - 1));
    }
}
