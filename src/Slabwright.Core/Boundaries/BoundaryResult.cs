using System.Collections.Immutable;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Boundaries;

/// <summary>What one rule costs: the optimum with the rule against the optimum without it.</summary>
/// <param name="Rule">Name of the limit.</param>
/// <param name="Sentence">The limit with its value, in words.</param>
/// <param name="CostWithout">Least cost when the rule is dropped.</param>
/// <param name="Cost">Cost the rule adds; never negative.</param>
public sealed record RuleCost(string Rule, string Sentence, decimal CostWithout, decimal Cost);

/// <summary>One point of the curve from spot repairs to full replacement.</summary>
/// <param name="LengthReplaced">Lane length removed, m.</param>
/// <param name="ShareReplaced">Share of all lane length, 0 to 1.</param>
/// <param name="Repairs">Number of repairs.</param>
/// <param name="Cost">Least cost at that length.</param>
public sealed record CostCurvePoint(double LengthReplaced, double ShareReplaced, int Repairs, decimal Cost);

/// <summary>A stretch where one large removal is cheaper than, or nearly as cheap as, separate repairs.</summary>
/// <param name="Lane">Lane number.</param>
/// <param name="From">Metres along the road.</param>
/// <param name="To">Metres along the road.</param>
/// <param name="SpotCost">Least cost of separate repairs there.</param>
/// <param name="RunCost">Cost of one removal from end to end.</param>
/// <param name="Chosen">True when the plan takes the large removal.</param>
public sealed record LargeRemoval(int Lane, double From, double To, decimal SpotCost, decimal RunCost, bool Chosen);

/// <summary>The proven optimum and what surrounds it.</summary>
/// <param name="Repairs">Repairs in order along the road, then by lane.</param>
/// <param name="Cost">Optimised cost: the part of the price list that depends on the boundaries.</param>
/// <param name="RuleCosts">Cost of each rule.</param>
/// <param name="CostCurve">From spot repairs to full replacement.</param>
/// <param name="LargeRemovals">Where large removal takes over.</param>
/// <param name="Clusters">Independent clusters solved.</param>
/// <param name="Findings">Demands that could not be met and other findings.</param>
public sealed record BoundaryResult(
    ImmutableArray<Repair> Repairs,
    decimal Cost,
    ImmutableArray<RuleCost> RuleCosts,
    ImmutableArray<CostCurvePoint> CostCurve,
    ImmutableArray<LargeRemoval> LargeRemovals,
    int Clusters,
    ImmutableArray<Finding> Findings);
