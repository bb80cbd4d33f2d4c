using Recipe.Semantics.Findings;
using Recipe.Semantics.Reading;

namespace Recipe.Semantics.Binding;

/// <summary>
/// Puts the lines of a declaration together with those it copies (<c>like</c>). The row of copies is followed in the text, so that a
/// circle is found the same way whoever asks first, and no two declarations wait for each other.
/// </summary>
internal static class CopyChain
{
    /// <summary>Lines that a copy does not take over: they belong to the one thing that says them.</summary>
    private static readonly string[] OfOneThing = ["title", "default"];

    /// <summary>The lines of a material, its own over the copied ones.</summary>
    public static Lines Read(MaterialDeclaration declaration, LineContext context)
    {
        declaration.ReadHead(context, NameKind.Material);
        return Merge(declaration, context, NextMaterial);
    }

    /// <summary>The lines of a mould, its own over the copied ones.</summary>
    public static Lines Read(MouldDeclaration declaration, LineContext context)
    {
        declaration.ReadHead(context, NameKind.Mould);
        return Merge(declaration, context, NextMould);
    }

    private static Lines Merge<T>(T declaration, LineContext context, Func<T, T?> next)
        where T : BlockDeclaration
    {
        var own = declaration.ReadLines(context);
        var chain = new List<T>();
        var seen = new HashSet<T> { declaration };
        var copied = next(declaration);
        while (copied is not null && seen.Add(copied))
        {
            chain.Add(copied);
            copied = next(copied);
        }

        if (copied is not null)
        {
            // Only those on the circle report it; what hangs off it copies nothing either.
            if (ReferenceEquals(copied, declaration) && declaration.NameBehind("like") is { } like)
            {
                context.Sink.Report(CopyCycle.Create(context.At(like.Span), [declaration.Name, .. chain.Select(c => c.Name), declaration.Name]));
            }

            return own;
        }

        var lines = new Lines([]);
        for (var i = chain.Count - 1; i >= 0; i--)
        {
            lines = Lines.Over(lines, chain[i].ReadLines(chain[i].Context));
        }

        return Lines.Over(lines, own, chain.Count == 0 ? [] : OfOneThing);
    }

    private static MaterialDeclaration? NextMaterial(MaterialDeclaration declaration) =>
        declaration.NameBehind("like") is { } name
        && declaration.Context.Scope.FindMaterial(name.Text) is { } found
        && ReferenceEquals(found.Word, declaration.Word)
            ? found
            : null;

    private static MouldDeclaration? NextMould(MouldDeclaration declaration) =>
        declaration.NameBehind("like") is { } name ? declaration.Context.Scope.FindMould(name.Text) : null;
}
