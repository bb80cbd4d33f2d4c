using System.Collections;
using System.Collections.Concurrent;
using System.Globalization;
using System.Reflection;
using System.Text;

namespace Recipe.Planning.Tests;

/// <summary>Walks a plan by reflection: what every computed value rests on, and a text of everything for comparing two plans.</summary>
internal static class PlanDump
{
    private static readonly ConcurrentDictionary<Type, Shape> Known = new();

    /// <summary>The keys that each computed value rests on.</summary>
    public static List<IReadOnlyList<string>> RestsOn(Plan plan)
    {
        var found = new List<IReadOnlyList<string>>();
        Walk(plan, string.Empty, (_, value, shape) =>
        {
            if (shape.RestsOn is { } keys)
            {
                found.Add([.. (IEnumerable<string>)keys.GetValue(value)!]);
            }
        });
        return found;
    }

    /// <summary>The whole plan as text, in the order of its members.</summary>
    public static string Text(Plan plan)
    {
        var text = new StringBuilder();
        Walk(plan, string.Empty, (name, value, shape) =>
        {
            text.Append(name);
            text.Append(shape.IsLeaf ? string.Create(CultureInfo.InvariantCulture, $" = {value}\n") : ":\n");
        });
        return text.ToString();
    }

    /// <summary>Every number of the plan that is none: not a number, or infinite.</summary>
    public static List<string> NoNumbers(Plan plan)
    {
        var found = new List<string>();
        Walk(plan, string.Empty, (name, value, _) =>
        {
            if (value is double number ? !double.IsFinite(number) : value is UnitsNet.IQuantity { Value: var amount } && !double.IsFinite((double)amount))
            {
                found.Add(name);
            }
        });
        return found;
    }

    private static void Walk(object? value, string name, Action<string, object, Shape> visit)
    {
        if (value is null)
        {
            return;
        }

        var shape = Known.GetOrAdd(value.GetType(), static type => new Shape(type));
        visit(name, value, shape);
        if (shape.IsLeaf)
        {
            return;
        }

        if (value is IEnumerable items)
        {
            foreach (var item in items)
            {
                Walk(item, name, visit);
            }

            return;
        }

        foreach (var property in shape.Properties)
        {
            Walk(property.GetValue(value), property.Name, visit);
        }
    }

    private sealed class Shape
    {
        public Shape(Type type)
        {
            // What the plan is made from is not walked, only what it makes.
            IsLeaf = type.IsPrimitive || type.IsEnum || type == typeof(string) || type == typeof(decimal) || type.Namespace is { } space
                && (space.StartsWith("UnitsNet", StringComparison.Ordinal) || space.StartsWith("Recipe.Model", StringComparison.Ordinal)
                    || space.StartsWith("Recipe.Text", StringComparison.Ordinal));
            Properties = IsLeaf ? [] : [.. type.GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.GetIndexParameters().Length == 0 && !IsWorkedOutWhenAsked(p))];
            RestsOn = type.IsGenericType && type.GetGenericTypeDefinition() == typeof(Computed<>) ? type.GetProperty("RestsOn") : null;
        }

        // Triangles and nets are made for who asks; to ask for those of a thousand random parts takes an hour. ShapePlanTests looks at them.
        private static bool IsWorkedOutWhenAsked(PropertyInfo property) =>
            (property.DeclaringType == typeof(ShapePlan) && property.Name is nameof(ShapePlan.Model) or nameof(ShapePlan.Start) or nameof(ShapePlan.Along))
            || (property.DeclaringType == typeof(ClothShear) && property.Name == nameof(ClothShear.Net));

        public bool IsLeaf { get; }

        public PropertyInfo[] Properties { get; }

        public PropertyInfo? RestsOn { get; }
    }
}
