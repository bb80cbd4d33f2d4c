using System.Collections.Immutable;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Semantics.Reading;

/// <summary>Collects what is found and which names are used while something is bound.</summary>
internal sealed class FindingSink
{
    private readonly List<Finding>? _findings;
    private readonly List<NameUse>? _names;

    public FindingSink()
        : this(quiet: false)
    {
    }

    private FindingSink(bool quiet)
    {
        if (!quiet)
        {
            _findings = [];
            _names = [];
        }
    }

    /// <summary>Takes nothing: for lines that have been reported where they stand, and are read again for a copy or a variant.</summary>
    public static FindingSink Quiet { get; } = new(quiet: true);

    public bool IsQuiet => _findings is null;

    public ImmutableArray<Finding> Findings => _findings is null ? [] : [.. _findings];

    public ImmutableArray<NameUse> Names => _names is null ? [] : [.. _names];

    public void Report(Finding finding) => _findings?.Add(finding);

    public void Use(NameKind kind, string name, SourceSpan where, SourceSpan? declaration) =>
        _names?.Add(new NameUse(kind, name, where, declaration));
}
