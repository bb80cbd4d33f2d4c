using System.Collections.Immutable;
using Recipe.Planning.Ledger;

namespace Recipe.Planning.Planners;

/// <summary>The lines of the stack in the order in which they are wetted out, with the resin and the time that each takes.</summary>
internal sealed class LayingOrder
{
    /// <summary>What a pot is said to be for that wets out the seam.</summary>
    public const string Seam = "seam tape";

    private readonly List<(string Name, double Resin, double Time)> _lines = [];
    private readonly (double Resin, double Time) _seam;
    private double _resin;
    private Num _total;

    public LayingOrder(ImmutableArray<LineWork> stack, JoinWork? join)
    {
        foreach (var line in stack)
        {
            Add(line.Item.Name, line.LaidResin ?? line.CutResin ?? Num.Zero, line.WetOut ?? Num.Zero);
        }

        if (join is { SameSession: true, LaminatingResin: { Si: > 0 } seam })
        {
            _seam = (seam.Si, (join.Time ?? Num.Zero).Si);
            _resin += seam.Si;
            _total += join.Time ?? Num.Zero;
        }
    }

    /// <summary>Time for all lines on all sides, and for a seam that is closed wet, s.</summary>
    public Num Total => _total;

    /// <summary>
    /// The lines that lie between two shares of the resin, and the time for them. A line without resin (an insert) goes with the one
    /// before it.
    /// </summary>
    public (ImmutableArray<string> Names, Num Time) Between(double from, double to, int sides)
    {
        if (_resin <= 0)
        {
            return ([], _total * (to - from));
        }

        var names = ImmutableArray.CreateBuilder<string>();
        var time = 0.0;
        var start = 0.0;
        for (var side = 0; side < sides; side++)
        {
            foreach (var line in _lines)
            {
                Lay(line.Name, line.Resin / sides, line.Time / sides);
            }
        }

        if (_seam.Resin > 0)
        {
            Lay(Seam, _seam.Resin, _seam.Time);
        }

        return (names.ToImmutable(), new Num(time, _total.On));

        void Lay(string name, double resin, double lasts)
        {
            var end = start + (resin / _resin);
            var share = Share(from, to, start, end);
            if (share > 0)
            {
                time += share * lasts;
                if (!names.Contains(name))
                {
                    names.Add(name);
                }
            }

            start = end;
        }
    }

    // Resin and time are those of all sides.
    private void Add(string name, Num resin, Num time)
    {
        _lines.Add((name, resin.Si, time.Si));
        _resin += resin.Si;
        _total += time;
    }

    // What part of [start, end] lies in [from, to]; a point belongs to the interval it ends. Rounding at the ends gives no line to a pot.
    private static double Share(double from, double to, double start, double end)
    {
        const double slack = 1e-9;
        if (end - start <= slack)
        {
            return (start > from + slack || (from <= slack && start <= slack)) && start <= to + slack ? 1 : 0;
        }

        var overlap = Math.Min(to, end) - Math.Max(from, start);
        return overlap > slack ? overlap / (end - start) : 0;
    }
}
