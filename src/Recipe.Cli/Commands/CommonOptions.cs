using System.CommandLine;

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
}
