// A rule of a small boat-and-instrument shop, in C#. The figures are invented.
// It runs only where the user agreed to: recipe trust samples/house-rules
using System;
using System.Linq;
using Recipe.RuleApi;

/// <summary>Both faces of a part weigh about the same, so that it stays as flat as its mould.</summary>
public sealed class EvenFaces : HouseRule
{
    private const double MostDifference = 0.5;

    public override string Name => "even-faces";

    public override string Title => "Faces of different weight";

    public override string Reason => "A heavy face and a light one shrink by different amounts, and the part springs.";

    public override string Remedy => "Move a ply to the other face, or accept it where the shape holds the part.";

    public override string Source => "two lids that rocked on the bench, spring 2026";

    public override string Exceptions => "The part is doubly curved: its shape holds it.";

    public override string BadExample => """
        mould table { surface flat 300 mm x 200 mm }
        part panel {
          mould    table
          process  hand
          resin    slow-laminating-epoxy
          plies {
            face   carbon-twill-400  0/90
            back   glass-plain-49    0/90
          }
        }
        """;

    public override string GoodExample => """
        mould table { surface flat 300 mm x 200 mm }
        part panel {
          mould    table
          process  hand
          resin    slow-laminating-epoxy
          plies {
            face   glass-twill-280  0/90
            back   glass-twill-280  0/90
          }
        }
        """;

    public override bool AppliesTo(PartFacts part) => part.DoublyCurved == false;

    public override void Examine(PartFacts part, RuleReport report)
    {
        var plies = part.Plies.Where(ply => ply.Patch != true).ToList();
        if (plies.Count < 2)
        {
            return;
        }

        if (plies[0].ArealWeight is not { } first || plies[^1].ArealWeight is not { } last)
        {
            report.NotChecked("the areal weight of a face");
            return;
        }

        var heavier = Math.Max(first.GramsPerSquareMeter, last.GramsPerSquareMeter);
        var difference = Math.Abs(first.GramsPerSquareMeter - last.GramsPerSquareMeter);
        if (difference > MostDifference * heavier)
        {
            report.Finding(plies[^1], $"the face on the mould weighs {first.GramsPerSquareMeter} g/m2 and this one {last.GramsPerSquareMeter} g/m2");
        }
    }
}
