using System.Collections.Immutable;
using System.Reflection;
using CsCheck;
using Recipe.Model;
using Recipe.Text;
using Recipe.TestKit.Models;

namespace Recipe.Planning.Tests;

public class RobustnessTests
{
    /// <summary>Whatever is missing, there is a plan, and what it cannot say it names.</summary>
    [Fact]
    public void NothingThatIsMissingStopsThePlan() => Gen.Select(RandomParts.Model, Gen.Int, Gen.Double[0, 0.6]).Sample(
        t =>
        {
            var random = new Random(t.Item2);
            var model = (RecipeModel)Thin(t.Item1, random, t.Item3)!;
            var part = model.Parts.IsDefaultOrEmpty ? (Part)Thin(t.Item1.Parts[0], random, t.Item3)! : model.Parts[0];
            var plan = Planner.Plan(part, model);
            Assert.Equal(plan.Laminate is null, plan.Gaps.Any(g => g.Subject == "mass of the part"));
            Assert.All(PlanDump.Computed(plan), c => Assert.NotNull(c.RestsOn));
            Assert.DoesNotContain("NaN", PlanDump.Text(plan), StringComparison.Ordinal);
            Assert.DoesNotContain("∞", PlanDump.Text(plan), StringComparison.Ordinal);
            Assert.DoesNotContain("Infinity", PlanDump.Text(plan), StringComparison.Ordinal);
        },
        iter: 4000);

    [Fact]
    public void NoFigureHoweverOddStopsThePlan() => Gen.Select(RandomParts.Model, Gen.Int).Sample(
        t =>
        {
            var model = (RecipeModel)Distort(t.Item1, new Random(t.Item2), 0.2)!;
            Planner.Plan(model.Parts[0], model);
        },
        iter: 4000);

    [Fact]
    public void AnEmptyPartHasAPlanOfGaps()
    {
        var part = new Part { Name = "nothing", Where = Fig.Somewhere, Process = Fig.Stated(Process.Bagged, "bagged") };
        var plan = Planner.Plan(part, Recipes.Around(part));
        Assert.Null(plan.Geometry);
        Assert.Null(plan.Laminate);
        Assert.Null(plan.Resin);
        Assert.Empty(plan.Takeoff);
        Assert.Contains(plan.Gaps, g => g.Subject == "areas and sizes");
        Assert.Contains(plan.Gaps, g => g is { Subject: "resin to mix", Missing: "the part names no resin" });
    }

    [Fact]
    public void TheSamePartGivesTheSamePlanOnAnyThread()
    {
        var model = Recipes.HatchLid();
        var expected = PlanDump.Text(Planner.Plan(model.Parts[0], model));
        var texts = new string[64];
        Parallel.For(0, texts.Length, i => texts[i] = PlanDump.Text(Planner.Plan(model.Parts[0], model)));
        Assert.All(texts, text => Assert.Equal(expected, text));
    }

    [Fact]
    public void TheSameRandomPartGivesTheSamePlan() => RandomParts.Model.Sample(
        model => Assert.Equal(PlanDump.Text(Planner.Plan(model.Parts[0], model)), PlanDump.Text(Planner.Plan(model.Parts[0], model))),
        iter: 300);

    // A copy of a record with optional members taken out at random, all the way down.
    private static object? Thin(object? value, Random random, double chance) => Change(value, property =>
        IsOptional(property) && random.NextDouble() < chance ? (true, null) : (false, null));

    // A copy with the values of figures made zero, negative, huge or no number at random.
    private static object? Distort(object? value, Random random, double chance) => Change(value, property =>
        property.DeclaringType is { IsGenericType: true } type && type.GetGenericTypeDefinition() == typeof(Figure<>) && property.Name == "Value"
            && random.NextDouble() < chance && Odd(property.PropertyType, random) is { } odd ? (true, odd) : (false, null));

    private static object? Odd(Type type, Random random)
    {
        double[] odd = [0, -1, 1e-300, 1e300, 1e12, double.NaN, double.PositiveInfinity];
        var number = odd[random.Next(odd.Length)];
        if (type == typeof(double))
        {
            return number;
        }

        if (type == typeof(int))
        {
            return random.Next(3) switch { 0 => 0, 1 => -5, _ => int.MaxValue };
        }

        var constructor = type.GetConstructors().FirstOrDefault(c => c.GetParameters() is [{ ParameterType: var first }, { ParameterType.IsEnum: true }] && first == typeof(double));
        return constructor is null ? null : constructor.Invoke([number, Activator.CreateInstance(constructor.GetParameters()[1].ParameterType)!]) is var made ? WithBaseUnit(type, number) ?? made : null;
    }

    private static object? WithBaseUnit(Type type, double number) =>
        type.GetProperty("BaseUnit", BindingFlags.Public | BindingFlags.Static)?.GetValue(null) is { } unit
            ? type.GetConstructor([typeof(double), unit.GetType()])?.Invoke([number, unit])
            : null;

    private static bool IsOptional(PropertyInfo property)
    {
        var required = property.GetCustomAttribute<System.Runtime.CompilerServices.RequiredMemberAttribute>() is not null;
        return !required && property.DeclaringType is { IsGenericType: false } && new NullabilityInfoContext().Create(property).WriteState == NullabilityState.Nullable;
    }

    private static object? Change(object? value, Func<PropertyInfo, (bool Hit, object? Value)> decide)
    {
        if (value is null)
        {
            return null;
        }

        var type = value.GetType();
        if (type.Namespace is null || !type.Namespace.StartsWith("Recipe.Model", StringComparison.Ordinal) || type.IsEnum)
        {
            return type.IsGenericType && type.GetGenericTypeDefinition() == typeof(ImmutableArray<>) ? ChangeArray(value, type, decide) : value;
        }

        if (type.IsValueType || value is SourceSpan)
        {
            return value;
        }

        var copy = type.GetMethod("<Clone>$")!.Invoke(value, null)!;
        foreach (var property in type.GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.SetMethod is not null))
        {
            var (hit, replacement) = decide(property);
            property.SetValue(copy, hit ? replacement : Change(property.GetValue(copy), decide));
        }

        return copy;
    }

    private static object ChangeArray(object array, Type type, Func<PropertyInfo, (bool Hit, object? Value)> decide)
    {
        var element = type.GetGenericArguments()[0];
        var items = ((System.Collections.IEnumerable)array).Cast<object?>().Select(item => Change(item, decide)).ToArray();
        var typed = Array.CreateInstance(element, items.Length);
        Array.Copy(items, typed, items.Length);
        return typeof(ImmutableArray).GetMethods().Single(m => m.Name == "Create" && m.GetParameters() is [{ ParameterType.IsArray: true }])
            .MakeGenericMethod(element).Invoke(null, [typed])!;
    }
}
