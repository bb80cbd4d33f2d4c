namespace Recipe.Syntax.Tests;

public sealed class LexerTests
{
    [Theory]
    [InlineData("peel-ply", "Word peel-ply")]
    [InlineData("_a x2 carbon_8", "Word _a", "Word x2", "Word carbon_8")]
    [InlineData("a- b", "Word a", "Minus -", "Word b")]
    [InlineData("a-2 a--b", "Word a-2", "Word a", "Minus -", "Minus -", "Word b")]
    [InlineData("hélice Ωmega", "Word hélice", "Word Ωmega")]
    [InlineData("300 mm x 40mm", "Number 300", "Unit mm", "Word x", "Number 40", "Unit mm")]
    [InlineData("3×4", "Number 3", "Word ×", "Number 4")]
    [InlineData("1e-6 2E3 3e", "Number 1e-6", "Number 2E3", "Number 3", "Word e")]
    [InlineData("5 g/m2 5 m", "Number 5", "Unit g/m2", "Number 5", "Unit m")]
    [InlineData("0.5 degC/min to", "Number 0.5", "Unit degC/min", "Word to")]
    [InlineData("mm 5", "Word mm", "Number 5")]
    [InlineData("5 metal", "Number 5", "Word metal")]
    [InlineData("(2) mm", "OpenParenthesis (", "Number 2", "CloseParenthesis )", "Unit mm")]
    [InlineData("45 %by", "Number 45", "Unit %", "Word by")]
    [InlineData("20 °C", "Number 20", "Unit °C")]
    [InlineData("2026-05-14", "Date 2026-05-14")]
    [InlineData("2026-05-14x", "Number 2026", "Minus -", "Number 05", "Minus -", "Number 14", "Word x")]
    [InlineData("12026-05-14", "Number 12026", "Minus -", "Number 05", "Minus -", "Number 14")]
    [InlineData("+/-45 ±45", "PlusMinus +/-", "Number 45", "PlusMinus ±", "Number 45")]
    [InlineData("0/90 45/-45", "Number 0", "Slash /", "Number 90", "Number 45", "Slash /", "Minus -", "Number 45")]
    [InlineData("\"a \\\" b\" c", "String \"a \\\" b\"", "Word c")]
    [InlineData("\"# {\" # \"x\"", "String \"# {\"", "Comment # \"x\"")]
    [InlineData("\"open\nb", "String \"open", "LineEnd \n", "Word b")]
    [InlineData("a\r\nb\rc\n", "Word a", "LineEnd \r\n", "Word b", "LineEnd \r", "Word c", "LineEnd \n")]
    [InlineData("{};:=*", "OpenBrace {", "CloseBrace }", "Semicolon ;", "Colon :", "EqualsSign =", "Star *")]
    [InlineData("a !?@ b", "Word a", "Bad !?@", "Word b")]
    [InlineData("1,5 1.000,5", "Number 1,5", "Number 1.000,5")]
    [InlineData(".5 5.", "Number .5", "Number 5", "Bad .")]
    public void A_text_is_cut_into_tokens(string text, params string[] tokens) => Assert.Equal(tokens, Read.Tokens(text));

    [Fact]
    public void Blanks_of_every_width_and_a_byte_order_mark_are_blanks()
    {
        var tree = Read.Tree("\ufeffa\u00a05\u202fmm\t");

        Assert.Equal(
            [TokenKind.Blank, TokenKind.Word, TokenKind.Blank, TokenKind.Number, TokenKind.Blank, TokenKind.Unit, TokenKind.Blank, TokenKind.EndOfFile],
            tree.Tokens.Select(token => token.Kind));
        Assert.Empty(tree.Findings);
    }

    [Fact]
    public void A_byte_order_mark_inside_the_text_means_nothing() => Assert.Equal(["RC1003"], Read.Codes("a\ufeff"));

    [Fact]
    public void A_unit_knows_what_it_is_worth() =>
        Assert.Equal(1e-3, Assert.Single(Read.Tree("a 5 gsm").Tokens, token => token.Kind == TokenKind.Unit).Unit!.Factor);
}
