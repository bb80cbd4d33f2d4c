using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Recipe.RuleAnalyzers.AllowList;

/// <summary>A format is written out and plain: one like <c>D999999999</c> alone makes a text of a gigabyte.</summary>
internal static class Formats
{
    private const int WidestColumn = 100;
    private static readonly Regex Plain = new("^([A-Za-z][0-9]{0,2}|[0#.,%;+-]{1,30}|[a-z]{1,4}[0-9]{0,2})$", RegexOptions.CultureInvariant);

    /// <summary>The violations in one node.</summary>
    public static IEnumerable<Violation> In(SyntaxNode node, SemanticModel model)
    {
        switch (node)
        {
            case InterpolationFormatClauseSyntax clause when !Plain.IsMatch(clause.FormatStringToken.ValueText):
                yield return Make(node);
                break;
            case InterpolationAlignmentClauseSyntax alignment when model.GetConstantValue(alignment.Value) is not { HasValue: true, Value: int width } || width is > WidestColumn or < -WidestColumn:
                yield return new Violation(Violation.Format, node.Span, $"A column of this width is not allowed in a rule: a message is one short sentence. Use at most {WidestColumn}.");
                break;
            case InvocationExpressionSyntax { ArgumentList.Arguments: { Count: > 0 } arguments } call
                when IsToString(call.Expression) && model.GetSymbolInfo(call).Symbol is IMethodSymbol { Name: "ToString" } method && method.Parameters.Length > 0 && method.Parameters[0].Type.SpecialType == SpecialType.System_String:
                var format = arguments.FirstOrDefault(argument => argument.NameColon?.Name.Identifier.ValueText == method.Parameters[0].Name) ?? arguments[0];
                if (model.GetConstantValue(format.Expression) is not { HasValue: true, Value: null or string } constant || (constant.Value is string text && !Plain.IsMatch(text)))
                {
                    yield return Make(format);
                }

                break;
            case SimpleNameSyntax { Parent: not InvocationExpressionSyntax and not MemberAccessExpressionSyntax { Parent: InvocationExpressionSyntax } and not MemberBindingExpressionSyntax { Parent: InvocationExpressionSyntax } }
                when node is SimpleNameSyntax { Identifier.ValueText: "ToString" } && model.GetSymbolInfo(node).Symbol is IMethodSymbol { Parameters.Length: > 0 }:
                // As a function it would take any format.
                yield return Make(node);
                break;
        }
    }

    private static bool IsToString(ExpressionSyntax called) => called switch
    {
        MemberAccessExpressionSyntax access => access.Name.Identifier.ValueText == "ToString",
        MemberBindingExpressionSyntax access => access.Name.Identifier.ValueText == "ToString",
        SimpleNameSyntax name => name.Identifier.ValueText == "ToString",
        _ => false,
    };

    private static Violation Make(SyntaxNode node) =>
        new(Violation.Format, node.Span, "This format is not allowed in a rule: a format must be written out and short, so that no message grows without bound. Write one like `0.0` or `F1`.");
}
