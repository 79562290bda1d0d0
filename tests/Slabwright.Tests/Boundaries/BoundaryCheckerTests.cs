using System.Collections.Immutable;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Pavement;
using static Slabwright.Tests.Boundaries.Worked;

namespace Slabwright.Tests.Boundaries;

/// <summary>The checker passes every optimum and names what is wrong with plans changed by hand.</summary>
public sealed class BoundaryCheckerTests
{
    private static readonly Road Plain = Road(Lane(1, 300, JointKind.Dowelled, Every(15, 300)), Lane(2, 300, JointKind.Dowelled, Every(15, 300)));
    private static readonly RemovalDemand[] Demands =
        [Demand(1, 59, 61, "A"), Demand(1, 127, 128.5, "B"), Demand(2, 60, 75, "C"), Demand(2, 200, 201, "D")];

    [Fact]
    public void Passes_the_optimum_of_many_random_roads()
    {
        var random = new Random(7);
        for (var n = 0; n < 60; n++)
        {
            var kind = n % 2 == 0 ? JointKind.Dowelled : JointKind.Undowelled;
            var skew = n % 3 == 0 ? 2 : 0;
            var road = Road(Lane(1, 600, kind, Every(15 + n % 4, 600), skew), Lane(2, 600, kind, Every(16, 600), skew));
            if (n % 5 == 0) road = road with { NoCutZones = [new NoCutZone("loops", null, 100 * Foot, 130 * Foot)] };
            var demands = Enumerable.Range(0, 14).Select(d => Random(random, d)).ToArray();
            var limits = n % 4 == 0 ? FhwaLimits with { UnjointedThicknessesGranular = new(18, FhwaLimits.LeastGap!.Source) } : FhwaLimits;
            var joints = n % 3 == 1 ? Joints with { TieLongitudinalFrom = Feet(15), TieBarSpacing = Feet(2.5) } : Joints;
            var options = BoundaryOptions.PlanOnly;
            Assert.NotEmpty(Plan(road, demands, RuleSetOf(limits, joints), options: options, step: n % 2 == 0 ? 1 : 0.5).Repairs);
        }
    }

    [Theory]
    [InlineData("BND-021", 0, 2, -2)]
    [InlineData("BND-024", 0, 0.3, 0.3)]
    [InlineData("BND-027", 1, -3, 0)]
    [InlineData("BND-026", 2, 0.5, 0)]
    [InlineData("BND-031", 0, 5, 5)]
    [InlineData("BND-020", 0, -400, 0)]
    public void Names_the_rule_a_moved_cut_breaks(string code, int which, double moveFrom, double moveTo)
    {
        var result = Plan(Plain, Demands);
        var repair = result.Repairs.Where(r => r.DistressIds[0] == "ABCD"[which].ToString()).First();
        var moved = Moved(repair, repair.From + moveFrom * Foot, repair.To + moveTo * Foot);
        Assert.Contains(Check(Plain, result.Repairs.Replace(repair, moved)), f => f.Code == code);
    }

    [Fact]
    public void Names_a_missing_repair_a_crowded_pair_and_a_zone()
    {
        var result = Plan(Plain, Demands);
        Assert.Contains(Check(Plain, result.Repairs.RemoveAt(0)), f => f.Code == "BND-031");
        var twin = Moved(result.Repairs[0], result.Repairs[0].To + 3 * Foot, result.Repairs[0].To + 12 * Foot);
        Assert.Contains(Check(Plain, result.Repairs.Add(twin)), f => f.Code == "BND-030");
        var zoned = Plain with { NoCutZones = [new NoCutZone("gore", null, result.Repairs[0].From - Foot, result.Repairs[0].From + Foot)] };
        Assert.Contains(Check(zoned, result.Repairs), f => f.Code == "BND-023");
        var skewed = Road(Lane(1, 300, JointKind.Dowelled, [result.Repairs[0].From / Foot], skew: 2), Lane(2, 300, JointKind.Dowelled, Every(15, 300)));
        Assert.Contains(Check(skewed, result.Repairs), f => f.Code == "BND-025");
    }

    [Fact]
    public void Names_wrong_joints_and_faces()
    {
        var result = Plan(Plain, [Demand(1, 50, 99)]);
        var repair = result.Repairs[0];
        var limits = FhwaLimits with { LongestUnjointed = Feet(20) };
        var bare = repair with { Intermediate = [] };
        Assert.Contains(BoundaryChecker.Check(Plain, [], limits, Foot, [bare]), f => f.Code == "BND-028");
        var open = repair with { LeftFace = [] };
        Assert.Contains(Check(Plain, [open]), f => f.Code == "BND-029");
        var shuffled = repair with { Intermediate = [.. repair.Intermediate.Reverse()] };
        Assert.Contains(Check(Plain, [shuffled]), f => f.Code == "BND-022");
    }

    private static RemovalDemand Random(Random random, int number)
    {
        var from = random.NextDouble() * 580;
        return Demand(1 + number % 2, from, from + random.NextDouble() * 6, "D" + number);
    }

    private static Repair Moved(Repair repair, double from, double to) => repair with
    {
        From = from,
        To = to,
        Start = repair.Start with { At = from },
        End = repair.End with { At = to },
        LeftFace = [repair.LeftFace[0] with { From = from, To = to }],
        RightFace = [repair.RightFace[0] with { From = from, To = to }],
    };

    private static ImmutableArray<Core.Evidence.Finding> Check(Road road, IReadOnlyList<Repair> repairs) =>
        BoundaryChecker.Check(road, Demands, FhwaLimits, Foot, repairs);
}
