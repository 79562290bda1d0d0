using System.Collections.Immutable;
using Slabwright.Core.Survey;

namespace Slabwright.Sheets.Words;

/// <summary>How a distress is drawn in the strip.</summary>
public enum DistressDrawing
{
    /// <summary>Jagged line across the lane.</summary>
    CrackAcross,

    /// <summary>Jagged line along the lane.</summary>
    CrackAlong,

    /// <summary>Triangle at a slab corner.</summary>
    Corner,

    /// <summary>Toothed band along a transverse joint.</summary>
    SpallAcross,

    /// <summary>Toothed band along a lane edge.</summary>
    SpallAlong,

    /// <summary>Open dots along a transverse joint.</summary>
    SealAcross,

    /// <summary>Open dots along a lane edge.</summary>
    SealAlong,

    /// <summary>Outlined area filled with dots.</summary>
    Area,

    /// <summary>Step across a joint.</summary>
    Step,

    /// <summary>Dashed box.</summary>
    Box,

    /// <summary>Box broken by a star of cracks.</summary>
    Star,

    /// <summary>Two wedges point to point.</summary>
    Wedges,
}

/// <summary>Code and drawing of one distress type.</summary>
/// <param name="Type">Distress type.</param>
/// <param name="Code">Two letters of our own for the strip.</param>
/// <param name="Drawing">How it is drawn.</param>
public sealed record DistressKey(DistressType Type, string Code, DistressDrawing Drawing)
{
    /// <summary>A key for every distress type, in the order of the types.</summary>
    public static ImmutableArray<DistressKey> All { get; } =
    [
        new(DistressType.CornerBreak, "CB", DistressDrawing.Corner),
        new(DistressType.DurabilityCracking, "DC", DistressDrawing.Area),
        new(DistressType.LongitudinalCracking, "LC", DistressDrawing.CrackAlong),
        new(DistressType.TransverseCracking, "TC", DistressDrawing.CrackAcross),
        new(DistressType.TransverseJointSealDamage, "TL", DistressDrawing.SealAcross),
        new(DistressType.LongitudinalJointSealDamage, "LL", DistressDrawing.SealAlong),
        new(DistressType.LongitudinalJointSpalling, "LS", DistressDrawing.SpallAlong),
        new(DistressType.TransverseJointSpalling, "TS", DistressDrawing.SpallAcross),
        new(DistressType.MapCracking, "MC", DistressDrawing.Area),
        new(DistressType.Scaling, "SC", DistressDrawing.Area),
        new(DistressType.PolishedAggregate, "PA", DistressDrawing.Area),
        new(DistressType.Popouts, "PO", DistressDrawing.Area),
        new(DistressType.Blowup, "BU", DistressDrawing.Wedges),
        new(DistressType.Faulting, "FT", DistressDrawing.Step),
        new(DistressType.LaneToShoulderDropoff, "SD", DistressDrawing.SealAlong),
        new(DistressType.LaneToShoulderSeparation, "SS", DistressDrawing.SealAlong),
        new(DistressType.PatchDeterioration, "PT", DistressDrawing.Box),
        new(DistressType.WaterBleedingAndPumping, "WP", DistressDrawing.SealAlong),
        new(DistressType.JointDeterioration, "JD", DistressDrawing.SpallAcross),
        new(DistressType.ShatteredSlab, "SH", DistressDrawing.Star),
        new(DistressType.ReactiveAggregate, "RA", DistressDrawing.Area),
        new(DistressType.ReflectionCracking, "RC", DistressDrawing.CrackAcross),
    ];

    private static readonly ImmutableDictionary<DistressType, DistressKey> ByType = All.ToImmutableDictionary(k => k.Type);

    /// <summary>The key of a distress type.</summary>
    public static DistressKey Of(DistressType type) => ByType[type];
}
