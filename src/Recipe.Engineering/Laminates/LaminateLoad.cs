using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Forces and moments per length at the edges of a laminate, about its middle plane.</summary>
/// <param name="Nx">Pull along x for each unit of width.</param>
/// <param name="Ny">Pull along y.</param>
/// <param name="Nxy">Shear.</param>
/// <param name="Mx">Moment that bends the x direction; positive stretches the bag side.</param>
/// <param name="My">Moment that bends the y direction; positive stretches the bag side.</param>
/// <param name="Mxy">Twisting moment.</param>
public readonly record struct LaminateLoad(
    ForcePerLength Nx = default,
    ForcePerLength Ny = default,
    ForcePerLength Nxy = default,
    TorquePerLength Mx = default,
    TorquePerLength My = default,
    TorquePerLength Mxy = default)
{
    /// <summary>Forces per length, N/m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A force is beyond 1e12 N/m or not a number.</exception>
    public PlaneVector Forces =>
        new(
            LaminateGuard.Load(Nx.NewtonsPerMeter, "N/m", nameof(Nx)),
            LaminateGuard.Load(Ny.NewtonsPerMeter, "N/m", nameof(Ny)),
            LaminateGuard.Load(Nxy.NewtonsPerMeter, "N/m", nameof(Nxy)));

    /// <summary>Moments per length, N.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A moment is beyond 1e12 N or not a number.</exception>
    public PlaneVector Moments =>
        new(
            LaminateGuard.Load(Mx.NewtonMetersPerMeter, "N", nameof(Mx)),
            LaminateGuard.Load(My.NewtonMetersPerMeter, "N", nameof(My)),
            LaminateGuard.Load(Mxy.NewtonMetersPerMeter, "N", nameof(Mxy)));
}
