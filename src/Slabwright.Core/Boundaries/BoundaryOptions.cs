namespace Slabwright.Core.Boundaries;

/// <summary>
/// Planning choices no rule set makes. The two weights are the project's own measure of neatness in currency units, not a price; set
/// them to 0 to plan on the price list alone.
/// </summary>
public sealed record BoundaryOptions
{
    /// <summary>The defaults.</summary>
    public static BoundaryOptions Default { get; } = new();

    /// <summary>Only the plan: no rule costs, no curve, no large removals.</summary>
    public static BoundaryOptions PlanOnly { get; } = new() { RuleCosts = false, CurvePoints = 0, LargeRemovals = false };

    /// <summary>Weight of a joint of the neighbouring lane that a repair spans without a joint of its own there; currency units.</summary>
    public decimal SpannedJointWeight { get; init; } = 25;

    /// <summary>Weight of a repair end that meets neither a joint nor a repair end of the neighbouring lane; currency units.</summary>
    public decimal UnmatchedEndWeight { get; init; } = 10;

    /// <summary>Joints this near one another across a lane line match, m.</summary>
    public double MatchWithin { get; init; } = 0.05;

    /// <summary>Least remnant, gap and pass where the rule set is silent, m: one foot, so that no sliver is left.</summary>
    public double LeastSliver { get; init; } = 0.3048;

    /// <summary>Least panel between a re-established joint and the next new joint, m (6 ft, common practice).</summary>
    public double LeastPanel { get; init; } = 6 * 0.3048;

    /// <summary>Longest lift piece, m (about 6 ft, MoDOT Engineering Policy Guide 613.1.1).</summary>
    public double LiftPiece { get; init; } = 6 * 0.3048;

    /// <summary>Share of the repair area whose loose base is replaced by concrete, 0 to 1.</summary>
    public double LooseBaseShare { get; init; }

    /// <summary>Depth of loose base taken out, m.</summary>
    public double LooseBaseDepth { get; init; }

    /// <summary>True to solve again without each rule.</summary>
    public bool RuleCosts { get; init; } = true;

    /// <summary>Points of the cost curve between the plan and full replacement; 0 for no curve.</summary>
    public int CurvePoints { get; init; } = 12;

    /// <summary>True to look for stretches where one large removal is cheaper or nearly so.</summary>
    public bool LargeRemovals { get; init; } = true;

    /// <summary>A large removal is reported up to this share above the cost of separate repairs.</summary>
    public double LargeRemovalWithin { get; init; } = 0.10;
}
