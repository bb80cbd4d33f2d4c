using System.Collections.Immutable;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Recipe.RuleAnalyzers.AllowList;

namespace Recipe.RulesHost.Compiling;

/// <summary>
/// From the text of a file to an assembly with counters in it. The source is held to the list of names before, and the
/// assembly after: whatever the compiler called for the author is in the assembly's tables.
/// </summary>
internal static class RuleCompiler
{
    // One version behind the newest: what is new in a language is new in ways around a list, too.
    private static readonly CSharpParseOptions Parsing = new(LanguageVersion.CSharp13, DocumentationMode.None);

    private static readonly CSharpCompilationOptions Options = new(
        OutputKind.DynamicallyLinkedLibrary,
        optimizationLevel: OptimizationLevel.Release,
        allowUnsafe: false,
        concurrentBuild: true,
        deterministic: true,
        nullableContextOptions: NullableContextOptions.Enable,
        generalDiagnosticOption: ReportDiagnostic.Default,
        warningLevel: 0);

    private static readonly SyntaxTree Usings = CSharpSyntaxTree.ParseText(
        "global using System; global using System.Collections.Generic; global using System.Linq; global using UnitsNet; global using Recipe.RuleApi;",
        Parsing);

    // A rule that uses what most rules use. What comes of it is thrown away.
    private const string WarmingUp = """
        public sealed class WarmingUp : HouseRule
        {
            public override string Name => "warming-up";
            public override string Title => "";
            public override string Reason => "";
            public override string Remedy => "";
            public override void Examine(PartFacts part, RuleReport report)
            {
                var plies = part.Plies.Where(ply => ply.Patch != true).ToList();
                foreach (var ply in plies)
                {
                    if (ply.ArealWeight is { } weight && weight.GramsPerSquareMeter > 10)
                    {
                        report.Finding(ply, $"{ply.Name} weighs {weight.GramsPerSquareMeter} g/m2");
                    }
                }
            }
        }
        """;

    // What is known of the references is kept from one file to the next.
    private static readonly CSharpCompilation ForAuthors = CSharpCompilation.Create("HouseRules", [Usings], References.ForAuthors, Options);
    private static readonly CSharpCompilation WithSteps = CSharpCompilation.Create("HouseRules", [Usings], References.WithSteps, Options);

    /// <summary>
    /// Makes the second half of the compiler ready on another core while the first half reads the first file: the first compilation is nearly
    /// all start of the compiler itself.
    /// </summary>
    public static void Warm()
    {
        if (Environment.ProcessorCount > 1)
        {
            new Thread(() => WithSteps.AddSyntaxTrees(Parse(WarmingUp)).Emit(Stream.Null), maxStackSize: 16 << 20) { IsBackground = true }.Start();
        }
    }

    /// <summary>Compiles one file.</summary>
    public static CompiledFile Compile(RuleSource file)
    {
        try
        {
            return SourceLimits.Of(file) is { } limit ? CompiledFile.Refused(limit) : CompileWithinLimits(file);
        }
        catch (InsufficientExecutionStackException)
        {
            return CompiledFile.Refused(new RuleDiagnostic(file.Name, 0, 0, "RULE010", "The code is nested too deep to be compiled. Split its longest expressions with named values."));
        }
    }

    /// <summary>Everything that is wrong with a file, in order.</summary>
    internal static IEnumerable<RuleDiagnostic> Read(RuleSource file, SyntaxTree tree)
    {
        var source = ForAuthors.AddSyntaxTrees(tree);
        return InOrder(Errors(file, source), Violations(file, source.GetSemanticModel(tree)));
    }

    /// <summary>The tree of a text.</summary>
    internal static SyntaxTree Parse(string text) => CSharpSyntaxTree.ParseText(text, Parsing);

