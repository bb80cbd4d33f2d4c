using CsCheck;
using Recipe.Text.Findings;

namespace Recipe.Semantics.Tests;

/// <summary>What is true of binding whatever the text.</summary>
public class AnyTextTests
{
    private const int Iterations = 1500;

    [Fact]
    public void Binding_any_text_gives_a_model_and_findings_inside_the_text() => Damaged.Any.Sample(
        recipe =>
        {
            var bound = Bind(recipe);
            Assert.NotEqual(0, Dump.Of(bound).Length);
            Assert.All(bound.Findings, f => Assert.Same(bound.Tree.Source, f.Where.Source));
            Assert.All(bound.Findings, f => Assert.InRange(f.Where.Span.End, f.Where.Span.Start, recipe.Text.Length));
            Assert.All(bound.Findings, f => Assert.Matches(@"^[^\n]+[.?]$", f.Message));
            Assert.All(bound.Names, n => Assert.Equal(n.Name, n.Where.Text.Replace('\u00d7', 'x')));
            Assert.Equal(bound.Findings.Order(Comparer<Finding>.Create(Finding.Compare)), bound.Findings);
        },
        iter: Iterations);

    [Fact]
    public void A_thing_is_told_once() => Damaged.Any.Sample(
        recipe =>
        {
            var told = Bind(recipe).Findings.Select(f => (f.Where, f.Descriptor.Code, f.Message)).ToArray();
            Assert.Equal(told.Distinct(), told);
        },
        iter: Iterations);

    [Fact]
    public void Binding_again_gives_the_same() => Damaged.Any.Sample(
        recipe => Assert.Equal(Dump.Of(Bind(recipe)), Dump.Of(Bind(recipe))),
        iter: Iterations / 2);

    [Fact]
    public void What_threads_bind_side_by_side_is_what_one_binds_alone() => Damaged.Any.Array[2, 6].Sample(
        recipes =>
        {
            var alone = recipes.Select(r => Dump.Of(Bind(r))).ToArray();
            var book = Book.Bind(Shipped.Book.Files);
            var uses = Shipped.Uses();
            var trees = recipes.Select(r => Given.Tree(r.Text, r.Path)).ToArray();
            var together = new string[2 * recipes.Length];
            Parallel.For(0, together.Length, i => together[i] = Dump.Of(Binder.Bind(trees[i % trees.Length], book, uses)));
            Assert.Equal(alone, together[..recipes.Length]);
            Assert.Equal(alone, together[recipes.Length..]);
        },
        iter: Iterations / 20);

    [Fact]
    public void Every_fix_settles_its_finding() => Damaged.Any.Sample(
        recipe =>
        {
            var bound = Bind(recipe);
            Assert.All(bound.Findings, f => FixCheck.Settles(bound, f, text => Bind((recipe.Path, text))));
        },
        iter: Iterations / 4);

    private static BoundFile Bind((string Path, string Text) recipe) =>
        Binder.Bind(Given.Tree(recipe.Text, recipe.Path), Shipped.Book, Shipped.Uses());
}
