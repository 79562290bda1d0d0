using System.Collections.Immutable;
using Slabwright.Core.Joints.Faulting;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;

namespace Slabwright.Core.Joints.Design;

/// <summary>
/// Faulting of a joint month by month by the incremental model, coefficients of the manual of practice 2008; for ranking alternatives of
/// one place, which share every assumption below.
/// </summary>
/// <remarks>
/// Source: NCHRP 1-37A part 3 ch. 4 (from memory). Assumed, common practice: erodibility 2 on cement-treated, 3 on asphalt-treated and
/// permeable base, 4 on granular, 5 on subgrade; frozen a quarter of the year where slabs freeze and thaw, else 2 %; 40 % fines; three wet days
/// an inch of rain, 100 where rain is not given; 6 in of base under the slab; corners lifted 0.02 in. Corner deflections without bars come
/// from the plates with the axle in the wheel paths.
/// </remarks>
internal static class IncrementalForecast
{
    private const double Inch = 0.0254;
    private const double Weight = 2400 * SlabTemperature.Gravity;

    /// <summary>Mean faulting at the end of the design years, m.</summary>
    /// <param name="conditions">The build-up.</param> <param name="bars">The bars; null for none.</param>
    /// <param name="free">Deflection of the joint without bars under each class, m.</param>
    public static double After(JointConditions conditions, BarLayout? bars, IReadOnlyList<(AxleClass Class, double Deflection)> free)
    {
        var months = (int)Math.Round(12 * conditions.DesignYears);
        if (months < 1 || free.Count == 0) return 0;
        return FaultingProjection.Run(Case(conditions, bars, free), months)[^1].Month.Faulting;
    }

    private static FaultingCase Case(JointConditions c, BarLayout? bars, IReadOnlyList<(AxleClass Class, double Deflection)> free) => new()
    {
        Coefficients = FaultingCoefficients.Manual2008,
        Site = Site(c),
        Reaction = c.Reaction,
        Thickness = c.Thickness,
        Strength = c.Strength,
        Bars = bars is null ? null : Bars(c, bars),
        Interlock = false,
        Opening = c.JointWidth,
        BaseTransfer = c.Base switch { BaseKind.CementTreated => 0.40, BaseKind.AsphaltTreated => 0.30, _ => 0.20 },
        Loads = [.. free.Select(f => new CornerLoad(f.Deflection, f.Class.PerDay * 365.25 / 12))],
        Growth = c.Growth,
    };

    /// <summary>The model's own bars at 12 in, weakened by what the outermost bar of this row shares with its neighbours.</summary>
    private static FaultingBars Bars(JointConditions c, BarLayout bars)
    {
        var own = FaultingBars.OfSize(bars.Diameter, bars.Spacing, c.Thickness);
        var share = FaultingForecast.SharedOut(c, bars) / DowelBar.GroupSum(12 * Inch, c.Radius, 1);
        return own with { New = own.New * share, Worn = own.Worn * share };
    }

    private static FaultingSite Site(JointConditions c) => new()
    {
        Erodibility = c.Base switch
        {
            BaseKind.CementTreated => 2,
            BaseKind.AsphaltTreated or BaseKind.Permeable => 3,
            BaseKind.Granular => 4,
            _ => 5,
        },
        FrozenShare = c.Climate.FreezeThaw ? 0.25 : 0.02,
        FinesShare = 0.40,
        WetDays = c.Climate.AnnualPrecipitation is { } rain ? 3 * Units.Inch.FromBase(rain) : 100,
        Overburden = Weight * (c.Thickness + 6 * Inch),
        CornerLift = 0.02 * Inch,
    };
}
