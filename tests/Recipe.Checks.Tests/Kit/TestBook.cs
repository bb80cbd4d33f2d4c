using Recipe.Semantics;
using Recipe.Syntax;
using Recipe.Text;

namespace Recipe.Checks.Tests;

/// <summary>
/// A small book of generic materials for the tests of this project, so that a change of a figure in the shipped book changes no test
/// here. Figures are round ones inside the ranges of common practice.
/// </summary>
internal static class TestBook
{
    public static readonly Book Book = Semantics.Book.Bind([SyntaxTree.Parse(new SourceText("book/test.recipe", Text))]);

    public const string Text = """
        fibre e-glass { density 2.55 g/cm3; modulus 72 GPa; source "handbook" }
        fibre carbon { density 1.78 g/cm3; modulus 230 GPa; source "handbook" }

        fabric glass-plain-25 {
          fibre e-glass; weave plain; areal-weight 25 g/m2; warp-share 50 %; width 100 cm; source "handbook"
        }
        fabric glass-twill-163 {
          fibre e-glass; weave twill; areal-weight 163 g/m2; warp-share 50 %; width 100 cm; roll-length 50 m
          resin-content hand 50 % by weight
          resin-content bagged 42 % by weight
          resin-content infused 33 % by weight
          pace 5 min/m2
          source "handbook"
        }
        fabric carbon-twill-200 {
          fibre carbon; weave twill; areal-weight 200 g/m2; warp-share 50 %; width 127 cm; roll-length 50 m
          resin-content hand 52 % by weight
          resin-content bagged 42 % by weight
          resin-content infused 36 % by weight
          pace 5 min/m2
          source "handbook"
        }
        fabric glass-tape-200 {
          fibre e-glass; weave plain; areal-weight 200 g/m2; warp-share 50 %; width 10 cm; pace 5 min/m2; source "handbook"
        }
        ud glass-ud-200 { fibre e-glass; areal-weight 200 g/m2; width 30 cm; pace 5 min/m2; source "handbook" }
        mat glass-mat-300 {
          fibre e-glass; areal-weight 300 g/m2; width 125 cm; binder powder; resin-content hand 70 % by weight; pace 8 min/m2; source "handbook"
        }
        mat glass-stitched-mat-300 {
          fibre e-glass; areal-weight 300 g/m2; width 125 cm; binder stitched; resin-content hand 70 % by weight; pace 8 min/m2; source "handbook"
        }
        veil carbon-veil-8 { fibre carbon; areal-weight 8 g/m2; width 100 cm; resin-content bagged 85 % by weight; pace 3 min/m2; source "handbook" }

        core pvc-foam-75 {
          family pvc-foam; density 75 kg/m3; thickness 5 mm; sheet 1200 mm x 800 mm; heat-limit 70 degC
          compressive-strength 1.3 MPa; resin-uptake 300 g/m2; source "handbook"
        }
        insert m5-nut { mass 4 g; stuff stainless; source "weighed" }

        resin slow-laminating-epoxy {
          chemistry epoxy; mix 100:30 by weight
          density resin 1.13 g/cm3; density hardener 0.98 g/cm3; density cured 1.15 g/cm3
          pot-life 60 min at 20 degC in 100 g; film-life 150 min at 20 degC; gel-time 5 h at 20 degC
          minimum-temperature 15 degC; demould 24 h at 20 degC; full-cure 7 d at 20 degC; post-cure 50 degC for 16 h
          glass-transition 50 degC after 20 degC for 24 h; glass-transition-limit 85 degC
          largest-pot 150 g; source "data sheet"
        }
        resin fast-laminating-epoxy like slow-laminating-epoxy {
          pot-life 20 min at 20 degC in 100 g; film-life 50 min at 20 degC; gel-time 100 min at 20 degC; demould 8 h at 20 degC; source "data sheet"
        }
        resin infusion-epoxy like slow-laminating-epoxy {
          viscosity 250 mPa.s at 25 degC; pot-life 8 h at 20 degC in 500 g; film-life 10 h at 20 degC; gel-time 14 h at 20 degC
          demould 48 h at 20 degC; largest-pot 2 kg; source "data sheet"
        }
        resin laminating-polyester {
          chemistry polyester; mix 100:2 by weight; density cured 1.20 g/cm3
          pot-life 25 min at 20 degC in 100 g; film-life 30 min at 20 degC; gel-time 45 min at 20 degC
          minimum-temperature 15 degC; demould 8 h at 20 degC; largest-pot 500 g; source "data sheet"
        }

        release-agent carnauba-wax { kind wax; coats 5; wait 30 min; dry 60 min; heat-limit 85 degC; coverage 15 m2/L; source "common practice" }
        release-agent pva-film { kind liquid-film; coats 1; wait 30 min; dry 30 min; heat-limit 121 degC; coverage 8 m2/L; source "AC 43.13-1B" }
        release-agent semi-permanent-release { kind semi-permanent; coats 4; wait 15 min; dry 60 min; heat-limit 200 degC; source "data sheet" }

        mould-material epoxy-glass-tooling { heat-limit 80 degC; expansion 15 ppm/K; porous no; self-releasing no; source "handbook" }
        mould-material aluminium { heat-limit 200 degC; expansion 23 ppm/K; porous no; self-releasing no; source "handbook" }
        mould-material polypropylene-sheet { heat-limit 80 degC; porous no; self-releasing yes; source "handbook" }

        peel-ply nylon-peel-ply { default yes; areal-weight 85 g/m2; width 150 cm; heat-limit 170 degC; resin-pickup 40 g/m2; source "data sheet" }
        release-film perforated-film { default yes; perforation medium; bleed 40 g/m2; width 150 cm; heat-limit 110 degC; source "data sheet" }
        release-film solid-film { perforation none; width 150 cm; heat-limit 110 degC; source "data sheet" }
        bleeder glass-bleeder { default yes; width 150 cm; resin-pickup 100 g/m2; capacity 200 g/m2; heat-limit 200 degC; source "data sheet" }
        breather breather-150 { default yes; width 150 cm; resin-pickup 40 g/m2; capacity 500 g/m2; heat-limit 180 degC; source "data sheet" }
        bag-film nylon-film { default yes; width 150 cm; heat-limit 120 degC; stuff nylon; source "data sheet" }
        flow-medium knitted-mesh { default yes; width 150 cm; resin-pickup 350 g/m2; heat-limit 100 degC; permeability 5e-9 m2; source "data sheet" }
        caul aluminium-caul { default yes; heat-limit 200 degC; source "data sheet" }
        sealant-tape general-sealant-tape { default yes; width 12 mm; roll-length 15 m; heat-limit 150 degC; source "data sheet" }
        hose pvc-hose { default yes; inner-diameter 8 mm; heat-limit 60 degC; source "data sheet" }
        hose silicone-hose { inner-diameter 8 mm; heat-limit 200 degC; source "data sheet" }
        port plain-port { default yes; heat-limit 120 degC; source "data sheet" }
        catch-pot pot-2 { default yes; volume 2 L; source "measured" }
        """;
}
