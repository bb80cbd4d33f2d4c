namespace Recipe.RuleAnalyzers.AllowList;

/// <summary>Why a name is not on the list, and what to write instead.</summary>
internal static class Reasons
{
    private static readonly (string Prefix, string Reason)[] ByPrefix =
    [
        ("System.IO.", "a rule reads no files and writes none; it knows the facts of the part. Use a fact instead"),
        ("System.Net.", "a rule reaches no network; it knows the facts of the part. Use a fact instead"),
        ("System.Reflection.", "a rule does not look into programs. Write the call itself instead"),
        ("System.Type", "a rule does not look into types. Compare with `is` instead"),
        ("System.Activator", "a rule does not make objects by their type. Write `new` instead"),
        ("System.Threading.Tasks.Parallel", "a rule runs on one thread. Use a loop instead"),
        ("System.Threading.", "a rule runs on one thread and waits for nothing. Use a loop instead"),
        ("System.Lazy`1", "a rule keeps nothing. Compute the value where it is needed"),
        ("System.Environment", "a rule gives the same findings on every machine. Use a fact instead"),
        ("System.GC", "a rule leaves memory to the runtime. Leave the call out"),
        ("System.Console", "a rule prints nothing. Use `report.Finding(...)` instead"),
        ("System.Diagnostics.", "a rule starts no programs and measures no time. Use `report.Finding(...)` to say something"),
        ("System.Random", "a rule gives the same findings each time. Use a fact or a constant instead"),
        ("System.Guid", "a rule gives the same findings each time. Use a constant instead"),
        ("System.DateTime", "a rule gives the same findings each day. Times are facts of the plan, as `UnitsNet.Duration`"),
        ("System.TimeZoneInfo", "a rule gives the same findings on every machine. Use a fact instead"),
        ("System.TimeSpan", "times are facts of the plan. Use `UnitsNet.Duration` instead"),
        ("System.HashCode", "hash codes differ from run to run. Compare the values themselves"),
        ("System.Text.RegularExpressions.", "a pattern can take for ever. Use the methods of `string` instead"),
        ("System.Runtime.InteropServices.", "a rule does not reach the machine. Leave it out"),
        ("System.Runtime.CompilerServices.", "this is the compiler's own. Leave it out"),
        ("System.Globalization.", "everything is written the same way in every country. Use `CultureInfo.InvariantCulture`, or nothing"),
        ("System.Delegate", "a rule does not look into functions. Call them instead"),
        ("System.MulticastDelegate", "a rule does not look into functions. Call them instead"),
        ("UnitsNet.", "of the quantities, a rule uses the numbers in a unit, `FromGrams(...)` and the like, and arithmetic"),
        ("Recipe.RuleApi.", "this belongs to the program that runs rules. Use the facts of `PartFacts` and `report`"),
    ];

    /// <summary>The sentence about a type that is not on the list.</summary>
    public static string Type(string name) => $"`{Simple(name)}` is not allowed in a rule: {Why(name)}.";

    /// <summary>The sentence about a member that is not on the list.</summary>
    public static string Member(string type, string member)
    {
        if (member == "GetHashCode")
        {
            return "`GetHashCode` is not allowed in a rule: hash codes of texts differ from run to run. Compare the values themselves.";
        }

        if (member == "GetType")
        {
            return "`GetType` is not allowed in a rule: a rule does not look into types. Compare with `is` instead.";
        }

        var shown = member is ".ctor" ? $"new {Simple(type)}" : $"{Simple(type)}.{member}";
        return $"`{shown}` is not allowed in a rule in this form: {Why(type)}.";
    }

    private static string Why(string type) =>
        ByPrefix.FirstOrDefault(pair => pair.Prefix[pair.Prefix.Length - 1] == '.'
            ? type.StartsWith(pair.Prefix, StringComparison.Ordinal)
            : type == pair.Prefix || type.StartsWith(pair.Prefix + "`", StringComparison.Ordinal) || type == pair.Prefix + "Offset").Reason
        ?? "it is not on the list of what a rule may use. Rules use facts, numbers, texts, lists, dictionaries and the methods of System.Linq";

    private static string Simple(string name)
    {
        var start = name.LastIndexOf('.') + 1;
        return name.Substring(start).Split('`')[0].Replace('+', '.');
    }
}
