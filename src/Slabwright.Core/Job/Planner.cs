using System.Collections.Immutable;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Concrete.Heat;
using Slabwright.Core.Concrete.Opening;
using Slabwright.Core.Joints.Design;
using Slabwright.Core.Joints.Removal;
using Slabwright.Core.Joints.Sealing;
using Slabwright.Core.Pavement;
using Slabwright.Core.Quantities;
using Slabwright.Core.RuleSets;
using Slabwright.Core.Survey;
using Slabwright.Core.Treatments;

namespace Slabwright.Core.Job;

/// <summary>What a run should compute beyond the plan itself.</summary>
public sealed record PlanOptions
{
    /// <summary>Everything.</summary>
    public static PlanOptions Whole { get; } = new();

    /// <summary>The plan and its price only.</summary>
    public static PlanOptions Quick { get; } = new() { Range = false, Studies = false, Concrete = false };

    /// <summary>True to run the trials of the cost range.</summary>
    public bool Range { get; init; } = true;

    /// <summary>True to forecast the opening of each mix on each work night.</summary>
    public bool Concrete { get; init; } = true;

    /// <summary>True to study the boundaries: cost of each rule, cost curve, large removals.</summary>
    public bool Studies { get; init; } = true;
}

/// <summary>A step of a run, told as it begins.</summary>
/// <param name="Step">Name of the step.</param>
/// <param name="Number">Its number, from 1.</param>
/// <param name="Of">Number of steps in this run.</param>
public readonly record struct PlanProgress(string Step, int Number, int Of);

/// <summary>
/// The main job: survey to treatments, layouts of the joints, removal demands, boundaries, joints, opening of the mixes, surface works, quantities and cost range, each step handed the
/// records of the one before. Pure: the same project gives the same plan.
/// </summary>
public static class Planner
{
    /// <summary>Plans a project.</summary>
    /// <param name="project">The project.</param>
    /// <param name="options">What to compute; everything when null.</param>
    /// <param name="progress">Told each step as it begins.</param>
    /// <param name="cancel">Stops the run with an <see cref="OperationCanceledException"/>.</param>
    public static RepairPlan Plan(
        Project project, PlanOptions? options = null, Action<PlanProgress>? progress = null, CancellationToken cancel = default)
    {
        options ??= PlanOptions.Whole;
        var steps = options.Range ? 6 : 5;
        var road = project.Road;

        // Layouts ask nothing of the survey, so they are worked out beside the treatments.
        var working = Task.Run(() => JointPlanner.Lanes(road, project.RuleSet, project.Prices, project.Settings.Joints), cancel);
        progress?.Invoke(new PlanProgress("treatments", 1, steps));
        var treatments = Treat(project);
        var disagreements = Disagreements.Find(road, project.Survey, [project.RuleSet, .. project.OtherRuleSets]);

        progress?.Invoke(new PlanProgress("joints", 2, steps));
        var layouts = working.GetAwaiter().GetResult();
        var cutting = BoundaryOptionsOf(project, layouts.Lanes);

        progress?.Invoke(new PlanProgress("boundaries", 3, steps));
        var demands = Demand(project, treatments.Decisions, project.RuleSet.Boundaries);
        var boundaries = BoundaryPlanner.Plan(
            road, demands.Demands, project.RuleSet, project.Prices, project.Settings.CutStep, options.Studies ? cutting : PlanOnly(cutting), cancel);
        if (options.Studies) boundaries = WithDemandRules(project, treatments.Decisions, boundaries, PlanOnly(cutting), cancel);
        var joints = JointPlanner.Joints(
            road, project.RuleSet, project.Settings.Joints, project.Survey.Cores, layouts.Lanes, boundaries.Repairs);
        joints = joints with { Findings = [.. layouts.Findings, .. joints.Findings] };
        boundaries = boundaries with { Repairs = joints.Fit(boundaries.Repairs) };

        var (settings, repairs) = (project.Settings, boundaries.Repairs);
        var seals = SealPlanner.For(road, repairs, settings.SealingWithTemperatures, project.UnitSystem);
        var lifts = LiftPlanner.For(road, repairs, settings.Lifting, project.UnitSystem);
        var pressure = PressurePlanner.For(road, repairs, PressureOf(project, ThinnestOf(project, repairs)), lifts, project.UnitSystem);

        progress?.Invoke(new PlanProgress("concrete", 4, steps));
        var concrete = options.Concrete ? Concrete(project, boundaries.Repairs, cancel) : ConcretePlan.Empty;

        progress?.Invoke(new PlanProgress("quantities", 5, steps));
        var uncertain = Uncertain(project, demands.Demands);
        var surface = SurfaceWorks.From(road, project.Survey, treatments.Decisions, boundaries.Repairs);
        var quantities = QuantityStep.Run(
            road, boundaries.Repairs, surface, project.Prices, project.RuleSet.Joints, project.Settings.Measurement);
        if (options.Range)
        {
            progress?.Invoke(new PlanProgress("cost range", 6, steps));
            quantities = quantities with { Range = CostRange(project, uncertain.Demands, surface, PlanOnly(cutting), cancel) };
        }

        return new RepairPlan
        {
            Decisions = treatments.Decisions,
            Disagreements = disagreements,
            Demands = demands.Demands,
            Boundaries = boundaries,
            Joints = joints,
            Seals = seals,
            Lifts = lifts,
            Pressure = pressure,
            Concrete = concrete,
            SurfaceWorks = surface,
            Quantities = quantities,
            Findings =
            [
                .. project.Findings,
                .. treatments.Findings,
                .. demands.Findings,
                .. boundaries.Findings,
                .. joints.Findings,
                .. seals.Findings,
                .. lifts.Findings,
                .. pressure.Findings,
                .. concrete.Findings,
                .. uncertain.Findings,
                .. QuantityFindings.For(boundaries.Repairs, surface, project.Prices, project.RuleSet.Joints, project.Settings.Measurement),
            ],
        };
    }

