using System.Collections.Immutable;
using Recipe.Compiler;
using Recipe.Semantics;
using Recipe.Syntax;
using Recipe.Text;

namespace Recipe.Editing;

/// <summary>Which part each token of a text plays.</summary>
public static class Colouring
{
    /// <summary>The tokens that a span touches, in order; signs, blanks and braces are left to the editor.</summary>
    public static ImmutableArray<ColouredSpan> Of(CompiledFile file, TextSpan range)
    {
        ArgumentNullException.ThrowIfNull(file);
        var heads = new Dictionary<int, EntryPlace>();
        var clauses = new Dictionary<int, TokenRole>();
        foreach (var place in Places.All(file.Tree))
        {
            if (place.Entry.LineSpan.End < range.Start || place.Entry.LineSpan.Start > range.End)
            {
                continue;
            }

            heads[place.Entry.Head.Span.Start] = place;
            foreach (var word in place.Entry.Values.OfType<WordSyntax>())
            {
                clauses[word.Span.Start] = RoleOf(place, word.Text);
            }
        }

        var names = new Dictionary<int, NameUse>();
        foreach (var name in file.Bound.Names)
        {
            names[name.Where.Span.Start] = name;
        }

        var found = ImmutableArray.CreateBuilder<ColouredSpan>();
        foreach (var token in file.Tree.Tokens)
        {
            if (token.Span.End < range.Start || token.Span.Length == 0)
            {
                continue;
            }

            if (token.Span.Start > range.End)
            {
                break;
            }

            if (Colour(token, heads, clauses, names) is { } coloured)
            {
                found.Add(coloured);
            }
        }

        return found.ToImmutable();
    }

    private static ColouredSpan? Colour(Token token, Dictionary<int, EntryPlace> heads, Dictionary<int, TokenRole> clauses, Dictionary<int, NameUse> names)
    {
        switch (token.Kind)
        {
            case TokenKind.Comment:
                return Plain(token, TokenRole.Comment);
            case TokenKind.String:
                return Plain(token, TokenRole.Text);
            case TokenKind.Number or TokenKind.Date:
                return Plain(token, TokenRole.Number);
            case TokenKind.Unit:
                return Plain(token, TokenRole.Unit);
            case TokenKind.Plus or TokenKind.Minus or TokenKind.Star or TokenKind.Slash or TokenKind.PlusMinus or TokenKind.EqualsSign or TokenKind.Colon:
                return Plain(token, TokenRole.Operator);
            case TokenKind.Word:
                if (names.TryGetValue(token.Span.Start, out var name) && name.Where.Span == token.Span)
                {
                    var role = name.Kind is NameKind.Material or NameKind.Hardener ? TokenRole.Material : TokenRole.Name;
                    return new ColouredSpan(token.Span, role, name.IsDeclaration, name.Declaration is { } at && at.Source.Name.StartsWith("book/", StringComparison.Ordinal));
                }

                if (heads.TryGetValue(token.Span.Start, out var head))
                {
                    return Plain(token, head.IsNameLine ? TokenRole.Name : TokenRole.Keyword);
                }

                return Plain(token, clauses.TryGetValue(token.Span.Start, out var clause) ? clause : TokenRole.Keyword);
            default:
                return null;
        }
    }

    private static ColouredSpan Plain(Token token, TokenRole role) => new(token.Span, role, false, false);

    private static TokenRole RoleOf(EntryPlace place, string text)
    {
        if (place.Word is not { } word)
        {
            return TokenRole.Name;
        }

        var line = word.FormOf(text) is not null ? null : word.Line;
        var isClause = line is null
            ? false
            : line.Clauses.Any(c => c.Words.Contains(text)) || line.Flags.Any(f => f.Words.Contains(text)) || text is "source" or "by" or "weight" or "volume" or "below" or "ambient" or "absolute" or "to" or "of";
        return isClause || word.Forms.Any(f => f.Line.Clauses.Any(c => c.Words.Contains(text))) ? TokenRole.Clause : TokenRole.Choice;
    }
}
