using System.CommandLine;
using System.Globalization;

namespace Recipe.Cli.Commands;

/// <summary>Options that several verbs share.</summary>
internal static class CommonOptions
{
    public static Option<string> Colour()
    {
        var option = new Option<string>("--colour", "--color")
        {
            Description = "Colour: auto (on a terminal), always, never.",
            DefaultValueFactory = _ => "auto",
        };
        option.AcceptOnlyFromAmong("auto", "always", "never");
        return option;
    }

    /// <summary>An option that takes a whole number.</summary>
    public static Option<int?> Whole(string name, string description, int least, int most)
    {
        var option = new Option<int?>(name) { Description = description, HelpName = "n" };
        option.Validators.Add(result =>
        {
            if (result.Tokens.Count == 1 && !(int.TryParse(result.Tokens[0].Value, NumberStyles.None, CultureInfo.InvariantCulture, out var n) && n >= least && n <= most))
            {
                result.AddError($"{name} takes a whole number from {least} to {most}, not '{result.Tokens[0].Value}'.");
            }
        });
        return option;
    }
}
