using UnitsNet;

namespace Recipe.Engineering;

/// <summary>
/// Ranges of the inputs of flow. They lie far outside anything that is infused or pumped, and far inside a double, so that no
/// product of accepted figures can overflow or turn into a number that is none.
/// </summary>
internal static class FlowGuard
{
    /// <summary>Permeability in m2, from tighter than rock to wider than any mesh.</summary>
    internal static double Permeability(Area value, string parameter) => Guard.Between(value.SquareMeters, 1e-20, 1e-3, "m2", parameter);

    /// <summary>Viscosity in Pa s, from a thin gas to a gel that no longer flows.</summary>
    internal static double Viscosity(DynamicViscosity value, string parameter) =>
        Guard.Between(value.PascalSeconds, 1e-6, 1e9, "Pa s", parameter);

    /// <summary>Pressure difference that drives a flow, in Pa.</summary>
    internal static double Drop(Pressure value, string parameter) => Guard.Between(value.Pascals, 1, 1e8, "Pa", parameter);

    /// <summary>A length in m that cannot be nil.</summary>
    internal static double Distance(Length value, string parameter) => Guard.Between(value.Meters, 1e-9, 1e5, "m", parameter);

    /// <summary>A time in s that may be nil.</summary>
    internal static double Time(Duration value, string parameter) => Guard.Between(value.Seconds, 0, 1e12, "s", parameter);

    /// <summary>A time in s that cannot be nil.</summary>
    internal static double PositiveTime(Duration value, string parameter) => Guard.Between(value.Seconds, 1e-9, 1e12, "s", parameter);
}
