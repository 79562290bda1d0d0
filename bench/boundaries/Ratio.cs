using System.Diagnostics;
using Slabwright.Core.Boundaries;
using Slabwright.Tests.Boundaries;

namespace Slabwright.Bench.Boundaries;

/// <summary>The solver and CP-SAT on the same clusters in the same run; both must prove the same optimum.</summary>
internal static class Ratio
{
    public static void Run(int clusters)
    {
        var problems = Problems(clusters);
        foreach (var problem in problems.Take(20)) BoundarySolver.Solve(problem);
        var (own, solve, build) = (0.0, 0.0, 0.0);
        var compared = 0;
        foreach (var problem in problems)
        {
            var ownTime = Own(problem, out var objective);
            var started = Stopwatch.GetTimestamp();
            var model = new CpSatJudge(new Judge(problem));
            var built = Stopwatch.GetElapsedTime(started).TotalSeconds;
            started = Stopwatch.GetTimestamp();
            if (model.Solve(20, 2) is not { } best) continue;
            solve += Stopwatch.GetElapsedTime(started).TotalSeconds;
            if (best != objective) throw new InvalidOperationException($"optima differ: {best} and {objective}");
            (own, build, compared) = (own + ownTime, build + built, compared + 1);
        }

        Console.WriteLine($"clusters compared {compared} of {problems.Count}, all with equal optimum");
        Console.WriteLine($"own solver        {own / compared * 1e6,12:0.0} µs a cluster (mean of 20 solves each)");
        Console.WriteLine($"CP-SAT solve only {solve / compared * 1e6,12:0.0} µs a cluster (2 workers; building its model, {build / compared * 1e3:0.0} ms, left out)");
        Console.WriteLine($"ratio             {solve / own,12:0}");
    }

    private static double Own(BoundaryProblem problem, out long objective)
    {
        objective = BoundarySolver.Solve(problem).Objective;
        var started = Stopwatch.GetTimestamp();
        for (var n = 0; n < 20; n++) BoundarySolver.Solve(problem);
        return Stopwatch.GetElapsedTime(started).TotalSeconds / 20;
    }

    private static List<BoundaryProblem> Problems(int clusters)
    {
        var problems = new List<BoundaryProblem>();
        for (var seed = 500_000; problems.Count < clusters; seed++)
        {
            var problem = RandomProblems.Make(seed, 2 + seed % 2, 90, 2, 3);
            if (problem.Lanes.Count(l => !l.Demands.IsEmpty) > 1 && BoundarySolver.Solve(problem).Unmet.IsEmpty) problems.Add(problem);
        }

        return problems;
    }
}
