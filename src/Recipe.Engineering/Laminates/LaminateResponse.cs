using UnitsNet;

namespace Recipe.Engineering;

/// <summary>What loads and a change of temperature do to a laminate that is free at its edges.</summary>
/// <remarks>Source: classical lamination theory, e.g. Kaw, Mechanics of Composite Materials, ch. 4. See <see cref="Laminate"/> for axes and signs.</remarks>
public static class LaminateResponse
{
    /// <summary>Mid-plane strains and curvatures under forces and moments: <c>a N + b M</c> and <c>b' N + d M</c>.</summary>
    /// <param name="laminate">The laminate.</param>
    /// <param name="load">Forces and moments per length.</param>
    /// <exception cref="ArgumentOutOfRangeException">A load is out of range.</exception>
    public static LaminateStrain UnderLoad(Laminate laminate, LaminateLoad load)
    {
        ArgumentNullException.ThrowIfNull(laminate);
        return Solve(laminate, load.Forces, load.Moments);
    }

    /// <summary>The plies of which no thermal expansion is known, by index; when there are any, no thermal answer can be given.</summary>
    /// <param name="laminate">The laminate.</param>
    public static IReadOnlyList<int> PliesWithoutExpansion(Laminate laminate)
    {
        ArgumentNullException.ThrowIfNull(laminate);
        return [.. Enumerable.Range(0, laminate.Plies.Count)
            .Where(ply => laminate.Plies[ply].Layers.Any(layer => layer.Expansion is null))];
    }

    /// <summary>
    /// Mid-plane strains and curvatures that a change of temperature brings, from the temperature at which the laminate was free of
    /// stress; null when a ply's expansion is not known. An unsymmetric stack curves or twists.
    /// </summary>
    /// <param name="laminate">The laminate.</param>
    /// <param name="change">Temperature now less the temperature without stress, at most 1000 K either way; cooling is negative.</param>
    /// <exception cref="ArgumentOutOfRangeException">The change is out of range.</exception>
    /// <remarks>
    /// Linear: it knows no viscous relaxation and no second stable shape, which thin unsymmetric plates have. Shrinkage of the
    /// resin in its cure is not in it unless it is counted into the change.
    /// </remarks>
    public static LaminateStrain? FromTemperature(Laminate laminate, TemperatureDelta change)
    {
        ArgumentNullException.ThrowIfNull(laminate);
        double kelvins = LaminateGuard.Kelvins(change, nameof(change));
        return ThermalLoad(laminate, kelvins) is var (forces, moments) ? Solve(laminate, forces, moments) : null;
    }

    /// <summary>
    /// The forces and moments per length that would hold the laminate's free expansion back, with the sign changed: <c>N = sum Q alpha dT t</c>
    /// (N/m) and <c>M = sum Q alpha dT t z</c> (N); null when a ply's expansion is not known.
    /// </summary>
    /// <param name="laminate">The laminate.</param>
    /// <param name="change">Temperature now less the temperature without stress, at most 1000 K either way.</param>
    /// <exception cref="ArgumentOutOfRangeException">The change is out of range.</exception>
    public static (PlaneVector Forces, PlaneVector Moments)? ThermalLoad(Laminate laminate, TemperatureDelta change)
    {
        ArgumentNullException.ThrowIfNull(laminate);
        return ThermalLoad(laminate, LaminateGuard.Kelvins(change, nameof(change)));
    }

    /// <summary>Strains and stresses of every layer at its mould side, in its middle and at its bag side, from the mould outwards.</summary>
    /// <param name="laminate">The laminate.</param>
    /// <param name="strain">The whole deformation: from load, from temperature, or the sum of both.</param>
    /// <param name="change">The change of temperature that is part of it; none by default.</param>
    /// <returns>
    /// Three states for each layer, for a woven ply three for its weft and three for its warp; or null when there is a change of temperature
    /// and a ply's expansion is not known.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">The change is out of range, or a strain or curvature is not finite.</exception>
    public static IReadOnlyList<LayerState>? States(Laminate laminate, LaminateStrain strain, TemperatureDelta change = default)
    {
        ArgumentNullException.ThrowIfNull(laminate);
        double kelvins = LaminateGuard.Kelvins(change, nameof(change));
        LaminateGuard.Finite(strain.MidPlane, nameof(strain));
        LaminateGuard.Finite(strain.Curvature, nameof(strain));
        List<LayerState> states = [];
        double bottom = -laminate.Metres / 2;
        for (int p = 0; p < laminate.Plies.Count; p++)
        {
            LaminatePly ply = laminate.Plies[p];
            double z = bottom;
            for (int i = 0; i < ply.JudgedLayers; i++)
            {
                Layer layer = ply.Layers[i];
                if (kelvins != 0 && layer.Expansion is null)
                {
                    return null;
                }

                PlaneVector free = layer.Expansion is { } expansion ? kelvins * expansion : default;
                (double low, double high) = ply.Interlaced ? (bottom, bottom + ply.Metres) : (z, z + layer.Metres);
                states.Add(At(layer, p, i, LayerFace.MouldSide, low, strain, free));
                states.Add(At(layer, p, i, LayerFace.Middle, (low + high) / 2, strain, free));
                states.Add(At(layer, p, i, LayerFace.BagSide, high, strain, free));
                z += layer.Metres;
            }

            bottom += ply.Metres;
        }

        return states;
    }

    private static LayerState At(
        Layer layer, int ply, int index, LayerFace face, double z, LaminateStrain strain, PlaneVector free)
    {
        PlaneVector whole = strain.At(z);
        PlaneVector own = (whole - free).StrainTurned(layer.Cos2, layer.Sin2);
        return new LayerState(
            ply,
            index,
            face,
            Length.FromMeters(z),
            whole,
            layer.Stiffness * (whole - free),
            own,
            layer.Lamina.ReducedStiffness * own);
    }

    private static LaminateStrain Solve(Laminate laminate, PlaneVector forces, PlaneVector moments) =>
        new(
            (laminate.InPlaneCompliance * forces) + (laminate.CouplingCompliance * moments),
            laminate.CouplingCompliance.TransposeMultiply(forces) + (laminate.BendingCompliance * moments));

    private static (PlaneVector Forces, PlaneVector Moments)? ThermalLoad(Laminate laminate, double kelvins)
    {
        PlaneVector forces = default;
        PlaneVector moments = default;
        double z = -laminate.Metres / 2;
        foreach (LaminatePly ply in laminate.Plies)
        {
            foreach (Layer layer in ply.Layers)
            {
                if (layer.Expansion is not { } expansion)
                {
                    return null;
                }

                PlaneVector force = layer.Metres * kelvins * (layer.Stiffness * expansion);
                forces += force;
                moments += (z + (layer.Metres / 2)) * force;
                z += layer.Metres;
            }
        }

        return (forces, moments);
    }
}