    private static CompiledFile CompileWithinLimits(RuleSource file)
    {
        var tree = Parse(file.Text);
        if (SourceLimits.Of(file, tree.GetRoot()) is { } limit)
        {
            return CompiledFile.Refused(limit);
        }

        // The errors are asked for only when there are some: finding them means to work out every expression once more. Also beside
        // errors the list has its say, for it gives a reason where the compiler only misses a name.
        var source = ForAuthors.AddSyntaxTrees(tree);
        var model = source.GetSemanticModel(tree);
        var violations = Violations(file, model);
        if (violations.Count > 0 || tree.GetDiagnostics().Any(one => one.Severity == DiagnosticSeverity.Error))
        {
            return CompiledFile.Refused(InOrder(Errors(file, source), violations));
        }

        var (classes, refused) = Classes(file, model);
        if (refused.Count > 0)
        {
            return CompiledFile.Refused(InOrder(Errors(file, source), refused));
        }

        var counted = CSharpSyntaxTree.Create((CSharpSyntaxNode)new StepRewriter(model).Visit(tree.GetRoot()), Parsing);
        using var image = new MemoryStream();
        var emitted = WithSteps.AddSyntaxTrees(counted).Emit(image);
        if (!emitted.Success)
        {
            var error = emitted.Diagnostics.First(one => one.Severity == DiagnosticSeverity.Error);
            return Errors(file, source) is { Count: > 0 } errors
                ? CompiledFile.Refused(InOrder(errors, []))
                : CompiledFile.Refused(new RuleDiagnostic(file.Name, 0, 0, "RULE011", $"The file compiles, but not with the counter that stops endless loops: {error.GetMessage(null)}. Write the expression in more and simpler steps."));
        }

        var bytes = image.ToArray();
        return AssemblyGate.Examine(bytes).ToList() is { Count: > 0 } names
            ? CompiledFile.Refused(names.Select(name => new RuleDiagnostic(file.Name, 0, 0, Violation.Name, $"The compiler uses `{name}` for something in this file, which is not allowed in a rule. Write the expression in more and simpler steps.")))
            : new CompiledFile(bytes, classes, []);
    }

    private static (ImmutableArray<RuleClass> Classes, List<RuleDiagnostic> Refused) Classes(RuleSource file, SemanticModel model)
    {
        var classes = ImmutableArray.CreateBuilder<RuleClass>();
        var refused = new List<RuleDiagnostic>();
        foreach (var declared in model.SyntaxTree.GetRoot().DescendantNodes().OfType<ClassDeclarationSyntax>())
        {
            if (model.GetDeclaredSymbol(declared) is not INamedTypeSymbol { IsAbstract: false } type || !IsRule(type))
            {
                continue;
            }

            var name = declared.Identifier.Span;
            if (type.IsGenericType || type.ContainingType is not null || !type.InstanceConstructors.Any(one => one.Parameters.IsEmpty && one.DeclaredAccessibility == Accessibility.Public))
            {
                refused.Add(new RuleDiagnostic(file.Name, name.Start, name.End, "RULE012", $"The rule `{type.Name}` cannot be made: a rule stands at the top of the file, has no type parameters, and a public constructor without parameters."));
            }
            else if (!classes.Any(known => known.Type == SymbolNames.Of(type)))
            {
                classes.Add(new RuleClass(SymbolNames.Of(type), name.Start, name.End));
            }
        }

        if (classes.Count == 0 && refused.Count == 0)
        {
            refused.Add(new RuleDiagnostic(file.Name, 0, 0, "RULE013", "There is no rule in this file: a rule is a class that derives from `HouseRule`."));
        }

        return (classes.ToImmutable(), refused);
    }

    private static bool IsRule(INamedTypeSymbol type)
    {
        for (var parent = type.BaseType; parent is not null; parent = parent.BaseType)
        {
            if (SymbolNames.Of(parent) == "Recipe.RuleApi.HouseRule")
            {
                return true;
            }
        }

        return false;
    }

    private static List<RuleDiagnostic> Errors(RuleSource file, CSharpCompilation source) =>
        [.. source.GetDiagnostics().Where(one => one.Severity == DiagnosticSeverity.Error).Select(one => Diagnostic(file, one))];

    private static List<RuleDiagnostic> Violations(RuleSource file, SemanticModel model) =>
        [.. RuleGate.Examine(model, default).Select(one => new RuleDiagnostic(file.Name, one.Span.Start, one.Span.End, one.Code, one.Message))];

    private static IEnumerable<RuleDiagnostic> InOrder(List<RuleDiagnostic> some, List<RuleDiagnostic> others) => some.Concat(others).OrderBy(one => one.Start);

    private static RuleDiagnostic Diagnostic(RuleSource file, Diagnostic one)
    {
        var span = one.Location.IsInSource ? one.Location.SourceSpan : default;
        return new RuleDiagnostic(file.Name, span.Start, span.End, one.Id, one.GetMessage(null));
    }
}
