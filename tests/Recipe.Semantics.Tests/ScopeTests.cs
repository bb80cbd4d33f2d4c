using Recipe.Model;

namespace Recipe.Semantics.Tests;

/// <summary>Whose name counts: this file's, a used file's, the book's.</summary>
public class ScopeTests
{
    [Fact]
    public void A_declaration_of_ones_own_replaces_the_books_without_a_word()
    {
        var bound = Given.Sound("fabric glass-twill-163 {\n  areal-weight 170 g/m2\n}\npart a { plies { one glass-twill-163 0/90 } }");
        Assert.Equal(170, Assert.IsType<PlyItem>(bound.Model.Parts[0].Stack[0]).Material.ArealWeight!.Value.GramsPerSquareMeter, 6);
        Assert.False(bound.Model.Materials["glass-twill-163"].FromBook);
        Assert.Equal("e-glass", ((Reinforcement)bound.Model.Materials["glass-plain-105"]).Fibre!.Name);
    }

    // The plan takes the last price of a thing.
    [Fact]
    public void A_price_of_ones_own_counts_before_that_of_a_used_file_and_that_of_the_first_before_the_second()
    {
        static string Price(int euros, string material) => $"prices {{ {material} {euros} EUR/m2 }}\n";
        var model = Given.BindFiles(
            ("this.recipe", "use \"one.recipe\"\nuse \"two.recipe\"\n" + Price(1, "glass-twill-163")),
            ("one.recipe", Price(2, "glass-twill-163") + Price(3, "glass-plain-105")),
            ("two.recipe", Price(4, "glass-twill-163") + Price(5, "glass-plain-105"))).Model;

        Assert.Equal((1, 3), (Last("glass-twill-163"), Last("glass-plain-105")));

        decimal Last(string material) => model.Prices.Last(line => line.Material == material).Price.Value.Amount;
    }

    [Fact]
    public void Like_copies_lines_but_not_the_title()
    {
        var cloth = (Reinforcement)Given.Sound("fabric mine like glass-twill-163 {\n  width 50 cm\n}").Model.Materials["mine"];
        Assert.Equal(163, cloth.ArealWeight!.Value.GramsPerSquareMeter, 6);
        Assert.Equal(Basis.Book, cloth.ArealWeight.Basis);
        Assert.Equal("invented roll label", cloth.ArealWeight.Source);
        Assert.Equal(Basis.Assumed, cloth.BaggedContent!.Basis);
        Assert.Equal(Basis.Stated, cloth.Width!.Basis);
        Assert.Null(cloth.Title);
        Assert.False(cloth.FromBook);
    }

    [Fact]
    public void Like_replaces_one_density_and_keeps_the_others()
    {
        var resin = (ResinSystem)Given.Sound("resin mine like slow-laminating-epoxy {\n  density hardener 1 g/cm3\n}").Model.Materials["mine"];
        Assert.Equal(1130, resin.ResinDensity!.Value.KilogramsPerCubicMeter, 6);
        Assert.Equal(1000, resin.HardenerDensity!.Value.KilogramsPerCubicMeter, 6);
    }

    [Fact]
    public void Like_copies_moulds_too()
    {
        var mould = Given.Sound("mould a {\n  surface disc diameter 200 mm\n  flange 50 mm\n}\nmould b like a { flange 60 mm }").Model.Moulds["b"];
        Assert.IsType<DiscShape>(mould.Surface!.Value);
        Assert.Equal(60, mould.Flange!.Value.Millimeters, 9);
    }

    [Fact]
    public void A_copied_default_is_not_a_second_default()
    {
        var bound = Given.Sound("breather mine like breather-150 {\n  areal-weight 140 g/m2\n}\npart a { bag { breather } }");
        Assert.Equal("breather-150", bound.Model.Parts[0].Bag!.Layers[0].Material.Name);
    }

    [Fact]
    public void A_variant_in_a_file_of_its_own_is_made_in_the_shop_of_its_part()
    {
        var model = Given.BindFiles(
            ("light.recipe", "use \"lid.recipe\"\nvariant light of lid { plies { remove one } }"),
            ("lid.recipe", "use \"shop.recipe\"\npart lid { plies { one glass-twill-163 0/90; two glass-twill-163 0/90 } }"),
            ("shop.recipe", "use \"light.recipe\"\nshop ours { paper letter }\nprices { glass-twill-163 5 EUR/m2 }")).Model;
        Assert.Equal("ours", model.Shop!.Name);
        Assert.Single(model.Prices);
    }

    [Fact]
    public void A_default_of_ones_own_comes_before_the_books()
    {
        var bound = Given.Sound("breather mine {\n  areal-weight 140 g/m2\n  default yes\n}\npart a { bag { breather } }");
        Assert.Equal("mine", bound.Model.Parts[0].Bag!.Layers[0].Material.Name);
    }

