using Recipe.Engineering;
using Recipe.Planning.Ledger;
using UnitsNet;

namespace Recipe.Planning.Planners;

/// <summary>Curl while the plan is made.</summary>
/// <param name="IsSymmetric">Whether the stack is the same from both sides.</param>
/// <param name="StressFree">Temperature without stress, or null.</param>
/// <param name="Room">Temperature to which it cools.</param>
/// <param name="Curvature">Curvatures, 1/m.</param>
/// <param name="Length">Length of the piece, m.</param>
/// <param name="Width">Width of the piece, m.</param>
/// <param name="On">What the curvatures rest on.</param>
/// <param name="SizeOn">What the size of the piece rests on.</param>
internal sealed record CurlWork(
    bool IsSymmetric, Known<Temperature>? StressFree, Known<Temperature> Room, PlaneVector Curvature, double Length, double Width, Rests On, Rests SizeOn);

/// <summary>How a flat piece of the stack curls when it cools from the hottest hold in the mould to the room.</summary>
internal static class CurlPlanner
{
    private const string Subject = "curl on cooling";

    // A piece that one lays on the bench, where the part gives no size of its own.
    private const double Piece = 0.3;

    public static CurlWork? Work(PlanContext context, StiffnessWork stiffness, Ground? ground, CureWork? cure, Conditions conditions)
    {
        var (length, width) = ground is null ? (Piece, Piece) : (ground.Surface.DevelopedLength.Meters, ground.Surface.DevelopedWidth.Meters);
        var sizeOn = ground?.ShapeOn ?? Rests.None;
        if (IsSymmetric(stiffness.Laminate))
        {
            return new CurlWork(true, null, conditions.Room, default, length, width, stiffness.On, Rests.None);
        }

        var missing = stiffness.Plies.Select(ply => ply.NoExpansion).OfType<string>().Distinct(StringComparer.Ordinal).ToList();
        foreach (var what in missing)
        {
            context.Miss(Subject, what);
        }

        if (missing.Count > 0 || StressFree(context, cure) is not { } free)
        {
            return null;
        }

        try
        {
            var change = TemperatureDelta.FromKelvins(conditions.Room.Value.Kelvins - free.Value.Kelvins);
            return LaminateResponse.FromTemperature(stiffness.Laminate, change) is { } strain
                ? new CurlWork(false, free, conditions.Room, strain.Curvature, length, width, stiffness.On | stiffness.HeatOn | free.On | conditions.Room.On, sizeOn)
                : null;
        }
        catch (ArgumentOutOfRangeException)
        {
            context.Miss(Subject, "it cools by more than can be worked with");
            return null;
        }
    }

    public static CurlPlan Publish(PlanLedger ledger, CurlWork work)
    {
        var (curvature, on, sizeOn) = (work.Curvature, work.On, work.On | work.SizeOn);
        return new CurlPlan
        {
            IsSymmetric = work.IsSymmetric,
            StressFree = ledger.Publish(work.StressFree),
            Room = ledger.Publish(work.Room),
            Along = ledger.Publish(ReciprocalLength.FromInverseMeters(curvature.X), on),
            Across = ledger.Publish(ReciprocalLength.FromInverseMeters(curvature.Y), on),
            Twist = ledger.Publish(ReciprocalLength.FromInverseMeters(curvature.XY), on),
            Length = Length.FromMeters(work.Length),
            Width = Length.FromMeters(work.Width),
            RiseAlong = ledger.Publish(Length.FromMeters(Rise(curvature.X, work.Length)), sizeOn),
            RiseAcross = ledger.Publish(Length.FromMeters(Rise(curvature.Y, work.Width)), sizeOn),

            // The surface w = -kappa_xy x y / 2, from corner to corner.
            CornerRise = ledger.Publish(Length.FromMeters(Math.Abs(curvature.XY) * work.Length * work.Width / 2), sizeOn),
        };
    }

    // Of an arc; beyond half a circle it is rolled up and its diameter is the rise.
    private static double Rise(double curvature, double length)
    {
        var bend = Math.Abs(curvature);
        var halfAngle = bend * length / 2;

        // 1 - cos x as 2 sin^2(x/2), which keeps its digits for the small angles that are usual.
        var sine = Math.Sin(Math.Min(halfAngle, Math.PI) / 2);
        return halfAngle < 1e-12 ? 0 : 2 * sine * sine / bend;
    }

    private static Known<Temperature>? HottestHold(CureWork? cure)
    {
        Known<Temperature>? hottest = null;
        foreach (var step in cure?.Steps ?? [])
        {
            if (step is { InMould: true, Step.Action: Model.CureAction.Hold } && !(step.To.Value <= hottest?.Value))
            {
                hottest = step.To;
            }
        }

        return hottest;
    }

    private static Known<Temperature>? StressFree(PlanContext context, CureWork? cure) =>
        HottestHold(cure) is { } known ? known with { On = known.On | context.Ledger.Assume(Defaults.StressFree) } : null;

    /// <summary>Whether the layers are the same counted from either side.</summary>
    private static bool IsSymmetric(Laminate laminate)
    {
        var layers = laminate.Plies.SelectMany(ply => ply.Layers).ToArray();
        for (var (low, high) = (0, layers.Length - 1); low < high; low++, high--)
        {
            if (!AreAlike(layers[low], layers[high]))
            {
                return false;
            }
        }

        return true;
    }

    private static bool AreAlike(Layer one, Layer other) =>
        Close(one.Thickness.Meters, other.Thickness.Meters)
        && Close(one.Stiffness.M11, other.Stiffness.M11) && Close(one.Stiffness.M22, other.Stiffness.M22) && Close(one.Stiffness.M12, other.Stiffness.M12)
        && Close(one.Stiffness.M66, other.Stiffness.M66) && Near(one.Stiffness.M16, other.Stiffness.M16, one.Stiffness.M66)
        && Near(one.Stiffness.M26, other.Stiffness.M26, one.Stiffness.M66)
        && Same(one.Expansion, other.Expansion);

    private static bool Same(PlaneVector? one, PlaneVector? other) => (one, other) switch
    {
        (null, null) => true,
        ({ } a, { } b) => Near(a.X, b.X, 1e-5) && Near(a.Y, b.Y, 1e-5) && Near(a.XY, b.XY, 1e-5),
        _ => false,
    };

    private static bool Close(double one, double other) => Near(one, other, one);

    private static bool Near(double one, double other, double scale) => Math.Abs(one - other) <= 1e-9 * Math.Abs(scale);
}
