using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Evidence;
using Slabwright.Core.Job;
using Slabwright.Core.Pavement;
using Slabwright.Core.Survey;
using Slabwright.Core.Treatments;

namespace Slabwright.SystemTests.Sheets;

/// <summary>The plan of the hand-made job.</summary>
internal static class HandMadePlan
{
    public static RepairPlan Build(Project project, int repairs)
    {
        var made = MakeRepairs(project, repairs);
        var works = repairs == 0 ? [] : MakeWorks(project);
        var joints = HandMadeJoints.Build(project, made);
        var lifts = HandMadeRemoval.Lifts(project, made);
        return new RepairPlan
        {
            Decisions = [.. project.Survey.Distresses.Select((d, i) => Decide(project, d, i))],
            Disagreements = [.. project.Survey.Distresses.Take(3).Select(d => new Disagreement(d.Id,
                [new RuleSetCall("hand-made", Treatment.FullDepthRepair, "HM-1"), new RuleSetCall("other", Treatment.Leave, "OT-4")]))],
            Demands = [],
            Boundaries = new BoundaryResult(made, 120_000m, RuleCosts(), CostCurve(project), [new LargeRemoval(1, 40, 80, 21_000m, 24_500m, false)], 7, []),
            Joints = joints,
            Seals = HandMadeRemoval.Seals(project, joints),
            Lifts = lifts,
            Pressure = HandMadeRemoval.Pressure(made, lifts),
            SurfaceWorks = works,
            Quantities = HandMadeQuantities.Build(project, made, works),
            Findings = Findings(),
        };
    }

    private static ImmutableArray<Repair> MakeRepairs(Project project, int count)
    {
        var road = project.Road;
        var step = (road.Length - 80) / Math.Max(count, 1);
        var list = ImmutableArray.CreateBuilder<Repair>(count);
        for (var i = 0; i < count; i++)
        {
            var lane = road.Lanes[i % road.Lanes.Length];
            var from = Math.Round((10 + i * step) / project.Settings.CutStep) * project.Settings.CutStep;
            var kind = i % 7 == 3 ? Treatment.SlabReplacement : i % 11 == 5 ? Treatment.SlabRun : Treatment.FullDepthRepair;
            var length = kind switch { Treatment.SlabRun => 18.288, Treatment.SlabReplacement => 5.4864, _ => i % 2 == 0 ? 1.8288 : 3.048 };
            list.Add(MakeRepair(i, lane, from, from + length, kind));
        }

        return list.ToImmutable();
    }

    private static Repair MakeRepair(int index, Lane lane, double from, double to, Treatment kind)
    {
        var end = index % 5 == 2 ? JointDesign.Tied : index % 9 == 4 ? JointDesign.Isolated : JointDesign.Dowelled;
        return new Repair
        {
            Id = "R" + (index + 1).ToString("000", CultureInfo.InvariantCulture),
            Lane = lane.Number,
            From = from,
            To = to,
            Width = lane.Width,
            Thickness = 0.254,
            Kind = kind,
            Start = new RepairJoint(from, JointDesign.Dowelled, false, 11),
            End = new RepairJoint(to, end, index % 4 == 0, end == JointDesign.Isolated ? 0 : 11),
            Intermediate = to - from > 5 ? [new RepairJoint((from + to) / 2, JointDesign.Dowelled, true, 11)] : [],
            LeftFace = [new FaceStretch(from, to, Face(lane.LeftEdge), lane.LeftEdge == LaneEdge.TiedLane)],
            RightFace = [new FaceStretch(from, (from + to) / 2, Face(lane.RightEdge), true), new FaceStretch((from + to) / 2, to, LongitudinalFace.Tied, true)],
            Group = index,
            DistressIds = ["D001"],
            Reasons = [new Reason("BND-1", "Shortest repair that takes out the damage and its margins.", SourceRef.CommonPractice,
                [new ReasonInput("least length", "6.0 ft")])],
        };
    }

    private static LongitudinalFace Face(LaneEdge edge) => edge switch
    {
        LaneEdge.AsphaltShoulder => LongitudinalFace.FormedAgainstShoulder,
        LaneEdge.TiedLane => LongitudinalFace.Isolated,
        _ => LongitudinalFace.Formed,
    };

    private static ImmutableArray<SurfaceWork> MakeWorks(Project project)
    {
        var lane = project.Road.Lanes[^1];
        var length = project.Road.Length;
        return
        [
            new SurfaceWork("P001", lane.Number, length * 0.21, length * 0.21 + 0.6, Treatment.PartialDepthRepair, 0.6, 0.9, ["D002"]),
            new SurfaceWork("P002", lane.Number, length * 0.33, length * 0.33 + 0.4, Treatment.PartialDepthRepair, 0.4, 0.4, ["D005"]),
            new SurfaceWork("S001", 1, length * 0.4, length * 0.4, Treatment.Seal, 3.66, 0, ["D003"]),
            new SurfaceWork("S002", 1, length * 0.5, length * 0.5 + 9, Treatment.Seal, 9, 0, ["D004"]),
        ];
    }

    private static TreatmentDecision Decide(Project project, Distress distress, int index)
    {
        var over = project.Overrides.FirstOrDefault(o => o.DistressId == distress.Id);
        var call = (Treatment)(index % 6);
        return new TreatmentDecision(distress.Id, over?.Treatment ?? call, call, project.RuleSet.Id,
            [
                new Reason("HM-1", "Damage through the slab is repaired full depth; a spall within the top third is not.", SourceRef.CommonPractice,
                    [new ReasonInput("depth", "4.3 in"), new ReasonInput("thickness", "10.0 in"), new ReasonInput("share", "0.43")]),
                new Reason("WARN", "Temporary: material cause unknown, take a core before work.", SourceRef.Project),
            ],
            over);
    }

    private static ImmutableArray<RuleCost> RuleCosts() =>
    [
        new RuleCost("least length", "A repair is at least 6.0 ft long.", 104_000m, 16_000m),
        new RuleCost("least gap", "At least 8.0 ft of old slab stays between two repairs.", 118_500m, 1_500m),
        new RuleCost("cut step", "Cuts fall on marks every 0.5 ft.", 120_000m, 0m),
    ];

    private static ImmutableArray<CostCurvePoint> CostCurve(Project project) =>
        [.. Enumerable.Range(0, 12).Select(i => new CostCurvePoint(
            project.Road.Length * i / 11, i / 11.0, Math.Max(1, 40 - 3 * i), 120_000m + 25_000m * i + 2_400m * i * i))];

    private static ImmutableArray<Finding> Findings() =>
    [
        new Finding("SRV-012", FindingLevel.Error, "The severity is not one of low, moderate, high.", new FindingPlace("survey.csv", 14, "severity", 2, 310),
            "sever", "Write low, moderate or high.", null, "LTPP"),
        new Finding("SRV-020", FindingLevel.Warning, "The distress reaches past the end of the lane.", new FindingPlace("survey.csv", 77, "to_ft"), "99,999 ft",
            "Check the station."),
        new Finding("BND-003", FindingLevel.Note, "One demand lies inside a no-cut zone and was left for the engineer.", new FindingPlace(null, null, null, 1, 1540)),
    ];
}