    /// <summary>The Treatments step alone.</summary>
    public static TreatmentResult Treat(Project project) =>
        TreatmentRules.Decide(project.Road, project.Survey, project.RuleSet, project.Overrides, project.UnitSystem);

    /// <summary>Years from the newest survey day to the first day of work; 0 when either is unknown or the survey is newer.</summary>
    public static double YearsToWork(Project project) =>
        project.Survey.NewestDay is { } surveyed && project.Settings.WorkDay is { } work ? SurveyGrowth.YearsBetween(surveyed, work) : 0;

    /// <summary>What must come out under the limits given.</summary>
    internal static RemovalDemandResult Demand(Project project, ImmutableArray<TreatmentDecision> decisions, BoundaryLimits limits) =>
        RemovalDemands.From(
            project.Road, project.Survey.Distresses, decisions, project.Survey.Cores, limits, project.Settings.Growth, YearsToWork(project));

    /// <summary>Opening of each mix on each work night, for the thinnest slab and the longest repair of the plan.</summary>
    public static ConcretePlan Concrete(Project project, ImmutableArray<Repair> repairs, CancellationToken cancel = default) =>
        project.Settings.Concrete.HasWork ? ConcretePlanner.Plan(ConcreteJobOf(project, repairs), cancel) : ConcretePlan.Empty;

    /// <summary>The concrete of a project opened for questions, for the thinnest slab and the longest repair of the plan.</summary>
    /// <param name="project">The project.</param> <param name="repairs">Repairs of its plan.</param>
    public static ConcreteStudy ConcreteStudyOf(Project project, ImmutableArray<Repair> repairs) => ConcreteStudy.Of(ConcreteJobOf(project, repairs));

    /// <summary>What the look at concrete needs of a project.</summary>
    public static ConcreteJob ConcreteJobOf(Project project, ImmutableArray<Repair> repairs) => new()
    {
        Settings = project.Settings.Concrete,
        Rows = project.RuleSet.Opening,
        Thickness = ThinnestOf(project, repairs),
        Length = repairs.Select(r => r.To - r.From).DefaultIfEmpty(0).Max(),
        ShortestLength = repairs.Select(r => r.To - r.From).DefaultIfEmpty(0).Min(),
        Traffic = EarlyTrafficLoads.Of(project.Road, project.Settings.Joints),
        Weather = project.Weather,
    };

