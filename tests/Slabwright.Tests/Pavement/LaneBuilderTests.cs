using System.Collections.Immutable;
using CsCheck;
using Slabwright.Core.Evidence;
using Slabwright.Core.Pavement;

namespace Slabwright.Tests.Pavement;

public sealed class LaneBuilderTests
{
    private const double Foot = 0.3048;
    private static readonly FindingPlace Somewhere = new("test.csv", 2);

    [Fact]
    public void A_repeating_pattern_follows_its_spacings()
    {
        var lane = One(Road(124) with { Patterns = [Pattern(0, 124, [13, 19, 18, 12])] });
        Assert.Equal([0, 13, 32, 50, 62, 75, 94, 112, 124], Feet(lane), Near);
        Assert.Equal(JointKind.PavementEnd, lane.Joints[0].Kind);
        Assert.Equal(JointKind.PavementEnd, lane.Joints[^1].Kind);
        Assert.All(lane.Joints[1..^1], j => Assert.Equal(JointKind.Dowelled, j.Kind));
    }

    [Fact]
    public void The_last_slab_takes_up_a_remainder_below_half_a_spacing()
    {
        Assert.Equal([0, 20, 40, 60, 89], Feet(One(Road(89) with { Patterns = [Pattern(0, 89, [20])] })), Near);
        Assert.Equal([0, 20, 40, 60, 80, 91], Feet(One(Road(91) with { Patterns = [Pattern(0, 91, [20])] })), Near);
    }

    [Fact]
    public void Stretches_meet_in_a_joint()
    {
        var lane = One(Road(200) with { Patterns = [Pattern(0, 100, [15]), Pattern(100, 200, [25])] });
        Assert.Equal([0, 15, 30, 45, 60, 75, 90, 100, 125, 150, 175, 200], Feet(lane), Near);
    }

    /// <summary>Derived by hand: 1:6 over 12 ft lanes runs 2 ft in each; the middles of lanes 1 and 2 lie 6 and 18 ft from the left edge, 1 and 3 ft along.</summary>
    [Fact]
    public void A_skewed_line_runs_straight_over_the_lanes()
    {
        var road = Road(200, lanes: 2) with { Patterns = [Pattern(0, 200, [20], skew: 1 / 6.0)] };
        var lanes = LaneBuilder.Build(road).Lanes;
        Assert.Equal(41 * Foot, lanes[0].Joints.First(j => j.At > 35 * Foot).At, 9);
        Assert.Equal(43 * Foot, lanes[1].Joints.First(j => j.At > 35 * Foot).At, 9);
        Assert.Equal(lanes[0].Joints.First(j => j.At > 35 * Foot).AtRightEdge, lanes[1].Joints.First(j => j.At > 35 * Foot).AtLeftEdge, 9);
        var back = LaneBuilder.Build(road with { Patterns = [Pattern(0, 200, [20], skew: -1 / 6.0)] }).Lanes;
        Assert.True(back[0].Joints[2].AtLeftEdge > back[0].Joints[2].AtRightEdge);
    }

    [Fact]
    public void A_listed_joint_stands_in_for_the_pattern_and_a_working_crack_is_added()
    {
        var lane = One(Road(100) with
        {
            Patterns = [Pattern(0, 100, [20])],
            Joints = [Listed(40.4, JointKind.Expansion), Listed(69, JointKind.WorkingCrack)],
        });
        Assert.Equal([0, 20, 40.4, 60, 69, 80, 100], Feet(lane), Near);
        Assert.Equal(JointKind.WorkingCrack, lane.Joints[4].Kind);
    }

    [Fact]
    public void An_earlier_repair_brings_its_edges_and_takes_the_joint_inside()
    {
        var lane = One(Road(100) with { Patterns = [Pattern(0, 100, [20])], EarlierRepairs = [new(1, new(37 * Foot, 43 * Foot, 2011), Somewhere)] });
        Assert.Equal([0, 20, 37, 43, 60, 80, 100], Feet(lane), Near);
        Assert.Equal(2, lane.Joints.Count(j => j.Kind == JointKind.EarlierRepairEdge));
    }

