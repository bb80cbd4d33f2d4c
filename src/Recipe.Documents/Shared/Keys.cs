using System.Text;

namespace Recipe.Documents.Shared;

/// <summary>Choices of the model as keys for programs: the name in kebab case, <c>peel-ply</c>. They never change.</summary>
internal static class Keys
{
    public static string Of<T>(T choice)
        where T : struct, Enum
    {
        var name = choice.ToString();
        var key = new StringBuilder(name.Length + 4);
        foreach (var c in name)
        {
            if (char.IsAsciiLetterUpper(c) && key.Length > 0)
            {
                key.Append('-');
            }

            key.Append(char.ToLowerInvariant(c));
        }

        return key.ToString();
    }
}
