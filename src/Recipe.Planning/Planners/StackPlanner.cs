using System.Collections.Immutable;
using Recipe.Engineering;
using Recipe.Model;
using Recipe.Planning.Ledger;
using UnitsNet;

namespace Recipe.Planning.Planners;

/// <summary>
/// Areas, masses, resin, thickness, time and pieces of every line of the stack, both halves and all repeats together. Plies are
/// numbered from the mould, one number for each line: the repeats of a line share it.
/// </summary>
internal sealed class StackPlanner
{
    // Pieces beyond this are a slip of the pen; the sums still fit.
    private const int MostPieces = 100_000;

    private readonly PlanContext _context;
    private readonly Ground? _ground;
    private readonly Conditions _conditions;
    private readonly PlyContents _contents;
    private readonly int _sides;
    private int _number;
    private Num _inset;

    private StackPlanner(PlanContext context, Ground? ground, Conditions conditions, PlyContents contents)
    {
        _context = context;
        _ground = ground;
        _conditions = conditions;
        _contents = contents;
        _sides = ground?.Sides ?? (context.Part.Mould is { Halves.Length: > 1 } ? 2 : 1);
    }

    /// <summary>Works out every line, in the order of the stack.</summary>
    public static ImmutableArray<LineWork> Work(PlanContext context, Ground? ground, Conditions conditions, PlyContents contents)
    {
        var planner = new StackPlanner(context, ground, conditions, contents);
        var lines = ImmutableArray.CreateBuilder<LineWork>(context.Part.Stack.Length);
        foreach (var item in context.Part.Stack)
        {
            lines.Add(item switch
            {
                PlyItem ply => planner.Ply(ply),
                CoreItem core => planner.Core(core),
                InsertItem insert => planner.Insert(insert),
                _ => new LineWork { Item = item, Number = 0 },
            });
        }

        return lines.MoveToImmutable();
    }

    private LineWork Ply(PlyItem ply)
    {
        var line = new LineWork { Item = ply, Number = ++_number };
        var overlap = _context.Figures.Length(ply.Overlap, _context.PartOwner, "overlap", zero: true) ?? _context.Take(Defaults.Overlap);
        if (Extents.OfPly(_context, _ground, ply, Inset(ply), overlap) is not { } extent)
        {
            return line with { Content = _contents.Of(ply)?.Content };
        }

        var pieces = Pieces(ply.Count);
        var cut = PieceCutter.Cut(_context, ply, extent.Piece, pieces, _sides == 2, OrientationOf(ply), PieceCutter.IsButted(ply, _context.Part) ? Num.Zero : overlap);
        line = line with
        {
            CoversAll = extent.CoversAll,
            NetArea = extent.Net * pieces,
            CutArea = (extent.Cut + cut.JoinArea) * pieces,
            Pieces = [cut.Piece],
            Waste = Waste(ply, extent, cut.Askew),
        };
        return Weigh(line with { WetOut = WetOut(ply.Material, line.CutArea.Value, pieces * (cut.Piece.Joins + 1)) }, ply);
    }

    private LineWork Weigh(LineWork line, PlyItem ply)
    {
        var held = _contents.Of(ply);
        line = line with { Content = held?.Content, IsAsLaid = held is { IsAsLaid: true } };
        if (_context.Figures.ArealWeight(ply.Material.ArealWeight, Owner.Of(ply.Material), "areal-weight") is not { } weight)
        {
            _context.Miss($"mass of {ply.Name}", $"{ply.Material.Name} has no areal weight");
            return line;
        }

        var density = _contents.FibreDensity(ply.Material);
        var resin = held is { } h ? _contents.ResinPerArea(ply, h.Content, weight, density) : null;

        // Repeats lie on each other; pieces of one size lie side by side.
        var layers = ply.SizeLength is null && !ply.IsPatch ? Math.Clamp(ply.Count, 1, MostPieces) : 1;
        line = line with
        {
            NetMass = line.NetArea * weight,
            CutMass = line.CutArea * weight,
            FibreVolume = line.NetArea * weight / density,
            Stuff = new PlyStuff(weight, density ?? _context.Take(Defaults.FibreDensity), _contents.CuredDensity, layers),
        };
        return line.Holding(resin);
    }

