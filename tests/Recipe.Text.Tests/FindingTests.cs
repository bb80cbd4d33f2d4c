using Recipe.Text.Findings;

namespace Recipe.Text.Tests;

public sealed class FindingTests
{
    private static readonly SourceText Source = new("b.recipe", "let lap = 20 mm\n");

    private static readonly FindingDescriptor Example = new()
    {
        Code = "RC9999",
        Name = "an-example",
        Severity = Severity.Warning,
        Title = "An example",
        Reason = "It shows how.",
        Remedy = "Look at it.",
        Source = "from memory",
        BadExample = "a",
        GoodExample = "b",
    };

    [Theory]
    [InlineData("RC12", "an-example")]
    [InlineData("rc1234", "an-example")]
    [InlineData("RC1234", "An Example")]
    public void A_code_and_a_name_have_their_form(string code, string name) =>
        Assert.Throws<ArgumentException>(() => Example with { Code = code, Name = name });

    [Fact]
    public void Findings_are_shown_by_file_then_place_then_code()
    {
        var later = Finding.Of(Example, At(4, 3), "later");
        var first = Finding.Of(Example, At(0, 3), "first");
        var sameplace = Finding.Of(Example with { Code = "RC9998" }, At(4, 3), "same place");
        var otherFile = Finding.Of(Example, new SourceSpan(new SourceText("a.recipe", "abcdef"), new TextSpan(5, 1)), "other file");

        List<Finding> all = [later, first, sameplace, otherFile];
        all.Sort(Finding.Compare);

        Assert.Equal([otherFile, first, sameplace, later], all);
        Assert.Equal(Severity.Warning, later.Severity);
    }

    [Fact]
    public void Within_a_file_the_step_of_the_job_comes_before_the_place()
    {
        var cure = Finding.Of(Example with { Code = "RC7001" }, At(0, 3), "cure");
        var mould = Finding.Of(Example with { Code = "RC2101" }, At(4, 3), "mould");
        var text = Finding.Of(Example with { Code = "RC1001" }, At(5, 1), "text");
        List<Finding> all = [cure, mould, text];
        all.Sort(Finding.Compare);
        Assert.Equal([text, mould, cure], all);
    }

    [Theory]
    [InlineData("take it out")]
    [InlineData("Take it out.")]
    [InlineData(" ")]
    public void The_title_of_a_fix_is_an_instruction(string title) =>
        Assert.Throws<ArgumentException>(() => new Fix(title, FixSafety.Safe, new TextEdit(At(0, 1), "")));

    [Fact]
    public void A_fix_edits_something() => Assert.Throws<ArgumentException>(() => new Fix("Take it out", FixSafety.Safe));

    [Fact]
    public void Edits_are_applied_together_whatever_their_order()
    {
        var wider = new TextEdit(At(10, 5), "25 mm");
        var name = new TextEdit(At(4, 3), "overlap");
        var comment = new TextEdit(At(15, 0), " # lap");

        Assert.Equal("let overlap = 25 mm # lap\n", TextEdit.Apply(Source, [wider, name, comment]));
        Assert.Equal("let overlap = 25 mm # lap\n", TextEdit.Apply(Source, [comment, name, wider]));
    }

    [Fact]
    public void An_edit_of_another_text_is_left_out() =>
        Assert.Equal(Source.Text, TextEdit.Apply(Source, [new TextEdit(new SourceSpan(new SourceText("a.recipe", "x"), new TextSpan(0, 1)), "y")]));

    [Fact]
    public void Edits_that_overlap_are_refused() =>
        Assert.Throws<ArgumentException>(() => TextEdit.Apply(Source, [new TextEdit(At(0, 5), "a"), new TextEdit(At(4, 3), "b")]));

    private static SourceSpan At(int start, int length) => new(Source, new TextSpan(start, length));
}
