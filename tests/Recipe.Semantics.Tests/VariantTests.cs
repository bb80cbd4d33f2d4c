using Recipe.Model;

namespace Recipe.Semantics.Tests;

public class VariantTests
{
    private const string Base =
        """
        part lid {
          title "Lid"
          trim 15 mm
          resin slow-laminating-epoxy
          plies {
            outer   glass-plain-105   0/90
            veil    carbon-veil-8     random
            body    glass-twill-163   +/-45
            hinge   patch glass-twill-163 0/90 size 60 mm x 40 mm after body
          }
          wet-out {
            room 20 degC
            laminators 1
            pot 100 g
            pot 80 g
          }
          bag { peel-ply; breather }
          vacuum {
            draw 800 mbar below ambient
            leak-check 5 min rise at-most 30 mbar
          }
          cure { hold 20 degC for 12 h; debag }
          accept RC6004 because "small"
        }

        """;

    [Fact]
    public void A_ply_is_removed_and_nothing_else_changes()
    {
        var (lid, variant) = Both("variant bare of lid { plies { remove veil } }");
        Assert.Equal(["outer", "body", "hinge"], variant.Stack.Select(s => s.Name));
        Assert.Equal("lid", variant.VariantOf);
        Assert.Equal("bare", variant.Name);
        Assert.Equal(lid.Resin, variant.Resin);
        Assert.Equal(lid.Bag!.Layers.AsEnumerable(), variant.Bag!.Layers);
        Assert.Equal(lid.Cure!.Steps.AsEnumerable(), variant.Cure!.Steps);
    }

    // Two packs of papers on one bench must not bear one name.
    [Theory]
    [InlineData("variant bare of lid { plies { remove veil } }", "Lid, bare")]
    [InlineData("variant bare of lid { title \"Bare lid\"; plies { remove veil } }", "Bare lid")]
    public void A_variant_without_a_title_of_its_own_is_told_from_its_original(string text, string label)
    {
        var (lid, variant) = Both(text);
        Assert.Equal("Lid", lid.Label);
        Assert.Equal(label, variant.Label);
    }

    /// <summary>Behind the name of a ply, <c>face</c> says which side lies on the mould; before it, it is a name like any other.</summary>
    [Fact]
    public void A_ply_that_is_called_like_an_option_can_be_replaced_and_inserted()
    {
        var parts = Given.Sound("part tray { plies { face glass-twill-163 0/90 } }\nvariant stout of tray { plies { replace face glass-plain-105 0/90 face down; insert at glass-twill-163 0/90 } }").Model.Parts;
        Assert.Equal(["face", "at"], parts[1].Stack.Select(s => s.Name));
        Assert.Equal("glass-plain-105", Assert.IsType<PlyItem>(parts[1].Stack[0]).Material.Name);
    }

    [Fact]
    public void Plies_are_replaced_in_their_place_and_inserted_where_they_say()
    {
        var (_, variant) = Both(
            """
            variant strong of lid {
              plies {
                replace outer glass-twill-163 0/90 x2
                insert heart glass-twill-163 0 after veil
                insert last glass-plain-105 0/90
              }
            }
            """);
        Assert.Equal(["outer", "veil", "heart", "body", "hinge", "last"], variant.Stack.Select(s => s.Name));
        Assert.Equal("glass-twill-163", Assert.IsType<PlyItem>(variant.Stack[0]).Material.Name);
        Assert.Equal(2, variant.Stack[0].Count);
    }

    [Fact]
    public void Lines_replace_lines_of_the_same_word()
    {
        var (_, variant) = Both("variant long of lid {\n  trim 25 mm\n  title \"Long lid\"\n}");
        Assert.Equal("Long lid", variant.Title);
        Assert.Equal(25, Assert.IsType<PlyItem>(variant.Stack[0]).Trim!.Value.Millimeters, 9);
    }

