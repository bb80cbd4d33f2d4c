using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Edits of the figures that an author wrote.</summary>
internal static class FigureEdits
{
    /// <summary>
    /// Writes another value where the author wrote a figure; null when the figure is not written out there (a default, a named value,
    /// an expression, an entry of the book), because then the change belongs somewhere else.
    /// </summary>
    public static TextEdit? Rewrite<T>(Figure<T>? figure, string text) =>
        figure is { Basis: not Basis.Book, Where: { } where } && where.Text == figure.Written ? new TextEdit(where, text) : null;
}