    [Fact]
    public void A_solid_film_is_found_though_the_default_has_holes()
    {
        var layers = Given.Sound("part a { bag { release-film solid; release-film perforated; release-film } }").Model.Parts[0].Bag!.Layers;
        Assert.Equal(["solid-film", "pin-prick-film", "pin-prick-film"], layers.Select(l => l.Material.Name));
        Assert.Equal([Perforation.None, Perforation.PinPrick, Perforation.PinPrick], layers.Select(l => l.Perforation!.Value));
    }

    [Fact]
    public void Names_of_a_used_file_come_into_scope_but_not_those_it_uses()
    {
        var bound = Given.BindFiles(
            ("a.recipe", "use \"b.recipe\"\npart p {\n  mould m\n  trim lap\n}\npart q { mould deep }"),
            ("b.recipe", "use \"c.recipe\"\nlet lap = (inner + 5 mm)\nmould m { flange 50 mm }\npart base { mould deep }\nshop ours { paper letter }\nprices { glass-twill-163 5 EUR/m2 }"),
            ("c.recipe", "let inner = 10 mm\nmould deep { flange 10 mm }\nshop theirs { paper a4 }"));
        Assert.Equal(["unknown-name"], bound.Findings.Select(f => f.Descriptor.Name));
        Assert.Equal(15, bound.Model.Parts[0].Trim!.Value.Millimeters, 9);
        Assert.Equal(50, bound.Model.Parts[0].Mould!.Flange!.Value.Millimeters, 9);
        Assert.Equal("deep", bound.Model.UsedParts["base"].Mould!.Name);
        Assert.Equal("ours", bound.Model.Shop!.Name);
        Assert.Equal("glass-twill-163", Assert.Single(bound.Model.Prices).Material);
        Assert.Equal(["p", "q"], bound.Model.Parts.Select(p => p.Name));
        Assert.Equal(["base"], bound.Model.UsedParts.Keys);
    }

    [Fact]
    public void A_variant_may_come_from_a_part_of_a_used_file()
    {
        var bound = Given.BindFiles(
            ("a.recipe", "use \"b.recipe\"\nvariant v of base { trim 20 mm }"),
            ("b.recipe", "let lap = 12 mm\npart base {\n  overlap lap\n}"));
        Assert.Empty(bound.Findings);
        Assert.Equal(12, bound.Model.Parts[0].Overlap!.Value.Millimeters, 9);
    }

    [Fact]
    public void Two_of_a_name_are_reported_with_both_places()
    {
        var finding = Given.Single("mould m { flange 10 mm }\nmould m { flange 20 mm }");
        Assert.Equal("duplicate-name", finding.Descriptor.Name);
        Assert.Equal([0, 1], finding.Labels.Select(l => l.Where.Start.Line));
        Assert.Empty(Given.Codes("mould m { flange 10 mm }\npart m { mould m }\nlet m = 1 mm"));
    }

    [Fact]
    public void A_name_of_this_file_and_a_used_one_is_reported_here()
    {
        var bound = Given.BindFiles(("a.recipe", "use \"b.recipe\"\nlet x = 1 mm"), ("b.recipe", "let x = 2 mm"));
        var finding = Assert.Single(bound.Findings);
        Assert.Equal("duplicate-name", finding.Descriptor.Name);
        Assert.Equal(["a.recipe", "b.recipe"], finding.Labels.Select(l => l.Where.Source.Name));
    }

    [Fact]
    public void A_name_of_two_used_files_is_reported_at_the_use_line()
    {
        var bound = Given.BindFiles(("a.recipe", "use \"b.recipe\"\nuse \"c.recipe\""), ("b.recipe", "let x = 2 mm"), ("c.recipe", "let x = 3 mm"));
        var finding = Assert.Single(bound.Findings);
        Assert.Equal("\"c.recipe\"", finding.Where.Text);
        Assert.Equal(["b.recipe", "c.recipe"], finding.Labels.Select(l => l.Where.Source.Name));
    }

    [Fact]
    public void A_circle_of_files_is_reported_by_each_file_on_it_and_ends()
    {
        (string, string)[] files =
        [
            ("a.recipe", "use \"b.recipe\"\nlet x = 1 mm\nshop s { paper a4 }"),
            ("b.recipe", "use \"c.recipe\"\nlet y = x"),
            ("c.recipe", "use \"a.recipe\"\nlet z = x"),
        ];
        var finding = Assert.Single(Given.BindFiles(files).Findings);
        Assert.Equal("import-cycle", finding.Descriptor.Name);
        Assert.Equal("a.recipe uses b.recipe, which uses c.recipe, which uses a.recipe again.", finding.Message);
        var outside = Given.BindFiles([("d.recipe", "use \"a.recipe\"\nlet w = x"), .. files]);
        Assert.Empty(outside.Findings);
    }

