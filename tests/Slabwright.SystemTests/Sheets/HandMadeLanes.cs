using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Job;
using Slabwright.Core.Joints.Design;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;

namespace Slabwright.SystemTests.Sheets;

/// <summary>Designs of lanes written by hand: alternatives that pass and fail, without bars, in wheel paths and over the full width.</summary>
internal static class HandMadeLanes
{
    private static readonly UnitPair Stress = new(Units.Psi, Units.Megapascal);
    private static readonly UnitPair Small = new(Units.Inch, Units.Millimetre);
    private static readonly SourceRef Computed = new("joints", "by hand", SourceStatus.Computed);

    public static LaneJointDesign Build(Project project, int number)
    {
        var lane = project.Road.LaneByNumber(number);
        var all = Alternatives(project.UnitSystem, lane.Width, lane.SectionAt(lane.From).Thickness);
        var winner = number == 3 ? null : all.First(a => a.Passes);
        return new LaneJointDesign
        {
            Lane = number,
            Conditions = Conditions(lane.Width),
            Alternatives = all,
            Winner = winner,
            Reasons =
            [
                new Reason("cheapest that passes", "The cheapest of those that keep every limit.", Computed, [new ReasonInput("looked at", $"{all.Length}"), new ReasonInput("keep every limit", $"{all.Count(a => a.Passes)}")]),
                new Reason("cheaper ones fail", "The next cheaper fails the bearing on the concrete.", new SourceRef("DOWEL-LECTURE", "allowable bearing", SourceStatus.Verified), []),
            ],
        };
    }

    private static ImmutableArray<JointAlternative> Alternatives(UnitSystem units, double width, double thickness)
    {
        var list = new List<JointAlternative> { Make(null, 0) };
        foreach (var diameter in new[] { 0.0254, 0.03175, 0.0381, 0.04445 })
        {
            foreach (var length in new[] { 0.3556, 0.4064, 0.4572 })
            {
                foreach (var paths in new[] { false, true })
                {
                    var bars = HandMadeJoints.Dowels(units, width, thickness, paths) with { Diameter = diameter, Length = length, Embedment = length / 2 };
                    list.Add(Make(bars, (decimal)(bars.Bars * (18 + 6000 * diameter * diameter + 10 * length))));
                }
            }
        }

        return [.. list.OrderBy(a => a.CostPerJoint)];
    }

    private static JointAlternative Make(BarLayout? bars, decimal cost)
    {
        var bearing = bars is null ? 0 : 26e6 * Math.Pow(0.03175 / bars.Diameter, 2) * (bars.Bars < 10 ? 1.08 : 1);
        var faulting = bars is null ? 0.006 : 0.0026 * Math.Pow(0.0381 / bars.Diameter, 1.5) * (bars.Bars < 10 ? 1.1 : 1);
        var life = faulting > 0.0025 ? 20 * 0.003 / faulting : double.PositiveInfinity;
        return new JointAlternative
        {
            Layout = bars,
            CostPerJoint = cost,
            Life = life,
            Faulting = faulting,
            Bearing = bearing,
            ClosedBearing = (bearing * 1.2, bearing * 0.9),
            DeflectionTransfer = bars is null ? 0.41 : 0.86,
            Deflection = 0.00042,
            Stress = 1.62e6,
            Checks =
            [
                new LimitCheck("dowels the rule set asks for", bars is null ? 0 : 1, 1, LimitSense.AtLeast, new UnitPair(Units.One), SourceRef.CommonPractice),
                new LimitCheck("bearing on the concrete", bearing, 23e6, LimitSense.AtMost, Stress, new SourceRef("DOWEL-LECTURE", "allowable bearing", SourceStatus.Verified)),
                new LimitCheck("faulting at the end of the design years", faulting, 0.003175, LimitSense.AtMost, Small, SourceRef.CommonPractice),
            ],
        };
    }

    private static JointConditions Conditions(double width) => new()
    {
        Thickness = 0.254, LaneWidth = width, OldSlab = 5.8, Repair = 1.8288, Modulus = 27.6e9, Poisson = 0.15, Strength = 27.6e6, Rupture = 4.48e6, Reaction = 40.7e6,
        Expansion = 9.9e-6, Base = BaseKind.Granular, Drainage = 1, Climate = new Climate(true), Temperatures = (-18, 49), DowelSupport = 407e9, SteelModulus = 200e9,
        JointWidth = 0.0042, OuterEdge = LaneEdge.AsphaltShoulder, Traffic = [new AxleClass(1, 53_379, 2_000), new AxleClass(2, 151_240, 1_300)],
        EquivalentAxlesPerDay = 3_600, Growth = 0.02, DesignYears = 20,
    };
}
