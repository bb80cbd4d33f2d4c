namespace Recipe.Editing;

/// <summary>Whole blocks to fill in. Each is a sound beginning once its places are filled.</summary>
internal static class Snippets
{
    /// <summary>Label, text and a few words about it.</summary>
    public static readonly (string Label, string Text, string Detail)[] TopLevel =
    [
        ("part, bagged", """
            part ${1:name} {
              mould  ${2:mould}
              resin  ${3:slow-laminating-epoxy}

              plies {                                # the first line lies on the mould
                ${4:body}  ${5:glass-twill-163}  ${6:0/90}
              }

              wet-out {
                room  ${7:20 degC}
              }

              bag {                                  # from the part outwards
                peel-ply
                release-film  perforated
                breather
                bag-film
              }

              vacuum {
                draw        ${8:25 inHg below ambient} within 10 min
                leak-check  5 min rise at-most 30 mbar isolated
              }

              cure {
                hold  20 degC for ${9:24 h} under vacuum
                demould
              }
            }
            """, "a part laid wet under a vacuum bag"),
        ("part, infused", """
            part ${1:name} {
              mould  ${2:mould}
              resin  ${3:infusion-epoxy}

              plies {                                # the first line lies on the mould
                ${4:body}  ${5:carbon-twill-200}  ${6:0/90}  x2
              }

              bag {                                  # from the part outwards
                peel-ply
                flow-medium  smaller ${7:30 mm}
                bag-film
                catch-pot
              }

              infuse {
                feed-line   length ${8:300 mm} diameter 8 mm
                path        ${9:300 mm}
                vent        "at the far edge"
                clamp-feed  "at full wet"
                drop-test   5 min rise at-most 30 mbar isolated
              }

              vacuum {
                draw  28 inHg below ambient within 10 min
              }

              cure {
                hold  20 degC for ${10:48 h} under vacuum
                demould
              }
            }
            """, "a part laid dry, the resin drawn in"),
        ("part, by hand", """
            part ${1:name} {
              mould    ${2:mould}
              process  hand
              resin    ${3:slow-laminating-epoxy}

              plies {                                # the first line lies on the mould
                ${4:body}  ${5:glass-twill-280}  ${6:0/90}  x2
              }

              cure {
                hold  20 degC for ${7:24 h}
                demould
              }
            }
            """, "a part laid by brush and roller"),
        ("mould with release", """
            mould ${1:name} {
              surface  ${2:flat 400 mm x 300 mm}
              flange   ${3:75 mm}
              made-of  ${4:epoxy-glass-tooling}
              release {
                carnauba-wax  coats 5   wait 30 min
              }
            }
            """, "a mould and what keeps the part from sticking"),
    ];
}
