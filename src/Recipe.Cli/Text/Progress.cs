using Recipe.Compiler;

namespace Recipe.Cli.Text;

/// <summary>A line on the terminal that says how far long work is; nothing elsewhere, and nothing for the papers of a few parts.</summary>
internal sealed class Progress(Terminal terminal)
{
    private const int Few = 3;

    private readonly Lock _gate = new();
    private int _done;
    private int _longest;

    /// <summary>The papers of a part are made.</summary>
    public void Done(PartPapers part)
    {
        if (!terminal.ErrorIsTerminal || part.Of <= Few)
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
        if (terminal.ErrorIsTerminal)
        {
            Write(text);
        }
    }

    /// <summary>Takes the line away.</summary>
    public void End()
    {
        if (_longest > 0)
        {
            Write("");
            terminal.Error.Write('\r');
        }
    }

    private void Write(string text)
    {
        // A name from a recipe must not move the cursor, and a line must not wrap.
        var clean = string.Concat(text.Where(c => !char.IsControl(c)).Take(70));
        _longest = Math.Max(_longest, clean.Length);
        terminal.Error.Write('\r' + clean.PadRight(_longest));
    }
}
