using Recipe.Syntax.Merging;

namespace Recipe.Syntax.Tests;

/// <summary>What two people do to one recipe, and what comes of it.</summary>
public sealed class MergeTests
{
    private const string Lid =
        "# a lid\n\n" +
        "use \"shop.recipe\"\n\n" +
        "part lid {\n" +
        "  resin  slow\n" +
        "  trim   15 mm\n\n" +
        "  plies {                # from the mould\n" +
        "    outer  glass  0/90\n" +
        "    veil   carbon random\n" +
        "    body   glass  +/-45\n" +
        "    inner  glass  0/90\n" +
        "  }\n\n" +
        "  cure {\n" +
        "    hold  20 degC for 12 h\n" +
        "    ramp  0.3 degC/min to 50 degC\n" +
        "    hold  50 degC for 6 h\n" +
        "  }\n" +
        "}\n";

    [Fact]
    public void Plies_at_different_places_the_resin_and_a_new_part_go_together()
    {
        var ours = Lid.Replace("slow", "fast", StringComparison.Ordinal).Replace("    veil ", "    felt   mat random\n    veil ", StringComparison.Ordinal);
        var theirs = Lid.Replace("    inner ", "    back   glass  0/90\n    inner ", StringComparison.Ordinal) + "\npart rib {\n  resin  slow\n}\n";
        var merged = Clean(ours, theirs);
        Assert.Equal(
            Lid.Replace("slow", "fast", StringComparison.Ordinal)
                .Replace("    veil ", "    felt   mat random\n    veil ", StringComparison.Ordinal)
                .Replace("    inner ", "    back   glass  0/90\n    inner ", StringComparison.Ordinal) + "\npart rib {\n  resin  slow\n}\n",
            merged);
    }

