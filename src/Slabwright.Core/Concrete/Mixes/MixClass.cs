using System.Collections.Immutable;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Concrete.Mixes;

/// <summary>Classes of repair mixes by the hours after which they are opened.</summary>
public enum MixClassId
{
    /// <summary>Two to four hours.</summary>
    FourHours,

    /// <summary>Six to eight hours.</summary>
    EightHours,

    /// <summary>Twelve hours.</summary>
    TwelveHours,

    /// <summary>Twenty to twenty-four hours.</summary>
    Day,

    /// <summary>Three days and more.</summary>
    Ordinary,
}

/// <summary>A published mix of a class, one cubic metre; what the publication leaves out is null.</summary>
/// <param name="Name">Name of the mix in the publication.</param>
/// <param name="Class">Class.</param>
/// <param name="Cements">Cements it is made with.</param>
/// <param name="LeastCement">Least cement, kg/m³.</param>
/// <param name="MostCement">Greatest cement, kg/m³; null where only the least is stated.</param>
/// <param name="WaterCement">Greatest water–cement ratio.</param>
/// <param name="Accelerator">Accelerator.</param>
/// <param name="AcceleratorDose">Accelerator, share of cement mass.</param>
/// <param name="Coarse">Coarse aggregate, kg/m³.</param>
/// <param name="Fine">Fine aggregate, kg/m³.</param>
/// <param name="LeastAir">Least air, share.</param>
/// <param name="MostAir">Greatest air, share.</param>
/// <param name="Says">What else the publication says, in our words.</param>
/// <param name="Source">Where it is published.</param>
public sealed record PublishedMix(
    string Name, MixClassId Class, ImmutableArray<CementKind> Cements, double LeastCement, double? MostCement, double? WaterCement,
    Accelerator Accelerator, double? AcceleratorDose, double? Coarse, double? Fine, double? LeastAir, double? MostAir, string Says,
    SourceRef Source);

/// <summary>Published repair mixes by opening time.</summary>
/// <remarks>Contents given in lb/yd³ are kept as printed and turned with 0.593276 kg/m³.</remarks>
public static class PublishedMixes
{
    private const double PoundsPerYard = 0.45359237 / (0.9144 * 0.9144 * 0.9144);

    /// <summary>The rows.</summary>
    public static ImmutableArray<PublishedMix> All { get; } =
    [
        new("Mix 1", MixClassId.EightHours, [CementKind.TypeI], 525, 525, 0.40, Accelerator.NonChloride, null, 1030, 427, 0.05, 0.065,
            "Opened after 6 to 8 h; no water reducer.", Verified("NCHRP-540", "appendix, p. 27")),
        new("Mix 4", MixClassId.Day, [CementKind.TypeI], 400, 400, 0.43, Accelerator.CalciumChloride, null, 1030, 628, 0.05, 0.065,
            "Opened after 20 to 24 h; slump 85 mm.", Verified("NCHRP-540", "appendix, p. 27")),
        new("full-depth repair, accelerated", MixClassId.EightHours, [CementKind.TypeI, CementKind.TypeIii], 390, 502, null,
            Accelerator.NonChloride, null, null, null, 0.05, 0.08, "Opened after 4 to 6 h with an accelerator, 12 to 72 h without.",
            Verified("FHWA-CHECKLIST-FDR", "full4")),
        new("Class FS", MixClassId.FourHours, [CementKind.TypeI, CementKind.TypeIii], 900 * PoundsPerYard, null, 0.40,
            Accelerator.CalciumChloride, 0.016, null, null, null, null,
            "Open after 4 h at a modulus of rupture of 400 psi; a retarder goes with the accelerator.", Verified("ODOT-499", "sec. 499.06, 2010")),
        new("Class MS", MixClassId.Day, [CementKind.TypeI, CementKind.TypeIii], 800 * PoundsPerYard, null, 0.43, Accelerator.None, null, null,
            null, null, null, "Open after 24 h at a modulus of rupture of 400 psi. The text leaves open whether the 24 h are a least age or only name the class; here they name the class, so set least_age_h where your agency holds to them.", Verified("ODOT-499", "sec. 499.06, 2010")),
        new("fast track", MixClassId.TwelveHours, [CementKind.TypeIii], 710 * PoundsPerYard, null, null, Accelerator.None, null, null, null,
            0.065, 0.065, "More than 400 psi in bending in 12 h.", Verified("IOWA-HR-544", "fast track mix")),
        new("patch mix, 752 lb", MixClassId.Day, [CementKind.TypeI, CementKind.TypeIii], 752 * PoundsPerYard, null, null, Accelerator.None, null,
            null, null, null, null, "In use for patching; hours to opening are not stated with it and the class is ours.",
            Verified("NEBRASKA-PATCH", "abstract")),
        new("patch mix, 799 lb", MixClassId.Day, [CementKind.TypeI, CementKind.TypeIii], 799 * PoundsPerYard, null, null, Accelerator.None, null,
            null, null, null, null, "In use for patching; hours to opening are not stated with it and the class is ours.",
            Verified("NEBRASKA-PATCH", "abstract")),
    ];

    /// <summary>The rows of a class.</summary>
    public static IEnumerable<PublishedMix> Of(MixClassId mixClass) => All.Where(m => m.Class == mixClass);

    private static SourceRef Verified(string tag, string place) => new(tag, place, SourceStatus.Verified);
}
