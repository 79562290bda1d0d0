using System.Collections.Immutable;
using Slabwright.Core.Joints.Slabs;
using Slabwright.Core.Measures;

namespace Slabwright.Core.Joints.Design;

/// <summary>Where across the lane an axle passes the joint.</summary>
public enum WheelPlace
{
    /// <summary>In the wheel paths.</summary>
    WheelPath,

    /// <summary>With the outer tyre at the lane's edge.</summary>
    OuterEdge,
}

/// <summary>One axle group standing at the joint.</summary>
/// <param name="Class">The axle class.</param>
/// <param name="Place">Where across the lane.</param>
/// <param name="BeforeJoint">True where it stands on the slab before the joint, false on the slab after it.</param>
/// <param name="Share">Share of the class's passes at this place.</param>
/// <param name="Patches">Tyres; along from the joint, across from the lane's left edge.</param>
public sealed record JointLoad(AxleClass Class, WheelPlace Place, bool BeforeJoint, double Share, ImmutableArray<WheelPatch> Patches)
{
    /// <summary>Tyres on each wheel: 1 or 2.</summary>
    public int Tyres => Patches.Length / (Class.Axles * 2);
}

/// <summary>One tyre of an axle class.</summary>
/// <param name="OnWheel">Tyres on each wheel: 1 or 2.</param>
/// <param name="Load">N.</param>
/// <param name="Length">Along, m.</param>
/// <param name="Width">Across, m.</param>
public readonly record struct TyrePrint(int OnWheel, double Load, double Length, double Width);

/// <summary>Axle classes as tyre patches at a joint.</summary>
/// <remarks>
/// A tyre's load over the tyre pressure gives the contact area A; its rectangle is 0.8712 L by 0.6 L with L = √(A/0.5227) (PCA 1984 and
/// Huang 2004 ch. 1, from memory). Dual tyres 13.5 in apart, wheels 72 in apart across, axles of a group 48 in apart: common practice.
/// A single axle of up to 13 kip is taken as a steering axle on two tyres. Six passes of a hundred run at the edge (PCA 1984, from memory).
/// </remarks>
public static class JointLoads
{
    /// <summary>Distance of dual tyres, centre to centre, m.</summary>
    public const double DualSpacing = 13.5 * Inch;

    /// <summary>Distance of the wheels of an axle, centre to centre, m.</summary>
    public const double Track = 72 * Inch;

    /// <summary>Distance of the axles of a group, m.</summary>
    public const double AxleSpacing = 48 * Inch;

    /// <summary>Share of passes with the outer tyre at the lane's edge.</summary>
    public const double EdgeShare = 0.06;

    /// <summary>Distance of the outer tyre's outer side from the lane's edge in the wheel path, m.</summary>
    public const double PathFromEdge = 18 * Inch;

    private const double Inch = 0.0254;
    private static readonly double SteeringUpTo = Units.Kip.ToBase(13);

    /// <summary>Every class in the wheel path and at the edge, before and after the joint.</summary>
    public static ImmutableArray<JointLoad> Of(JointConditions conditions) =>
    [
        .. from axle in conditions.Traffic
           from place in new[] { WheelPlace.WheelPath, WheelPlace.OuterEdge }
           from before in new[] { true, false }
           select One(axle, place, before, conditions),
    ];

    /// <summary>
    /// One load of each shape that occurs, at each place: steering axle of 12 kip, single of 18, tandem of 34, tridem of 51 kip.
    /// </summary>
    public static ImmutableArray<JointLoad> Shapes(JointConditions conditions) =>
    [
        .. from axle in conditions.Traffic.Select(Standard).Distinct()
           from place in new[] { WheelPlace.WheelPath, WheelPlace.OuterEdge }
           from before in new[] { true, false }
           select One(axle, place, before, conditions),
    ];

    /// <summary>Names of the shapes that occur, in order.</summary>
    internal static IEnumerable<string> ShapeKeys(JointConditions conditions) =>
        conditions.Traffic.Select(a => $"{a.Axles}{(a.Axles == 1 && a.Load <= SteeringUpTo ? "s" : "d")}").Distinct();

    private static AxleClass Standard(AxleClass axle) => axle.Axles switch
    {
        1 when axle.Load <= SteeringUpTo => new(1, Units.Kip.ToBase(12), 0),
        1 => new(1, Units.Kip.ToBase(18), 0),
        2 => new(2, Units.Kip.ToBase(34), 0),
        _ => new(3, Units.Kip.ToBase(51), 0),
    };

    /// <summary>One class at one place.</summary>
    public static JointLoad One(AxleClass axle, WheelPlace place, bool before, JointConditions conditions)
    {
        var tyre = Tyre(axle, conditions);
        var outer = conditions.LaneWidth - (place == WheelPlace.WheelPath ? PathFromEdge : 0) - tyre.Width / 2;
        var patches = Patches(axle, tyre, outer, n => (before ? -1 : 1) * (tyre.Length / 2 + n * AxleSpacing));
        return new(axle, place, before, place == WheelPlace.OuterEdge ? EdgeShare : 1 - EdgeShare, patches);
    }

    /// <summary>Tyres of an axle group that stands anywhere, its first axle foremost in the direction of travel.</summary>
    /// <param name="axle">The class.</param> <param name="along">Middle of the foremost axle's tyres from the joint, m.</param>
    /// <param name="across">Middle of the outer tyre from the lane's left edge, m.</param> <param name="conditions">Tyre pressure.</param>
    public static ImmutableArray<WheelPatch> At(AxleClass axle, double along, double across, JointConditions conditions) =>
        Patches(axle, Tyre(axle, conditions), across, n => along - n * AxleSpacing);

    /// <summary>One tyre of a class: how many stand on each wheel, the load of one and its rectangle.</summary>
    public static TyrePrint Tyre(AxleClass axle, JointConditions conditions)
    {
        var tyres = axle.Axles == 1 && axle.Load <= SteeringUpTo ? 1 : 2;
        var load = axle.Load / (axle.Axles * 2 * tyres);
        var (length, width) = WheelImprint.Rectangle(load / conditions.TyrePressure);
        return new TyrePrint(tyres, load, length, width);
    }

    private static ImmutableArray<WheelPatch> Patches(AxleClass axle, TyrePrint tyre, double outer, Func<int, double> along) =>
    [
        .. from n in Enumerable.Range(0, axle.Axles)
           from wheel in Enumerable.Range(0, 2)
           from dual in Enumerable.Range(0, tyre.OnWheel)
           select new WheelPatch(along(n), outer - dual * DualSpacing - wheel * Track, tyre.Length, tyre.Width, tyre.Load),
    ];
}
