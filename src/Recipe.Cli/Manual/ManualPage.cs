using System.CommandLine;
using System.CommandLine.Help;
using System.Globalization;
using System.Text;
using Recipe.Text;

namespace Recipe.Cli.Manual;

/// <summary>The manual page of the program in the roff macros of <c>man(7)</c>, made from the verbs themselves.</summary>
internal static class ManualPage
{
    /// <summary>The page.</summary>
    /// <param name="root">The program, with its verbs.</param>
    /// <param name="version">Its version.</param>
    public static string Of(Command root, string version)
    {
        var page = new StringBuilder();
        page.Append(CultureInfo.InvariantCulture, $".TH RECIPE 1 \"\" \"recipe {Text(version)}\" \"User Commands\"\n");
        page.Append(".SH NAME\nrecipe \\- check recipes for moulded composite parts and make their papers\n");
        page.Append(".SH SYNOPSIS\n.B recipe\n.I verb\n.RI [ argument... ]\n.RI [ option... ]\n");
        Section(page, "DESCRIPTION", root.Description ?? "");
        page.Append(".PP\nThe papers remind; the maker's data sheet, local codes and licensed practice go before them.\n");
        page.Append(".SH VERBS\n");
        foreach (var verb in Verbs(root, ""))
        {
            Verb(page, verb.Name, verb.Command);
        }

        page.Append(".SH EXIT STATUS\n");
        Item(page, "0", "Nothing of error severity was found.");
        Item(page, "1", "Something of error severity was found, or differs.");
        Item(page, "2", "The program could not do its work; standard error says why.");
        page.Append(".SH ENVIRONMENT\n");
        Item(page, "NO_COLOR", "No colour, whatever the terminal can.");
        Item(page, "XDG_CONFIG_HOME", "Where the list of trusted folders lies, in the folder recipe.");
        Item(page, "XDG_CACHE_HOME", "Where compiled house rules and their answers are kept, and copies of the book that editors open, in the folder recipe.");
        Item(page, "RECIPE_RULES_HOST", "Another program that compiles and runs house rules in C#.");
        page.Append(".SH FILES\n");
        Item(page, "*" + FileEndings.Recipe, "Recipes, books of materials, build records.");
        Item(page, "settings.recipe", "What counts in its folder and below: severities, house rules.");
        Item(page, "*" + FileEndings.CodedRules, "House rules in C#.");
        return page.ToString();
    }

    private static IEnumerable<(string Name, Command Command)> Verbs(Command command, string before) =>
        command.Subcommands.Where(verb => !verb.Hidden).SelectMany(verb =>
        {
            var name = before + verb.Name;
            return verb.Subcommands.Any(below => !below.Hidden) && verb.Action is null ? Verbs(verb, name + " ") : Verbs(verb, name + " ").Prepend((name, verb));
        });

    private static void Verb(StringBuilder page, string name, Command verb)
    {
        page.Append(".SS recipe ").Append(Text(name));
        foreach (var argument in verb.Arguments.Where(argument => !argument.Hidden))
        {
            page.Append(' ').Append(Text(Shown(argument)));
        }

        page.Append('\n');
        page.Append(Text(verb.Description ?? "")).Append('\n');
        foreach (var argument in verb.Arguments.Where(argument => !argument.Hidden))
        {
            Item(page, Shown(argument), argument.Description ?? "");
        }

        foreach (var option in verb.Options.Where(option => !option.Hidden && option is not HelpOption))
        {
            var names = string.Join(", ", option.Aliases.Append(option.Name));
            Item(page, option.ValueType == typeof(bool) ? names : $"{names} {(option.HelpName ?? option.Name.TrimStart('-')).ToUpperInvariant()}", option.Description ?? "");
        }
    }

    private static string Shown(Argument argument)
    {
        var name = argument.Name.ToUpperInvariant();
        var many = argument.Arity.MaximumNumberOfValues > 1 ? name + "..." : name;
        return argument.Arity.MinimumNumberOfValues == 0 ? $"[{many}]" : many;
    }

    private static void Section(StringBuilder page, string title, string text) => page.Append(".SH ").Append(title).Append('\n').Append(Text(text)).Append('\n');

    private static void Item(StringBuilder page, string term, string text) => page.Append(".TP\n.B ").Append(Text(term)).Append('\n').Append(Text(text)).Append('\n');

    // A backslash begins a command of roff, a point or an apostrophe at the start of a line does too, and a bare hyphen is set as a dash.
    private static string Text(string text)
    {
        var line = text.ReplaceLineEndings(" ").Replace("\\", "\\e", StringComparison.Ordinal).Replace("-", "\\-", StringComparison.Ordinal);
        return line is ['.' or '\'', ..] ? "\\&" + line : line;
    }
}
