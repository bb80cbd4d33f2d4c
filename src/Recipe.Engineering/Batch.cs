using UnitsNet;

namespace Recipe.Engineering;

/// <summary>One mixed pot of a plan.</summary>
/// <param name="Number">Its place in the order, from 1.</param>
/// <param name="Mass">Mass to mix.</param>
/// <param name="StartAfter">Start of its mixing, counted from the start of the first pot's, one pair of hands in a row.</param>
/// <param name="LayingTime">Time in which it is laid.</param>
/// <param name="Life">Its pot life at today's temperature and its own mass.</param>
/// <param name="UseWithin">The share of its life that may be used, counted from the start of its mixing.</param>
public sealed record Batch(
    int Number, Mass Mass, Duration StartAfter, Duration LayingTime, Duration Life, Duration UseWithin);