    [Fact]
    public void Cure_bag_and_finish_are_replaced_whole_the_others_line_by_line()
    {
        var (_, variant) = Both(
            """
            variant quick of lid {
              wet-out { laminators 2; pot 60 g }
              vacuum { draw 600 mbar below ambient }
              cure { hold 40 degC for 4 h }
              bag { bag-film }
            }
            """);
        Assert.Equal(20, variant.WetOut!.Room!.Value.DegreesCelsius, 6);
        Assert.Equal(2, variant.WetOut.Laminators!.Value);
        Assert.Equal(60, Assert.Single(variant.WetOut.PotMasses).Value.Grams, 9);
        Assert.Equal(600, variant.Vacuum!.Draw!.Value.Value.Millibars, 6);
        Assert.NotNull(variant.Vacuum.LeakCheck);
        Assert.Equal(40, Assert.Single(variant.Cure!.Steps).Temperature!.Value.DegreesCelsius, 6);
        Assert.Equal("nylon-bag-film", Assert.Single(variant.Bag!.Layers).Material.Name);
    }

    [Fact]
    public void Waivers_add_up()
    {
        var (_, variant) = Both("variant v of lid { accept RC6005 because \"tried\" }");
        Assert.Equal(["RC6004", "RC6005"], variant.Waivers.Select(w => w.Code));
    }

    [Fact]
    public void A_variant_of_a_variant_has_both_changes()
    {
        var model = Given.Sound(Base + "variant a of lid { plies { remove veil } }\nvariant b of a { trim 30 mm; plies { remove hinge } }").Model;
        var b = model.Parts.Single(p => p.Name == "b");
        Assert.Equal(["outer", "body"], b.Stack.Select(s => s.Name));
        Assert.Equal(30, b.Trim!.Value.Millimeters, 9);
        Assert.Equal("a", b.VariantOf);
    }

    [Theory]
    [InlineData("remove hinge body", "outer veil")]
    [InlineData("remove body hinge", "outer veil")]
    [InlineData("remove body; replace hinge patch glass-twill-163 0/90 size 60 mm x 40 mm", "outer veil hinge")]
    [InlineData("remove body; insert body glass-plain-105 0/90 after outer", "outer body hinge veil")]
    public void What_lies_on_a_line_that_is_taken_out_may_be_seen_to_in_any_order(string edits, string stack)
    {
        var (_, variant) = Both($"variant v of lid {{ plies {{ {edits} }} }}");
        Assert.Equal(stack, string.Join(' ', variant.Stack.Select(s => s.Name)));
    }

    // Fibre by volume and resin by weight are two ways to say how much resin is laid; a held time and `off after` two ways to say how long vacuum is on.
    [Theory]
    [InlineData("resin-content 45 % by weight", "fibre-content 50 % by volume", ContentBasis.FibreByVolume, 0.5)]
    [InlineData("fibre-content 50 % by volume", "resin-content 45 % by weight", ContentBasis.ResinByWeight, 0.45)]
    [InlineData("fibre-content 50 % by volume", "laminators 2", ContentBasis.FibreByVolume, 0.5)]
    public void A_content_said_in_another_way_takes_the_place_of_the_first(string first, string second, ContentBasis basis, double fraction)
    {
        var parts = Given.Sound($"part a {{ wet-out {{ {first} }} }}\nvariant b of a {{ wet-out {{ {second} }} }}\nvariant c of b {{ trim 3 mm }}").Model.Parts;
        Assert.Equal([(basis, fraction), (basis, fraction)], parts.Skip(1).Select(part => (part.WetOut!.Content!.Value.Basis, part.WetOut.Content.Value.Fraction)));
    }

    [Theory]
    [InlineData("hold 12 h", "off after 2 h", 2)]
    [InlineData("off after 2 h", "hold 12 h", 12)]
    [InlineData("hold 12 h", "off after gel", 12)]
    public void A_held_time_said_in_another_way_takes_the_place_of_the_first(string first, string second, double hours)
    {
        var parts = Given.Sound($"part a {{ vacuum {{ {first} }} }}\nvariant b of a {{ vacuum {{ {second} }} }}\nvariant c of b {{ trim 3 mm }}").Model.Parts;
        Assert.Equal([hours, hours], parts.Skip(1).Select(part => part.Vacuum!.Hold!.Value.Hours));
    }

