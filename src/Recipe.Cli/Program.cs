using System.Runtime.InteropServices;
using Recipe.Cli;
using Recipe.Cli.Files;
using Recipe.Cli.Text;
using Recipe.RulesProcess;

// The console is the world's; everything below the door gets it handed in.
using var stdout = new StreamWriter(new StandardStream(Console.OpenStandardOutput(), "standard output"), Terminal.Encoding) { NewLine = "\n" };
using var stderr = new StreamWriter(new StandardStream(Console.OpenStandardError(), null), Terminal.Encoding) { NewLine = "\n", AutoFlush = true };
var progress = new Progress(stderr, !Console.IsErrorRedirected);
var trusted = TrustedFolders.OfUser();
var terminal = new Terminal(stdout, stderr, Console.OpenStandardInput)
{
    OutIsTerminal = !Console.IsOutputRedirected,
    ErrorIsTerminal = !Console.IsErrorRedirected,
    NoColour = Environment.GetEnvironmentVariable("NO_COLOR") is { Length: > 0 } || Environment.GetEnvironmentVariable("TERM") == "dumb",
    Today = DateOnly.FromDateTime(DateTime.Now),
    Now = () => DateOnly.FromDateTime(DateTime.Now),
    Trusted = trusted,
    Rules = TrustedRules.Installed(trusted, progress.Compiling),
    OpenOutput = Console.OpenStandardOutput,
    OnInterrupt = stop => PosixSignalRegistration.Create(PosixSignal.SIGINT, signal =>
    {
        // The run ends by itself once its batch is kept.
        signal.Cancel = true;
        stop();
    }),
};
return CommandLine.Run(args, terminal);
