using System.Collections.Immutable;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Evidence;
using Slabwright.Core.Job;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;
using Slabwright.Core.Survey;
using Slabwright.Core.Treatments;

namespace Slabwright.SystemTests.Sheets;

/// <summary>
/// A job and plan written by hand, so that the sheets are judged without the steps before them. The plan obeys no optimiser; it holds
/// every kind of repair, joint, face, distress and finding the sheets must draw.
/// </summary>
internal sealed record HandMadeJob
{
    public UnitSystem Units { get; init; } = UnitSystem.UsCustomary;

    public int LaneCount { get; init; } = 2;

    /// <summary>Road length, m.</summary>
    public double Length { get; init; } = 1609.344;

    public int Repairs { get; init; } = 24;

    public bool HasAlignment { get; init; } = true;

    public string Name { get; init; } = "Route 9 northbound, Tarn Mill to Eldon Ferry";

    public StationStyle Style { get; init; } = StationStyle.Feet;

    public int Direction { get; init; } = 1;

    public ImmutableArray<StationEquation> Equations { get; init; } = [];

    public double Skew { get; init; }

    public string CoordinateSystem { get; init; } = "EPSG:32615";

    public (Project Project, RepairPlan Plan) Build()
    {
        var road = BuildRoad();
        var survey = BuildSurvey(road);
        var rules = HandMadeRules.Build();
        var project = new Project
        {
            Name = Name,
            Owner = "Eldon County Roads",
            UnitSystem = Units,
            Road = road,
            Survey = survey,
            RuleSet = rules,
            OtherRuleSets = [rules with { Id = "other", Name = "Another set" }],
            Prices = HandMadeQuantities.Prices(Units),
            Overrides = survey.Distresses.Length > 2
                ? [new TreatmentOverride(survey.Distresses[1].Id, Treatment.FullDepthRepair, "Sounded hollow over the whole joint", "R. Mason", new DateOnly(2026, 3, 2))]
                : [],
            Settings = new ProjectSettings { CutStep = Units == UnitSystem.UsCustomary ? 0.1524 : 0.05, WorkDay = new DateOnly(2026, 9, 1) },
        };
        return (project, HandMadePlan.Build(project, Repairs));
    }

    private Road BuildRoad()
    {
        var lanes = Enumerable.Range(1, LaneCount).Select(BuildLane).ToImmutableArray();
        return new Road
        {
            Name = "Route 9 northbound",
            Length = Length,
            Lanes = lanes,
            Climate = new Climate(true),
            Traffic = new Traffic(24_000, 0.18),
            Stationing = new Stationing
            {
                Style = Style, Start = Style == StationStyle.Mileposts ? 12 * 1609.344 : 3048, Direction = Direction, Equations = Equations,
            },
            Alignment = HasAlignment ? BuildAlignment() : null,
            NoCutZones = [new NoCutZone("bridge approach", null, Length - 60, Length - 40)],
            Features =
            [
                new RoadFeature(FeatureKind.Bridge, "Tarn Brook bridge", Length - 40, Length),
                new RoadFeature(FeatureKind.ExitRamp, "Ramp to Mill Lane", 300, 420),
            ],
        };
    }

    private Lane BuildLane(int number)
    {
        var joints = ImmutableArray.CreateBuilder<TransverseJoint>();
        joints.Add(new TransverseJoint(0, JointKind.PavementEnd));
        double[] pattern = [13 * 0.3048, 19 * 0.3048, 18 * 0.3048, 12 * 0.3048];
        var (at, i) = (0.0, 0);
        while ((at += pattern[i++ % 4]) < Length - 2) joints.Add(new TransverseJoint(at, i % 17 == 0 ? JointKind.WorkingCrack : JointKind.Dowelled, Skew));
        joints.Add(new TransverseJoint(Length, JointKind.PavementEnd));
        return new Lane
        {
            Number = number,
            Width = 3.6576,
            From = 0,
            To = Length,
            LeftEdge = number == 1 ? LaneEdge.TiedConcreteShoulder : LaneEdge.TiedLane,
            RightEdge = number == LaneCount ? LaneEdge.AsphaltShoulder : LaneEdge.TiedLane,
            Joints = joints.ToImmutable(),
            Sections = [new PavementSection(0, Length, PavementKind.JointedPlain, 0.254, BaseKind.Granular)],
            EarlierRepairs = Length > 250 ? [new EarlierRepair(200.2, 203.4, 2011)] : [],
        };
    }

    private SurveyRecord BuildSurvey(Road road)
    {
        var types = Enum.GetValues<DistressType>();
        var severities = new[] { Severity.High, Severity.Moderate, Severity.Low };
        var distresses = ImmutableArray.CreateBuilder<Distress>();
        var count = Math.Max(Repairs * 2, Repairs == 0 ? 5 : 0);
        for (var i = 0; i < count; i++)
        {
            var lane = road.Lanes[i % LaneCount];
            var joint = lane.Joints[1 + (i * 7 + i / 5) % (lane.SlabCount - 1)];
            var type = types[i % types.Length];
            var extent = i % 3 == 0 ? 0.0 : 1.2;
            distresses.Add(new Distress
            {
                Id = "D" + (i + 1).ToString("000", System.Globalization.CultureInfo.InvariantCulture),
                Lane = lane.Number,
                Type = type,
                Severity = severities[i % 3],
                From = Math.Max(0, joint.At - extent / 2),
                To = Math.Min(Length, joint.At + extent / 2),
                Slab = lane.SlabAt(joint.At).Number,
                OffsetFrom = i % 4 == 0 ? 0.2 : null,
                OffsetTo = i % 4 == 0 ? 1.4 : null,
                Depth = i % 2 == 0 ? 0.11 : null,
                SurveyedOn = new DateOnly(2025, 10, 1 + i % 20),
                Note = i % 9 == 0 ? "Loose pieces, steel visible" : "",
                Origin = $"survey.csv row {i + 2}",
            });
        }

        return new SurveyRecord(distresses.ToImmutable(), [new CoreSample("C1", 1, Math.Min(55, Length / 2), 1.1, 0.251, 0.12, 0.15, "Delaminated at 4 in")], []);
    }

    /// <summary>A straight of 400 m, then a bend to the left; an invented place in UTM zone 15.</summary>
    private Alignment BuildAlignment()
    {
        var start = new PlanPoint(480_000, 4_950_000);
        var bend = new PlanPoint(start.East + 400 * Math.Cos(0.4), start.North + 400 * Math.Sin(0.4));
        return new Alignment("Centre line", [new LineElement(start, bend), new ArcElement(new PlanPose(bend, 0.4), 1 / 900.0, Length)], CoordinateSystem);
    }
}
