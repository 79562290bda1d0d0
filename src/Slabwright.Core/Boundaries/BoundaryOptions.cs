using System.Collections.Immutable;
using Slabwright.Core.Pavement;
using Slabwright.Core.RuleSets;

namespace Slabwright.Core.Boundaries;

/// <summary>The bars of a lane's transverse joints, as the boundaries need them: they are designed before anything is cut.</summary>
/// <param name="Dowels">Dowels across a joint; 0 where the lane goes without.</param>
/// <param name="TieBars">Tie bars across a tied end.</param>
/// <param name="TieOneEndUpTo">Repairs of reinforced slabs up to this length have one end tied, m; 0: none.</param>
public sealed record LaneBars(int Dowels, int TieBars, double TieOneEndUpTo);

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

    /// <summary>Bars by lane number; a lane not named has the dowels its rule set states and ties no end.</summary>
    public ImmutableDictionary<int, LaneBars> Bars { get; init; } = ImmutableDictionary<int, LaneBars>.Empty;

    /// <summary>True to say of each boundary and face why it is where it is; false for plans nobody reads, such as those of a cost range.</summary>
    public bool Explain { get; init; } = true;

    /// <summary>True to solve again without each rule.</summary>
    public bool RuleCosts { get; init; } = true;

    /// <summary>Points of the cost curve between the plan and full replacement; 0 for no curve.</summary>
    public int CurvePoints { get; init; } = 12;

    /// <summary>True to look for stretches where one large removal is cheaper or nearly so.</summary>
    public bool LargeRemovals { get; init; } = true;

    /// <summary>A large removal is reported up to this share above the cost of separate repairs.</summary>
    public double LargeRemovalWithin { get; init; } = 0.10;

    /// <summary>The bars of a lane.</summary>
    internal LaneBars BarsOf(Lane lane, JointLimits joints) =>
        Bars.GetValueOrDefault(lane.Number) ?? new LaneBars(joints.StatedDowels(lane.Width), 0, 0);
}
