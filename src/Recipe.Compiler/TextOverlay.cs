using System.Diagnostics.CodeAnalysis;
using Recipe.RuleProtocol;

namespace Recipe.Compiler;

/// <summary>Other files, with another text for one of them.</summary>
/// <param name="below">The other files.</param>
/// <param name="name">The file that reads otherwise; it need not be there.</param>
/// <param name="reads">What it reads.</param>
public sealed class TextOverlay(IFileStore below, string name, string reads) : IFileStore
{
    private readonly string _name = PathNames.Normalize(name);

    /// <inheritdoc/>
    public bool TryRead(string name, [NotNullWhen(true)] out string? text)
    {
        if (name != _name)
        {
            return below.TryRead(name, out text);
        }

        text = reads;
        return true;
    }

    /// <inheritdoc/>
    public ShapeBytes? ShapeOf(string name) => below.ShapeOf(name);

    /// <inheritdoc/>
    public IRuleRunner? Rules => below.Rules;

    /// <inheritdoc/>
    public string? FolderAbove(string folder) => below.FolderAbove(folder);

    /// <inheritdoc/>
    public IEnumerable<string> RecipesIn(string folder) => below.RecipesIn(folder);
}
