using System.Collections.Immutable;
using Recipe.Model;
using static Recipe.Semantics.Schema.Define;

namespace Recipe.Semantics.Schema;

/// <summary>House rules: what every part of a shop must keep.</summary>
public static class RuleSchema
{
    /// <summary>Bounds of a comparison.</summary>
    public static ImmutableArray<(string Word, RuleRelation Relation, string Doc)> Relations { get; } =
    [
        ("at-least", RuleRelation.AtLeast, "No less than this."),
        ("at-most", RuleRelation.AtMost, "No more than this."),
        ("above", RuleRelation.Above, "More than this."),
        ("below", RuleRelation.Below, "Less than this."),
        ("equals", RuleRelation.Same, "Just this."),
    ];

    /// <summary>Quantifiers.</summary>
    public static ImmutableArray<(string Word, RuleQuantifier Quantifier)> Quantifiers { get; } =
    [
        ("any", RuleQuantifier.Any),
        ("every", RuleQuantifier.Every),
        ("no", RuleQuantifier.No),
    ];

    /// <summary>Numbers taken of all things of a kind.</summary>
    public static ImmutableArray<(string Word, RuleGathering Gathering)> Gatherings { get; } =
    [
        ("count", RuleGathering.Count),
        ("sum", RuleGathering.Sum),
        ("least", RuleGathering.Least),
        ("most", RuleGathering.Most),
    ];

    /// <summary>The words that open a condition: of a kind of things, or of some conditions.</summary>
    public static ImmutableArray<WordSchema> Openings { get; } =
    [
        Condition("any", "One thing of a kind, at least, keeps what stands in the block.", "any ply { form is veil }"),
        Condition("every", "All things of a kind keep it.", "every ply { areal-weight at-most 300 g/m2 }"),
        Condition("no", "No thing of a kind keeps it.", "no ply { form is mat }"),
        Condition("count", "How many things of a kind keep it.", "count ply at-most 8 { form is fabric }"),
        Condition("sum", "The sum of something over them.", "sum ply mass at-most 2 kg { form is fabric }"),
        Condition("least", "The least of something over them.", "least pot time-left at-least 5 min"),
        Condition("most", "The most of something over them.", "most pot mass at-most 150 g"),
        Condition("either", "One of the conditions in the block, at least, is kept.", "either { process is hand; process is bagged }"),
        Condition("not", "The conditions in the block are not all kept.", "not { form is veil }"),
    ];

    private static readonly WordSchema Where = Condition("where", "Picks the things that are spoken of.", "where form is veil");

    private static readonly WordSchema Keep = Condition("keep", "A condition that begins with an expression.", "keep (resin / hardener) at-most 4");

    private static readonly WordSchema Figure = Condition("figure", "Gives a name to a value.", "figure carbon sum ply mass { fibre is standard-carbon }");

    private static readonly WordSchema When = Condition("when", "The parts that it speaks of.", "when any ply { fibre is standard-carbon }");

    private static readonly WordSchema Must = Condition("must", "What they must keep.", "must room at-least 18 degC") with { IsRequired = true };

    // A condition has a shape of its own: see ConditionBinder. Here it is a few words and perhaps a block.
    private static readonly BlockSchema Conditions = new(
        "conditions",
        "What a thing is asked: a line for each condition, begun with a fact of the thing or with one of these words.",
        [Where, Keep, .. Openings])
    {
        NameHead = new NewNameKind("a fact", NameKind.Value),
        NameLine = new WordSchema("FACT", "A fact of the thing, and what it must be.", new LinePattern(Optional(Value, Kinds.Free)), "areal-weight at-most 300 g/m2") { IsRepeatable = true },
    };

    private static readonly WordSchema Fix = new("fix", "A change that the rule offers.", LinePattern.Bare, "fix write room 20 degC")
    {
        IsRepeatable = true,
        Forms =
        [
            new("write", "another value where the recipe states a fact", new LinePattern(Arg("fact", new AnyWordKind("a fact")), Arg(Kinds.Free)), "fix write room 20 degC"),
            new("add", "a line at the end of a block of the part", new LinePattern(Arg("block", new AnyWordKind("a block of the part")), Arg(Kinds.Text)), "fix add finish \"weigh\""),
        ],
    };

    private static readonly BlockSchema Block = new(
        "rule",
        "What parts must keep, and what is said when they do not.",
        [
            Word("title", "What is wrong when it is broken, in one short line.", "title \"Carbon laid cold\"", Kinds.Text),
            Word("reason", "Why it matters.", "reason \"Cold resin is thick and leaves carbon dry\"", Kinds.Text),
            Word("remedy", "What to do about it.", "remedy \"Warm the room, or lay glass\"", Kinds.Text),
            Word("silent-when", "When it stays silent although it looks as if it should speak.", "silent-when \"the ply is a veil\"", Kinds.Text),
            Word("severity", "How bad it is.", "severity warning", Kinds.OneOf("a severity", ("advice", "good practice that is missing"), ("warning", "usually wrong"), ("error", "stops the build"))).Otherwise("warning"),
            Word("acceptable", "Whether a written reason may silence it.", "acceptable no", Kinds.YesNo).Otherwise("yes"),
            Figure,
            When,
            Must,
            Word("message", "What it says; a fact or a figure in braces stands for its value.", "message \"carbon is laid at {room}\"", Kinds.Text),
            Fix,
            Example("bad", "A recipe that must earn it."),
            Example("good", "A recipe that must not."),
            MaterialWords.Note,
            MaterialWords.Source,
        ])
    {
        IsOrdered = true,
    };

    /// <summary>The word that begins a rule.</summary>
    public static WordSchema Rule { get; } = Word(
        "rule",
        "A rule of the house: what every part must keep. It counts for the parts of this file and of each file that uses it.",
        "rule warm-carbon { title \"Carbon laid cold\"; when any ply { fibre is standard-carbon }; must room at-least 18 degC }",
        Arg("name", new NewNameKind("a name for the rule", NameKind.Rule))) with
    {
        Block = Block,
        NeedsBlock = true,
        IsRepeatable = true,
    };

    /// <summary>Whether a word stands before a kind of things: <c>any ply</c>, <c>count pot</c>.</summary>
    public static bool IsOfAKind(string word) => Quantifiers.Any(q => q.Word == word) || Gatherings.Any(g => g.Word == word);

    /// <summary>Whether a line that begins with this word holds a condition or a value, and not a fact at once.</summary>
    public static bool BeginsCondition(string word) => word == Must.Word || word == When.Word || word == Where.Word || word == Keep.Word || word == Figure.Word;

    private static WordSchema Condition(string word, string doc, string example) =>
        new(word, doc, new LinePattern(Optional(Value, Kinds.Free)), example) { IsRepeatable = true, BlockWhenAsked = word is "where" or "keep" ? null : static () => Conditions };

    // What stands in an example is a file of its own.
    private static WordSchema Example(string word, string doc) =>
        new(word, doc, LinePattern.Bare, $"{word} {{ part tray {{ process hand }} }}") { IsRepeatable = true, BlockWhenAsked = static () => RecipeSchema.File, NeedsBlock = true };
}
