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

/// <summary>Printed name, code and drawing of one distress type.</summary>
/// <param name="Type">Distress type.</param>
/// <param name="Code">Two letters of our own for the strip.</param>
/// <param name="Name">Name as printed.</param>
/// <param name="Drawing">How it is drawn.</param>
public sealed record DistressKey(DistressType Type, string Code, string Name, DistressDrawing Drawing)
{
    /// <summary>A key for every distress type, in the order of the types.</summary>
    public static ImmutableArray<DistressKey> All { get; } =
    [
        new(DistressType.CornerBreak, "CB", "Corner break", DistressDrawing.Corner),
        new(DistressType.DurabilityCracking, "DC", "Durability cracking", DistressDrawing.Area),
        new(DistressType.LongitudinalCracking, "LC", "Longitudinal cracking", DistressDrawing.CrackAlong),
        new(DistressType.TransverseCracking, "TC", "Transverse cracking", DistressDrawing.CrackAcross),
        new(DistressType.TransverseJointSealDamage, "TL", "Transverse joint seal damage", DistressDrawing.SealAcross),
        new(DistressType.LongitudinalJointSealDamage, "LL", "Longitudinal joint seal damage", DistressDrawing.SealAlong),
        new(DistressType.LongitudinalJointSpalling, "LS", "Spalling of longitudinal joint", DistressDrawing.SpallAlong),
        new(DistressType.TransverseJointSpalling, "TS", "Spalling of transverse joint", DistressDrawing.SpallAcross),
        new(DistressType.MapCracking, "MC", "Map cracking", DistressDrawing.Area),
        new(DistressType.Scaling, "SC", "Scaling", DistressDrawing.Area),
        new(DistressType.PolishedAggregate, "PA", "Polished aggregate", DistressDrawing.Area),
        new(DistressType.Popouts, "PO", "Popouts", DistressDrawing.Area),
        new(DistressType.Blowup, "BU", "Blowup", DistressDrawing.Wedges),
        new(DistressType.Faulting, "FT", "Faulting", DistressDrawing.Step),
        new(DistressType.LaneToShoulderDropoff, "SD", "Lane-to-shoulder dropoff", DistressDrawing.SealAlong),
        new(DistressType.LaneToShoulderSeparation, "SS", "Lane-to-shoulder separation", DistressDrawing.SealAlong),
        new(DistressType.PatchDeterioration, "PT", "Patch deterioration", DistressDrawing.Box),
        new(DistressType.WaterBleedingAndPumping, "WP", "Water bleeding and pumping", DistressDrawing.SealAlong),
        new(DistressType.JointDeterioration, "JD", "Joint deterioration", DistressDrawing.SpallAcross),
        new(DistressType.ShatteredSlab, "SH", "Shattered slab", DistressDrawing.Star),
        new(DistressType.ReactiveAggregate, "RA", "Reactive aggregate", DistressDrawing.Area),
        new(DistressType.ReflectionCracking, "RC", "Reflection cracking", DistressDrawing.CrackAcross),
    ];

    private static readonly ImmutableDictionary<DistressType, DistressKey> ByType = All.ToImmutableDictionary(k => k.Type);

    /// <summary>The key of a distress type.</summary>
    public static DistressKey Of(DistressType type) => ByType[type];
}
