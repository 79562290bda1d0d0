using System.Collections.Immutable;

namespace Slabwright.Core.Concrete.Mixes;

/// <summary>Exposure that sets the air content.</summary>
public enum AirExposure
{
    /// <summary>No frost.</summary>
    Mild,

    /// <summary>Frost, seldom wet, no salt.</summary>
    Moderate,

    /// <summary>Frost, wet or salted.</summary>
    Severe,
}

/// <summary>One aggregate size of the tables. Water as printed in lb/yd³, turned to kg/m³.</summary>
/// <param name="Size">Greatest size, m.</param>
/// <param name="Plain">Water without entrained air at slumps of 1 to 2, 3 to 4 and 6 to 7 in, lb/yd³.</param>
/// <param name="Entrained">The same with entrained air.</param>
/// <param name="Trapped">Air trapped without entraining, share.</param>
/// <param name="AirByExposure">Air by exposure: mild, moderate, severe, share.</param>
/// <param name="Bulk">Dry-rodded volume of coarse aggregate at fineness moduli 2.4, 2.6, 2.8 and 3.0.</param>
public sealed record ProportionRow(
    double Size, ImmutableArray<double> Plain, ImmutableArray<double> Entrained, double Trapped, ImmutableArray<double> AirByExposure,
    ImmutableArray<double> Bulk)
{
    private const double Inch = 0.0254;
    private const double PoundsPerYard = 0.45359237 / (0.9144 * 0.9144 * 0.9144);

    /// <summary>Mixing water, kg/m³; null outside slumps of 1 to 7 in or where the table is blank. A slump between two rows takes the wetter.</summary>
    public double? Water(bool entrained, double slump)
    {
        var inches = slump / Inch;
        var row = inches switch { < 1 - 1e-9 => -1, <= 2 + 1e-9 => 0, <= 4 + 1e-9 => 1, <= 7 + 1e-9 => 2, _ => -1 };
        var column = entrained ? Entrained : Plain;
        return row < 0 || row >= column.Length ? null : column[row] * PoundsPerYard;
    }

    /// <summary>Air, share.</summary>
    public double Air(bool entrained, AirExposure exposure) => entrained ? AirByExposure[(int)exposure] : Trapped;

    /// <summary>Volume of dry-rodded coarse aggregate, straight between the columns of the table.</summary>
    public double BulkCoarse(double fineness)
    {
        var place = Math.Clamp((fineness - 2.4) / 0.2, -0.5, 3.5);
        var index = Math.Clamp((int)Math.Floor(place), 0, 2);
        return Bulk[index] + (place - index) * (Bulk[index + 1] - Bulk[index]);
    }
}

/// <summary>Tables of the absolute-volume method.</summary>
/// <remarks>Source: ACI 211.1 tables as copied in stored pages.</remarks>
public static class ProportionTables
{
    private const double Inch = 0.0254;
    private const double Psi = 6894.757293168361;

    private static readonly (double Strength, double Plain, double? Entrained)[] Ratios =
        [(2000, 0.82, 0.74), (3000, 0.68, 0.59), (4000, 0.57, 0.48), (5000, 0.48, 0.40), (6000, 0.41, null)];

    /// <summary>The sizes.</summary>
    public static ImmutableArray<ProportionRow> Rows { get; } =
    [
        Row(0.375, [350, 385, 410], [305, 340, 365], 3, [4.5, 6, 7.5], [.50, .48, .46, .44]),
        Row(0.5, [335, 365, 385], [295, 325, 345], 2.5, [4, 5.5, 7], [.59, .57, .55, .53]),
        Row(0.75, [315, 340, 360], [280, 305, 325], 2, [3.5, 5, 6], [.66, .64, .62, .60]),
        Row(1, [300, 325, 340], [270, 295, 310], 1.5, [3, 4.5, 6], [.71, .69, .67, .65]),
        Row(1.5, [275, 300, 315], [250, 275, 290], 1, [2.5, 4.5, 5.5], [.75, .73, .71, .69]),
        Row(2, [260, 285, 300], [240, 265, 280], 0.5, [2, 4, 5], [.78, .76, .74, .72]),
        Row(3, [220, 245, 270], [205, 225, 260], 0.3, [1.5, 3.5, 4.5], [.82, .80, .78, .76]),
        Row(6, [190, 210], [180, 200], 0.2, [1, 3, 4], [.87, .85, .83, .81]),
    ];

    /// <summary>The row of a size; null when the table has none.</summary>
    public static ProportionRow? RowOf(double size) => Rows.FirstOrDefault(r => Math.Abs(r.Size - size) < 1e-4);

    /// <summary>Water–cement ratio for a strength at 28 days, straight between the rows; null outside the table.</summary>
    /// <param name="strength">Compressive strength, Pa.</param> <param name="entrained">Air entrained.</param>
    public static double? WaterCementFor(double strength, bool entrained)
    {
        var psi = strength / Psi;
        for (var i = 1; i < Ratios.Length; i++)
        {
            var (low, high) = (Ratios[i - 1], Ratios[i]);
            if (psi < low.Strength - 1e-6 || psi > high.Strength + 1e-6) continue;
            var share = (psi - low.Strength) / (high.Strength - low.Strength);
            if (!entrained) return low.Plain + share * (high.Plain - low.Plain);
            if (high.Entrained is { } lean) return low.Entrained!.Value + share * (lean - low.Entrained.Value);
            return share < 1e-9 ? low.Entrained : null;
        }

        return null;
    }

    private static ProportionRow Row(double inches, double[] plain, double[] entrained, double trapped, double[] air, double[] bulk) =>
        new(inches * Inch, [.. plain], [.. entrained], trapped / 100, [.. air.Select(a => a / 100)], [.. bulk]);
}
