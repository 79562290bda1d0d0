using CsCheck;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Prices;
using Slabwright.Core.Quantities;
using Slabwright.Core.RuleSets;
using Slabwright.Core.Treatments;
using Slabwright.Tests.Quantities;

namespace Slabwright.Tests.Laws;

/// <summary>The search, the plan's own pricing and the take-off mean the same quantities by every role the boundaries move.</summary>
public class TakeOffMeetsPlanLaws
{
    private static readonly RuleSet Rules = PublishedRuleSets.CommonPractice;

    private static readonly Gen<RemovalDemand> Demand =
        from lane in Gen.Int[1, 2]
        from start in Gen.Int[20, 900]
        from length in Gen.Int[1, 50]
        select new RemovalDemand(
            lane, start * SampleWork.Foot, (start + length) * SampleWork.Foot, Treatment.FullDepthRepair, [$"D{lane}-{start}"], []);

    [Fact]
    public void The_take_off_of_a_plan_costs_what_the_plan_says() => Demand.List[1, 6].Sample(
        demands =>
        {
            var prices = SampleWork.FullList();
            var road = SampleWork.Road();
            var options = BoundaryOptions.PlanOnly;
            var plan = BoundaryPlanner.Plan(road, demands, Rules, prices, 0.5 * SampleWork.Foot, options);
            Assert.NotEmpty(plan.Repairs);
            var lines = TakeOff.Measure(road, plan.Repairs, [], prices, Rules.Joints, SampleWork.Settings).Where(l => l.WorkId.Length > 0).ToList();
            var ties = lines.Where(l => l.ItemCode == nameof(PayRole.TieBar)).ToList();
            var total = lines.Sum(l => l.Amount);

            // Whole tie bars are counted, the search prices them by length: less than one bar of 10 a tied side.
            var sides = plan.Repairs.Sum(r => r.LeftFace.Concat(r.RightFace).Count(f => f.Face == LongitudinalFace.Tied));
            var pricing = PlanPricing.Cost(Rules, prices, plan.Repairs, options);
            Assert.InRange(total - pricing, -0.001m, 10m * sides + 0.001m);

            // The search holds prices as whole numbers a tick of length: within five in a hundred thousand.
            var rounding = 0.05m + 0.00005m * total;
            Assert.InRange(total - plan.Cost, -rounding, 10m * sides + rounding);
            Assert.True(ties.Count <= plan.Repairs.Length);
        },
        seed: "0000KOIPSQsT", iter: 60, threads: 1);
}
