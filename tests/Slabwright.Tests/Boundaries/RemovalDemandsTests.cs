using System.Collections.Immutable;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Evidence;
using Slabwright.Core.Pavement;
using Slabwright.Core.RuleSets;
using Slabwright.Core.Survey;
using Slabwright.Core.Treatments;
using static Slabwright.Tests.Boundaries.Worked;

namespace Slabwright.Tests.Boundaries;

/// <summary>Demands worked by hand on 15 ft slabs, feet; freeze-thaw margin 2 ft.</summary>
public sealed class RemovalDemandsTests
{
    private static readonly Road OneLane = Road(Lane(1, 300, JointKind.Dowelled, Every(15, 300)));

    [Fact]
    public void A_repair_gets_the_margin_of_its_climate()
    {
        Assert.Equal((35, 40), Ends(One([At("A", 37, 38)])));
        var mild = OneLane with { Climate = new Climate(FreezeThaw: false) };
        Assert.Equal((36, 39), Ends(One([At("A", 37, 38)], road: mild)));
    }

    [Fact]
    public void The_wider_of_margin_survey_and_core_counts()
    {
        var survey = At("A", 37, 38) with { WideningBelow = 3 * Foot };
        Assert.Equal((34, 41), Ends(One([survey])));
        CoreSample near = new("C1", 1, 32 * Foot, null, null, null, 4 * Foot);
        var demand = One([survey], cores: [near]);
        Assert.Equal((33, 42), Ends(demand));
        Assert.Contains(demand.Reasons, r => r.Rule == "widening found by core" && r.Inputs.Any(i => i.Value == "C1"));
        CoreSample far = near with { At = 100 * Foot };
        CoreSample otherLane = near with { Lane = 2 };
        Assert.Equal((34, 41), Ends(One([survey], cores: [far, otherLane])));
    }

    [Fact]
    public void Likely_growth_is_added_for_the_years_between()
    {
        var growth = new GrowthModel([new GrowthRate(null, 0, 0.5 * Foot, Foot, 0)]);
        Assert.Equal((34, 41), Ends(One([At("A", 37, 38)], growth: growth, years: 2)));
    }

    [Fact]
    public void A_slab_replacement_asks_for_the_slab_and_a_run_for_its_neighbours_in_one()
    {
        Assert.Equal((30, 45), Ends(One([At("A", 37, 38)], Treatment.SlabReplacement)));
        var run = One([At("A", 37, 38), At("B", 50, 51)], Treatment.SlabRun);
        Assert.Equal((30, 60), Ends(run));
        Assert.Equal(["A", "B"], run.DistressIds);
    }

    [Fact]
    public void A_slab_replacement_of_a_skewed_slab_asks_for_both_joints_whole()
    {
        var skewed = Road(Lane(1, 300, JointKind.Dowelled, Every(15, 300), skew: 2));
        Assert.Equal((29, 46), Ends(One([At("A", 37, 38)], Treatment.SlabReplacement, road: skewed)));
    }

    [Fact]
    public void Short_slabs_are_replaced_whole_where_the_rules_say_so()
    {
        var limits = FhwaLimits with { WholeSlabBelow = Feet(20) };
        var demand = One([At("A", 37, 38)], limits: limits);
        Assert.Equal((30, 45), Ends(demand));
        Assert.Equal(Treatment.SlabReplacement, demand.Treatment);
        Assert.Contains(demand.Reasons, r => r.Rule == "whole slab below");
    }

    /// <summary>UFC 3-270-04 sec 4.3: part of a slab only where the damage lies within one half of it.</summary>
    [Fact]
    public void Damage_past_the_middle_takes_the_slab_where_only_half_slabs_may_be_replaced()
    {
        var limits = FhwaLimits with { PartOnlyWithinHalfSlab = new Sourced<bool>(true, SourceRef.Project) };
        Assert.Equal((30, 45), Ends(One([At("A", 36, 38)], limits: limits)));
        Assert.Equal((30, 37), Ends(One([At("A", 32, 35)], limits: limits)));
    }

    [Fact]
    public void A_demand_stops_at_the_lane_end()
    {
        var demand = One([At("A", 1, 2)]);
        Assert.Equal((0, 4), Ends(demand));
        Assert.Contains(demand.Reasons, r => r.Rule == "lane end");
    }

    [Fact]
    public void Decisions_without_distress_lane_or_concrete_are_findings()
    {
        Distress[] distresses = [At("A", 37, 38), At("B", 50, 51) with { Lane = 4 }, At("C", 400, 401)];
        TreatmentDecision[] decisions = [Decide("A"), Decide("B"), Decide("C"), Decide("nobody"), Decide("A", Treatment.Seal)];
        var result = RemovalDemands.From(OneLane, distresses, decisions, [], FhwaLimits, GrowthModel.None, 0);
        Assert.Single(result.Demands);
        Assert.Equal(["BND-002", "BND-003", "BND-001"], result.Findings.Select(f => f.Code));
    }

    private static (double From, double To) Ends(RemovalDemand demand) => (Math.Round(demand.From / Foot, 3), Math.Round(demand.To / Foot, 3));

    private static TreatmentDecision Decide(string id, Treatment treatment = Treatment.FullDepthRepair) => new(id, treatment, treatment, "worked", []);

    private static Distress At(string id, double from, double to) => new()
    {
        Id = id, Lane = 1, Type = DistressType.TransverseCracking, Severity = Severity.High, From = from * Foot, To = to * Foot,
        Slab = (int)(from / 15) + 1, SurveyedOn = new DateOnly(2025, 5, 1),
    };

    private static RemovalDemand One(
        Distress[] distresses, Treatment treatment = Treatment.FullDepthRepair, CoreSample[]? cores = null, BoundaryLimits? limits = null,
        GrowthModel? growth = null, double years = 0, Road? road = null)
    {
        ImmutableArray<TreatmentDecision> decisions = [.. distresses.Select(d => Decide(d.Id, treatment))];
        var result = RemovalDemands.From(
            road ?? OneLane, distresses, decisions, cores ?? [], limits ?? FhwaLimits, growth ?? GrowthModel.None, years);
        Assert.Empty(result.Findings);
        return Assert.Single(result.Demands);
    }
}
