using System.CommandLine;
using Recipe.Text;

namespace Recipe.Cli.Commands;

/// <summary><c>recipe trust</c>: the folders whose rules in C# may be run, which somebody agrees to once for each.</summary>
internal static class TrustCommand
{
    public static Command Create(Terminal terminal)
    {
        var folder = new Argument<string>("folder") { Description = "The folder; what is below it is trusted too.", DefaultValueFactory = _ => ".", Arity = ArgumentArity.ZeroOrOne };
        var forget = new Option<bool>("--forget") { Description = "Take the folder off the list." };
        var list = new Option<bool>("--list") { Description = "Say which folders are on the list." };
        var command = new Command("trust", $"Agree to run the house rules in C# (*{FileEndings.CodedRules}) of a folder: they are programs.") { folder, forget, list };
        command.Validators.Add(result =>
        {
            if (result.GetValue(list) && result.GetValue(forget))
            {
                result.AddError("--list and --forget do not go together.");
            }
        });
        command.SetAction(result => Run(terminal, result.GetValue(folder)!, result.GetValue(forget), result.GetValue(list)));
        return command;
    }

    private static int Run(Terminal terminal, string folder, bool forget, bool list)
    {
        var trusted = terminal.Trusted ?? throw new CannotRunException("there is no folder for settings on this machine, so nothing can be trusted; set XDG_CONFIG_HOME.");
        if (list)
        {
            foreach (var known in trusted.List())
            {
                terminal.Out.WriteLine(known);
            }

            return ExitStatus.Clean;
        }

        try
        {
            if (!forget)
            {
                terminal.Out.WriteLine($"trusts {trusted.Trust(folder)}: its rules in C#, and those of the folders below it, are run from now on. A rule is a program: read it first.");
                return ExitStatus.Clean;
            }

            if (!trusted.Forget(folder))
            {
                throw new CannotRunException($"{folder} is not on the list; `recipe trust --list` shows it.");
            }

            terminal.Out.WriteLine(trusted.IsTrusted(folder)
                ? $"took {folder} off the list; a folder above it is still there, so its rules in C# go on being run."
                : $"trusts {folder} no longer: its rules in C# are not run.");
            return ExitStatus.Clean;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            throw new CannotRunException($"{folder} cannot be trusted: {problem.Message.TrimEnd('.')}.", problem);
        }
    }
}
