using Slabwright.Core.Boundaries;

namespace Slabwright.Tests.Boundaries;

public sealed class CpSatTests
{
    private const int Clusters = 520;

    /// <summary>A general solver proves the same optimum on more than 500 random clusters of one to three lanes.</summary>
    [Fact]
    public void A_general_solver_proves_the_same_optimum()
    {
        var (compared, lanesTogether, unproved) = (0, 0, 0);
        for (var seed = 100_000; compared < Clusters && seed < 102_000; seed++)
        {
            var problem = RandomProblems.Make(seed, 1 + seed % 3, 60, 3, 3);
            if (problem.Lanes.All(l => l.Demands.IsEmpty)) continue;
            var solution = BoundarySolver.Solve(problem, TestContext.Current.CancellationToken);
            if (!solution.Unmet.IsEmpty) continue;
            var judge = new Judge(problem);
            Assert.True(judge.PlanIsLegal(solution.Repairs), $"seed {seed}: illegal plan");
            Assert.Equal(judge.Bill(solution.Repairs), solution.Objective);
            if (new CpSatJudge(judge).Solve(20, 2) is not { } best)
            {
                unproved++;
                continue;
            }

            Assert.True(best == solution.Objective, $"seed {seed}: general solver {best}, own {solution.Objective}");
            compared++;
            if (problem.Lanes.Count(l => !l.Demands.IsEmpty) > 1) lanesTogether++;
        }

        Assert.True(compared >= Clusters && lanesTogether >= 200, $"{compared} compared, {lanesTogether} over several lanes, {unproved} not proved");
    }
}
