namespace Recipe.Architecture.Tests;

/// <summary>One step of the stair.</summary>
/// <param name="Name">The project.</param>
/// <param name="Knows">The projects it may refer to and whose types it may use, all below it.</param>
/// <param name="Packages">The packages it may use.</param>
/// <param name="TouchesTheWorld">Whether it may know files, the console, the clock and the machine.</param>
internal sealed record Step(string Name, string[] Knows, string[] Packages, bool TouchesTheWorld = false);

/// <summary>The law of who knows whom. A new edge is a decision: it is made here and in DEVELOPERS.md, not in a project file.</summary>
internal static class Stair
{
    private const string UnitsNet = "UnitsNet";

    public static IReadOnlyList<Step> Steps { get; } =
    [
        new("Recipe.Text", [], []),
        new("Recipe.Syntax", ["Recipe.Text"], ["Pidgin"]),
        new("Recipe.Model", ["Recipe.Text"], [UnitsNet]),
        new("Recipe.Semantics", ["Recipe.Text", "Recipe.Syntax", "Recipe.Model"], [UnitsNet]),

        // Pure calculations: neither syntax, nor a recipe's meaning, nor findings.
        new("Recipe.Engineering", [], [UnitsNet, "NetTopologySuite"]),

        // Knows what a recipe means and not how it was written.
        new("Recipe.Planning", ["Recipe.Text", "Recipe.Model", "Recipe.Semantics", "Recipe.Engineering"], [UnitsNet]),

        new(
            "Recipe.Checks",
            ["Recipe.Text", "Recipe.Syntax", "Recipe.Model", "Recipe.Semantics", "Recipe.Engineering", "Recipe.Planning"],
            [UnitsNet]),

        // Papers show the plan. They know no syntax and no condition of a finding. PDFsharp comes in several assemblies.
        new(
            "Recipe.Documents",
            ["Recipe.Text", "Recipe.Model", "Recipe.Engineering", "Recipe.Planning"],
            [UnitsNet, "PDFsharp", "PdfSharp", "PdfSharp.System", "PdfSharp.Shared", "SpreadCheetah", "QRCoder"]),

        new("Recipe.HouseRules", ["Recipe.Text", "Recipe.Model", "Recipe.Semantics", "Recipe.Engineering", "Recipe.Planning"], [UnitsNet]),

        // What authors of rules in C# compile against: facts in, findings out.
        new("Recipe.RuleApi", [], [UnitsNet]),

        // What the program and the process of rules say to each other.
        new("Recipe.RuleProtocol", ["Recipe.RuleApi"], []),

        // The list of what such a rule may do, as an analyzer for editors. The host compiles the same source files.
        new("Recipe.RuleAnalyzers", [], ["Microsoft.CodeAnalysis", "Microsoft.CodeAnalysis.CSharp"]),

        // Starts the rules host for the doors, and keeps the list of trusted folders.
        new("Recipe.RulesProcess", ["Recipe.RuleApi", "Recipe.RuleProtocol"], [UnitsNet, "System.IO.Hashing"], TouchesTheWorld: true),

        // A process of its own: the only user of the C# compiler, which cannot live in the native binary. It shares the protocol with
        // the client and nothing with the language.
        new(
            "Recipe.RulesHost",
            ["Recipe.RuleApi", "Recipe.RuleProtocol", "Recipe.RulesProcess"],
            [UnitsNet, "Microsoft.CodeAnalysis", "Microsoft.CodeAnalysis.CSharp"],
            TouchesTheWorld: true),

        new(
            "Recipe.Compiler",
            [
                "Recipe.Text", "Recipe.Syntax", "Recipe.Model", "Recipe.Semantics", "Recipe.Engineering", "Recipe.Planning",
                "Recipe.Checks", "Recipe.Documents", "Recipe.HouseRules", "Recipe.RuleApi", "Recipe.RuleProtocol",
            ],
            [UnitsNet, "System.IO.Hashing"]),

        // Editor features in editor terms: offsets, labels, edits. No protocol.
        new(
            "Recipe.Editing",
            ["Recipe.Text", "Recipe.Syntax", "Recipe.Model", "Recipe.Semantics", "Recipe.Planning", "Recipe.Compiler"],
            [UnitsNet]),

        // Helps the doors: a page of this machine that follows a file.
        new("Recipe.Preview", ["Recipe.Text", "Recipe.Compiler", "Recipe.Disk", "Recipe.RuleProtocol"], [], TouchesTheWorld: true),

        // What the doors and the preview write to disk, whole or not at all. It knows nothing of recipes.
        new("Recipe.Disk", [], [], TouchesTheWorld: true),

        // The two doors. One native binary holds both.
        new("Recipe.LanguageServer", ["Recipe.Text", "Recipe.Compiler", "Recipe.Editing", "Recipe.Preview", "Recipe.Disk", "Recipe.RuleProtocol"], [], TouchesTheWorld: true),
        new(
            "Recipe.Cli",
            // The host only to lay it beside the program.
            ["Recipe.Text", "Recipe.Compiler", "Recipe.LanguageServer", "Recipe.Preview", "Recipe.Disk", "Recipe.RuleProtocol", "Recipe.RulesProcess", "Recipe.RulesHost"],
            ["System.CommandLine"],
            TouchesTheWorld: true),
    ];

    public static Step Of(string project) =>
        Steps.SingleOrDefault(step => step.Name == project)
        ?? throw new InvalidOperationException($"{project} has no step in the stair: add one to {nameof(Stair)}.cs and to DEVELOPERS.md.");
}