    /// <summary>
    /// Pressure settings with the old slab's temperatures by clock hour on the hottest day of the work nights, or on the first day of work, where the project
    /// gives none and its weather does; otherwise as the project says.
    /// </summary>
    /// <param name="project">The project.</param> <param name="thickness">Thickness of the old slab, m.</param>
    public static PressureSettings PressureOf(Project project, double thickness)
    {
        var (settings, concrete) = (project.Settings.Pressure, project.Settings.Concrete);
        DateOnly[] days = concrete.Nights.IsEmpty ? project.Settings.WorkDay is { } first ? [first] : [] : [.. concrete.Nights.Select(n => n.Day).Distinct()];
        if (!settings.Hours.IsEmpty || project.Weather is null || days.Length == 0) return settings;
        var (weather, otherYear) = WeatherYear.On(project.Weather, days[0]);
        var column = new SlabColumn { Thickness = thickness };
        var (day, hours) = days.Select(d => (Day: d, Hours: SawingTemperatures.ByHour(column, weather, d))).Where(d => !d.Hours.IsEmpty)
            .MaxBy(d => d.Hours.Max(h => h.Temperature));
        if (hours.IsDefaultOrEmpty) return settings;
        var ahead = (int)Math.Round(concrete.ClockAhead);
        return settings with
        {
            Hours = [.. hours.Select(h => h with { Hour = (h.Hour + ahead + 24) % 24 }).OrderBy(h => h.Hour)],
            HoursFrom = FormattableString.Invariant($"computed from the weather for {day:d MMMM yyyy}, the hottest day of the work")
                + (otherYear is { } year ? FormattableString.Invariant($", with the weather of {year}") : ""),
        };
    }

    private static double ThinnestOf(Project project, ImmutableArray<Repair> repairs) => repairs.Select(r => ThicknessAt(project.Road, r))
        .DefaultIfEmpty(project.Road.Lanes.SelectMany(l => l.Sections).Select(s => s.Thickness).DefaultIfEmpty(0.23).Min()).Min();

    private static double ThicknessAt(Road road, Repair repair) =>
        road.LaneByNumber(repair.Lane).Sections.Where(s => s.From < repair.To && s.To > repair.From).Select(s => s.Thickness).DefaultIfEmpty(double.PositiveInfinity).Min();

    /// <summary>Adds the cost of the rules that shape the demands.</summary>
    private static BoundaryResult WithDemandRules(
        Project project, ImmutableArray<TreatmentDecision> decisions, BoundaryResult boundaries, BoundaryOptions cutting, CancellationToken cancel)
    {
        var options = cutting with { SpannedJointWeight = 0, UnmatchedEndWeight = 0, Explain = false };
        var more = DemandRuleCosts.Of(project, decisions, demands => BoundaryPlanner.Plan(
            project.Road, demands, project.RuleSet, project.Prices, project.Settings.CutStep, options, cancel).Cost);
        return boundaries with { RuleCosts = boundaries.RuleCosts.AddRange(more) };
    }

    private static UncertainDemandResult Uncertain(Project project, ImmutableArray<RemovalDemand> demands) => UncertainDemands.From(
        demands, project.Survey.Distresses, project.Survey.Cores, project.Road.Climate, project.RuleSet.Boundaries, project.Settings.Growth,
        YearsToWork(project));

    /// <summary>The trials of the cost range; each plans the boundaries anew. Surface works do not vary.</summary>
    private static CostRange CostRange(
        Project project, ImmutableArray<UncertainDemand> demands, ImmutableArray<SurfaceWork> surface, BoundaryOptions options,
        CancellationToken cancel)
    {
        var (road, settings, rules) = (project.Road, project.Settings, project.RuleSet);
        options = options with { Explain = false };
        return CostRangeSimulation.Run(
            new CostRangeInput(road, demands, project.Prices, settings.Trials, settings.Seed),
            sampled =>
            {
                var repairs = BoundaryPlanner.Plan(road, sampled, rules, project.Prices, settings.CutStep, options, cancel).Repairs;
                return BidSchedules.Build(TakeOff.Measure(road, repairs, surface, project.Prices, rules.Joints, settings.Measurement), project.Prices);
            },
            cancel: cancel);
    }

    private static BoundaryOptions BoundaryOptionsOf(Project project, ImmutableArray<LaneJointDesign> layouts) => BoundaryOptions.Default with
    {
        LooseBaseShare = project.Settings.LooseBaseShare,
        LooseBaseDepth = project.Settings.LooseBaseDepth,
        LiftPiece = project.Settings.Lifting.LongestPiece.Value,
        Bars = JointPlanner.Bars(project.Road, project.RuleSet, project.Settings.Joints, layouts),
    };

    private static BoundaryOptions PlanOnly(BoundaryOptions options) => options with { RuleCosts = false, CurvePoints = 0, LargeRemovals = false };
}
