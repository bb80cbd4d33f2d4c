using Recipe.Text;

namespace Recipe.Editing.Tests;

/// <summary>Hover, hints, lenses, names, outline, folds, colours, layout, actions, links, help: one thing each, and where it keeps quiet.</summary>
public class FeatureTests
{
    private static readonly HashSet<HintTopic> Everything = [.. Enum.GetValues<HintTopic>()];

    [Fact]
    public void A_material_shows_its_figures_with_their_sources()
    {
        var page = Hover(Desk.At("outer glass-twill-163 0/90", 10));
        Assert.Contains("163 g/m2", page, StringComparison.Ordinal);
        Assert.Contains("source", page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_ply_shows_what_follows_from_it()
    {
        var page = Hover(Desk.At("outer glass-twill-163 0/90"));
        Assert.Contains("ply 1 from the mould", page, StringComparison.Ordinal);
        Assert.Contains("thickness", page, StringComparison.Ordinal);
        Assert.Contains("resin to lay", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("leak-check 5 min rise at-most 30 mbar isolated", "Shut off, wait, read.")]
    [InlineData("demould\n", "Takes the part off the mould")]
    public void A_word_says_what_it_is_for(string words, string expected) => Assert.Contains(expected, Hover(Desk.At(words)), StringComparison.Ordinal);

    // 25 inHg are 846.6 mbar (1 inHg = 33.8639 mbar, NIST SP 811).
    [Fact]
    public void A_quantity_is_shown_in_other_units() => Assert.Contains("847 mbar", Hover(Desk.At("25 inHg")), StringComparison.Ordinal);

    [Fact]
    public void A_finding_gives_its_reason() =>
        Assert.Contains("RC7007", Hovers.At(Early.File, EarlyAt)!.Markdown, StringComparison.Ordinal);

    [Fact]
    public void Where_there_is_nothing_nothing_is_shown()
    {
        var desk = Desk.Of("$0\n\n" + Desk.Tray);
        Assert.Null(Hovers.At(desk.File, desk.Cursor));
    }

    // 0.44 m x 0.34 m of 163 g/m2 are cut; 33 % by weight of resin is 33 parts to 67 of cloth, so 163 x 0.1496 x 33 / 67 = 12.0 g; 38 % of a prepreg 38 to 62.
    [Theory]
    [InlineData("infused", "infusion-epoxy", "glass-twill-163", "resin-content 33 % by weight", "12 g resin", "draw in")]
    [InlineData("prepreg", "low-temperature-prepreg-epoxy", "glass-twill-280-prepreg", "", " resin", "bring with them")]
    public void Grams_of_resin_stand_behind_a_ply_that_nobody_wets(string process, string resin, string cloth, string content, string grams, string says)
    {
        var desk = Desk.Of($$"""
            mould m { surface flat 400 mm x 300 mm; made-of epoxy-glass-tooling; release { carnauba-wax coats 5 wait 30 min } }
            part tray {
              mould m
              process {{process}}
              resin {{resin}}
              trim 20 mm
              plies {
                outer {{cloth}} 0/90 {{content}}
              }
            }
            """);
        var hint = Assert.Single(Hints.Of(desk.File, new TextSpan(0, desk.File.Source.Length), Everything), h => h.Topic == HintTopic.Resin);
        Assert.EndsWith(grams, hint.Text, StringComparison.Ordinal);
        Assert.Contains(says, hint.Tooltip, StringComparison.Ordinal);
    }

    [Fact]
    public void Hints_stand_behind_the_lines_that_cause_them()
    {
        var desk = Desk.Of(Desk.Tray);
        var hints = Hints.Of(desk.File, new TextSpan(0, desk.File.Source.Length), Everything);
        var plan = desk.File.Plans.Single();
        var outer = desk.Span("outer glass-twill-163 0/90");
        Assert.Contains(hints, h => h.Offset == outer.End && h.Topic == HintTopic.Thickness && h.Text.EndsWith("so far", StringComparison.Ordinal));
        Assert.Contains(hints, h => h.Topic == HintTopic.Resin && h.Text == $"{Say.Of(plan.Stack[0].LaidResin!.Value.Value)} resin");

        // Without an altitude the shop stands at sea level, 1013.25 mbar (ISO 2533): 25 inHg below it are 166.7 mbar.
        Assert.Contains(hints, h => h.Topic == HintTopic.Pressure && h.Text == "167 mbar absolute");
        Assert.Contains(hints, h => h.Topic == HintTopic.Cure && h.Text.Contains("gels at", StringComparison.Ordinal) && h.Text.Contains("cured", StringComparison.Ordinal));
    }

    /// <summary>A ply that ends inside the edge is no part of the full stack, as the plan and the papers count it.</summary>
    [Fact]
    public void The_thickness_so_far_is_that_of_the_full_stack()
    {
        var desk = Desk.With("inner glass-twill-163 0/90", "pad glass-twill-163 0/90 step 20 mm\n    inner glass-twill-163 0/90");
        var hints = Hints.Of(desk.File, new TextSpan(0, desk.File.Source.Length), Everything);
        var whole = desk.File.Plans.Single().Laminate!.Thickness.Value;
        Assert.Contains(hints, h => h.Offset == desk.Span("inner glass-twill-163 0/90").End && h.Text.EndsWith($", {Say.Of(whole)} so far", StringComparison.Ordinal));
        Assert.DoesNotContain(hints, h => h.Offset == desk.Span("pad glass-twill-163 0/90 step 20 mm").End && h.Text.Contains("so far", StringComparison.Ordinal));
    }

    /// <summary>Minutes are those of the papers: a need is rounded up, a limit down, and what is left is the difference of the two.</summary>
    [Fact]
    public void The_minutes_add_up_as_on_the_papers()
    {
        var file = Desk.With("vacuum {", "wet-out {\n    pace 7.3 min/m2\n    room 21.5 degC\n  }\n  vacuum {").File;
        var clock = file.Plans.Single().Clock!;
        var (need, life) = (Math.Ceiling(clock.Need.Value.Minutes), Math.Floor(clock.FilmLife!.Value.Value.Minutes));
        Assert.Contains(Lenses.Of(file), lens => lens.Title.Contains($"{Say.Of(UnitsNet.Duration.FromMinutes(life - need))} left on the clock", StringComparison.Ordinal));
        Assert.Contains(
            Hints.Of(file, new TextSpan(0, file.Source.Length), Everything),
            h => h.Text == $"first mix to full vacuum {Say.Of(UnitsNet.Duration.FromMinutes(need))} of {Say.Of(UnitsNet.Duration.FromMinutes(life))}");
    }

    [Fact]
    public void An_assembly_says_what_it_weighs_joined()
    {
        var file = Desk.Of(Desk.Tray + """
            part box {
              join {
                manner cured-then-bonded
                parts tray tray
                adhesive structural-adhesive
                bond-line 0.3 mm
                overlap 25 mm
                seam 1400 mm
              }
            }
            """).File;
        var box = file.Parts.Single(part => part.Name == "box");
        var weighs = Say.Of(box.Plan.TrimmedMass!.Value.Value.Value);
        Assert.Contains(Lenses.Of(file), lens => lens is { Part: "box", Action: LensAction.ShowNumbers } && lens.Title.StartsWith($"{weighs} joined", StringComparison.Ordinal));
        Assert.Contains($"joined {weighs}", Hovers.At(file, file.Source.Text.IndexOf("part box", StringComparison.Ordinal) + 6)!.Markdown, StringComparison.Ordinal);
    }

    [Fact]
    public void A_topic_that_is_switched_off_and_a_line_outside_the_range_give_no_hint()
    {
        var desk = Desk.Of(Desk.Tray);
        Assert.All(Hints.Of(desk.File, new TextSpan(0, desk.File.Source.Length), new HashSet<HintTopic> { HintTopic.Pressure }), h => Assert.Equal(HintTopic.Pressure, h.Topic));
        Assert.Empty(Hints.Of(desk.File, desk.Span("mould tray-mould {"), Everything));
        Assert.Empty(Hints.Of(desk.File, new TextSpan(0, desk.File.Source.Length), new HashSet<HintTopic>()));
    }

    [Fact]
    public void A_part_says_what_it_weighs_and_offers_its_papers_unless_an_error_is_open()
    {
        var lenses = Lenses.Of(Desk.Of(Desk.Tray).File);
        Assert.Contains(lenses, l => l.Action == LensAction.ShowNumbers && l.Title.Contains("trimmed", StringComparison.Ordinal) && l.Title.Contains("left on the clock", StringComparison.Ordinal));
        Assert.Contains(lenses, l => l is { Action: LensAction.MakePapers, Part: "tray" });
        Assert.DoesNotContain(Lenses.Of(Desk.With("release {\n    carnauba-wax coats 5 wait 30 min\n  }\n", "").File), l => l.Action == LensAction.MakePapers);
    }

    [Fact]
    public void A_name_leads_to_its_declaration_and_to_its_uses_in_other_files()
    {
        var desk = Desk.At("mould tray-mould\n", 8).Beside("other.recipe", "use \"part.recipe\"\npart lid {\n  mould tray-mould\n}\n");
        var declared = Navigation.Definition(desk.File, desk.Cursor)!.Value;
        Assert.Equal("tray-mould", declared.Text);
        Assert.Equal(0, declared.Start.Line);
        var uses = Navigation.References(desk.All(), desk.File, desk.Cursor, withDeclaration: true);
        Assert.Equal(["other.recipe", "part.recipe", "part.recipe"], uses.Select(u => u.Source.Name));
        Assert.Equal(2, Navigation.References(desk.All(), desk.File, desk.Cursor, withDeclaration: false).Length);
        Assert.Equal([true, false], Navigation.Highlights(desk.File, desk.Cursor).Select(h => h.IsWrite));
    }

    [Fact]
    public void A_name_is_changed_everywhere_and_the_file_means_the_same()
    {
        var desk = Desk.At("mould tray-mould\n", 8);
        Assert.Equal("tray-mould", Renames.Prepare(desk.File, desk.Cursor)!.Name);
        var result = Renames.Rename(desk.All(), desk.File, desk.Cursor, "dish-mould");
        Assert.Null(result.Refusal);
        var text = desk.After(result.Edits);
        Assert.DoesNotContain("tray-mould", text, StringComparison.Ordinal);
        Assert.Empty(Desk.Of(text).File.Findings.Select(f => f.Message));
    }

    [Theory]
    [InlineData("outer glass-twill-163 0/90", 1, "inner", "stands in the same list")]
    [InlineData("outer glass-twill-163 0/90", 1, "two words", "is no name")]
    [InlineData("outer glass-twill-163 0/90", 1, "dish\n", "is no name")]
    [InlineData("outer glass-twill-163 0/90", 1, "part", "is a word of the language")]
    [InlineData("outer glass-twill-163 0/90", 9, "twill", "shipped book")]
    public void A_change_that_would_mean_something_else_is_refused(string words, int into, string name, string why)
    {
        var desk = Desk.At(words, into);
        var result = Renames.Rename(desk.All(), desk.File, desk.Cursor, name);
        Assert.Empty(result.Edits);
        Assert.Contains(why, result.Refusal, StringComparison.Ordinal);
    }

    [Fact]
    public void The_outline_holds_moulds_parts_blocks_and_plies()
    {
        var symbols = Outline.Of(Desk.Of(Desk.Tray).File);
        Assert.Equal(["tray-mould", "tray"], symbols.Select(s => s.Name));
        Assert.Equal(SymbolKind.Mould, symbols[0].Kind);
        var plies = symbols[1].Children.Single(c => c.Name == "plies");
        Assert.Equal(["outer", "inner"], plies.Children.Select(p => p.Name));
        Assert.Equal("glass-twill-163 0/90", plies.Children[0].Detail);
        Assert.Contains(symbols[1].Children.Single(c => c.Name == "bag").Children, s => s is { Name: "bag-film", Kind: SymbolKind.Step });
    }

    [Fact]
    public void Blocks_and_runs_of_comment_fold()
    {
        var folds = Folding.Of(Desk.Of("# one\n# two\nmould m { surface disc diameter 200 mm }\n" + Desk.Tray).File);
        Assert.Equal(7, folds.Count(f => f.Kind == FoldKind.Block));
        Assert.Single(folds, f => f.Kind == FoldKind.Comment);
    }

    [Fact]
    public void A_selection_grows_from_the_word_to_the_file()
    {
        var desk = Desk.At("outer glass-twill-163 0/90", 10);
        var spans = Selections.Around(desk.File, desk.Cursor);
        Assert.Equal("glass-twill-163", desk.File.Source.Slice(spans[0]));
        Assert.Contains("outer glass-twill-163 0/90", spans.Select(desk.File.Source.Slice));
        Assert.Equal(desk.File.Source.Length, spans[^1].Length);
        Assert.All(spans.Zip(spans.Skip(1)), pair => Assert.True(pair.First.Start >= pair.Second.Start && pair.First.End <= pair.Second.End));
    }

    [Theory]
    [InlineData("plies", TokenRole.Keyword, false, false)]
    [InlineData("outer", TokenRole.Name, true, false)]
    [InlineData("glass-twill-163", TokenRole.Material, false, true)]
    [InlineData("below", TokenRole.Clause, false, false)]
    [InlineData("inHg", TokenRole.Unit, false, false)]
    [InlineData("48", TokenRole.Number, false, false)]
    [InlineData("flat", TokenRole.Choice, false, false)]
    public void A_token_plays_its_part(string words, TokenRole role, bool declares, bool book)
    {
        var desk = Desk.Of(Desk.Tray);
        var all = Colouring.Of(desk.File, new TextSpan(0, desk.File.Source.Length));
        var found = all.First(c => desk.File.Source.Slice(c.Where) == words);
        Assert.Equal((role, declares, book), (found.Role, found.IsDeclaration, found.FromBook));
        Assert.All(all.Zip(all.Skip(1)), pair => Assert.True(pair.First.Where.End <= pair.Second.Where.Start));
    }

    [Fact]
    public void Layout_gives_what_the_formatter_gives_and_only_where_it_is_asked_for()
    {
        var messy = Desk.Of(Desk.Tray.Replace("  mould tray-mould", "mould    tray-mould", StringComparison.Ordinal).Replace("    inner", "inner", StringComparison.Ordinal));
        var expected = Compiler.TextLayout.Format("part.recipe", messy.File.Source.Text);
        Assert.Equal(expected, messy.After(Layout.Whole(messy.File)));
        Assert.Empty(Layout.Whole(Desk.Of(expected).File));
        var part = messy.After(Layout.Range(messy.File, messy.Span("inner glass")));
        Assert.Contains("\n    inner  glass", part, StringComparison.Ordinal);
        Assert.Contains("\nmould    tray-mould", part, StringComparison.Ordinal);
    }

    [Fact]
    public void A_new_line_is_indented_as_deep_as_its_block()
    {
        var desk = Desk.With("    inner glass-twill-163 0/90", "    inner glass-twill-163 0/90\n$0");
        Assert.Equal("    ", Assert.Single(Layout.OnType(desk.File, desk.Cursor, '\n')).NewText);
        var brace = Desk.With("    bag-film\n  }", "    bag-film\n    }$0");
        Assert.Equal("  ", Assert.Single(Layout.OnType(brace.File, brace.Cursor, '}')).NewText);
        Assert.Empty(Layout.OnType(desk.File, desk.Cursor, 'x'));
    }

    [Fact]
    public void A_finding_offers_its_fixes_and_a_waiver()
    {
        var desk = Early;
        var actions = Actions.At(desk.File, new TextSpan(EarlyAt, 0));
        Assert.Contains(actions, a => a is { Kind: ActionKind.QuickFix, Settles.Descriptor.Name: "demould-too-early" } && a.Title.StartsWith("Hold", StringComparison.Ordinal));
        var waiver = actions.Single(a => a.Title.StartsWith("Accept demould-too-early", StringComparison.Ordinal));
        var after = Desk.Of(desk.After(waiver.Edits)).File;
        Assert.DoesNotContain(after.Findings, f => f.Descriptor.Name == "demould-too-early");
        Assert.Contains(after.Accepted, f => f.Descriptor.Name == "demould-too-early");
    }

    [Fact]
    public void Safe_fixes_come_together_and_one_that_needs_a_look_is_not_preferred()
    {
        var desk = Desk.With("    bag-film\n  }", "    bag-film\n  }\n  mix {\n    add resin\n    add hardener\n    stir 1 min\n    cup wa$0xed\n  }");
        var actions = Actions.At(desk.File, new TextSpan(desk.Cursor, 0));
        Assert.True(actions.Single(a => a.Title == "Take a clean cup").IsPreferred);
        Assert.Equal("Make all 2 safe fixes of the file", actions.Single(a => a.Kind == ActionKind.FixAll).Title);
    }

    [Fact]
    public void A_material_of_the_book_becomes_one_of_your_own_and_a_part_a_variant()
    {
        var cloth = Desk.At("outer glass-twill-163 0/90", 10);
        var own = Actions.At(cloth.File, new TextSpan(cloth.Cursor, 0)).Single(a => a.Kind == ActionKind.Extract);
        var text = cloth.After(own.Edits);
        Assert.Contains("fabric our-glass-twill-163 like glass-twill-163 {", text, StringComparison.Ordinal);
        Assert.Contains("outer our-glass-twill-163 0/90", text, StringComparison.Ordinal);
        Assert.Empty(Desk.Of(text).File.Findings.Select(f => f.Message));
        var part = Desk.At("part tray {", 6);
        var variant = Actions.At(part.File, new TextSpan(part.Cursor, 0)).Single(a => a.Title == "Make a variant of tray");
        Assert.Equal(["tray", "tray-b"], Desk.Of(part.After(variant.Edits)).File.PartNames);
    }

    // 400 mm are 15.75 in (1 in = 25.4 mm exactly).
    [Fact]
    public void A_quantity_is_written_in_other_units()
    {
        var desk = Desk.With("made-of epoxy-glass-tooling", "flange 4$000 mm");
        Assert.Contains(Actions.At(desk.File, new TextSpan(desk.Cursor, 0)), a => a is { Kind: ActionKind.Rewrite, Title: "Write 15.75 in" });
    }

    // 12 in are 304.8 mm exactly: 305 mm would be another flange.
    [Fact]
    public void Another_unit_says_the_same_size()
    {
        var desk = Desk.With("made-of epoxy-glass-tooling", "flange 1$02 in");
        Assert.Contains(Actions.At(desk.File, new TextSpan(desk.Cursor, 0)), a => a is { Kind: ActionKind.Rewrite, Title: "Write 304.8 mm" });
    }

    [Fact]
    public void A_use_line_leads_to_its_file() =>
        Assert.Equal("shop/ours.recipe", Assert.Single(Links.Of(Desk.Of("use \"shop/ours.recipe\"\n").File)).Target);

    [Fact]
    public void The_line_says_what_it_takes_and_where_the_cursor_is()
    {
        var desk = Desk.With("leak-check 5 min rise at-most 30 mbar isolated", "leak-check 5 min rise at-most $0");
        var help = EntryHelp.At(desk.File, desk.Cursor)!;
        Assert.StartsWith("leak-check a time [rise at-most a pressure]", help.Label, StringComparison.Ordinal);
        Assert.Equal("[rise at-most a pressure]", help.Label.Substring(help.Parts[help.Active].Start, help.Parts[help.Active].Length));
        Assert.Null(EntryHelp.At(desk.File, 0));
    }

    // Whatever is half typed, no feature throws.
    [Fact]
    public void Every_feature_stands_every_beginning_of_a_text()
    {
        for (var length = 0; length <= Desk.Tray.Length; length += 7)
        {
            var file = Desk.Of(Desk.Tray[..length]).File;
            var all = new TextSpan(0, length);
            _ = Completion.At(file, length);
            _ = Hovers.At(file, length);
            _ = Hints.Of(file, all, Everything);
            _ = Lenses.Of(file);
            _ = Navigation.Highlights(file, length);
            _ = Renames.Prepare(file, length);
            _ = Outline.Of(file);
            _ = Folding.Of(file);
            _ = Selections.Around(file, length);
            _ = Colouring.Of(file, all);
            _ = Layout.Whole(file);
            _ = Layout.OnType(file, length, '\n');
            _ = Actions.At(file, new TextSpan(length, 0));
            _ = EntryHelp.At(file, length);
            Assert.Equal(length, file.Source.Length);
        }
    }

    private static Desk Early => Desk.With("hold 20 degC for 48 h under vacuum", "hold 20 degC for 8 h under vacuum");

    private static int EarlyAt => Early.File.Findings.Single(f => f.Descriptor.Name == "demould-too-early").Where.Span.Start;

    private static string Hover(Desk desk) => Assert.IsType<Hover>(Hovers.At(desk.File, desk.Cursor)).Markdown;
}
