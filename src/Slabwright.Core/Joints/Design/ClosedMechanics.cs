using Slabwright.Core.Joints.Slabs;

namespace Slabwright.Core.Joints.Design;

/// <summary>
/// The joint by closed forms: bar stiffness (Ioannides and Korovesis), deflection transfer by the fit of FHWA-RD-02-088, the transferred
/// load on the bars falling linearly to nothing at a reach (Friberg; Tabatabaie), corner and edge by the fits of Ioannides et al. 1985.
/// Only the axle at the joint counts, each wheel alone.
/// </summary>
/// <param name="conditions">The build-up.</param>
/// <param name="reach">Reach of the group in radii of relative stiffness: 1.0 or 1.8.</param>
internal sealed class ClosedMechanics(JointConditions conditions, double reach) : IJointMechanics
{
    private const double SteelPoisson = 0.3;

    private readonly double _radius = conditions.Radius;
    private readonly double _reach = reach * conditions.Radius;

    public LoadEffect Under(JointLoad load, BarLayout? bars)
    {
        var nearest = load.Patches.Min(p => Math.Abs(p.Along));
        var tyres = load.Patches.Where(p => Math.Abs(p.Along) <= nearest + 1e-9).ToArray();
        var wheel = tyres.Length > 2 ? tyres.OrderByDescending(t => t.Across).Take(2).ToArray() : [tyres.MaxBy(t => t.Across)];
        var transfer = Transfer(wheel, bars);
        var (deflection, stress) = Free(load.Place, wheel);
        var stressTransfer = StressTransfer.Of(transfer, ContactRadius(wheel) / _radius);
        return new(
            bars is null ? 0 : Bearing(tyres, bars, transfer), deflection / (1 + transfer), transfer * deflection / (1 + transfer),
            stress / (1 + stressTransfer));
    }

    /// <summary>Share of the free response that a line of bars as strong as those near the wheel carries over.</summary>
    /// <param name="wheel">The tyres of the wheel.</param> <param name="bars">The bars.</param>
    /// <param name="barStiffness">Stiffness of one bar, N/m; the published form where null.</param>
    internal double Transfer(WheelPatch[] wheel, BarLayout? bars, double? barStiffness = null)
    {
        if (bars is null || bars.Bars == 0) return 0;
        var at = wheel.Average(w => w.Across);
        var weights = bars.Offsets.Sum(x => Weight(x - at));
        if (weights <= 0) return 0;
        var spacing = WeightOverLane(at) / weights;
        var bar = barStiffness ?? DowelBar.JointStiffness(
            conditions.DowelSupport, bars.Diameter, conditions.SteelModulus, SteelPoisson, conditions.JointWidth);
        return LoadTransfer.Deflection(
            LoadTransfer.Stiffness(bar, spacing, conditions.Reaction, _radius), ContactRadius(wheel) / _radius);
    }

    private double Bearing(WheelPatch[] tyres, BarLayout bars, double transfer) =>
        OfShear(conditions, bars.Diameter, Shears(tyres, bars, transfer).Max());

    /// <summary>Load of each bar, N, under tyres taken as one wheel.</summary>
    internal double[] Shears(WheelPatch[] tyres, BarLayout bars) => Shears(tyres, bars, Transfer(tyres, bars));

    private double[] Shears(WheelPatch[] tyres, BarLayout bars, double transfer)
    {
        var carried = transfer / (1 + transfer);
        var shear = new double[bars.Bars];
        foreach (var tyre in tyres)
        {
            var sum = bars.Offsets.Sum(x => Weight(x - tyre.Across));
            if (sum <= 0) continue;
            for (var n = 0; n < shear.Length; n++) shear[n] += carried * tyre.Load * Weight(bars.Offsets[n] - tyre.Across) / sum;
        }

        return shear;
    }

    /// <summary>Bearing stress of a bar that carries a shear, Pa.</summary>
    internal static double OfShear(JointConditions conditions, double diameter, double shear)
    {
        var beta = DowelBar.Beta(conditions.DowelSupport, diameter, conditions.SteelModulus);
        return DowelBar.BearingStress(conditions.DowelSupport,
            DowelBar.FaceDeflection(shear, conditions.JointWidth, beta, diameter, conditions.SteelModulus));
    }

    private (double Deflection, double Stress) Free(WheelPlace place, WheelPatch[] wheel)
    {
        var (load, a) = (wheel.Sum(w => w.Load), ContactRadius(wheel));
        var c = conditions;
        return place == WheelPlace.OuterEdge
            ? (WheelLoad.CornerDeflectionFitted(load, a, c.Reaction, _radius), WheelLoad.CornerStressFitted(load, a, c.Thickness, _radius))
            : (WheelLoad.EdgeDeflectionCircle(load, a, c.Thickness, c.Modulus, c.Poisson, c.Reaction, _radius),
                WheelLoad.EdgeStressCircle(load, a, c.Thickness, c.Modulus, c.Poisson, c.Reaction, _radius));
    }

    private double ContactRadius(WheelPatch[] wheel) => Math.Sqrt(wheel.Sum(w => w.Load) / (Math.PI * conditions.TyrePressure));

    private double Weight(double distance) => Math.Max(0, 1 - Math.Abs(distance) / _reach);

    /// <summary>Integral of the weight over the lane's width, m.</summary>
    private double WeightOverLane(double at) => OneSide(at) + OneSide(conditions.LaneWidth - at);

    private double OneSide(double room)
    {
        var within = Math.Clamp(room, 0, _reach);
        return within - within * within / (2 * _reach);
    }
}
