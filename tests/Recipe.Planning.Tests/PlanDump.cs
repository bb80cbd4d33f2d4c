using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Text;

namespace Recipe.Planning.Tests;

/// <summary>Walks a plan by reflection: every computed value with its path, and a text of everything for comparing two plans.</summary>
internal static class PlanDump
{
    /// <summary>Every computed value: its path, the keys it rests on.</summary>
    public static List<(string Path, IReadOnlyList<string> RestsOn)> Computed(Plan plan)
    {
        var found = new List<(string, IReadOnlyList<string>)>();
        Walk(plan, "plan", (path, value) =>
        {
            if (IsComputed(value.GetType()))
            {
                found.Add((path, [.. (IEnumerable<string>)value.GetType().GetProperty("RestsOn")!.GetValue(value)!]));
            }
        });
        return found;
    }

    /// <summary>The whole plan as text, in the order of its members.</summary>
    public static string Text(Plan plan)
    {
        var text = new StringBuilder();
        Walk(plan, "plan", (path, value) =>
        {
            if (IsLeaf(value))
            {
                text.Append(path).Append(" = ").AppendLine(Convert.ToString(value, CultureInfo.InvariantCulture));
            }
        });
        return text.ToString();
    }

    private static void Walk(object? value, string path, Action<string, object> visit)
    {
        if (value is null)
        {
            return;
        }

        visit(path, value);
        if (IsLeaf(value))
        {
            return;
        }

        if (value is IEnumerable items)
        {
            var index = 0;
            foreach (var item in items)
            {
                Walk(item, $"{path}[{index++}]", visit);
            }

            return;
        }

        foreach (var property in value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance))
        {
            if (property.GetIndexParameters().Length == 0)
            {
                Walk(property.GetValue(value), $"{path}.{property.Name}", visit);
            }
        }
    }

    // What the plan is made from is not walked, only what it makes.
    private static bool IsLeaf(object value)
    {
        var type = value.GetType();
        return type.IsPrimitive || type.IsEnum || value is string or decimal || type.Namespace is { } space
            && (space.StartsWith("UnitsNet", StringComparison.Ordinal) || space.StartsWith("Recipe.Model", StringComparison.Ordinal)
                || space.StartsWith("Recipe.Text", StringComparison.Ordinal));
    }

    private static bool IsComputed(Type type) => type.IsGenericType && type.GetGenericTypeDefinition() == typeof(Computed<>);
}
