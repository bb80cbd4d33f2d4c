using Recipe.Model;
using Recipe.Semantics.Binding;
using Recipe.Text;

namespace Recipe.Semantics.Reading;

/// <summary>Where lines stand: their text, what is in scope there, and who hears about them.</summary>
internal sealed record LineContext(SourceText Source, INameScope Scope, bool IsBook, FindingSink Sink)
{
    /// <summary>The same lines, read again without telling anybody.</summary>
    public LineContext Quietly() => Sink.IsQuiet ? this : this with { Sink = FindingSink.Quiet };

    public SourceSpan At(TextSpan span) => new(Source, span);
}

/// <summary>Where figures come from: the text of a <c>source</c>, and whether it says <c>assumed</c>.</summary>
internal sealed record SourceNote(bool IsAssumed, string? Text)
{
    /// <summary>Who says a figure that stands in such a place.</summary>
    public static Basis BasisOf(SourceNote? note, bool isBook) =>
        note is { IsAssumed: true } ? Basis.Assumed : isBook ? Basis.Book : Basis.Stated;
}