    [Fact]
    public void Lines_next_to_each_other_are_no_conflict_where_they_are_known_by_their_words()
    {
        var merged = Clean(Lid.Replace("slow", "fast", StringComparison.Ordinal), Lid.Replace("15 mm", "20 mm", StringComparison.Ordinal));
        Assert.Contains("  resin  fast\n  trim   20 mm\n", merged, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_line_changed_two_ways_is_a_conflict_of_that_line()
    {
        var merged = Merge(Lid.Replace("slow", "fast", StringComparison.Ordinal), Lid.Replace("slow", "thin", StringComparison.Ordinal));
        Assert.Equal(1, merged.Conflicts);
        Assert.Equal(Lid.Replace("  resin  slow\n", "<<<<<<< ours\n  resin  fast\n=======\n  resin  thin\n>>>>>>> theirs\n", StringComparison.Ordinal), merged.Text);
    }

    [Fact]
    public void A_ply_taken_out_here_and_changed_there_is_a_conflict()
    {
        var merged = Merge(Lid.Replace("    veil   carbon random\n", "", StringComparison.Ordinal), Lid.Replace("veil   carbon", "veil   glass", StringComparison.Ordinal));
        Assert.Equal(1, merged.Conflicts);
        Assert.Contains("<<<<<<< ours\n=======\n    veil   glass random\n>>>>>>> theirs\n    body ", merged.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_plies_at_one_place_are_for_a_person_to_put_in_order()
    {
        var merged = Merge(Lid.Replace("    body ", "    felt   mat\n    body ", StringComparison.Ordinal), Lid.Replace("    body ", "    mesh   net\n    body ", StringComparison.Ordinal));
        Assert.Equal(1, merged.Conflicts);
        Assert.Contains("<<<<<<< ours\n    felt   mat\n=======\n    mesh   net\n>>>>>>> theirs\n", merged.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void One_ply_put_in_two_places_is_never_laid_twice_unseen()
    {
        var merged = Merge(Lid.Replace("    outer ", "    felt   mat\n    outer ", StringComparison.Ordinal), Lid.Replace("    inner ", "    felt   mat\n    inner ", StringComparison.Ordinal));
        Assert.Equal(2, merged.Conflicts);

        // The same where both moved it.
        var without = Lid.Replace("    veil   carbon random\n", "", StringComparison.Ordinal);
        merged = Merge(
            without.Replace("    outer ", "    veil   carbon random\n    outer ", StringComparison.Ordinal),
            without.Replace("    inner  glass  0/90\n", "    inner  glass  0/90\n    veil   carbon random\n", StringComparison.Ordinal));
        Assert.Equal(2, merged.Conflicts);
    }

    [Fact]
    public void Two_lines_at_one_place_where_order_is_nothing_are_both_taken()
    {
        var merged = Clean(Lid.Replace("  trim ", "  use    cosmetic\n  trim ", StringComparison.Ordinal), Lid.Replace("  trim ", "  overlap 20 mm\n  trim ", StringComparison.Ordinal));
        Assert.Contains("  overlap 20 mm\n  use    cosmetic\n  trim ", merged, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_addition_is_one_and_of_two_of_one_name_somebody_chooses()
    {
        const string rib = "\npart rib {\n  resin  slow\n  trim   5 mm\n}\n";
        Assert.Equal(
            (Lid + rib).Replace("15 mm", "20 mm", StringComparison.Ordinal),
            Clean(Lid + rib, Lid.Replace("15 mm", "20 mm", StringComparison.Ordinal) + rib));
        var merged = Merge(Lid + rib, Lid + rib.Replace("5 mm", "8 mm", StringComparison.Ordinal));
        Assert.Equal(Lid + rib.Replace("  trim   5 mm\n", "<<<<<<< ours\n  trim   5 mm\n=======\n  trim   8 mm\n>>>>>>> theirs\n", StringComparison.Ordinal), merged.Text);
    }

    [Fact]
    public void A_part_that_moved_here_and_changed_there_does_both()
    {
        const string rib = "part rib {\n  resin  slow\n}\n";
        var merged = RecipeMerge.Merge(rib + "\n" + Lid, Lid + "\n" + rib, (rib + "\n" + Lid).Replace("  resin  slow\n}", "  resin  fast\n}", StringComparison.Ordinal), TestRules.File);
        Assert.Equal(new MergeResult(Lid + "\n" + rib.Replace("slow", "fast", StringComparison.Ordinal), 0, ByLines: false), merged);
    }

    [Fact]
    public void Steps_of_a_cure_that_are_called_alike_are_told_apart_by_where_they_stand()
    {
        var merged = Clean(Lid.Replace("for 12 h", "for 14 h", StringComparison.Ordinal), Lid.Replace("for 6 h", "for 8 h", StringComparison.Ordinal));
        Assert.Equal(Lid.Replace("for 12 h", "for 14 h", StringComparison.Ordinal).Replace("for 6 h", "for 8 h", StringComparison.Ordinal), merged);
    }

    [Fact]
    public void Layout_is_no_change_and_what_was_laid_out_stays_so()
    {
        var laidOut = Read.Format(Lid);
        var ours = Read.Format(Lid.Replace("    veil ", "    interleaf  felt random\n    veil ", StringComparison.Ordinal));
        var theirs = Read.Format(Lid.Replace("inner  glass", "inner  carbon", StringComparison.Ordinal));
        var merged = RecipeMerge.Merge(laidOut, ours, theirs, TestRules.File);
        Assert.Equal(0, merged.Conflicts);
        Assert.Equal(Read.Format(ours.Replace("inner      glass", "inner      carbon", StringComparison.Ordinal)), merged.Text);
    }

    [Fact]
    public void Blanks_that_mean_something_are_a_change()
    {
        const string before = "let a = (1 / 2 mm)\n";
        var merged = RecipeMerge.Merge(before, "let a = (1/2 mm)\n", "let a = (1 / 3 mm)\n", TestRules.File);
        Assert.Equal(1, merged.Conflicts);
    }

    [Fact]
    public void A_comment_goes_with_what_follows_it()
    {
        var ours = Lid.Replace("    body ", "    # stitched, not woven\n    body ", StringComparison.Ordinal);
        var theirs = Lid.Replace("    body ", "    felt   mat random\n    body ", StringComparison.Ordinal);
        Assert.Contains("    felt   mat random\n    # stitched, not woven\n    body ", Clean(ours, theirs), StringComparison.Ordinal);
    }

    [Fact]
    public void A_comment_changed_two_ways_is_a_conflict_and_one_taken_out_is_gone()
    {
        Assert.Equal(1, Merge(Lid.Replace("# a lid", "# the lid", StringComparison.Ordinal), Lid.Replace("# a lid", "# our lid", StringComparison.Ordinal)).Conflicts);
        Assert.DoesNotContain("# a lid", Clean(Lid.Replace("# a lid\n\n", "", StringComparison.Ordinal), Lid.Replace("slow", "fast", StringComparison.Ordinal)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\r\n", false)]
    [InlineData("\n", true)]
    [InlineData("\r\n", true)]
    [InlineData("\r", false)]
    public void Line_ends_and_mark_of_our_side_stay(string end, bool hasMark)
    {
        string Ours(string text) => (hasMark ? "\ufeff" : "") + text.Replace("\n", end, StringComparison.Ordinal);
        var theirs = Lid.Replace("15 mm", "20 mm", StringComparison.Ordinal) + "part rib {\n}\n";
        var merged = RecipeMerge.Merge(Lid, Ours(Lid.Replace("slow", "fast", StringComparison.Ordinal)), theirs, TestRules.File);
        Assert.Equal(new MergeResult(Ours(theirs.Replace("slow", "fast", StringComparison.Ordinal)), 0, ByLines: false), merged);
    }

    [Fact]
    public void A_last_line_without_its_end_gets_one_only_where_something_follows()
    {
        var before = Lid.TrimEnd('\n');
        var merged = RecipeMerge.Merge(before, before.Replace("slow", "fast", StringComparison.Ordinal), before.Replace("15 mm", "20 mm", StringComparison.Ordinal), TestRules.File);
        Assert.EndsWith("  }\n}", merged.Text, StringComparison.Ordinal);
        merged = RecipeMerge.Merge(before, before.Replace("slow", "fast", StringComparison.Ordinal), before + "\npart rib {\n}\n", TestRules.File);
        Assert.EndsWith("  }\n}\npart rib {\n}\n", merged.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Text_that_cannot_be_read_is_merged_line_by_line()
    {
        const string broken = "part lid {\n  a 1 mm\n  b 2 mm\n  c 3 mm\n  d 4 mm\n";
        var merged = RecipeMerge.Merge(broken, broken.Replace("a 1", "a 9", StringComparison.Ordinal), broken.Replace("d 4", "d 9", StringComparison.Ordinal), TestRules.File);
        Assert.Equal(new MergeResult(broken.Replace("a 1", "a 9", StringComparison.Ordinal).Replace("d 4", "d 9", StringComparison.Ordinal), 0, ByLines: true), merged);
        merged = RecipeMerge.Merge(broken, broken.Replace("a 1", "a 8", StringComparison.Ordinal), broken.Replace("a 1", "a 9", StringComparison.Ordinal), TestRules.File);
        Assert.Equal(broken.Replace("  a 1 mm\n", "<<<<<<< ours\n  a 8 mm\n=======\n  a 9 mm\n>>>>>>> theirs\n", StringComparison.Ordinal), merged.Text);
    }

    [Fact]
    public void A_file_that_both_began_is_merged_too()
    {
        var merged = RecipeMerge.Merge("", "part lid {\n  trim 5 mm\n}\n", "part rib {\n  trim 5 mm\n}\n", TestRules.File);
        Assert.Equal("part lid {\n  trim 5 mm\n}\npart rib {\n  trim 5 mm\n}\n", merged.Text);
    }

    [Fact]
    public void Markers_are_as_long_as_they_are_asked_to_be()
    {
        var merged = RecipeMerge.Merge("a 1\n", "a 2\n", "a 3\n", TestRules.File, new ConflictMarkers("HEAD", "", 10));
        Assert.Equal("<<<<<<<<<< HEAD\na 2\n==========\na 3\n>>>>>>>>>>\n", merged.Text);
    }

    private static MergeResult Merge(string ours, string theirs)
    {
        var merged = RecipeMerge.Merge(Lid, ours, theirs, TestRules.File);
        Assert.False(merged.ByLines);
        return merged;
    }

    private static string Clean(string ours, string theirs)
    {
        var merged = Merge(ours, theirs);
        Assert.True(merged.Conflicts == 0, merged.Text);
        return merged.Text;
    }
}
