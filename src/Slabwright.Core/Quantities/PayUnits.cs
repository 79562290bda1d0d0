using System.Globalization;
using Slabwright.Core.Measures;
using Slabwright.Core.Prices;

namespace Slabwright.Core.Quantities;

/// <summary>
/// The units one pay item is measured and worked in: lengths in feet for an item paid in US customary units, in metres for SI.
/// Items paid by the piece follow the first item of the list that has a dimension.
/// </summary>
/// <param name="Pay">Pay unit.</param>
/// <param name="Length">Unit of the lengths in the working.</param>
internal sealed record PayUnits(Unit Pay, Unit Length)
{
    private static readonly HashSet<string> Customary = ["ft", "in", "mi", "yd2", "ft2", "yd3", "ft3"];

    /// <summary>Units of an item within its price list.</summary>
    public static PayUnits For(PayItem item, PriceList prices)
    {
        var guide = item.Unit.Dimension != Dimension.None
            ? item.Unit
            : prices.Items.FirstOrDefault(i => i.Unit.Dimension != Dimension.None)?.Unit;
        return new PayUnits(item.Unit, guide is null || Customary.Contains(guide.Symbol) ? Units.Foot : Units.Metre);
    }

    /// <summary>A length as printed in the working, e.g. <c>6.0 ft</c>.</summary>
    /// <param name="metres">Length, m.</param>
    public string Of(double metres) => Plain(Length.FromBase(metres)) + " " + Length.Symbol;

    /// <summary>The division that turns products of lengths into pay units, e.g. <c> ÷ 9</c>; empty when there is none.</summary>
    public string Divisor()
    {
        var power = Pay.Dimension switch { Dimension.Area => 2, Dimension.Volume => 3, _ => 1 };
        var divisor = Pay.Dimension == Dimension.None ? 1 : Pay.Factor / Math.Pow(Length.Factor, power);
        return Math.Abs(divisor - 1) < 1e-9 ? "" : " ÷ " + Math.Round(divisor, 6).ToString("0.######", CultureInfo.InvariantCulture);
    }

    /// <summary>A quantity as printed: two decimals with its unit, whole numbers for pieces.</summary>
    /// <param name="quantity">Quantity in pay units.</param>
    public string Quantity(double quantity)
    {
        var format = Pay.Dimension == Dimension.None ? "0.##" : "0.00";
        return (quantity.ToString(format, CultureInfo.InvariantCulture) + " " + Pay.Symbol).TrimEnd();
    }

    /// <summary>A number with at least one and at most three decimals.</summary>
    public static string Plain(double value) => Math.Round(value, 3).ToString("0.0##", CultureInfo.InvariantCulture);
}

/// <summary>A measured quantity before rounding and least pay.</summary>
/// <param name="Base">Quantity in base units: m, m², m³ or a count.</param>
/// <param name="Working">The arithmetic without its result, e.g. <c>6.0 ft × 12.0 ft ÷ 9</c>.</param>
/// <param name="Remark">What the reader should know besides; empty for none.</param>
internal readonly record struct Measurement(double Base, string Working, string Remark = "");
