using System.Text;
using Recipe.RuleProtocol;
using Recipe.RulesProcess;

namespace Recipe.Cli;

/// <summary>What the program sees of the world: two writers, standard input, and the day.</summary>
internal sealed class Terminal(TextWriter output, TextWriter error, Func<Stream> openInput)
{
    /// <summary>UTF-8 without a byte order mark, both ways.</summary>
    public static readonly Encoding Encoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);

    public TextWriter Out { get; } = output;

    public TextWriter Error { get; } = error;

    public bool OutIsTerminal { get; init; }

    public bool ErrorIsTerminal { get; init; }

    /// <summary>Whether the user asked for no colour (the NO_COLOR convention, or a dumb terminal).</summary>
    public bool NoColour { get; init; }

    public required DateOnly Today { get; init; }

    /// <summary>The day as it is now, for a verb that runs for days.</summary>
    public Func<DateOnly> Now { get => field ?? (() => Today); init; }

    /// <summary>The bytes behind <see cref="Out"/>, for a verb that speaks a protocol and no text.</summary>
    public Func<Stream> OpenOutput { get; init; } = () => Stream.Null;

    /// <summary>Calls what is given when the user breaks a long run off, until it is disposed of; nothing ever does unless it is set.</summary>
    public Func<Action, IDisposable> OnInterrupt { get; init; } = _ => Stream.Null;

    /// <summary>The folders whose rules in C# may be run; null when there is nowhere to keep them.</summary>
    public TrustedFolders? Trusted { get; init; }

    /// <summary>Runs rules in C#; null where nobody can.</summary>
    public IRuleRunner? Rules { get; init; }

    /// <summary>The bytes of standard input.</summary>
    public Stream OpenInput() => openInput();

    public string ReadInput()
    {
        using var reader = new StreamReader(openInput(), Encoding);
        return reader.ReadToEnd();
    }
}
