using System.Diagnostics;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Survey;

namespace Slabwright.Bench.Boundaries;

/// <summary>One project of five miles and two lanes with everything the planner gives: plan, rule costs, curve, large removals.</summary>
internal static class FiveMiles
{
    public static void Run()
    {
        foreach (var step in new[] { 0.3048, 0.1, 0.0254 })
        {
            var road = Roads.Make(1, 5);
            var (distresses, decisions) = Roads.Damage(road, 1, 620);
            var demands = RemovalDemands.From(road, distresses, decisions, [], Roads.Rules.Boundaries, GrowthModel.None, 0).Demands;
            BoundaryResult? result = null;
            var (all, only) = (double.MaxValue, double.MaxValue);
            for (var n = 0; n < 12; n++)
            {
                var started = Stopwatch.GetTimestamp();
                result = BoundaryPlanner.Plan(road, demands, Roads.Rules, Roads.Prices, step);
                all = Math.Min(all, Stopwatch.GetElapsedTime(started).TotalMilliseconds);
                started = Stopwatch.GetTimestamp();
                BoundaryPlanner.Plan(road, demands, Roads.Rules, Roads.Prices, step, BoundaryOptions.PlanOnly);
                only = Math.Min(only, Stopwatch.GetElapsedTime(started).TotalMilliseconds);
            }

            Part(road, demands, step, "rule costs", o => o with { RuleCosts = true });
            Part(road, demands, step, "curve", o => o with { CurvePoints = 12 });
            Part(road, demands, step, "large removals", o => o with { LargeRemovals = true });
            Console.WriteLine($"cut step {step:0.0000} m: {demands.Length} demands, {result!.Repairs.Length} repairs, {result.Clusters} clusters, "
                + $"cost {result.Cost:N2}; plan {only:0.0} ms, with rule costs, curve and large removals {all:0.0} ms");
        }
    }

    private static void Part(
        Core.Pavement.Road road, IReadOnlyList<RemovalDemand> demands, double step, string name, Func<BoundaryOptions, BoundaryOptions> with)
    {
        var started = Stopwatch.GetTimestamp();
        BoundaryPlanner.Plan(road, demands, Roads.Rules, Roads.Prices, step, with(BoundaryOptions.PlanOnly));
        Console.WriteLine($"  plan with {name}: {Stopwatch.GetElapsedTime(started).TotalMilliseconds:0.0} ms");
    }
}
