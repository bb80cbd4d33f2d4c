using System.Reflection;
using System.Text;
using Recipe.RuleApi;
using Recipe.TestKit;

namespace Recipe.RulesHost.Tests;

/// <summary>What authors compile against changes only on purpose: a shop's rules are older than the program that runs them.</summary>
public sealed class SurfaceTests
{
    private const string Kept = "tests/Recipe.RulesHost.Tests/golden/rule-api.txt";

    [Fact]
    public void The_public_surface_is_the_one_that_was_kept()
    {
        var actual = Surface();
        var path = Repository.PathOf(Kept);
        if (Environment.GetEnvironmentVariable("RECIPE_UPDATE_GOLDENS") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, actual);
        }

        Assert.Equal(File.ReadAllText(path), actual);
    }

    [Fact]
    public void Every_fact_of_a_view_is_read_by_its_word()
    {
        // A property called ResinContent reads the fact resin-content and no other.
        foreach (var view in typeof(PartFacts).Assembly.GetExportedTypes().Where(type => type.IsSubclassOf(typeof(Recipe.RuleApi.Facts)) && !type.IsAbstract))
        {
            foreach (var property in view.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly).Where(property => !property.PropertyType.Name.StartsWith("IReadOnlyList", StringComparison.Ordinal)))
            {
                var known = new[] { Fact.Quantity(3), Fact.Number(3), Fact.Word("w"), Fact.Words("t"), Fact.YesNo(true) }
                    .Count(fact => property.GetValue(Make(view, new FactSheet("x", new Dictionary<string, Fact> { [Kebab(property.Name)] = fact }))) is not null);
                Assert.True(known == 1, $"{view.Name}.{property.Name}");
            }
        }
    }

    private static object Make(Type view, FactSheet sheet) => Activator.CreateInstance(view, view == typeof(PartFacts) ? [sheet] : [sheet, 0])!;

    private static string Kebab(string name) =>
        string.Concat(name.Select((letter, at) => char.IsUpper(letter) ? (at == 0 ? "" : "-") + char.ToLowerInvariant(letter) : letter.ToString()));

    private static string Surface()
    {
        var text = new StringBuilder();
        foreach (var type in typeof(HouseRule).Assembly.GetExportedTypes().OrderBy(type => type.FullName, StringComparer.Ordinal))
        {
            text.Append(type.IsEnum ? "enum" : type.IsValueType ? "struct" : type.IsAbstract && type.IsSealed ? "static class" : type.IsAbstract ? "abstract class" : "class").Append(' ').Append(type.FullName);
            text.Append(type.BaseType is { } parent && parent != typeof(object) && !type.IsValueType ? $" : {Shown(parent)}\n" : "\n");
            foreach (var member in Members(type).Order(StringComparer.Ordinal))
            {
                text.Append("  ").Append(member).Append('\n');
            }
        }

        return text.ToString();
    }

    private static IEnumerable<string> Members(Type type)
    {
        const BindingFlags own = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;
        foreach (var field in type.GetFields(own).Where(field => field.IsPublic && !field.IsSpecialName))
        {
            yield return $"{(field.IsLiteral ? "const " : "")}{field.Name} : {Shown(field.FieldType)}{(field.IsLiteral ? $" = {field.GetRawConstantValue()}" : "")}";
        }

        foreach (var constructor in type.GetConstructors(own).Where(one => one.IsPublic || one.IsFamily))
        {
            yield return $"new({Parameters(constructor)})";
        }

        foreach (var property in type.GetProperties(own).Where(one => one.GetMethod is { } get && (get.IsPublic || get.IsFamily)))
        {
            yield return $"{How(property.GetMethod!)}{property.Name} : {Shown(property.PropertyType)}{(property.SetMethod is { IsPublic: true } ? " (set)" : "")}";
        }

        foreach (var method in type.GetMethods(own).Where(one => (one.IsPublic || one.IsFamily) && !one.IsSpecialName && !one.Name.StartsWith('<')))
        {
            yield return $"{How(method)}{method.Name}({Parameters(method)}) : {Shown(method.ReturnType)}";
        }
    }

    private static string How(MethodInfo method) => method.IsStatic ? "static " : method.IsAbstract ? "abstract " : method.IsVirtual && !method.IsFinal && method.GetBaseDefinition() == method ? "virtual " : "";

    private static string Parameters(MethodBase method) => string.Join(", ", method.GetParameters().Select(one => $"{Shown(one.ParameterType)} {one.Name}{(one.HasDefaultValue ? " = default" : "")}"));

    private static string Shown(Type type) => type.IsGenericType
        ? $"{type.Name.Split('`')[0]}<{string.Join(", ", type.GetGenericArguments().Select(Shown))}>"
        : type.Name;
}
