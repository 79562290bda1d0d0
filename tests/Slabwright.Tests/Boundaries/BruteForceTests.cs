using Slabwright.Core.Boundaries;

namespace Slabwright.Tests.Boundaries;

public sealed class BruteForceTests
{
    /// <summary>On tiny roads the solver's plan is legal, its bill is what it says, and no legal plan is cheaper.</summary>
    [Fact]
    public void Equals_the_best_of_all_plans_on_tiny_roads()
    {
        var (compared, shared) = (0, 0);
        for (var seed = 1; seed <= 3000; seed++)
        {
            var problem = RandomProblems.Make(seed, 1 + seed % 3, seed % 3 == 0 ? 48 : 36, seed % 3 == 0 ? 3 : 4, 2);
            if (problem.Lanes.All(l => l.Demands.IsEmpty)) continue;
            var judge = new Judge(problem);
            if (BruteForce.Best(judge, 20_000) is not { } best) continue;
            var solution = BoundarySolver.Solve(problem, TestContext.Current.CancellationToken);
            Assert.True(solution.Unmet.IsEmpty, $"seed {seed}");
            Assert.True(judge.PlanIsLegal(solution.Repairs), $"seed {seed}: illegal plan");
            Assert.Equal(judge.Bill(solution.Repairs), solution.Objective);
            Assert.True(best == solution.Objective, $"seed {seed}: best {best}, solver {solution.Objective}");
            compared++;
            if (problem.Lanes.Count(l => !l.Demands.IsEmpty) > 1) shared++;
        }

        Assert.True(compared >= 300 && shared >= 100, $"{compared} compared, {shared} over several lanes");
    }
}
