using Recipe.Compiler;
using Recipe.RulesProcess;

namespace Recipe.Cli.Text;

/// <summary>A line on the terminal that says how far long work is; nothing elsewhere, and nothing for the papers of a few parts.</summary>
internal sealed class Progress(TextWriter error, bool isTerminal)
{
    private const int Few = 3;

    private readonly Lock _gate = new();
    private int _done;
    private int _longest;

    /// <summary>On the terminal of the program.</summary>
    public Progress(Terminal terminal)
        : this(terminal.Error, terminal.ErrorIsTerminal)
    {
    }

    /// <summary>The papers of a part are made.</summary>
    public void Done(PartPapers part)
    {
        if (!isTerminal || part.Of <= Few)
        {
            return;
        }

        lock (_gate)
        {
            _done++;
            Write($"{_done} of {part.Of} parts: {part.Part}");
        }
    }

    /// <summary>Says how far something else is.</summary>
    public void Say(string text)
    {
        if (isTerminal)
        {
            Write(text);
        }
    }

    /// <summary>A file of rules in C# is compiled, which takes a second or two; null when that is over.</summary>
    public void Compiling(RuleCompiling? file)
    {
        if (file is null)
        {
            End();
        }
        else
        {
            Say($"compiling rules, {file.Number} of {file.Of}: {Path.GetFileName(file.File)}");
        }
    }

    /// <summary>Takes the line away.</summary>
    public void End()
    {
        if (_longest > 0)
        {
            Write("");
            error.Write('\r');
        }
    }

    private void Write(string text)
    {
        // A name from a recipe must not move the cursor, and a line must not wrap.
        var clean = string.Concat(text.Where(c => !char.IsControl(c)).Take(70));
        _longest = Math.Max(_longest, clean.Length);
        error.Write('\r' + clean.PadRight(_longest));
    }
}
