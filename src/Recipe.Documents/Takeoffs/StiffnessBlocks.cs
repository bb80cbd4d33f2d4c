using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Engineering;
using Recipe.Planning;
using UnitsNet;

namespace Recipe.Documents.Takeoffs;

/// <summary>How stiff the stack is, in numbers that a bench can test, and what each line of it brings for its grams.</summary>
internal static class StiffnessBlocks
{
    // A strip that is cut from an offcut and a sag that a rule shows, and small enough for straight-line bending.
    private static readonly Length Width = Length.FromMillimeters(25);
    private static readonly Length Supports = Length.FromMillimeters(200);
    private static readonly Length Sag = Length.FromMillimeters(5);

    public static IEnumerable<Station> Of(PaperContext context)
    {
        if (context.Plan.Stiffness is not { } stiffness)
        {
            return [];
        }

        var rests = context.RestsOn(
            [
                stiffness.Along.RestsOn, stiffness.StripAlong.RestsOn, stiffness.CoreShear?.RestsOn ?? [], .. stiffness.Loads.Select(load => load.First?.Factor.RestsOn ?? []),
                .. stiffness.Curl is { IsSymmetric: false } curl ? [curl.RiseAlong.RestsOn] : Array.Empty<ImmutableArray<string>>(),
            ]);
        var partial = PartialLines.Say(stiffness.LeftOut);
        return
        [
            new Station(
                "What each line brings",
                [
                    Lines(stiffness),
                    .. LoadBlocks.Of(context, stiffness),
                    new Facts(
                    [
                        new("Pull along, across", $"{context.Text.Modulus(stiffness.Along.Value)}, {context.Text.Modulus(stiffness.Across.Value)}"),
                        new("Shear in the plane", context.Text.Modulus(stiffness.Shear.Value).ToString()),
                        new("Strip along, across", $"{Load(context, stiffness, stiffness.StripAlong.Value)}, {Load(context, stiffness, stiffness.StripAcross.Value)}"),
                        new("Curl on cooling", LoadBlocks.Curl(context, stiffness)),
                    ]),
                    new Paragraph(
                        $"Strip: {context.Text.Size(Width)} wide on supports {context.Text.Size(Supports)} apart, loaded in the middle until it sags {context.Text.Size(Sag)}: cut one from an offcut and weigh what it takes. "
                        + "Computed for the full-cover stack with straight fibres, without coats and patches; crimp makes a cloth softer by up to some 15 %. "
                        + (partial is null ? "" : partial + " ")
                        + (stiffness.Loads.IsEmpty ? "No strength is worked out and this is no certification" : "Compare stacks with it; it certifies nothing")
                        + ": load-bearing and flying parts are for tests and licensed practice. "
                        + (!stiffness.Lines.Any(line => IsCore(context, line.Name)) ? ""
                            : stiffness.CoreShear is null ? "A soft core slides in itself as well, so that the strip takes less. "
                            : "The slide of the core in itself is counted. ")
                        + (rests is null ? "" : $"The figures {rests.Replace("rests on", "rest on", StringComparison.Ordinal)}."),
                        Fine: true),
                ]),
        ];
    }

    private static Table Lines(StiffnessPlan stiffness) => new(
        "What the full-cover stack would lose without the line; each is taken out alone",
        [
            new("Line", NamesTheRow: true), new("Mass", Align.Right, 30), new("Thickness", Align.Right, 30), new("Pull along", Align.Right, 30),
            new("Bending along", Align.Right, 34), new("of it as a spacer", Align.Right, 38),
        ],
        [
            .. stiffness.Lines.Select(line => new CellRow(
            [
                line.Name, Share(line.Mass), Share(line.Thickness), Share(line.Stretching), Share(line.Bending), Share(line.AsSpacer),
            ])),
        ]);

    private static bool IsCore(PaperContext context, string name) => context.Plan.Stack.Any(line => line.Item is Model.CoreItem && line.Item.Name == name);

    // Whole per cents: the model is no better.
    private static string Share(double share) => Numbers.Fixed(share * 100, 0) + "\u00A0%";

    // The load that StripBending's formula wants for the sag, as the mass that weighs as much.
    private static string Load(PaperContext context, StiffnessPlan stiffness, Torque bending)
    {
        var sagUnderOneNewton = StripBending.ThreePointDeflection(bending, Force.FromNewtons(1), Supports, Width, stiffness.CoreShear?.Value);
        return context.Text.Roughly(Mass.FromKilograms(Sag / sagUnderOneNewton / QuantityText.StandardGravity)).ToString();
    }
}
