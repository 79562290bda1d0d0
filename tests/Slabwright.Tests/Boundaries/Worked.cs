using System.Collections.Immutable;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;
using Slabwright.Core.Prices;
using Slabwright.Core.RuleSets;
using Slabwright.Core.Treatments;

namespace Slabwright.Tests.Boundaries;

/// <summary>Roads, rules and prices in feet for cases small enough to work by hand.</summary>
internal static class Worked
{
    public const double Foot = 0.3048;
    private static readonly SourceRef Fhwa = new("F5", "sec 5.1", SourceStatus.Verified);

    /// <summary>FHWA full-depth repair guidance, sec 5.1: 6 ft least, 6 ft to the next joint, 1 ft past a dowelled joint.</summary>
    public static BoundaryLimits FhwaLimits { get; } = new()
    {
        LeastLength = Feet(6),
        LeastLengthUndowelled = Feet(8),
        LeastRemnant = Feet(6),
        LeastGap = Feet(6),
        ExtendPastDowelledJoint = Feet(1),
        EndAtUndowelledJoint = new Sourced<bool>(true, Fhwa),
        HiddenMarginFreezeThaw = Feet(2),
        HiddenMargin = Feet(1),
    };

    public static JointLimits Joints { get; } = new()
    {
        DowelSpacing = Feet(1),
        LeastDowelDiameter = Feet(1.25 / 12),
        DowelIntermediateJoints = new Sourced<bool>(true, Fhwa),
    };

    public static RuleSet RuleSetOf(BoundaryLimits? limits = null, JointLimits? joints = null) => new()
    {
        Id = "worked", Name = "Worked", Summary = "For tests.", Treatments = [],
        Boundaries = limits ?? FhwaLimits, Joints = joints ?? Joints,
    };

    public static Sourced<double> Feet(double feet) => new(feet * Foot, Fhwa);

    /// <summary>Invented round prices.</summary>
    public static PriceList Prices { get; } = new("USD",
    [
        Item(PayRole.FullDepthArea, Units.SquareYard, 180),
        Item(PayRole.RepairSetUp, Units.One, 300),
        Item(PayRole.TransverseSawCut, Units.Foot, 4),
        Item(PayRole.LongitudinalSawCut, Units.Foot, 4),
        Item(PayRole.InternalSawCut, Units.Foot, 3),
        Item(PayRole.DrilledDowel, Units.One, 12),
        Item(PayRole.BasketDowel, Units.One, 8),
        Item(PayRole.IsolationBoard, Units.Foot, 3),
        Item(PayRole.TieBar, Units.One, 15),
        Item(PayRole.TransverseSeal, Units.Foot, 2),
        Item(PayRole.LongitudinalSeal, Units.Foot, 2),
        Item(PayRole.ShoulderStrip, Units.Foot, 5),
        Item(PayRole.EdgeForm, Units.Foot, 2),
    ]);

    public static PriceList With(PayItem item) => Prices with { Items = [.. Prices.Items.Select(i => i.Role == item.Role ? item : i)] };

    public static PayItem Item(PayRole role, Unit unit, decimal price) =>
        new() { Code = role.ToString(), Name = role.ToString(), Role = role, Unit = unit, UnitPrice = price };

    /// <summary>A 12 ft lane with joints of one kind at the places given, feet; ends added.</summary>
    public static Lane Lane(int number, double length, JointKind kind, IEnumerable<double> joints, double skew = 0) => new()
    {
        Number = number,
        Width = 12 * Foot,
        From = 0,
        To = length * Foot,
        LeftEdge = number == 1 ? LaneEdge.TiedConcreteShoulder : LaneEdge.TiedLane,
        RightEdge = LaneEdge.AsphaltShoulder,
        Joints =
        [
            new TransverseJoint(0, JointKind.PavementEnd),
            .. joints.Select(j => new TransverseJoint(j * Foot, kind, skew * Foot)),
            new TransverseJoint(length * Foot, JointKind.PavementEnd),
        ],
        Sections = [new PavementSection(0, length * Foot, PavementKind.JointedPlain, 0.25, BaseKind.Granular)],
    };

    public static IEnumerable<double> Every(double spacing, double length)
    {
        for (var at = spacing; at < length - 1e-9; at += spacing) yield return at;
    }

    public static Road Road(params Lane[] lanes) => new()
    {
        Name = "Worked Road",
        Length = lanes.Max(l => l.To),
        Stationing = new Stationing { Style = StationStyle.Feet },
        Lanes = [.. lanes.Select((l, n) => n + 1 < lanes.Length ? l with { RightEdge = LaneEdge.TiedLane } : l)],
        Climate = new Climate(FreezeThaw: true),
    };

    public static RemovalDemand Demand(int lane, double from, double to, string id = "D1") =>
        new(lane, from * Foot, to * Foot, Treatment.FullDepthRepair, [id], []);

    public static BoundaryResult Plan(
        Road road, IReadOnlyList<RemovalDemand> demands, RuleSet? rules = null, PriceList? prices = null, double step = 1,
        BoundaryOptions? options = null)
    {
        options ??= BoundaryOptions.PlanOnly with { SpannedJointWeight = 0, UnmatchedEndWeight = 0 };
        rules ??= RuleSetOf();
        prices ??= Prices;
        var result = BoundaryPlanner.Plan(road, demands, rules, prices, step * Foot, options, TestContext.Current.CancellationToken);
        if (result.Findings.IsEmpty)
        {
            Assert.Empty(BoundaryChecker.Check(road, demands, rules.Boundaries, step * Foot, result.Repairs, options));
            Assert.InRange(result.Cost - PlanPricing.Cost(rules, prices, result.Repairs, options), -0.05m, 0.05m);
        }

        return result;
    }

    /// <summary>Ends of the repairs of a lane in whole feet where they are whole.</summary>
    public static ImmutableArray<(double From, double To)> Ends(BoundaryResult result, int lane = 1) =>
    [
        .. result.Repairs.Where(r => r.Lane == lane).Select(r => (Math.Round(r.From / Foot, 3), Math.Round(r.To / Foot, 3))),
    ];
}
