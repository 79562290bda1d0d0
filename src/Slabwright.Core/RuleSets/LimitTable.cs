using System.Collections.Immutable;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.RuleSets;

/// <summary>How a limit is written.</summary>
internal enum LimitShape
{
    /// <summary>Length with a unit, metres inside.</summary>
    Length,

    /// <summary>A plain number.</summary>
    Number,

    /// <summary>A whole number.</summary>
    Count,

    /// <summary>True or false; 1 or 0 inside.</summary>
    YesNo,
}

/// <summary>One limit of the file: its group and key, its shape, and whether a complete set must have it.</summary>
internal sealed record LimitRow(string Group, string Key, LimitShape Shape, bool Required = false)
{
    /// <summary>Name to switch it on by, e.g. <c>boundaries.least_length</c>.</summary>
    public string Path => $"{Group}.{Key}";
}

/// <summary>A limit as a plain number with its evidence; a null <see cref="Value"/> says that the set does not bind here.</summary>
internal sealed record LimitValue(double? Value, string Sentence, SourceRef Source)
{
    public Sourced<double>? Number => Value is { } v ? new(v, Source) { Sentence = Sentence } : null;

    public Sourced<int>? Count => Value is { } v ? new((int)v, Source) { Sentence = Sentence } : null;

    public Sourced<bool>? YesNo => Value is { } v ? new(v != 0, Source) { Sentence = Sentence } : null;
}

/// <summary>The limits of <see cref="BoundaryLimits"/> and <see cref="JointLimits"/> by the names rule set files use.</summary>
internal static class LimitTable
{
    internal const string Boundaries = "boundaries";
    internal const string Joints = "joints";

    internal static ImmutableArray<LimitRow> Rows { get; } =
    [
        new(Boundaries, "least_length", LimitShape.Length, Required: true),
        new(Boundaries, "least_length_or_half_slab", LimitShape.YesNo),
        new(Boundaries, "least_length_undowelled", LimitShape.Length),
        new(Boundaries, "least_remnant", LimitShape.Length),
        new(Boundaries, "least_gap", LimitShape.Length),
        new(Boundaries, "extend_past_dowelled_joint", LimitShape.Length),
        new(Boundaries, "end_at_undowelled_joint", LimitShape.YesNo),
        new(Boundaries, "whole_slab_below", LimitShape.Length),
        new(Boundaries, "part_only_within_half_slab", LimitShape.YesNo),
        new(Boundaries, "longest_unjointed", LimitShape.Length),
        new(Boundaries, "unjointed_thicknesses_granular", LimitShape.Number),
        new(Boundaries, "unjointed_thicknesses_treated", LimitShape.Number),
        new(Boundaries, "hidden_margin_freeze_thaw", LimitShape.Length, Required: true),
        new(Boundaries, "hidden_margin", LimitShape.Length, Required: true),
        new(Joints, "dowels_per_wheel_path", LimitShape.Count),
        new(Joints, "dowel_spacing", LimitShape.Length, Required: true),
        new(Joints, "least_dowel_diameter", LimitShape.Length, Required: true),
        new(Joints, "heavy_traffic_dowel_diameter", LimitShape.Length),
        new(Joints, "heavy_traffic_dowels_per_wheel_path", LimitShape.Count),
        new(Joints, "heavy_traffic_from_trucks_per_day", LimitShape.Number),
        new(Joints, "diameter_per_thickness", LimitShape.Number),
        new(Joints, "least_dowel_length", LimitShape.Length),
        new(Joints, "least_embedment", LimitShape.Length),
        new(Joints, "clear_of_curb", LimitShape.Length),
        new(Joints, "undowelled_below_thickness", LimitShape.Length),
        new(Joints, "undowelled_below_trucks_per_day", LimitShape.Number),
        new(Joints, "least_transfer", LimitShape.Number),
        new(Joints, "greatest_faulting", LimitShape.Length),
        new(Joints, "tie_longitudinal_from", LimitShape.Length),
        new(Joints, "tie_bar_spacing", LimitShape.Length),
        new(Joints, "one_end_tied_up_to", LimitShape.Length),
        new(Joints, "dowel_intermediate_joints", LimitShape.YesNo, Required: true),
    ];

