using System.Collections.Immutable;
using UnitsNet;

namespace Recipe.Planning.Ledger;

/// <summary>
/// The books of one plan while it is made: which assumptions there are, which of them a published value rests on, and what is
/// missing. One plan, one ledger, one thread.
/// </summary>
internal sealed class PlanLedger
{
    private readonly List<Assumption> _assumptions = [];
    private readonly Dictionary<string, Rests> _byKey = new(StringComparer.Ordinal);
    private readonly Dictionary<Rests, ImmutableArray<string>> _keys = [];
    private readonly List<Gap> _gaps = [];
    private readonly HashSet<Gap> _gapsSeen = [];
    private Rests _published;

    /// <summary>What could not be computed, in the order in which it was met, each once.</summary>
    public ImmutableArray<Gap> Gaps => [.. _gaps];

    /// <summary>The assumptions that some published value rests on, in ordinal order of key.</summary>
    public ImmutableArray<Assumption> PublishedAssumptions()
    {
        var used = new List<Assumption>();
        foreach (var index in _published.Members())
        {
            used.Add(_assumptions[index]);
        }

        used.Sort(static (a, b) => string.CompareOrdinal(a.Key, b.Key));
        return [.. used];
    }

    /// <summary>The set that holds this one assumption.</summary>
    public Rests Assume(Assumption assumption)
    {
        if (!_byKey.TryGetValue(assumption.Key, out var rests))
        {
            rests = Rests.Of(_assumptions.Count);
            _assumptions.Add(assumption);
            _byKey.Add(assumption.Key, rests);
        }

        return rests;
    }

    /// <summary>The set that holds one default of the program.</summary>
    public Rests Assume(TradeDefault value) =>
        _byKey.TryGetValue(value.Key, out var rests) ? rests : Assume(value.ToAssumption());

    /// <summary>Notes that something cannot be computed.</summary>
    public void Miss(string subject, string missing)
    {
        var gap = new Gap(subject, missing);
        if (_gapsSeen.Add(gap))
        {
            _gaps.Add(gap);
        }
    }

    /// <summary>The keys of a set, for a value that goes into the plan.</summary>
    public ImmutableArray<string> Publish(Rests rests)
    {
        if (_keys.TryGetValue(rests, out var keys))
        {
            return keys;
        }

        var names = new List<string>();
        foreach (var index in rests.Members())
        {
            names.Add(_assumptions[index].Key);
        }

        names.Sort(StringComparer.Ordinal);
        keys = [.. names];
        _keys.Add(rests, keys);
        _published |= rests;
        return keys;
    }

    /// <summary>A value for the plan.</summary>
    public Computed<T> Publish<T>(T value, Rests rests) => new(value, Publish(rests));

    /// <summary>A value for the plan.</summary>
    public Computed<T> Publish<T>(Known<T> known) => new(known.Value, Publish(known.On));

    /// <summary>A value for the plan, or null.</summary>
    public Computed<T>? Publish<T>(Known<T>? known) => known is { } k ? Publish(k) : null;

    /// <summary>A length for the plan.</summary>
    public Computed<Length> PublishLength(Num num) => Publish(Length.FromMeters(num.Si), num.On);

    /// <summary>An area for the plan.</summary>
    public Computed<Area> PublishArea(Num num) => Publish(Area.FromSquareMeters(num.Si), num.On);

    /// <summary>A mass for the plan.</summary>
    public Computed<Mass> PublishMass(Num num) => Publish(Mass.FromKilograms(num.Si), num.On);

    /// <summary>A time for the plan.</summary>
    public Computed<Duration> PublishTime(Num num) => Publish(Duration.FromSeconds(num.Si), num.On);

    /// <summary>A pressure for the plan.</summary>
    public Computed<Pressure> PublishPressure(Num num) => Publish(Pressure.FromPascals(num.Si), num.On);

    /// <summary>A plain number for the plan.</summary>
    public Computed<double> PublishNumber(Num num) => Publish(num.Si, num.On);

    /// <summary>A length for the plan, or null.</summary>
    public Computed<Length>? PublishLength(Num? num) => num is { } n ? PublishLength(n) : null;

    /// <summary>An area for the plan, or null.</summary>
    public Computed<Area>? PublishArea(Num? num) => num is { } n ? PublishArea(n) : null;

    /// <summary>A mass for the plan, or null.</summary>
    public Computed<Mass>? PublishMass(Num? num) => num is { } n ? PublishMass(n) : null;

    /// <summary>A time for the plan, or null.</summary>
    public Computed<Duration>? PublishTime(Num? num) => num is { } n ? PublishTime(n) : null;

    /// <summary>A pressure for the plan, or null.</summary>
    public Computed<Pressure>? PublishPressure(Num? num) => num is { } n ? PublishPressure(n) : null;

    /// <summary>A plain number for the plan, or null.</summary>
    public Computed<double>? PublishNumber(Num? num) => num is { } n ? PublishNumber(n) : null;
}
