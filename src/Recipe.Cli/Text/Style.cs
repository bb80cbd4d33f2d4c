using Recipe.Text.Findings;

namespace Recipe.Cli.Text;

/// <summary>Colour where a person looks, none in a pipe. Colour never carries meaning alone: the words say it too.</summary>
internal sealed class Style(bool colour)
{
    public static Style For(Terminal terminal, string wish) => new(wish switch
    {
        "always" => true,
        "never" => false,
        _ => terminal.OutIsTerminal && !terminal.NoColour,
    });

    public string Of(Severity severity, string text) => severity switch
    {
        Severity.Error => Paint("1;31", text),
        Severity.Warning => Paint("1;33", text),
        _ => Paint("1;36", text),
    };

    public string Strong(string text) => Paint("1", text);

    public string Faint(string text) => Paint("2", text);

    private string Paint(string code, string text) => colour ? $"\u001b[{code}m{text}\u001b[0m" : text;
}
