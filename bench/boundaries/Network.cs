using System.Diagnostics;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Survey;

namespace Slabwright.Bench.Boundaries;

/// <summary>A state's worth of two-lane roads: time and memory, at four sizes so that growth shows.</summary>
internal static class Network
{
    private const double Miles = 10;
    private const double Step = 0.3048;

    public static void Run(int laneMiles)
    {
        Plan(0, 40);
        Console.WriteLine("lane-miles  distresses   demands   repairs  clusters   seconds  of it drawing  cost");
        foreach (var share in new[] { 8, 4, 2, 1 }) Size(laneMiles / share);
        Console.WriteLine($"peak memory {Process.GetCurrentProcess().PeakWorkingSet64 / 1e6:0} MB");
    }

    private static void Size(int laneMiles)
    {
        var roads = (int)(laneMiles / Miles / 2);
        var started = Stopwatch.GetTimestamp();
        var results = new Totals[roads];
        Parallel.For(0, roads, n => results[n] = Plan(n + 1, (int)(Miles * 2 * 100)));
        var seconds = Stopwatch.GetElapsedTime(started).TotalSeconds;
        var drawing = results.Sum(r => r.DrawingSeconds) / Environment.ProcessorCount;
        Console.WriteLine($"{laneMiles,10:N0}  {roads * Miles * 200,10:N0}  {results.Sum(r => r.Demands),8:N0}  {results.Sum(r => r.Repairs),8:N0}  "
            + $"{results.Sum(r => r.Clusters),8:N0}  {seconds,8:0.0}  {drawing,13:0.0}  {results.Sum(r => r.Cost):N0}");
    }

    private static Totals Plan(int seed, int count)
    {
        var road = Roads.Make(seed, Miles);
        var (distresses, decisions) = Roads.Damage(road, seed, count);
        var demands = RemovalDemands.From(road, distresses, decisions, [], Roads.Rules.Boundaries, GrowthModel.None, 0).Demands;
        var started = Stopwatch.GetTimestamp();
        BoundarySolver.Solve(ProblemBuilder.Build(road, demands, Roads.Rules, Roads.Prices, Step, BoundaryOptions.Default));
        var solving = Stopwatch.GetElapsedTime(started).TotalSeconds;
        started = Stopwatch.GetTimestamp();
        var result = BoundaryPlanner.Plan(road, demands, Roads.Rules, Roads.Prices, Step, BoundaryOptions.PlanOnly);
        var drawing = Math.Max(0, Stopwatch.GetElapsedTime(started).TotalSeconds - solving);
        return new Totals(demands.Length, result.Repairs.Length, result.Clusters, result.Cost, drawing);
    }

    private sealed record Totals(int Demands, int Repairs, int Clusters, decimal Cost, double DrawingSeconds);
}