    [Fact]
    public void A_bridge_ends_the_pavement_and_gives_room_to_its_approach_slabs()
    {
        var lane = One(Road(400) with { Patterns = [Pattern(0, 400, [20])], Bridges = [new(150 * Foot, 230 * Foot, 25 * Foot)] });
        Assert.Equal([0, 20, 40, 60, 80, 100, 125, 150, 230, 255, 280, 300, 320, 340, 360, 380, 400], Feet(lane), Near);
        Assert.Equal(
            [JointKind.Expansion, JointKind.PavementEnd, JointKind.PavementEnd, JointKind.Expansion],
            lane.Joints.Where(j => j.At > 110 * Foot && j.At < 270 * Foot).Select(j => j.Kind));
    }

    [Fact]
    public void A_ramp_lane_starts_and_stops_on_its_own()
    {
        var road = Road(400, lanes: 2);
        road = road with { Lanes = road.Lanes.SetItem(1, road.Lanes[1] with { From = 113 * Foot, To = 268 * Foot }), Patterns = [Pattern(0, 400, [20])] };
        var lane = LaneBuilder.Build(road).Lanes[1];
        Assert.Equal([113, 140, 160, 180, 200, 220, 240, 268], Feet(lane), Near);
    }

    /// <summary>Law: joints are sorted, begin and end the lane, and every place lies on exactly one slab.</summary>
    [Fact]
    public void Every_place_lies_on_one_slab() =>
        Gen.Select(Gen.Double[3, 20].Array[1, 5], Gen.Double[-0.3, 0.3], Gen.Double[100, 900], Gen.Double[0, 1]).Sample((spacings, skew, length, share) =>
        {
            var road = Road(length / Foot, lanes: 3) with { Patterns = [new([], 0, length, [.. spacings], JointKind.Undowelled, skew, Somewhere)] };
            foreach (var lane in LaneBuilder.Build(road).Lanes)
            {
                Assert.Equal(0, lane.Joints[0].At);
                Assert.Equal(length, lane.Joints[^1].At, 9);
                Assert.True(lane.Joints.Zip(lane.Joints.Skip(1)).All(p => p.First.At < p.Second.At));
                var slab = lane.SlabAt(share * length);
                Assert.InRange(share * length, slab.Start.At, slab.End.At + 1e-9);
            }
        }, iter: 500);

    [Theory]
    [InlineData("ROAD-020")]
    [InlineData("ROAD-021")]
    [InlineData("ROAD-022")]
    [InlineData("ROAD-023")]
    [InlineData("ROAD-024")]
    [InlineData("ROAD-030")]
    [InlineData("ROAD-031")]
    [InlineData("ROAD-032")]
    [InlineData("ROAD-033")]
    [InlineData("ROAD-034")]
    [InlineData("ROAD-035")]
    [InlineData("ROAD-036")]
    [InlineData("ROAD-037")]
    [InlineData("ROAD-038")]
    [InlineData("ROAD-040")]
    [InlineData("ROAD-041")]
    [InlineData("ROAD-042")]
    [InlineData("ROAD-043")]
    [InlineData("ROAD-044")]
    [InlineData("ROAD-050")]
    [InlineData("ROAD-051")]
    public void What_does_not_fit_is_found(string code)
    {
        var good = Road(200) with { Patterns = [Pattern(0, 200, [20])] };
        Assert.Empty(LaneBuilder.Build(good).Findings);
        var findings = LaneBuilder.Build(Spoilt(good, code)).Findings;
        Assert.Contains(findings, f => f.Code == code && f.Mend is not null && f.Place.File == "test.csv");
    }

