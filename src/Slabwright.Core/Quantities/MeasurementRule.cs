using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;
using Slabwright.Core.Prices;

namespace Slabwright.Core.Quantities;

/// <summary>How one kind of pay item is measured, in one sentence with its source.</summary>
/// <param name="Role">What the pay item pays for.</param>
/// <param name="Dimension">What its pay unit must measure; <see cref="Dimension.None"/> for items paid by the piece or as a sum.</param>
/// <param name="Sentence">The rule in words.</param>
/// <param name="Source">Where the rule comes from.</param>
public sealed record MeasurementRule(PayRole Role, Dimension Dimension, string Sentence, SourceRef Source);

/// <summary>The measurement rules, one for each role of a pay item. The same sentences stand in docs/steps/quantities.md.</summary>
public static class MeasurementRules
{
    private static readonly SourceRef Practice = SourceRef.CommonPractice;
    private static readonly SourceRef Missouri = new("MO-EPG", "613.1", SourceStatus.Verified);
    private static readonly SourceRef Iowa = new("IA-7040", "measurement", SourceStatus.Verified);

    /// <summary>All rules in the order of <see cref="PayRole"/>.</summary>
    public static ImmutableArray<MeasurementRule> All { get; } =
    [
        new(PayRole.FullDepthArea, Dimension.Area,
            "Length times full lane width of each repair; the size class follows the repair's own area and holds for all of it; "
            + "a repair below the least pay quantity is paid as that quantity.", Iowa),
        new(PayRole.RepairSetUp, Dimension.None, "One for each repair.", new("IA-CM", "9.70", SourceStatus.Verified)),
        new(PayRole.TransverseSawCut, Dimension.Length, "Lane width at both ends of each repair.", Missouri),
        new(PayRole.LongitudinalSawCut, Dimension.Length,
            "Both sides of each repair where they face concrete; an edge between two repairs counts once, with the lane to the left.",
            Missouri),
        new(PayRole.InternalSawCut, Dimension.Length,
            "Lane width for each cut between lift pieces; pieces are at most 6 ft (1.829 m) long.", Missouri),
        new(PayRole.DrilledDowel, Dimension.None, "Every dowel at a dowelled end of a repair.", new("OH-510", "", SourceStatus.Verified)),
        new(PayRole.BasketDowel, Dimension.None, "Every dowel at a dowelled joint inside a repair.",
            new("IA-CM", "9.70", SourceStatus.Verified)),
        new(PayRole.TieBar, Dimension.None,
            "Every tie bar at a tied end; along a tied side the stretch divided by the bar spacing, rounded up, so that bars are never "
            + "further apart than the spacing.", Practice),
        new(PayRole.IsolationBoard, Dimension.Length, "Length of side isolated from old concrete.", Practice),
        new(PayRole.TransverseSeal, Dimension.Length, "Lane width at both ends and at every joint inside the repair.", Practice),
        new(PayRole.LongitudinalSeal, Dimension.Length,
            "Both sides where they face concrete; an edge between two repairs counts once, with the lane to the left.", Practice),
        new(PayRole.ShoulderStrip, Dimension.Length, "Length of side formed against an asphalt shoulder.", Practice),
        new(PayRole.EdgeForm, Dimension.Length, "Length of side formed against an asphalt shoulder, a curb or open ground.", Practice),
        new(PayRole.BaseConcrete, Dimension.Volume,
            "Repair area times the share of loose base times its depth, filled with concrete.",
            new("OH-255", "255.04", SourceStatus.Verified)),
        new(PayRole.PartialDepthArea, Dimension.Area, "Area of each partial-depth repair.", Practice),
        new(PayRole.SealLength, Dimension.Length, "Length of each crack or joint sealed.", Practice),
        new(PayRole.LumpSum, Dimension.None, "One for the job.", Practice),
        new(PayRole.TrafficControlNight, Dimension.None, "Number of nights planned, or given by the project.", Practice),
    ];

    /// <summary>The rule of a role.</summary>
    public static MeasurementRule Of(PayRole role) => All.First(r => r.Role == role);
}