    [Fact]
    public void A_used_file_is_bound_once_for_all_and_from_many_threads()
    {
        var shop = Given.Tree("mould shared { flange 50 mm }\nlet lap = 20 mm", "shop.recipe");
        var uses = new UseScope((_, path) => path == "shop.recipe" ? shop : null);
        var trees = Enumerable.Range(0, 200).Select(i => Given.Tree($"use \"shop.recipe\"\npart p{i} {{\n  mould shared\n  trim lap\n  plies {{ one glass-twill-163 0/90 }}\n}}", $"{i}.recipe")).ToArray();
        var book = Book.Bind([Given.Tree(Invented.Book, "book/invented.recipe")]);
        var bound = new BoundFile[trees.Length];
        Parallel.For(0, trees.Length, i => bound[i] = Binder.Bind(trees[i], book, uses));
        Assert.All(bound, b => Assert.Empty(b.Findings));
        Assert.Single(bound.Select(b => b.Model.Parts[0].Mould).Distinct(ReferenceEqualityComparer.Instance));
        Assert.Single(bound.Select(b => ((PlyItem)b.Model.Parts[0].Stack[0]).Material).Distinct(ReferenceEqualityComparer.Instance));
        Assert.Same(bound[0], Binder.Bind(trees[0], book, uses));
    }

    [Fact]
    public void Declarations_that_need_each_other_do_not_lock_each_other_out()
    {
        var text = string.Concat(Enumerable.Range(0, 100).Select(i => $"fibre f{i} like f{(i + 1) % 100} {{ density 2 g/cm3 }}\n"));
        for (var round = 0; round < 20; round++)
        {
            var tree = Given.Tree(text);
            var book = Book.Bind([tree]);
            Parallel.For(0, 100, i => Assert.NotNull(book.Materials[$"f{i}"].Density));
            Assert.Equal(100, book.Findings.Count(f => f.Descriptor.Name == "copy-cycle"));
        }
    }

    [Fact]
    public void The_book_tells_what_is_wrong_with_itself()
    {
        var book = Book.Bind([Given.Tree("fibre a { density 2 g }", "one"), Given.Tree("fibre a { density 2 g/cm3 }", "two")]);
        Assert.Equal(["wrong-kind-of-unit", "duplicate-name"], book.Findings.Select(f => f.Descriptor.Name));
        Assert.Empty(Given.Book.Findings.Select(f => f.Message));
        Assert.True(Given.Book.Materials["glass-twill-163"].FromBook);
    }

    [Fact]
    public void Names_lead_to_their_declarations()
    {
        var names = Given.Sound("mould m { flange 10 mm }\nlet lap = 5 mm\npart p {\n  mould m\n  trim lap\n  plies { one glass-twill-163 0/90 }\n}").Names;
        var mould = Assert.Single(names, n => n.Kind == NameKind.Mould && !n.IsDeclaration);
        Assert.Equal(0, mould.Declaration!.Value.Start.Line);
        Assert.Equal("book/invented.recipe", Assert.Single(names, n => n.Name == "glass-twill-163").Declaration!.Value.Source.Name);
        Assert.Contains(names, n => n is { Kind: NameKind.Value, Name: "lap", IsDeclaration: false });
        Assert.Contains(names, n => n is { Kind: NameKind.Ply, Name: "one", IsDeclaration: true });
        Assert.Equal(["m", "lap", "p"], names.Where(n => n.IsDeclaration && n.Kind != NameKind.Ply).Select(n => n.Name));
    }

    [Theory]
    [InlineData("glass-twil-163", new[] { "glass-twill-163" })]
    [InlineData("glas-plain-105", new[] { "glass-plain-105" })]
    [InlineData("glass-tiwll-163", new[] { "glass-twill-163" })]
    [InlineData("twill-163", new[] { "glass-twill-163" })]
    [InlineData("glass", new[] { "glass-plain-105", "glass-twill-163" })]
    [InlineData("aramid-satin-170", new string[0])]
    public void A_name_that_is_not_there_is_answered_with_those_that_fit(string name, string[] meant)
    {
        var finding = Given.Single($"part a {{\n  plies {{ one {name} 0/90 }}\n}}");
        Assert.Equal("unknown-name", finding.Descriptor.Name);
        Assert.Equal(name, finding.Where.Text);
        Assert.Equal(meant.Select(m => $"Write {m}"), finding.Fixes.Select(f => f.Title));
        Assert.All(meant, m => Assert.Contains($"`{m}`", finding.Message));
    }

    [Theory]
    [InlineData("part a { wet-out { romo 20 degC } }", "room")]
    [InlineData("part a { bag { releasefilm } }", "release-film")]
    [InlineData("mould m { flage 50 mm }", "flange")]
    [InlineData("part a { plies { one glass-twill-163 0/90 overlapp 20 mm } }", "overlap")]
    [InlineData("prat a { title \"a\" }", "part")]
    public void A_word_that_is_not_there_is_answered_with_the_nearest_of_its_place(string text, string meant)
    {
        var finding = Given.Single(text);
        Assert.Equal("unknown-word", finding.Descriptor.Name);
        Assert.Equal(meant, Assert.Single(Assert.Single(finding.Fixes).Edits).NewText);
    }
}