    private static RoadLayout Spoilt(RoadLayout road, string code)
    {
        var (lane, section) = (road.Lanes[0], road.Sections[0]);
        return code switch
        {
            "ROAD-020" => road with { Lanes = [lane, lane] },
            "ROAD-021" => road with { Lanes = [lane, lane with { Number = 3 }], Sections = [section, section with { Lane = 3 }] },
            "ROAD-022" => road with { Lanes = [lane with { Width = 12 }] },
            "ROAD-023" => road with { Lanes = [lane with { To = 1_000 }] },
            "ROAD-024" => road with { Joints = [Listed(50, JointKind.WorkingCrack) with { Lane = 7 }] },
            "ROAD-030" => road with { Joints = [Listed(70, JointKind.WorkingCrack), Listed(50, JointKind.WorkingCrack)] },
            "ROAD-031" => road with { Joints = [Listed(50, JointKind.WorkingCrack), Listed(50, JointKind.WorkingCrack)] },
            "ROAD-032" => road with { Patterns = [Pattern(0, 200, [20, 0])] },
            "ROAD-033" => road with { Joints = [Listed(250, JointKind.WorkingCrack)] },
            "ROAD-034" => road with { Patterns = [Pattern(0, 200, [20], skew: 0.6)] },
            "ROAD-035" => road with { Joints = [Listed(51, JointKind.WorkingCrack), Listed(52, JointKind.WorkingCrack)] },
            "ROAD-036" => road with { Patterns = [Pattern(200, 100, [20])] },
            "ROAD-037" => road with { Patterns = [Pattern(0, 200, [20]), Pattern(150, 200, [15])] },
            "ROAD-038" => road with { Joints = [new(1, new(50 * Foot, JointKind.WorkingCrack, 1.5), Somewhere), new(1, new(52 * Foot, JointKind.WorkingCrack, -1.5), Somewhere)] },
            "ROAD-040" => road with { Sections = [section with { Value = section.Value with { To = 30 } }] },
            "ROAD-041" => road with { Sections = [section, section with { Value = section.Value with { From = 20 } }] },
            "ROAD-042" => road with { Sections = [section, section with { Value = section.Value with { Thickness = 0 } }] },
            "ROAD-043" => road with { Sections = [section with { Value = section.Value with { Thickness = 9 } }] },
            "ROAD-044" => road with { Sections = [] },
            "ROAD-050" => road with { EarlierRepairs = [new(1, new(50, 400, null), Somewhere)] },
            _ => road with { EarlierRepairs = [new(1, new(20, 25, null), Somewhere), new(1, new(24, 28, null), Somewhere)] },
        };
    }

    private static RoadLayout Road(double feet, int lanes = 1) => new()
    {
        Length = feet * Foot,
        Lanes = [.. Enumerable.Range(1, lanes).Select(n => new LaneLayout
        {
            Number = n, Width = 12 * Foot, From = 0, To = feet * Foot, LeftEdge = LaneEdge.TiedLane, RightEdge = LaneEdge.TiedLane, Place = Somewhere,
        })],
        Sections = [.. Enumerable.Range(1, lanes).Select(n => new OnLane<PavementSection>(
            n, new(0, feet * Foot, PavementKind.JointedPlain, 0.23, BaseKind.Granular), Somewhere))],
    };

    private static JointPattern Pattern(double from, double to, ImmutableArray<double> feet, double skew = 0) =>
        new([], from * Foot, to * Foot, [.. feet.Select(f => f * Foot)], JointKind.Dowelled, skew, Somewhere);

    private static ListedJoint Listed(double feet, JointKind kind) => new(1, new(feet * Foot, kind), Somewhere);

    private static Lane One(RoadLayout road) => Assert.Single(LaneBuilder.Build(road).Lanes);

    private static IEnumerable<double> Feet(Lane lane) => lane.Joints.Select(j => j.At / Foot);

    private static bool Near(double a, double b) => Math.Abs(a - b) < 1e-9;
}
