using Slabwright.Core.Boundaries;
using Slabwright.Core.Job;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;
using Slabwright.Core.RuleSets;
using Slabwright.Core.Survey;
using Slabwright.Core.Treatments;
using Slabwright.Tests.Boundaries;

namespace Slabwright.Tests.Job;

/// <summary>The main job as one call: every step handed on, nothing lost, the same project the same plan.</summary>
public sealed class PlannerTests
{
    private static readonly Road OneLane = Worked.Road(Worked.Lane(1, 600, JointKind.Dowelled, Worked.Every(20, 600)));

    private static Project Project(RuleSet? rules = null, params Distress[] distresses) => new()
    {
        Name = "Three cracks",
        UnitSystem = UnitSystem.UsCustomary,
        Road = OneLane,
        Survey = new SurveyRecord([.. distresses.Length > 0 ? distresses : [Crack("D1", 69), Crack("D2", 250), Crack("D3", 430)]], [], []),
        RuleSet = rules ?? PublishedRuleSets.CommonPractice,
        OtherRuleSets = [.. PublishedRuleSets.All.Skip(1)],
        Prices = Worked.Prices,
        Settings = new ProjectSettings { CutStep = 0.5 * Worked.Foot, WorkDay = new DateOnly(2026, 5, 1), Trials = 40, Growth = SurveyGrowth.Assumption },
    };

    private static RepairPlan Run(Project project) => Planner.Plan(project, cancel: TestContext.Current.CancellationToken);

    private static Distress Crack(string id, double feet, Severity severity = Severity.High) => new()
    {
        Id = id, Lane = 1, Type = DistressType.TransverseCracking, Severity = severity, From = feet * Worked.Foot, To = feet * Worked.Foot,
        Slab = (int)(feet / 20) + 1, SurveyedOn = new DateOnly(2025, 5, 1),
    };

    [Fact]
    public void Every_distress_has_a_decision_and_every_full_depth_call_a_repair_that_a_judge_of_the_rules_accepts()
    {
        var project = Project();
        var plan = Run(project);
        Assert.Equal(["D1", "D2", "D3"], plan.Decisions.Select(d => d.DistressId));
        Assert.All(plan.Decisions, d => Assert.Equal(Treatment.FullDepthRepair, d.Treatment));
        Assert.Equal(["D1", "D2", "D3"], plan.Boundaries.Repairs.SelectMany(r => r.DistressIds));
        Assert.Empty(BoundaryChecker.Check(
            project.Road, plan.Demands, project.RuleSet.Boundaries, project.Settings.CutStep, plan.Boundaries.Repairs));
        Assert.Equal(plan.Quantities.Schedule.Total, plan.Quantities.Schedule.Lines.Sum(l => l.Amount));
        Assert.True(plan.Quantities.Range!.P10 <= plan.Quantities.Range.P50 && plan.Quantities.Range.P50 <= plan.Quantities.Range.P90);
    }

    [Fact]
    public void The_same_project_gives_the_same_plan()
    {
        var (first, second) = (Run(Project()), Run(Project()));
        Assert.Equal(first.Boundaries.Repairs.Select(r => (r.Id, r.From, r.To)), second.Boundaries.Repairs.Select(r => (r.Id, r.From, r.To)));
        Assert.Equal(first.Quantities.Range!.Costs, second.Quantities.Range!.Costs);
    }

    [Fact]
    public void The_cost_of_the_hidden_margin_is_what_the_plan_without_it_saves()
    {
        var rules = PublishedRuleSets.CommonPractice;
        var none = rules.Boundaries.HiddenMarginFreezeThaw with { Value = 0 };
        var bare = rules with { Boundaries = rules.Boundaries with { HiddenMargin = none, HiddenMarginFreezeThaw = none } };
        var (with, without) = (Run(Project(rules)).Boundaries.RuleCosts, Run(Project(bare)).Boundaries.RuleCosts);
        var margin = with.Single(r => r.Rule == "hidden margin");
        Assert.Equal(Least(without), margin.CostWithout);
        Assert.Equal(Least(with) - Least(without), margin.Cost);
        Assert.True(margin.Cost >= 0);
        Assert.DoesNotContain(without, r => r.Rule == "hidden margin");

        static decimal Least(IEnumerable<RuleCost> costs) => costs.Where(r => r.Rule == "least length").Select(r => r.CostWithout + r.Cost).Single();
    }

    [Fact]
    public void Steps_are_told_in_order_and_a_stopped_run_stops()
    {
        var told = new List<string>();
        Planner.Plan(Project(), cancel: TestContext.Current.CancellationToken, progress: p => told.Add($"{p.Number}/{p.Of} {p.Step}"));
        Assert.Equal(["1/6 treatments", "2/6 joints", "3/6 boundaries", "4/6 concrete", "5/6 quantities", "6/6 cost range"], told);
        using var stop = new CancellationTokenSource();
        Assert.ThrowsAny<OperationCanceledException>(() => Planner.Plan(Project(), progress: _ => stop.Cancel(), cancel: stop.Token));
    }

    [Fact]
    public void A_survey_with_nothing_to_remove_gives_an_empty_plan_and_not_an_error()
    {
        var plan = Run(Project(null, Crack("D1", 69, Severity.Low)));
        Assert.Empty(plan.Boundaries.Repairs);
        Assert.Single(plan.SurfaceWorks);
        Assert.DoesNotContain(plan.Findings, f => f.Level == Core.Evidence.FindingLevel.Error);
    }
}
