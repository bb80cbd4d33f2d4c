using UnitsNet;

namespace Recipe.Engineering;

/// <summary>The largest load by the rule of maximum strain: the first layer that reaches one of its limits.</summary>
/// <remarks>
/// Source: maximum strain rule in the layer's axes, without interaction of the strains, e.g. Jones, Mechanics of Composite
/// Materials, ch. 2 (from memory). An estimate for comparing stacks, with no allowance for scatter, holes, knocks, fatigue or
/// wet and heat. It certifies nothing: load-bearing and flying parts are for tests and licensed practice.
/// </remarks>
public static class FirstPly
{
    private static readonly StrainMode[] Modes = Enum.GetValues<StrainMode>();

    /// <summary>How many times the load the laminate bears until the first limit, and where. The change of temperature is not multiplied.</summary>
    /// <param name="laminate">The laminate.</param>
    /// <param name="load">Forces and moments per length.</param>
    /// <param name="change">Temperature now less the temperature without stress; none by default; at most 1000 K either way.</param>
    /// <returns>The governing limit, and which plies could not be judged. Limits that nobody gave are never made up.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A load, the change or a limit is out of range.</exception>
    public static FirstPlyAnswer Margin(Laminate laminate, LaminateLoad load, TemperatureDelta change = default)
    {
        ArgumentNullException.ThrowIfNull(laminate);
        IReadOnlyList<LayerState> loaded = LaminateResponse.States(laminate, LaminateResponse.UnderLoad(laminate, load))!;
        IReadOnlyList<LayerState>? residual = null;
        if (LaminateGuard.Kelvins(change, nameof(change)) != 0)
        {
            if (LaminateResponse.FromTemperature(laminate, change) is not { } strain)
            {
                return new FirstPlyAnswer(null, [], [], LaminateResponse.PliesWithoutExpansion(laminate));
            }

            residual = LaminateResponse.States(laminate, strain, change);
        }

        // Strains that are the rounding of others reach no limit and ask for none.
        double rounding = 1e-9 * Math.Max(Largest(loaded), residual is null ? 0 : Largest(residual));
        FirstPlyMargin? governing = null;
        SortedSet<int> unjudged = [];
        SortedSet<int> partly = [];
        for (int i = 0; i < loaded.Count; i++)
        {
            LayerState state = loaded[i];
            StrainLimits? limits = laminate.Plies[state.Ply].Layers[state.Layer].Limits;
            if (limits is null || !limits.Any)
            {
                unjudged.Add(state.Ply);
                continue;
            }

            foreach (StrainMode mode in Modes)
            {
                double fromLoad = Towards(mode, state.OwnStrain);
                double already = residual is null ? 0 : Towards(mode, residual[i].OwnStrain);
                if (mode == StrainMode.Shear && fromLoad < 0)
                {
                    // Either sign shears: count along the direction in which the load works.
                    (fromLoad, already) = (-fromLoad, -already);
                }

                if (limits.Of(mode) is not { } limit)
                {
                    if (fromLoad > rounding || already > rounding)
                    {
                        partly.Add(state.Ply);
                    }

                    continue;
                }

                double factor = FactorUntil(limit, fromLoad > rounding ? fromLoad : 0, already, mode);
                if (double.IsFinite(factor) && factor < (governing?.LoadFactor ?? double.PositiveInfinity))
                {
                    governing = new FirstPlyMargin(factor, state.Ply, state.Layer, state.Face, mode);
                }
            }
        }

        partly.ExceptWith(unjudged);
        return new FirstPlyAnswer(governing, [.. unjudged], [.. partly], []);
    }

    /// <summary>How many times the load; infinite when the load does not strain that way.</summary>
    private static double FactorUntil(double limit, double fromLoad, double already, StrainMode mode)
    {
        if (already >= limit || (mode == StrainMode.Shear && -already >= limit))
        {
            return 0;
        }

        return fromLoad > 0 ? (limit - already) / fromLoad : double.PositiveInfinity;
    }

    private static double Largest(IReadOnlyList<LayerState> states)
    {
        double largest = 0;
        foreach (LayerState state in states)
        {
            PlaneVector own = state.OwnStrain;
            largest = Math.Max(largest, Math.Max(Math.Abs(own.X), Math.Max(Math.Abs(own.Y), Math.Abs(own.XY))));
        }

        return largest;
    }

    /// <summary>The strain as it counts towards a limit: positive when it goes that way.</summary>
    private static double Towards(StrainMode mode, PlaneVector own) => mode switch
    {
        StrainMode.StretchAlong => own.X,
        StrainMode.PressAlong => -own.X,
        StrainMode.StretchAcross => own.Y,
        StrainMode.PressAcross => -own.Y,
        _ => own.XY,
    };
}
