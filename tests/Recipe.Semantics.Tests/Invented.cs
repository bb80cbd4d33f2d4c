namespace Recipe.Semantics.Tests;

/// <summary>Materials and a recipe of a small boat-and-instrument shop. All figures are invented.</summary>
internal static class Invented
{
    public const string Book =
        """
        fibre e-glass { density 2.55 g/cm3   source "invented" }
        fabric glass-twill-163 {
          title         "Glass twill 163 g/m2"
          fibre         e-glass
          weave         twill
          areal-weight  163 g/m2   source "invented roll label"
          warp-share    50 %
          width         100 cm
          resin-content hand 50 % by weight
          resin-content bagged 42 % by weight   source assumed "nobody weighed it"
        }
        fabric glass-plain-105 like glass-twill-163 {
          weave plain
          areal-weight 105 g/m2
        }
        veil carbon-veil-8 { areal-weight 8 g/m2 }
        core pvc-foam-75 { density 75 kg/m3; thickness 5 mm; sheet 1200 mm x 800 mm; heat-limit 75 degC }
        insert m5-nut { mass 4 g }
        resin slow-laminating-epoxy {
          chemistry epoxy
          mix 100:30 by weight
          density resin 1.13 g/cm3
          density hardener 0.98 g/cm3
          pot-life 60 min at 23 degC in 100 g
          glass-transition 55 degC after 20 degC for 24 h
          post-cure 50 degC for 16 h
        }
        resin two-speed-epoxy {
          chemistry epoxy
          pot-life 40 min at 23 degC in 100 g
          hardener fast { mix 100:25 by weight; pot-life 20 min at 23 degC in 100 g }
          hardener slow { mix 100:28 by weight }
        }
        gel-coat white-gel-coat { chemistry polyester; film 500 g/m2; mix 2 % of resin by weight }
        release-agent carnauba-wax { kind wax; coats 5; wait 30 min }
        release-agent pva-film { kind liquid-film; coats 1; wait 45 min; dry 60 min }
        mould-material epoxy-glass-tooling { heat-limit 70 degC; expansion 15 ppm/K }
        peel-ply nylon-peel-ply { areal-weight 85 g/m2; resin-pickup 40 g/m2; default yes }
        release-film pin-prick-film { perforation pin-prick; default yes }
        release-film solid-film { perforation none }
        breather breather-150 { areal-weight 150 g/m2; capacity 500 g/m2; default yes }
        breather breather-300 { areal-weight 300 g/m2 }
        bag-film nylon-bag-film { thickness 50 um; default yes }
        sealant-tape sealant-12 { width 12 mm; default yes }
        hose hose-8 { inner-diameter 8 mm; default yes }
        port vacuum-port { default yes }
        catch-pot catch-pot-2 { volume 2 L; default yes }
        """;

    public const string Lid =
        """
        language 1
        let lap = 20 mm

        mould hatch-lid-mould {
          surface     spherical-cap diameter 300 mm rise 40 mm
          flange      50 mm
          made-of     epoxy-glass-tooling
          state       seasoned
          release {
            carnauba-wax   coats 4
            pva-film
          }
        }

        part hatch-lid {
          title    "Kayak hatch lid"
          mould    hatch-lid-mould
          resin    slow-laminating-epoxy
          target   mass 140 g +/- 10 g
          trim     15 mm
          overlap  lap
          service  55 degC
          use      cosmetic
          coat     white-gel-coat

          plies {
            outer   glass-plain-105   0/90
            veil    carbon-veil-8     random
            body    glass-twill-163   +/-45   overlap (lap - 5 mm)
            stiff   core pvc-foam-75   size 120 mm x 80 mm
            inner   glass-plain-105   0/90   x2
            hinge   patch glass-twill-163   0/90   size 60 mm x 40 mm   x2   after body   at 30 mm from rim
            boss    insert m5-nut   x4
          }
          wet-out {
            room 18 to 22 degC
            laminators 1
            resin-content 45 % by weight
            pot 100 g
            pot 80 g
            start 09:00
          }
          bag {
            peel-ply
            release-film perforated
            breather-300 x2
            bag-film
            sealant-tape
            port at "flange, far side"
            time 15 min
          }
          vacuum {
            draw 25 inHg below ambient within 10 min
            leak-check 5 min rise at-most 30 mbar isolated
            off after gel
          }
          cure {
            hold 20 degC for 12 h under vacuum
            ramp 0.5 degC/min to 50 degC
            hold 50 degC for 6 h   source assumed "not tried yet"
            cool to 30 degC then vent
          }
          finish {
            trim
            abrade 80 grit
            inspect "no dry spot over 5 mm"
          }
          accept RC6004 because "small bag, gauge on the far side" until 2027-01-01
        }
        """;
}
