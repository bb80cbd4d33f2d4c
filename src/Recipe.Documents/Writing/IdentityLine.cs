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
        var say = identity.Wording;
        yield return identity.Part;
        yield return Revision(identity, identity.Revision);
        if (identity.Serial is { } serial)
        {
            yield return say.Say($"serial {serial}");
        }

        yield return say.Say($"recipe {identity.Source}, part {identity.PartName}");
        if (identity.Printed is { } day)
        {
            yield return say.Say($"printed {Numbers.Day(day)}");
        }

        if (identity.OfOneBuild)
        {
            yield return say.Say("destroy after build");
        }
    }

    /// <summary>"revision 1a2b3c", or that there is none.</summary>
    public static string Revision(Identity identity, string? revision) => revision is null ? identity.Wording.Say("no revision") : identity.Wording.Say($"revision {revision}");
}
