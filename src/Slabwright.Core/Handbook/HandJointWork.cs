using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Joints;
using Slabwright.Core.Joints.Design;
using Slabwright.Core.Joints.Slabs;
using static Slabwright.Core.Handbook.Entry;

namespace Slabwright.Core.Handbook;

/// <summary>The closed forms and the plate model of one joint by hand.</summary>
internal static class HandJointWork
{
    private const double SteelPoisson = 0.3;
    private const string Interior = "interior of the old slab";
    private const string BareMiddle = "at the joint amid the lane, no bars";
    private const string BareJoint = "wheel path at the joint, no bars";
    private const string BareCorner = "at the corner, no bars";
    private const string Joint = "wheel path at the joint, with bars";
    private const string AtCorner = "at the corner, with bars";

    private static readonly SourceRef Bearings = Seen("DOWEL-LECTURE", "allowable bearing (4 − d)/3 f'c");
    private static readonly SourceRef LongBars = Seen("NPTEL-IITK", "beam on springs");

    /// <summary>Works everything out.</summary>
    public static HandJoint Of(JointConditions c, BarLayout bars, WheelPatch wheel, double strength)
    {
        var plate = new HandJointPlate(c, bars, wheel);
        var heaviest = plate.Joint.Bearing;
        var beta = DowelBar.Beta(c.DowelSupport, bars.Diameter, c.SteelModulus);
        var embedded = Math.Min(bars.Embedment, bars.Length - bars.Embedment - c.JointWidth);
        return new HandJoint
        {
            Inputs = [],
            Findings = [],
            Layout = bars,
            Comparisons = [.. Free(c, wheel, plate), .. Spring(c, bars, plate), .. Together(c, bars, wheel, plate)],
            Bars = EachBar(c, bars, wheel, plate),
            Checks =
            [
                new LimitCheck("bearing on the concrete", heaviest, DowelBar.AllowableBearing(bars.Diameter, strength), LimitSense.AtMost, Stress, Bearings),
                new LimitCheck("embedment for a long bar (2/β)", embedded, 2 / beta, LimitSense.AtLeast, Short, LongBars),
            ],
            Run = plate.Run,
        };
    }

    /// <summary>Places at which the slab is too small for the closed forms, which take it as endless.</summary>
    public static IEnumerable<Finding> Doubts(JointConditions c)
    {
        var side = Math.Min(c.LaneWidth, c.OldSlab);
        foreach (var place in Enum.GetValues<LoadPlace>())
        {
            var (bending, deflection) = LargeSlab.Holds(place, side, c.Radius);
            if (bending && deflection) continue;
            var (leastBending, leastDeflection) = LargeSlab.LeastRatio(place);
            var what = (bending, deflection) switch { (false, false) => "stress and deflection", (false, _) => "stress", _ => "deflection" };
            yield return new Finding(
                "JNT-083", FindingLevel.Warning, $"The slab is too small for the closed form of {what} ({place.ToString().ToLowerInvariant()}); take the plate's value.",
                new FindingPlace(Field: c.LaneWidth <= c.OldSlab ? "lane-width" : "slab"), JointWords.Of(side, Long), "Nothing to mend; the closed form does not hold here.",
                JointWords.Of((bending ? leastDeflection : leastBending) * c.Radius, Long), "IOANNIDES-1985 (from memory)");
        }
    }

    private static IEnumerable<HandComparison> Free(JointConditions c, WheelPatch wheel, HandJointPlate plate)
    {
        var (p, a, h, k, l) = (wheel.Load, Math.Sqrt(wheel.Length * wheel.Width / Math.PI), c.Thickness, c.Reaction, c.Radius);
        yield return new(Interior, "stress at the bottom", Stress, WheelLoad.InteriorStress(p, a, h, c.Poisson, l), "Westergaard 1926", plate.Interior.Stress);
        yield return new(Interior, "deflection", Short, WheelLoad.InteriorDeflection(p, a, k, l), "Westergaard 1939", plate.Interior.Deflection);
        foreach (var (place, answer) in new[] { (BareMiddle, plate.BareMiddle), (BareJoint, plate.BareJoint) })
        {
            yield return new(
                place, "stress at the bottom", Stress, WheelLoad.EdgeStressCircle(p, a, h, c.Modulus, c.Poisson, k, l), "edge, circle, 1948", answer.EdgeStress.Loaded);
            yield return new(
                place, "deflection", Short, WheelLoad.EdgeDeflectionCircle(p, a, h, c.Modulus, c.Poisson, k, l), "edge, circle, 1948", answer.Deflection.Loaded);
        }

        yield return new(BareCorner, "stress at the top", Stress, WheelLoad.CornerStress(p, a, h, l), "corner, Westergaard 1926", plate.BareCorner.Tension.Top);
        yield return new(BareCorner, "stress at the top", Stress, WheelLoad.CornerStressFitted(p, a, h, l), "corner, Ioannides 1985", plate.BareCorner.Tension.Top);
        yield return new(BareCorner, "deflection", Short, WheelLoad.CornerDeflection(p, a, k, l), "corner, Westergaard 1926", plate.BareCorner.Corner.Loaded);
        yield return new(BareCorner, "deflection", Short, WheelLoad.CornerDeflectionFitted(p, a, k, l), "corner, Ioannides 1985", plate.BareCorner.Corner.Loaded);
    }

