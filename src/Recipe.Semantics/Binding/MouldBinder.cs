using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Semantics.Findings;
using Recipe.Semantics.Reading;
using Recipe.Semantics.Schema;

namespace Recipe.Semantics.Binding;

/// <summary>Moulds and patterns.</summary>
internal static class MouldBinder
{
    public static Bound<Mould> Bind(MouldDeclaration declaration)
    {
        var sink = new FindingSink();
        var context = declaration.Context with { Sink = sink };
        var lines = CopyChain.Read(declaration, context);
        var madeOf = lines.One("made-of");
        var material = madeOf?.Named<MaterialDeclaration>(Define.Value)?.Material as MouldMaterial;
        var release = lines.One("release");
        var halves = lines.One("halves");
        if (halves?.Reading is { } named && named.Find("first") is { Word: { } left } && named.Find("second") is { Word: { } right } again && left == right)
        {
            halves.Context.Sink.Report(DuplicateName.Half(again.Where, right, named.Find("first")!.Where));
        }

        var mould = new Mould
        {
            Name = declaration.Name,
            Where = declaration.Where,
            IsPattern = declaration.Word.Word == "pattern",
            Title = lines.Text("title"),
            Surface = SurfaceBinder.Bind(lines.One("surface")),
            Regions = ShapeBinder.Regions(lines.Many("region")),
            Pull = lines.Choice("pull", ShapeBinder.Direction),
            Halves = halves?.Text("first") is { } first && halves.Text("second") is { } second ? [first, second] : [],
            Flange = lines.Figure("flange", Si.Length),
            MadeOf = material,
            MadeOfWhere = madeOf?.Reading.Find(Define.Value)?.Where,
            MadeBy = lines.One("made-by")?.Named<PartDeclaration>(Define.Value)?.Name,
            HeatLimit = lines.Figure("heat-limit", Si.Temperature) ?? material?.HeatLimit,
            InsideRadius = lines.Figure("radius", Si.Length),
            Draft = lines.Figure("draft", Si.Angle),
            IsFlexible = lines.YesNo("flexible") ?? false,
            FlexibleWhere = lines.One("flexible")?.Where,
            Undercut = lines.YesNoFigure("undercut"),
            PullAid = lines.Text("pull-aid"),
            Pulls = lines.Count("pulls"),
            PullsSinceRelease = lines.Count("pulls-since-release"),
            State = lines.Choice("state", word => word switch
            {
                "new" => MouldState.New,
                "seasoned" => MouldState.Seasoned,
                _ => MouldState.Repaired,
            }),
            MadeOn = lines.One("made-on")?.Reading.Find(Define.Value)?.Date,
            PostCured = lines.YesNoFigure("post-cured"),
            Coating = lines.Text("coating"),
            CoatingWhere = lines.One("coating")?.Where,
            StickTested = lines.YesNoFigure("stick-test"),
            SealCoats = lines.Count("seal-coats"),
            TestedOn = lines.One("tested")?.Reading.Find(Define.Value)?.Date,
            TapeLand = lines.Choice("tape-land", word => word == "bare" ? TapeLand.Bare : TapeLand.Released),
            IsMandrel = lines.YesNo("mandrel") ?? false,
            StaysInPart = lines.YesNo("stays-in-part") ?? false,
            Release = release is null ? [] : Coats(BlockReader.Read(release)),
            ReleaseWhere = release?.HeadWhere,
        };
        return new(mould, sink.Findings, sink.Names);
    }

    private static ImmutableArray<ReleaseCoat> Coats(Lines lines)
    {
        var coats = ImmutableArray.CreateBuilder<ReleaseCoat>();
        foreach (var line in lines.All)
        {
            if ((line.HeadDeclaration as MaterialDeclaration)?.Material is ReleaseAgent agent)
            {
                coats.Add(new ReleaseCoat(agent, line.Where)
                {
                    Coats = line.Figure("coats", Si.Count) ?? agent.Coats,
                    Wait = line.Figure("wait", Si.Time) ?? agent.Wait,
                    Dry = line.Figure("dry", Si.Time) ?? agent.Dry,
                    On = line.Text("on"),
                });
            }
        }

        return coats.ToImmutable();
    }
}
