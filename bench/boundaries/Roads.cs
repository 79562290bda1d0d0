using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;
using Slabwright.Core.Prices;
using Slabwright.Core.RuleSets;
using Slabwright.Core.Survey;
using Slabwright.Core.Treatments;

namespace Slabwright.Bench.Boundaries;

/// <summary>Invented two-lane roads with clustered damage; a seed makes a road.</summary>
internal static class Roads
{
    private const double Foot = 0.3048;

    public static Road Make(int seed, double miles)
    {
        var random = new Random(seed);
        var length = miles * 5280;
        var spacing = seed % 3 == 0 ? [13.0, 19, 18, 12] : seed % 3 == 1 ? new[] { 15.0 } : [20.0];
        var kind = seed % 4 == 0 ? JointKind.Undowelled : JointKind.Dowelled;
        var skew = seed % 3 == 0 ? 2 : 0;
        return new Road
        {
            Name = "Bench Road " + seed,
            Length = length * Foot,
            Stationing = new Stationing { Style = StationStyle.Feet },
            Lanes = [Lane(1, length, spacing, kind, skew), Lane(2, length, spacing, kind, skew)],
            Climate = new Climate(FreezeThaw: true),
            NoCutZones = [new NoCutZone("bridge approach", null, random.NextDouble() * length * Foot * 0.9, 0)],
        } is var road ? road with { NoCutZones = [road.NoCutZones[0] with { To = road.NoCutZones[0].From + 40 * Foot }] } : road;
    }

    /// <summary>Distresses a lane-mile as given, four in ten gathered in bad stretches; one in four is full depth.</summary>
    public static (Distress[] Distresses, TreatmentDecision[] Decisions) Damage(Road road, int seed, int count)
    {
        var random = new Random(seed * 7919 + 1);
        var bad = Enumerable.Range(0, 1 + count / 60).Select(_ => random.NextDouble() * road.Length).ToArray();
        var distresses = new Distress[count];
        var decisions = new TreatmentDecision[count];
        for (var n = 0; n < count; n++)
        {
            var at = random.Next(10) < 4 ? bad[random.Next(bad.Length)] + random.NextDouble() * 60 : random.NextDouble() * road.Length;
            at = Math.Min(at, road.Length - 3);
            var lane = road.Lanes[random.Next(10) < 7 ? 1 : 0];
            if (random.Next(2) == 0) at = Math.Max(0, lane.SlabAt(at).Start.At - 0.2);
            distresses[n] = new Distress
            {
                Id = "D" + n, Lane = lane.Number, Type = DistressType.TransverseCracking, Severity = Severity.High, From = at,
                To = at + random.NextDouble() * 1.2, Slab = lane.SlabAt(at).Number, SurveyedOn = new DateOnly(2025, 6, 1),
            };
            var treatment = random.Next(100) switch { < 22 => Treatment.FullDepthRepair, < 25 => Treatment.SlabReplacement, _ => Treatment.Seal };
            decisions[n] = new TreatmentDecision(distresses[n].Id, treatment, treatment, "bench", []);
        }

        return (distresses, decisions);
    }

    public static RuleSet Rules { get; } = new()
    {
        Id = "bench", Name = "Bench", Summary = "FHWA figures.", Treatments = [],
        Boundaries = new BoundaryLimits
        {
            LeastLength = Feet(6), LeastLengthUndowelled = Feet(8), LeastRemnant = Feet(6), LeastGap = Feet(6), ExtendPastDowelledJoint = Feet(1),
            EndAtUndowelledJoint = new Sourced<bool>(true, SourceRef.CommonPractice), UnjointedThicknessesGranular = new(24, SourceRef.CommonPractice),
            HiddenMarginFreezeThaw = Feet(2), HiddenMargin = Feet(1),
        },
        Joints = new JointLimits
        {
            DowelSpacing = Feet(1), LeastDowelDiameter = Feet(0.104), DowelIntermediateJoints = new Sourced<bool>(true, SourceRef.CommonPractice),
        },
    };

    public static PriceList Prices { get; } = new("USD",
    [
        Item(PayRole.FullDepthArea, Units.SquareYard, 210) with
        {
            SizeClasses = [new SizeClass(0, 210), new SizeClass(Units.SquareYard.ToBase(20), 180), new SizeClass(Units.SquareYard.ToBase(60), 155)],
        },
        Item(PayRole.RepairSetUp, Units.One, 350), Item(PayRole.TransverseSawCut, Units.Foot, 4), Item(PayRole.LongitudinalSawCut, Units.Foot, 4),
        Item(PayRole.InternalSawCut, Units.Foot, 3), Item(PayRole.DrilledDowel, Units.One, 14), Item(PayRole.BasketDowel, Units.One, 9),
        Item(PayRole.IsolationBoard, Units.Foot, 3), Item(PayRole.TransverseSeal, Units.Foot, 2), Item(PayRole.LongitudinalSeal, Units.Foot, 2),
        Item(PayRole.ShoulderStrip, Units.Foot, 5), Item(PayRole.EdgeForm, Units.Foot, 2),
    ]);

    private static Lane Lane(int number, double length, double[] spacing, JointKind kind, double skew)
    {
        var joints = ImmutableArray.CreateBuilder<TransverseJoint>();
        joints.Add(new TransverseJoint(0, JointKind.PavementEnd));
        var n = 0;
        for (var at = spacing[0]; at < length - 8; at += spacing[++n % spacing.Length])
            joints.Add(new TransverseJoint(at * Foot, kind, skew * Foot));
        joints.Add(new TransverseJoint(length * Foot, JointKind.PavementEnd));
        return new Lane
        {
            Number = number, Width = 12 * Foot, From = 0, To = length * Foot, Joints = joints.ToImmutable(),
            LeftEdge = number == 1 ? LaneEdge.TiedConcreteShoulder : LaneEdge.TiedLane,
            RightEdge = number == 1 ? LaneEdge.TiedLane : LaneEdge.AsphaltShoulder,
            Sections = [new PavementSection(0, length * Foot, PavementKind.JointedPlain, 0.25, BaseKind.Granular)],
        };
    }

    private static Sourced<double> Feet(double feet) => new(feet * Foot, SourceRef.CommonPractice);

    private static PayItem Item(PayRole role, Unit unit, decimal price) =>
        new() { Code = role.ToString(), Name = role.ToString(), Role = role, Unit = unit, UnitPrice = price };
}
