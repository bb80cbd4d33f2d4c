namespace Recipe.Checks;

/// <summary>What the examples of the checks of records share: the recipe.</summary>
internal static class RecordExamples
{
    /// <summary>The part.</summary>
    public const string Tray = """
        mould tray-mould {
          surface flat 400 mm x 300 mm
          made-of epoxy-glass-tooling
          release {
            carnauba-wax coats 5 wait 30 min
          }
        }

        part tray {
          mould tray-mould
          process hand
          resin slow-laminating-epoxy
          plies {
            outer glass-twill-163 0/90
            inner glass-twill-163 0/90
          }
          cure {
            hold 20 degC for 48 h
            demould
          }
        }


        """;
}
