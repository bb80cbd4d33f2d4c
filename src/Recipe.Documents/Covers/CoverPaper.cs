using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Documents.Takeoffs;

namespace Recipe.Documents.Covers;

/// <summary>
/// The cover of the job: what it is, what it should weigh, which papers go with it, what was accepted and what is open, every assumption with
/// its source, the hazards, and the card for who helps.
/// </summary>
internal static class CoverPaper
{
    public static Document Build(PaperInput input)
    {
        var context = new PaperContext(input);
        var say = context.Wording;
        return new Document
        {
            Kind = "Job cover",
            Identity = context.Identity(ofOneBuild: false),
            Paper = context.Paper,
            Landscape = true,
            ForTheBench = false,
            Stations =
            [
                new Station(say.Say("The job"), [Targets(context), .. TakeoffPaper.PartBlocks(context), Order(context)]),
                .. StiffnessBlocks.Of(context),
                new Station(say.Say("The papers"), [PaperTable(context)]),
                new Station(say.Say("Who and what can be hurt"), [.. Dangers(context)]),
                Notes.ForDesk(context),
                HelperCard.Of(context),
            ],
        };
    }

    private static KeyNumbers Targets(PaperContext context)
    {
        var (say, text, plan) = (context.Wording, context.Text, context.Plan);
        var items = ImmutableArray.CreateBuilder<KeyNumber>();
        if (context.Part.TargetMass is { } target)
        {
            var off = context.Part.TargetTolerance is { } tolerance ? say.Say($"plus or minus {text.Written(tolerance, value => text.About(value)).Main}") : null;
            items.Add(new(say.Say("Target mass"), text.Written(target, value => text.About(value)).Main, off));
        }

        if (plan.TrimmedMass is { Value: var mass } figure)
        {
            items.Add(new(say.Say("Computed mass"), text.About(mass.Value).Main, Note(context, say.Say($"{text.About(mass.Low).Main} to {text.About(mass.High).Main}"), figure.RestsOn)));
        }

        if (context.Thickness is { } thickness)
        {
            items.Add(new(say.Say("Thickness"), text.Thickness(thickness.Value).Main, Note(context, say.Say("full stack"), thickness.RestsOn)));
        }

        if (plan.Stiffness is { } stiffness)
        {
            items.Add(new(
                say.Say("Stiffness along"), text.Modulus(stiffness.Along.Value).Main, Note(context, say.Say($"across {text.Modulus(stiffness.Across.Value).Main}; full stack, no certification"), stiffness.Along.RestsOn)));
        }

        if (items.Count == 0)
        {
            items.Add(new(say.Say("Mass"), say.Say("not known"), say.Say("see what is not computed")));
        }

        return new KeyNumbers(say.Say("What it should come to"), items.ToImmutable());
    }

    private static string Note(PaperContext context, string note, ImmutableArray<string> keys) => context.RestsOn(keys) is { } rests ? context.Wording.Say($"{note}; {rests}") : note;

    private static Facts Order(PaperContext context)
    {
        var say = context.Wording;
        return new Facts(
        [
            new(say.Say("Good parts wanted"), Numbers.Whole(context.Parts)),
            new(say.Say("Customer, job"), Phrase.Empty, new Blank(say.Say("customer and job"))),
            new(say.Say("Due"), Phrase.Empty, new Blank(say.Say("when it is due"))),
            new(say.Say("Released by"), Phrase.Empty, new Blank(say.Say("who released the papers"))),
        ]);
    }

    // How many sheets a paper has is the printer's to say; a station is a page where it fits.
    private static Table PaperTable(PaperContext context)
    {
        var say = context.Wording;
        return new Table(
            say.Say("Lay them out in this order; tick what is in the folder"),
            [new(say.Say("Paper"), WidthMm: 36, NamesTheRow: true), new(say.Say("What it is for")), new(say.Say("Stations"), Align.Right, 20), new(say.Say("Here"), Align.Centre, 16)],
            [
                .. Papers.All.Where(kind => kind.Name != Papers.Cover.Name && kind.AppliesTo(context.Input)).Select(kind => new CellRow(
                    [say.Say(kind.Title), say.Say(kind.What), Numbers.Whole((context.Input.Together?.Of(kind) ?? kind.Build(context.Input)).Stations.Length), TickCell.Of(1)])),
            ]);
    }

    private static IEnumerable<Block> Dangers(PaperContext context)
    {
        var say = context.Wording;
        yield return new Caution(say.Say("Safety"), [.. Cautions.Of(context.Plan, say).Select(caution => (Phrase)caution.Text)]);
        var hazards = Cautions.HazardLines(context.Plan);
        if (!hazards.IsEmpty)
        {
            yield return new Heading(say.Say("Hazards named in the book"));
            yield return new BulletList(hazards);
        }

        var shop = Cautions.OfTheShop(context.Plan, say);
        if (!shop.IsEmpty)
        {
            yield return new Heading(say.Say("What this shop does"));
            yield return new BulletList(shop);
        }

        yield return new Heading(say.Say("What goes before these papers"));
        yield return new BulletList(
        [
            say.Say("The maker's data sheet and safety data sheet of every material; read them before the tin is opened."),
            say.Say("Local codes for storage, air, waste and fire."),
            say.Say("For parts that carry load or fly: licensed practice, approved data and tests. These papers tell mass and time."),
        ]);
    }
}
