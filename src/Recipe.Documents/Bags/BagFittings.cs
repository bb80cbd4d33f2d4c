using System.Collections.Immutable;
using Recipe.Documents.Drawings;
using Recipe.Documents.Layout;
using Recipe.Documents.Shared;
using Recipe.Model;

namespace Recipe.Documents.Bags;

/// <summary>The part on paper, mm: its upper left, its length and width, and how wide the flange round it is.</summary>
internal readonly record struct BagGround(double X, double Y, double Length, double Width, double Edge)
{
    /// <summary>How far outside the part the lines of an infusion are drawn that run along its edges.</summary>
    public double Gap => GapOf(Edge);

    /// <summary>A line all round the part at that distance.</summary>
    public required ImmutableArray<Spot> Rim { get; init; }

    public static double GapOf(double edge) => Math.Min(edge * 0.25, 3);
}

/// <summary>Port, gauge, feed and vent of a bag at their places.</summary>
internal sealed class BagFittings
{
    private const double Size = 11;
    private const double Apart = 9;

    // Inside the tape, which is drawn at six tenths of the flange.
    private const double BesideShare = 0.3;

    private readonly BagPlaces _places;
    private readonly Infusion? _infusion;
    private readonly ImmutableArray<(BagPlace Place, bool IsSaid)> _ports;
    private readonly (BagPlace Place, bool IsSaid) _gauge;
    private readonly bool _portNamed;
    private readonly bool _gaugeNamed;
    private readonly int _feeds;

    private BagFittings(BenchContext context, Bag bag)
    {
        _infusion = context.Process == Process.Infused ? context.Part.Infusion : null;
        _places = BagPlaces.Of(_infusion);
        _ports = bag.Ports.IsEmpty ? [_infusion is null ? (BagPlace.Flange, false) : (_places.Vent, false)] : [.. bag.Ports.Select(port => _places.Port(port, _infusion))];
        _gauge = _places.Gauge(bag.GaugeAt, _infusion);
        _portNamed = bag.Ports.Any(port => port.At is not null);
        _gaugeNamed = bag.GaugeAt is not null;
        _feeds = context.FeedsOfABag;
    }

    public static BagFittings Of(BenchContext context, Bag bag) => new(context, bag);

    /// <summary>What the letters stand for, and whether their place is the recipe's.</summary>
    public IEnumerable<(string Mark, string What)> Key(BenchContext context)
    {
        var allSaid = _ports.All(port => port.IsSaid);
        yield return ("P", allSaid ? context.Say("port") : _portNamed ? context.Say("port; side assumed, words in the list") : context.Say("port, place assumed"));
        yield return ("G", _gauge.IsSaid ? context.Say("gauge") : _gaugeNamed ? context.Say("gauge; side assumed, words in the list") : context.Say("gauge, place assumed"));
        if (_infusion is not null)
        {
            yield return ("F", _places.VentSaid ? context.Say("feed line, across from the vent") : context.Say("feed line, place assumed"));
            yield return ("V", _places.VentSaid ? context.Say("vent line") : _infusion.Vent is null ? context.Say("vent line, place assumed") : context.Say("vent line; side assumed, words in the list"));
        }
    }

    public void Draw(Canvas canvas, BenchContext context, BagGround ground)
    {
        if (_infusion is not null)
        {
            Lines(canvas, context, ground);
        }

        var first = Spot(_ports[0].Place, ground);
        foreach (var (place, _) in _ports)
        {
            var at = Spot(place, ground);
            Ring(canvas, "P", at.X, at.Y);
        }

        var gauge = _gauge.Place == BagPlace.Opposite ? Across(first, ground) : Spot(_gauge.Place, ground);
        Ring(canvas, "G", gauge.X, gauge.Y);
    }

    // Where something stands already, beside it.
    private static void Ring(Canvas canvas, string mark, double x, double y)
    {
        foreach (var shift in (double[])[0, -Apart, Apart, -2 * Apart, 2 * Apart])
        {
            if (canvas.Ring(x + shift, y, mark))
            {
                return;
            }
        }
    }

    private Spot Spot(BagPlace place, BagGround g)
    {
        var (middleX, middleY) = (g.X + (g.Length / 2), g.Y + (g.Width / 2));
        return place switch
        {
            BagPlace.Vent or BagPlace.Rim => new(middleX, g.Y - g.Gap),
            BagPlace.Feed => FeedSpot(g),
            BagPlace.Middle => new(middleX, middleY),
            BagPlace.Right => new(g.X + g.Length + (g.Edge * BesideShare), middleY),
            _ => new(g.X - (g.Edge * BesideShare), middleY),
        };
    }

