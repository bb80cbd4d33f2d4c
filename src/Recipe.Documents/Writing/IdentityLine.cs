using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;

namespace Recipe.Documents.Writing;

/// <summary>What every page says about itself, in one line.</summary>
internal static class IdentityLine
{
    private const string Between = " · ";

    public static string Of(Identity identity) => string.Join(Between, Pieces(identity));

    /// <summary>The pieces, the ones for the foot of a page first.</summary>
    public static IEnumerable<string> Pieces(Identity identity)
    {
        yield return identity.Part;
        yield return identity.Revision is null ? "no revision" : $"revision {identity.Revision}";
        if (identity.Serial is { } serial)
        {
            yield return $"serial {serial}";
        }

        yield return $"recipe {identity.Source}, part {identity.PartName}";
        if (identity.Printed is { } day)
        {
            yield return $"printed {Numbers.Day(day)}";
        }

        if (identity.OfOneBuild)
        {
            yield return "destroy after build";
        }
    }
}
