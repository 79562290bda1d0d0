using System.Globalization;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;

namespace Slabwright.Core.Joints.Design;

/// <summary>How this step writes values in sentences: both systems, customary first.</summary>
internal static class JointWords
{
    public static readonly UnitPair Small = new(Units.Inch, Units.Millimetre);
    public static readonly UnitPair Stress = new(Units.Psi, Units.Megapascal);
    public static readonly UnitPair Share = new(Units.Percent);
    public static readonly UnitPair Plain = new(Units.One);

    /// <summary>A value in both units, e.g. <c>1.50 in (38 mm)</c>; once where both are the same.</summary>
    public static string Of(double value, UnitPair units) => units.Customary == units.Si
        ? Text(value, units.Si)
        : $"{Text(value, units.Customary)} ({Text(value, units.Si)})";

    /// <summary>A bar, hole or small length.</summary>
    public static string Bar(double metres) => $"{Units.Inch.Format(metres, 2)} ({Units.Millimetre.Format(metres, 0)})";

    /// <summary>A length along the road.</summary>
    public static string Long(double metres) => BoundaryWords.Length(metres);

    public static string Count(double number) => number.ToString("N0", CultureInfo.InvariantCulture);

    /// <summary>A layout in words, e.g. <c>8 dowels of 1.25 in (32 mm), 18.00 in (457 mm) long, 4 in each wheel path</c>.</summary>
    public static string Of(BarLayout? layout)
    {
        if (layout is null) return "no dowels";
        var place = layout.Arrangement == BarArrangement.FullWidth
            ? $"over the full width at {Bar(layout.Spacing)}"
            : $"{Count(layout.Bars / 2.0)} in each wheel path";
        return $"{Count(layout.Bars)} {TradeWords.Of(layout.Kind)}s of {Bar(layout.Diameter)}, {Bar(layout.Length)} long, {place}";
    }

    private static string Text(double value, Unit unit)
    {
        var number = unit.FromBase(value);
        var size = Math.Abs(number);
        var text = size switch
        {
            >= 1000 => number.ToString("N0", CultureInfo.InvariantCulture),
            >= 0.01 or 0 => number.ToString("0.###", CultureInfo.InvariantCulture),
            _ => number.ToString("0.##E+0", CultureInfo.InvariantCulture),
        };
        return unit.Symbol.Length == 0 ? text : $"{text} {unit.Symbol}";
    }
}