    private static IEnumerable<HandComparison> Spring(JointConditions c, BarLayout bars, HandJointPlate plate)
    {
        var published = DowelBar.JointStiffness(c.DowelSupport, bars.Diameter, c.SteelModulus, SteelPoisson, c.JointWidth);
        var exact = DowelSpring.TwoSided(c.DowelSupport, bars.Diameter, c.SteelModulus, SteelPoisson, c.JointWidth);
        yield return new("one bar", "stiffness", Entry.Spring, published, "Ioannides and Korovesis 1992, one face", plate.BarStiffness);
        yield return new("one bar", "stiffness", Entry.Spring, exact, "two elastic sides, long bar", plate.BarStiffness);
        yield return new(
            "joint", "dimensionless stiffness R", Plain, LoadTransfer.Stiffness(published, bars.Spacing, c.Reaction, c.Radius), "published stiffness at the spacing", null);
    }

    private static IEnumerable<HandComparison> Together(JointConditions c, BarLayout bars, WheelPatch wheel, HandJointPlate plate)
    {
        var (near, far) = (new ClosedMechanics(c, DowelBar.LaterReach), new ClosedMechanics(c, DowelBar.FribergReach));
        var (joint, wide) = (near.Under(One(wheel, WheelPlace.WheelPath), bars), far.Under(One(wheel, WheelPlace.WheelPath), bars));
        var corner = near.Under(One(plate.CornerWheel, WheelPlace.OuterEdge), bars);
        yield return new(Joint, "transfer by deflection", Share, joint.Transfer, "fit of FHWA-RD-02-088, reach 1.0 l", plate.Joint.DeflectionTransfer);
        yield return new(Joint, "transfer by deflection", Share, wide.Transfer, "fit of FHWA-RD-02-088, reach 1.8 l", plate.Joint.DeflectionTransfer);
        var exact = DowelSpring.TwoSided(c.DowelSupport, bars.Diameter, c.SteelModulus, SteelPoisson, c.JointWidth);
        yield return new(
            Joint, "transfer by deflection", Share, near.Transfer([wheel], bars, exact), "the same fit with the bar of two elastic sides, reach 1.0 l",
            plate.Joint.DeflectionTransfer);
        yield return new(Joint, "stress at the bottom", Stress, joint.Stress, "edge, half-plates with a shear spring", plate.Joint.EdgeStress.Loaded);
        yield return new(Joint, "deflection, loaded side", Short, joint.Loaded, "edge, sum rule", plate.Joint.Deflection.Loaded);
        yield return new(Joint, "deflection, other side", Short, joint.Unloaded, "edge, sum rule", plate.Joint.Deflection.Unloaded);
        yield return new(Joint, "load carried over", Force, LoadTransfer.Transferred(joint.Transfer) * wheel.Load, "T/(1 + T) of the wheel", plate.Joint.Carried);
        yield return new(Joint, "bearing of the heaviest bar", Stress, joint.Bearing, "beam on springs, reach 1.0 l", plate.Joint.Bearing);
        yield return new(Joint, "bearing of the heaviest bar", Stress, wide.Bearing, "beam on springs, reach 1.8 l (Friberg)", plate.Joint.Bearing);
        yield return new(AtCorner, "deflection, loaded side", Short, corner.Loaded, "corner, Ioannides 1985, sum rule", plate.Corner.Corner.Loaded);
        yield return new(AtCorner, "stress at the top", Stress, corner.Stress, "corner, Ioannides 1985, half-plates", plate.Corner.Tension.Top);
        yield return new(AtCorner, "bearing of the heaviest bar", Stress, corner.Bearing, "beam on springs, reach 1.0 l", plate.Corner.Bearing);
    }

    private static ImmutableArray<HandBar> EachBar(JointConditions c, BarLayout bars, WheelPatch wheel, HandJointPlate plate)
    {
        var near = new ClosedMechanics(c, DowelBar.LaterReach).Shears([wheel], bars);
        var far = new ClosedMechanics(c, DowelBar.FribergReach).Shears([wheel], bars);
        return [.. bars.Offsets.Select((at, n) => new HandBar(n + 1, at, near[n], far[n], plate.Joint.Bars[n].Shear, plate.Joint.Bars[n].Bearing))];
    }

    private static JointLoad One(WheelPatch wheel, WheelPlace place) => new(new AxleClass(1, wheel.Load, 0), place, true, 1, [wheel]);
}
