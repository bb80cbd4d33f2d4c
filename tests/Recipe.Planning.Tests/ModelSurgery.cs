using System.Collections;
using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Reflection;
using System.Runtime.CompilerServices;
using Recipe.Model;

namespace Recipe.Planning.Tests;

/// <summary>
/// Makes damaged copies of a model by reflection: optional members taken out, or values made odd, at random and all the way down.
/// What is found out about a type is kept, since finding it out takes far longer than a plan.
/// </summary>
internal static class ModelSurgery
{
    private static readonly ConcurrentDictionary<Type, Anatomy> Known = new();
    private static readonly double[] OddNumbers = [0, -1, 1e-300, 1e-9, 1e12, 1e300, -1e300];
    private static readonly double[] NoNumbers = [double.NaN, double.PositiveInfinity, double.NegativeInfinity];
    private static readonly int[] OddCounts = [0, -5, int.MinValue, int.MaxValue];

    /// <summary>A copy in which every optional member is taken out with this chance.</summary>
    public static RecipeModel Thin(RecipeModel model, Random random, double chance) =>
        (RecipeModel)Copy(model, new Thinning(random, chance))!;

    /// <summary>
    /// A copy in which every number and every quantity, wherever it stands, is made zero, negative, tiny, huge or no number with this
    /// chance. A UnitsNet quantity cannot hold infinity or no number, so only plain numbers become that.
    /// </summary>
    public static RecipeModel Distort(RecipeModel model, Random random, double chance) =>
        (RecipeModel)Copy(model, new Distorting(random, chance))!;

    private static object? Copy(object? value, Operation operation)
    {
        if (value is null)
        {
            return null;
        }

        var anatomy = Of(value.GetType());
        return anatomy.Kind switch
        {
            Kind.Model => CopyMembers(value, anatomy, operation),
            Kind.Array => CopyItems(value, anatomy, operation),
            _ => operation.Leaf(value, anatomy),
        };
    }

    // A struct is copied by being boxed, a record by its own copying method.
    private static object CopyMembers(object value, Anatomy anatomy, Operation operation)
    {
        var copy = anatomy.Clone is { } clone ? clone.Invoke(value, null)! : RuntimeHelpers.GetObjectValue(value);
        foreach (var member in anatomy.Members)
        {
            var old = member.Property.GetValue(copy);
            var made = operation.TakesOut(member) ? null : Copy(old, operation);
            if (!ReferenceEquals(old, made))
            {
                member.Property.SetValue(copy, made);
            }
        }

        return copy;
    }

    private static object CopyItems(object array, Anatomy anatomy, Operation operation)
    {
        var items = (ICollection)array;
        if (items.Count == 0)
        {
            return array;
        }

        var copy = Array.CreateInstance(anatomy.Element!, items.Count);
        var index = 0;
        foreach (var item in items)
        {
            copy.SetValue(Copy(item, operation), index++);
        }

        return anatomy.ToImmutable!.Invoke(null, [copy])!;
    }

    private static Anatomy Of(Type type) => Known.GetOrAdd(type, static t => new Anatomy(t));

    private enum Kind
    {
        Leaf,
        Model,
        Array,
    }

    private sealed record Member(PropertyInfo Property, bool IsOptional);

    private sealed class Anatomy
    {
        public Anatomy(Type type)
        {
            if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(ImmutableArray<>))
            {
                Kind = Kind.Array;
                Element = type.GetGenericArguments()[0];
                ToImmutable = ImmutableArrayOf.MakeGenericMethod(Element);
            }
            else if (type.Namespace == "Recipe.Model" && !type.IsEnum)
            {
                Kind = Kind.Model;
                Clone = type.IsValueType ? null : type.GetMethod("<Clone>$");
                var nullability = new NullabilityInfoContext();
                Members = [.. type.GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.SetMethod is not null).Select(p => new Member(p, IsOptional(p, nullability)))];
            }
            else if (type.GetProperty("BaseUnit", BindingFlags.Public | BindingFlags.Static)?.GetValue(null) is { } unit)
            {
                BaseUnit = unit;
                FromBase = type.GetConstructor([typeof(double), unit.GetType()]);
            }
        }

        private static MethodInfo ImmutableArrayOf { get; } =
            typeof(ImmutableArray).GetMethods().Single(m => m.Name == "Create" && m.GetParameters() is [{ ParameterType.IsArray: true }]);

        public Kind Kind { get; }

        public MethodInfo? Clone { get; }

        public Member[] Members { get; } = [];

        public Type? Element { get; }

        public MethodInfo? ToImmutable { get; }

        public object? BaseUnit { get; }

        public ConstructorInfo? FromBase { get; }

        // A figure without its value is no figure, so figures are taken out whole.
        private static bool IsOptional(PropertyInfo property, NullabilityInfoContext nullability) =>
            property.DeclaringType is { IsGenericType: false }
            && property.GetCustomAttribute<RequiredMemberAttribute>() is null
            && nullability.Create(property).WriteState == NullabilityState.Nullable;
    }

    private abstract class Operation
    {
        public virtual bool TakesOut(Member member) => false;

        public virtual object Leaf(object value, Anatomy anatomy) => value;
    }

    private sealed class Thinning(Random random, double chance) : Operation
    {
        public override bool TakesOut(Member member) => member.IsOptional && random.NextDouble() < chance;
    }

    private sealed class Distorting(Random random, double chance) : Operation
    {
        public override object Leaf(object value, Anatomy anatomy)
        {
            if (random.NextDouble() >= chance)
            {
                return value;
            }

            return value switch
            {
                double => random.Next(3) == 0 ? Any(NoNumbers) : Any(OddNumbers),
                int => Any(OddCounts),
                decimal => random.Next(2) == 0 ? decimal.MinValue : decimal.MaxValue,
                _ => anatomy.FromBase?.Invoke([Any(OddNumbers), anatomy.BaseUnit]) ?? value,
            };
        }

        private T Any<T>(T[] choices) => choices[random.Next(choices.Length)];
    }
}