    [Theory]
    [InlineData("wet-out { resin-content 45 % by weight; fibre-content 50 % by volume }", "fibre-content")]
    [InlineData("vacuum { off after 2 h; hold 12 h }", "hold")]
    public void One_thing_said_in_two_ways_in_one_block_is_said_twice(string block, string second)
    {
        var finding = Given.Single($"part a {{ {block} }}\nvariant b of a {{ trim 3 mm }}");
        Assert.Equal(("said-twice", second), (finding.Descriptor.Name, finding.Where.Text));
    }

    [Theory]
    [InlineData("pots 3", 3, "")]
    [InlineData("pots 3; pot 60 g", 3, "60")]
    [InlineData("pot 50 g; pot 40 g; pot 30 g", null, "50 40 30")]
    [InlineData("laminators 2", null, "100 80")]
    public void A_number_of_pots_takes_the_place_of_pots_that_were_listed(string wetOut, int? pots, string masses)
    {
        var (_, variant) = Both($"variant v of lid {{ wet-out {{ {wetOut} }} }}");
        Assert.Equal(pots, variant.WetOut!.Pots?.Value);
        Assert.Equal(masses, string.Join(' ', variant.WetOut.PotMasses.Select(mass => Math.Round(mass.Value.Grams, 6))));
    }

    [Fact]
    public void More_plies_than_a_part_may_have_are_told_of_a_variant_that_adds_them()
    {
        const string whole = "part a { plies { one glass-twill-163 0/90 x900 } }\n";
        var finding = Given.Single(whole + "variant b of a { plies { insert more glass-twill-163 0/90 x200 } }\nvariant c of b { trim 3 mm }");
        Assert.Equal(("out-of-range", "more"), (finding.Descriptor.Name, finding.Where.Text));
        Assert.Single(Given.Codes(whole.Replace("x900", "x900; two glass-twill-163 0/90 x200", StringComparison.Ordinal) + "variant b of a { trim 3 mm }"));
    }

    [Fact]
    public void Faults_of_the_part_are_not_told_again_by_its_variants()
    {
        var codes = Given.Codes("part a {\n  trim 15\n  bag { peelply }\n}\nvariant b of a { title \"b\" }\nvariant c of b { title \"c\" }");
        Assert.Equal(["bare-number", "unknown-word"], codes);
    }

    [Theory]
    [InlineData("variant v of lid { plies { remove viel } }", "unknown-ply")]
    [InlineData("variant v of lid { plies { replace nothing glass-twill-163 0 } }", "unknown-ply")]
    [InlineData("variant v of lid { plies { remove body } }", "unknown-ply")]
    [InlineData("variant v of lid { plies { insert outer glass-twill-163 0 } }", "duplicate-name")]
    [InlineData("variant v of lid { plies { insert more glass-twill-163 0 after bodi } }", "unknown-ply")]
    [InlineData("variant v of lidd { title \"x\" }", "unknown-name")]
    [InlineData("variant v of v { title \"x\" }", "variant-cycle")]
    [InlineData("variant v of lid { plies { extra glass-twill-163 0 } }", "unknown-word")]
    [InlineData("variant v { title \"x\" }", "missing-value")]
    public void Faults_of_a_variant(string variant, string finding) =>
        Assert.Equal(finding, Assert.Single(Given.Codes(Base + variant).Distinct()));

    [Fact]
    public void A_part_hung_on_a_circle_still_has_its_own_lines()
    {
        var bound = Given.Bind("variant a of b { trim 15 mm }\nvariant b of a { trim 20 mm }\nvariant c of a { trim 25 mm }");
        Assert.Equal(["variant-cycle", "variant-cycle"], bound.Findings.Select(f => f.Descriptor.Name));
        Assert.Equal([15.0, 20.0, 25.0], bound.Model.Parts.Select(p => Math.Round(p.Trim!.Value.Millimeters, 9)));
    }

    private static (Part Lid, Part Variant) Both(string variant)
    {
        var parts = Given.Sound(Base + variant).Model.Parts;
        return (parts[0], parts[1]);
    }
}
