using System.Diagnostics;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Survey;

namespace Slabwright.Bench.Boundaries;

/// <summary>
/// A state's worth of two-lane roads at four sizes, so that growth shows. Three passes over the same seeds: making roads and demands,
/// the same with the proven optimum, the same with every repair drawn. Processor seconds are given beside the clock, which a busy
/// machine stretches.
/// </summary>
internal static class Network
{
    private const double Miles = 10;
    private const double Step = 0.3048;

    public static void Run(int laneMiles)
    {
        Pass(1, Draw);
        Console.WriteLine("lane-miles  distresses   demands   repairs  clusters | optimum: clock s, cpu s | optimum and drawing: clock s, cpu s");
        foreach (var share in new[] { 8, 4, 2, 1 }) Size((int)(laneMiles / share / Miles / 2));
        Console.WriteLine($"peak memory {Process.GetCurrentProcess().PeakWorkingSet64 / 1e6:0} MB");
    }

    private static void Size(int roads)
    {
        var (make, _) = Pass(roads, Make);
        var (solve, totals) = Pass(roads, Solve);
        var (draw, _) = Pass(roads, Draw);
        Console.WriteLine($"{roads * Miles * 2,10:N0}  {roads * Miles * 200,10:N0}  {totals.Sum(t => t.Demands),8:N0}  {totals.Sum(t => t.Repairs),8:N0}  "
            + $"{totals.Sum(t => t.Clusters),8:N0} | {solve.Clock - make.Clock,17:0.0}, {solve.Cpu - make.Cpu,5:0.0} | "
            + $"{draw.Clock - make.Clock,29:0.0}, {draw.Cpu - make.Cpu,5:0.0}");
    }

    private static ((double Clock, double Cpu) Seconds, Totals[] Totals) Pass(int roads, Func<int, Totals> work)
    {
        var totals = new Totals[roads];
        var (clock, cpu) = (Stopwatch.GetTimestamp(), Process.GetCurrentProcess().TotalProcessorTime);
        Parallel.For(0, roads, n => totals[n] = work(n + 1));
        var spent = (Process.GetCurrentProcess().TotalProcessorTime - cpu).TotalSeconds;
        return ((Stopwatch.GetElapsedTime(clock).TotalSeconds, spent), totals);
    }

    private static Totals Make(int seed) => new(Demands(seed).Demands.Count, 0, 0);

    private static Totals Solve(int seed)
    {
        var (road, demands) = Demands(seed);
        var solution = BoundarySolver.Solve(ProblemBuilder.Build(road, demands, Roads.Rules, Roads.Prices, Step, BoundaryOptions.Default));
        return new Totals(demands.Count, solution.Repairs.Length, solution.Clusters);
    }

    private static Totals Draw(int seed)
    {
        var (road, demands) = Demands(seed);
        var result = BoundaryPlanner.Plan(road, demands, Roads.Rules, Roads.Prices, Step, BoundaryOptions.PlanOnly);
        return new Totals(demands.Count, result.Repairs.Length, result.Clusters);
    }

    private static (Core.Pavement.Road Road, IReadOnlyList<RemovalDemand> Demands) Demands(int seed)
    {
        var road = Roads.Make(seed, Miles);
        var (distresses, decisions) = Roads.Damage(road, seed, (int)(Miles * 200));
        return (road, RemovalDemands.From(road, distresses, decisions, [], Roads.Rules.Boundaries, GrowthModel.None, 0).Demands);
    }

    private sealed record Totals(int Demands, int Repairs, int Clusters);
}