    private LineWork Core(CoreItem core)
    {
        var line = new LineWork { Item = core, Number = 0 };
        if (Extents.OfCore(_context, _ground, core) is not { } extent)
        {
            return line;
        }

        var pieces = Pieces(core.Count);
        var owner = Owner.Of(core.Material);
        var area = extent.Net * pieces;
        var thickness = _context.Figures.Length(core.Thickness, owner, "thickness");
        var density = _context.Figures.Density(core.Material.Density, owner, "density");
        var uptake = _context.Figures.ArealWeight(core.Material.ResinUptake, owner, "resin-uptake", zero: true) ?? _context.Take(Defaults.CoreUptake);
        if (thickness is null || density is null)
        {
            _context.Miss($"mass of {core.Name}", $"{core.Material.Name} has no {(thickness is null ? "thickness" : "density")}");
        }

        var mass = area * thickness * density;
        var piece = PieceCutter.Cut(_context, core, extent.Piece, pieces, _sides == 2);
        return line with
        {
            CoversAll = extent.CoversAll,
            NetArea = area,
            CutArea = area,
            NetMass = mass,
            CutMass = mass,
            NetResin = area * uptake * 2,
            CutResin = area * uptake * 2,
            Thickness = thickness * (core.SizeLength is null ? Math.Clamp(core.Count, 1, MostPieces) : 1),
            WetOut = IsWet ? Handling(pieces * (piece.Joins + 1)) : null,
            Waste = _context.Take(Defaults.WasteCore),
            Pieces = [piece],
        };
    }

    private LineWork Insert(InsertItem insert)
    {
        var pieces = Pieces(insert.Count);
        var mass = _context.Figures.Mass(insert.Material.Mass, Owner.Of(insert.Material), "mass", zero: true) * pieces;
        if (mass is null)
        {
            _context.Miss($"mass of {insert.Name}", $"{insert.Material.Name} has no mass");
        }

        return new LineWork { Item = insert, Number = 0, NetMass = mass, CutMass = mass, WetOut = IsWet ? Handling(pieces) : null };
    }

    // A step counts from the end of the ply below, so steps in a row add up; a ply without one reaches the edge again.
    private Num Inset(PlyItem ply)
    {
        if (ply.IsPatch || ply.SizeLength is not null)
        {
            return Num.Zero;
        }

        _inset = _context.Figures.Length(ply.Step, _context.PartOwner, "step", zero: true) is { } step ? _inset + step : Num.Zero;
        return _inset;
    }

    private int Pieces(int count) => Math.Clamp(count, 1, MostPieces) * _sides;

    private bool IsWet => _context.Process is Process.Hand or Process.Bagged;

    private Known<Orientation> OrientationOf(PlyItem ply)
    {
        if (_context.Figures.Any(ply.Orientation, _context.PartOwner, "orientation") is { } stated)
        {
            return stated;
        }

        return ply.Material.Form is ReinforcementForm.Mat or ReinforcementForm.Veil
            ? new Known<Orientation>(Orientation.Random, Rests.None)
            : _context.TakeKnown(Defaults.Orientation);
    }

    private Num Waste(PlyItem ply, Extent extent, bool askew)
    {
        if (ply.Material.Form is ReinforcementForm.Mat or ReinforcementForm.Veil)
        {
            return _context.Take(Defaults.WasteMat);
        }

        return _context.Take(askew ? Defaults.WasteBias : extent.Rectangular ? Defaults.WasteStraight : Defaults.WasteShaped);
    }

    // A stated pace, the part's or the shop's, is how they work; that of a cloth is for a gentle shape and is slowed on a double curve.
    private Num? WetOut(Reinforcement cloth, Num area, int pieces)
    {
        if (!IsWet)
        {
            return null;
        }

        var figures = _context.Figures;
        var pace = figures.Pace(_context.Part.WetOut?.Pace, _context.PartOwner, "pace")
            ?? figures.Pace(_context.Shop?.Pace, _context.ShopOwner, "pace");
        if (pace is null)
        {
            pace = figures.Pace(cloth.WetOutPace, Owner.Of(cloth), "pace") ?? _context.Take(Defaults.WetOutPace);
            pace = _ground is { IsHardToReach: true } ? pace * _context.Take(Defaults.CurvatureFactor) : pace;
        }

        var people = _conditions.Laminators;
        var wetting = WorkingTime.WetOut(Area.FromSquareMeters(area.Si), 1, Duration.FromSeconds(pace.Value.Si), people.Value);
        return new Num(wetting.Seconds, area.On | pace.Value.On | people.On) + Handling(pieces);
    }

    private Num Handling(int pieces) =>
        (_context.Take(Defaults.PieceHandling) * pieces / _conditions.Laminators.Value).And(_conditions.Laminators.On);
}
