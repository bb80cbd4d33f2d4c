using System.CommandLine;
using Recipe.Cli.Files;
using Recipe.Preview;

namespace Recipe.Cli.Commands;

/// <summary><c>recipe preview</c>: a page of this machine that follows a recipe while it is written.</summary>
internal static class PreviewCommand
{
    public static Command Create(Terminal terminal)
    {
        var path = new Argument<string>("path") { Description = "The recipe file." };
        var noOpen = new Option<bool>("--no-open") { Description = "Only print the address; open no browser." };
        var port = CommonOptions.Whole("--port", "The port; without it the one that this file had last time, or else any that is free.", 1, ushort.MaxValue);
        var command = new Command("preview", "Show a recipe on a page that redraws itself at each save: stack, clock, bag, cure, shape, pieces, findings, changes. Ends with Ctrl-C.") { path, noOpen, port };
        command.SetAction(result => Run(terminal, result.GetValue(path)!, result.GetValue(noOpen), result.GetValue(port) ?? 0));
        return command;
    }

    private static int Run(Terminal terminal, string path, bool noOpen, int port)
    {
        if (!File.Exists(path))
        {
            throw new CannotRunException(Directory.Exists(path) ? $"{path} is a folder: name one recipe in it." : $"{path}: there is no such file.");
        }

        using var server = Start(terminal, path, port);
        terminal.Out.WriteLine($"{path} is shown at {server.Address}");
        terminal.Out.WriteLine("Whoever has this address can look at the recipe and write into it. Ctrl-C ends the preview.");
        terminal.Out.Flush();
        if (!noOpen && !Browser.TryOpen(server.Address))
        {
            terminal.Out.WriteLine("No browser could be opened: open the address yourself.");
            terminal.Out.Flush();
        }

        using var ended = new ManualResetEventSlim();
        using var signal = terminal.OnInterrupt(ended.Set);
        ended.Wait();
        return ExitStatus.Clean;
    }

    private static PreviewServer Start(Terminal terminal, string path, int port)
    {
        try
        {
            return PreviewServer.Start(new PreviewWish(Path.GetFullPath(path), path.Replace('\\', '/'), new DiskFiles(terminal.Rules), terminal.Now)
            {
                LastCommit = folder => LspCommand.LastCommit(folder, terminal.Rules),
                Port = port,
                SeatFolder = Seats(),
            });
        }
        catch (PreviewException problem)
        {
            throw new CannotRunException(problem.Message, problem);
        }
    }

    // Of this user alone, and gone at the end of the session where the system has such a place.
    private static string? Seats() => Environment.GetEnvironmentVariable("XDG_RUNTIME_DIR") is { Length: > 0 } runtime && Path.IsPathRooted(runtime)
        ? Path.Combine(runtime, "recipe-preview")
        : Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData) is { Length: > 0 } local ? Path.Combine(local, "recipe", "preview") : null;
}
