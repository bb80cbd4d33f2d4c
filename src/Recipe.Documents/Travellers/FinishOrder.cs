using System.Collections.Immutable;
using Recipe.Model;

namespace Recipe.Documents.Travellers;

/// <summary>
/// The finishing lines of a recipe by when they are done. The order stays the author's: what comes before the part is weighed and
/// inspected must not weigh in after it, and paint must not weigh in before.
/// </summary>
/// <param name="BeforeJoin">On halves or parts that are still apart; empty without such a join.</param>
/// <param name="BeforeInspection">Up to the weighing and the inspection.</param>
/// <param name="AfterInspection">What follows them.</param>
internal sealed record FinishOrder(ImmutableArray<FinishStep> BeforeJoin, ImmutableArray<FinishStep> BeforeInspection, ImmutableArray<FinishStep> AfterInspection)
{
    /// <summary>Words that say the part is nearly done: nothing of this is done to halves that are still apart; a vent that is filled then lets no air out of the join.</summary>
    private static readonly ImmutableArray<string> OfTheWhole = ["inspect", "fill", "seal", "abrade", "prime", "paint", "bond"];

    /// <summary>Words that add mass.</summary>
    private static readonly ImmutableArray<string> AddMass = ["seal", "prime", "paint", "bond"];

    /// <summary>The lines of a part.</summary>
    /// <param name="part">The part.</param>
    /// <param name="joinsCured">Whether its halves or parts are joined after they have cured.</param>
    public static FinishOrder Of(Part part, bool joinsCured)
    {
        // The traveller takes bag and mould off at stations of their own.
        var lines = part.Finish.Where(line => !(line is { Text.Length: 0, Verb: "debag" or "demould" })).ToImmutableArray();
        var apart = joinsCured && !part.IsAssembly ? lines.TakeWhile(line => !IsWeighing(line) && !OfTheWhole.Contains(line.Verb)).Count() : 0;
        var last = lines.Length - 1;
        while (last >= apart && !IsWeighing(lines[last]) && lines[last].Verb != "inspect")
        {
            last--;
        }

        var split = last >= apart ? last + 1 : apart + lines.Skip(apart).TakeWhile(line => !AddMass.Contains(line.Verb)).Count();
        return new FinishOrder(lines[..apart], lines[apart..split], lines[split..]);
    }

    /// <summary>Whether a line is the weighing of the finished part; a weighing with words of its own is a step like any other.</summary>
    public static bool IsWeighing(FinishStep line) => line is { Verb: "weigh", Text.Length: 0 };
}
