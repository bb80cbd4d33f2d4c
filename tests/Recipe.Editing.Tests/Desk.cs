using System.Diagnostics.CodeAnalysis;
using Recipe.Compiler;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Editing.Tests;

/// <summary>
/// A text at a desk: <c>$0</c> marks the cursor. Several texts can lie on it; what is checked is always the text itself, as an editor would show it.
/// </summary>
internal sealed class Desk : IFileStore
{
    public const string Tray = """
        mould tray-mould {
          surface flat 400 mm x 300 mm
          made-of epoxy-glass-tooling
          release {
            carnauba-wax coats 5 wait 30 min
          }
        }

        part tray {
          mould tray-mould
          resin slow-laminating-epoxy
          plies {
            outer glass-twill-163 0/90
            inner glass-twill-163 0/90
          }
          bag {
            peel-ply
            release-film perforated
            breather
            bag-film
          }
          vacuum {
            draw 25 inHg below ambient within 10 min
            leak-check 5 min rise at-most 30 mbar isolated
          }
          cure {
            hold 20 degC for 48 h under vacuum
            demould
          }
        }

        """;

    private readonly Dictionary<string, string> _texts = new(StringComparer.Ordinal);

    private Desk(string text)
    {
        Cursor = text.IndexOf("$0", StringComparison.Ordinal);
        _texts["part.recipe"] = Cursor < 0 ? text : text.Remove(Cursor, 2);
    }

    public int Cursor { get; }

    public CompiledFile File => Compile("part.recipe");

    /// <summary>The tray with one place changed; the new words may hold the cursor.</summary>
    public static Desk With(string words, string by)
    {
        Assert.Equal(1, Tray.Split(words).Length - 1);
        return new Desk(Tray.Replace(words, by, StringComparison.Ordinal));
    }

    public static Desk Of(string text) => new(text);

    /// <summary>The tray with the cursor in the middle of some words.</summary>
    public static Desk At(string words, int into = 1) => With(words, words.Insert(into, "$0"));

    public Desk Beside(string name, string text)
    {
        _texts[name] = text;
        return this;
    }

    public CompiledFile Compile(string name)
    {
        Assert.True(new Workspace(this, new DateOnly(2026, 5, 14)).TryCompile(name, out var file));
        return file;
    }

    public IEnumerable<CompiledFile> All()
    {
        var workspace = new Workspace(this, new DateOnly(2026, 5, 14));
        return [.. workspace.CompileAll([.. _texts.Keys.Order(StringComparer.Ordinal)]).Select(f => f!)];
    }

    /// <summary>The text after edits of it.</summary>
    public string After(IEnumerable<TextEdit> edits)
    {
        var text = File.Source.Text;
        foreach (var edit in edits.OrderByDescending(e => e.Where.Span.Start))
        {
            text = string.Concat(text.AsSpan(0, edit.Where.Span.Start), edit.NewText, text.AsSpan(edit.Where.Span.End));
        }

        return text;
    }

    public TextSpan Span(string words)
    {
        var at = File.Source.Text.IndexOf(words, StringComparison.Ordinal);
        Assert.True(at >= 0, words);
        return new TextSpan(at, words.Length);
    }

    public bool TryRead(string name, [NotNullWhen(true)] out string? text) => _texts.TryGetValue(name, out text);
}
