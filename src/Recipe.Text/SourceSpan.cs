namespace Recipe.Text;

/// <summary>A span of a named text: what a message points at.</summary>
/// <param name="Source">The text.</param>
/// <param name="Span">The characters.</param>
public readonly record struct SourceSpan(SourceText Source, TextSpan Span)
{
    /// <summary>The characters pointed at.</summary>
    public string Text => Source.Slice(Span);

    /// <summary>Where it starts.</summary>
    public LinePosition Start => Source.PositionOf(Span.Start);

    /// <summary>As compilers write it: <c>file:12:5</c>.</summary>
    public override string ToString() => $"{Source.Name}:{Start}";
}