    private Spot FeedSpot(BagGround g)
    {
        var (middleX, middleY) = (g.X + (g.Length / 2), g.Y + (g.Width / 2));
        return _places.Vent switch
        {
            BagPlace.Rim => new(middleX, middleY),
            BagPlace.Left => new(g.X + g.Length + g.Gap, middleY),
            BagPlace.Right => new(g.X - g.Gap, middleY),
            _ => new(middleX, g.Y + g.Width + g.Gap),
        };
    }

    private static Spot Across(Spot port, BagGround g)
    {
        var (middleX, middleY) = (g.X + (g.Length / 2), g.Y + (g.Width / 2));
        var isMiddle = Math.Abs(port.X - middleX) < 1 && Math.Abs(port.Y - middleY) < 1;
        return isMiddle ? new(g.X + g.Length + (g.Edge * BesideShare), middleY) : new((2 * middleX) - port.X, (2 * middleY) - port.Y);
    }

    // Feed lines thick, the vent thin; arrows from each feed to where the air leaves.
    private void Lines(Canvas canvas, BenchContext context, BagGround g)
    {
        var upright = _places.Vent is BagPlace.Left or BagPlace.Right;
        var (run, wide) = upright ? (g.Width, g.Length) : (g.Length, g.Width);
        ImmutableArray<double> vent = _places.Vent switch
        {
            BagPlace.Middle => [0.5],
            BagPlace.Rim => [0, 1],
            BagPlace.Right => [1],
            _ => [0],
        };
        foreach (var across in FeedsAcross())
        {
            Line(across, new Pen(1.6));
        }

        if (_places.Vent == BagPlace.Rim)
        {
            canvas.Add(new PathShape(g.Rim, new Pen(0.6), Closed: true));
        }
        else
        {
            Line(vent[0], new Pen(0.6));
        }

        // Arrows of several lines stand side by side.
        var share = 0.3;
        foreach (var (from, to) in FeedsAcross().SelectMany(feed => vent.Where(at => Math.Abs(at - feed) > 1e-6).Select(at => (feed, at))))
        {
            var (a, b, c) = (Inside(from, to, wide), Inside(to, from, wide), run * share);
            var (start, end) = upright ? (new Spot(g.X + a, g.Y + c), new Spot(g.X + b, g.Y + c)) : (new Spot(g.X + c, g.Y + a), new Spot(g.X + c, g.Y + b));
            canvas.Arrow(start.X, start.Y, end.X, end.Y, Pen.Firm);
            share -= 0.05;
        }

        Mark("F", FeedsAcross()[0], 0.85);
        Mark("V", vent[^1], _places.Vent == BagPlace.Rim ? 0.5 : 0.7);
        if (context.Part.Infusion?.Path is { } path)
        {
            var text = context.Say($"resin runs {context.Text.Written(path, value => context.Text.Size(value)).Main}");
            _ = canvas.Text(g.X + (g.Length * 0.3) + 2, g.Y + (g.Width * 0.5) + 1.5, text, Size) || canvas.Text(g.X + (g.Length * 0.3) + 2, g.Y + (g.Width * 0.25) + 1.5, text, Size);
        }

        double Off(double across) => (across * wide) + (across <= 0 ? -g.Gap : across >= 1 ? g.Gap : 0);

        void Line(double across, Pen pen)
        {
            var off = Off(across);
            if (upright)
            {
                canvas.Line(g.X + off, g.Y, g.X + off, g.Y + run, pen);
            }
            else
            {
                canvas.Line(g.X, g.Y + off, g.X + run, g.Y + off, pen);
            }
        }

        void Mark(string mark, double across, double along) =>
            Ring(canvas, mark, upright ? g.X + Off(across) : g.X + (run * along), upright ? g.Y + (run * along) : g.Y + Off(across));
    }

    // Shares of the way across at which the feed lines lie: as far from the vent as they can, evenly where there are several.
    private ImmutableArray<double> FeedsAcross()
    {
        var count = Math.Min(_feeds, 6);
        return _places.Vent switch
        {
            BagPlace.Middle => count == 1 ? [1] : [.. Enumerable.Range(0, count).Select(i => 1 - (i / (count - 1.0)))],
            BagPlace.Rim => [.. Enumerable.Range(1, count).Select(i => i / (count + 1.0))],
            BagPlace.Right => [.. Enumerable.Range(0, count).Select(i => i / (double)count)],
            _ => [.. Enumerable.Range(0, count).Select(i => 1 - (i / (double)count))],
        };
    }

    // Arrows begin and end a little inside their lines.
    private static double Inside(double from, double to, double wide) => (from * wide) + (Math.Sign(to - from) * 2);
}