    internal static BoundaryLimits ToBoundaries(IReadOnlyDictionary<string, LimitValue> limits)
    {
        LimitValue? At(string key) => limits.GetValueOrDefault($"{Boundaries}.{key}");
        return new BoundaryLimits
        {
            LeastLength = At("least_length")!.Number!,
            LeastLengthOrHalfSlab = At("least_length_or_half_slab")?.YesNo,
            LeastLengthUndowelled = At("least_length_undowelled")?.Number,
            LeastRemnant = At("least_remnant")?.Number,
            LeastGap = At("least_gap")?.Number,
            ExtendPastDowelledJoint = At("extend_past_dowelled_joint")?.Number,
            EndAtUndowelledJoint = At("end_at_undowelled_joint")?.YesNo,
            WholeSlabBelow = At("whole_slab_below")?.Number,
            PartOnlyWithinHalfSlab = At("part_only_within_half_slab")?.YesNo,
            LongestUnjointed = At("longest_unjointed")?.Number,
            UnjointedThicknessesGranular = At("unjointed_thicknesses_granular")?.Number,
            UnjointedThicknessesTreated = At("unjointed_thicknesses_treated")?.Number,
            HiddenMarginFreezeThaw = At("hidden_margin_freeze_thaw")!.Number!,
            HiddenMargin = At("hidden_margin")!.Number!,
        };
    }

    internal static JointLimits ToJoints(IReadOnlyDictionary<string, LimitValue> limits, ImmutableArray<DiameterStep> diameters)
    {
        LimitValue? At(string key) => limits.GetValueOrDefault($"{Joints}.{key}");
        return new JointLimits
        {
            DowelsPerWheelPath = At("dowels_per_wheel_path")?.Count,
            DowelSpacing = At("dowel_spacing")!.Number!,
            LeastDowelDiameter = At("least_dowel_diameter")!.Number!,
            HeavyTrafficDowelDiameter = At("heavy_traffic_dowel_diameter")?.Number,
            HeavyTrafficDowelsPerWheelPath = At("heavy_traffic_dowels_per_wheel_path")?.Count,
            HeavyTrafficFrom = At("heavy_traffic_from_trucks_per_day")?.Number,
            DiameterPerThickness = At("diameter_per_thickness")?.Number,
            DiametersByThickness = diameters,
            LeastDowelLength = At("least_dowel_length")?.Number,
            LeastEmbedment = At("least_embedment")?.Number,
            ClearOfCurb = At("clear_of_curb")?.Number,
            UndowelledBelowThickness = At("undowelled_below_thickness")?.Number,
            UndowelledBelowTrucks = At("undowelled_below_trucks_per_day")?.Number,
            LeastTransfer = At("least_transfer")?.Number,
            GreatestFaulting = At("greatest_faulting")?.Number,
            TieLongitudinalFrom = At("tie_longitudinal_from")?.Number,
            TieBarSpacing = At("tie_bar_spacing")?.Number,
            OneEndTiedUpTo = At("one_end_tied_up_to")?.Number,
            DowelIntermediateJoints = At("dowel_intermediate_joints")!.YesNo!,
        };
    }

    /// <summary>The limits of a set by path; limits that do not bind are absent.</summary>
    internal static Dictionary<string, LimitValue> FromSet(RuleSet set)
    {
        var (b, j) = (set.Boundaries, set.Joints);
        ImmutableArray<LimitValue?> values =
        [
            Of(b.LeastLength), Of(b.LeastLengthOrHalfSlab), Of(b.LeastLengthUndowelled), Of(b.LeastRemnant), Of(b.LeastGap),
            Of(b.ExtendPastDowelledJoint), Of(b.EndAtUndowelledJoint), Of(b.WholeSlabBelow), Of(b.PartOnlyWithinHalfSlab),
            Of(b.LongestUnjointed), Of(b.UnjointedThicknessesGranular), Of(b.UnjointedThicknessesTreated),
            Of(b.HiddenMarginFreezeThaw), Of(b.HiddenMargin),
            Of(j.DowelsPerWheelPath), Of(j.DowelSpacing), Of(j.LeastDowelDiameter), Of(j.HeavyTrafficDowelDiameter),
            Of(j.HeavyTrafficDowelsPerWheelPath), Of(j.HeavyTrafficFrom), Of(j.DiameterPerThickness), Of(j.LeastDowelLength),
            Of(j.LeastEmbedment), Of(j.ClearOfCurb), Of(j.UndowelledBelowThickness), Of(j.UndowelledBelowTrucks), Of(j.LeastTransfer),
            Of(j.GreatestFaulting), Of(j.TieLongitudinalFrom), Of(j.TieBarSpacing), Of(j.OneEndTiedUpTo), Of(j.DowelIntermediateJoints),
        ];
        return Rows.Zip(values).Where(pair => pair.Second is not null).ToDictionary(pair => pair.First.Path, pair => pair.Second!);
    }

    private static LimitValue? Of(Sourced<double>? limit) => limit is null ? null : new(limit.Value, limit.Sentence, limit.Source);

    private static LimitValue? Of(Sourced<int>? limit) => limit is null ? null : new(limit.Value, limit.Sentence, limit.Source);

    private static LimitValue? Of(Sourced<bool>? limit) => limit is null ? null : new(limit.Value ? 1 : 0, limit.Sentence, limit.Source);
}
