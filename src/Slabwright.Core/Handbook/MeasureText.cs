using System.Globalization;
using System.Text.RegularExpressions;
using Slabwright.Core.Measures;

namespace Slabwright.Core.Handbook;

/// <summary>How reading a measure from text ended.</summary>
public enum MeasureReading
{
    /// <summary>A value was read.</summary>
    Read,

    /// <summary>There is no number in the text.</summary>
    NoNumber,

    /// <summary>The unit is not known.</summary>
    UnknownUnit,

    /// <summary>The unit measures something else.</summary>
    WrongDimension,
}

/// <summary>Reads <c>6 ft</c>, <c>12 ft 6 in</c>, <c>1,200 psi</c> or a bare number, and writes values with a sensible number of digits.</summary>
public static partial class MeasureText
{
    private static readonly Dictionary<string, string> Aliases = new(StringComparer.OrdinalIgnoreCase)
    {
        ["in."] = "in", ["ft."] = "ft", ["'"] = "ft", ["\""] = "in", ["lbs"] = "lb", ["kips"] = "kip", ["degrees"] = "deg", ["°"] = "deg",
        ["psi/in"] = "pci", ["hr"] = "h", ["pcf"] = "lb/ft3", ["percent"] = "%",
        ["/ft"] = "1/ft", ["/m"] = "1/m", ["/in"] = "1/in", ["/yd2"] = "1/yd2", ["/m2"] = "1/m2", ["/ft2"] = "1/ft2",
        ["/°F"] = "1/°F", ["/K"] = "1/K", ["1/°C"] = "1/K", ["/°C"] = "1/K", ["F"] = "°F", ["C"] = "°C",
    };

    /// <summary>Reads text into a base value.</summary>
    /// <param name="text">Number with or without a unit; feet with inches are added.</param>
    /// <param name="unit">Unit of a bare number; also fixes the dimension.</param>
    /// <param name="value">Base value when the reading succeeded.</param>
    public static MeasureReading Read(string text, Unit unit, out double value)
    {
        value = 0;
        var parts = Parts().Matches(text.Trim());
        if (parts.Count == 0 || parts.Sum(p => p.Length) != text.Trim().Length) return MeasureReading.NoNumber;
        if (parts.Count > 1 && unit.Dimension != Dimension.Length) return MeasureReading.NoNumber;
        foreach (Match part in parts)
        {
            var reading = ReadUnit(part.Groups["unit"].Value.Trim(), unit, out var found);
            if (reading != MeasureReading.Read) return reading;
            var digits = part.Groups["number"].Value.Replace(",", "");
            value += found.ToBase(double.Parse(digits, NumberStyles.Float, CultureInfo.InvariantCulture));
        }

        return MeasureReading.Read;
    }

    /// <summary>The unit a text is written in, or the given one where it names none that fits.</summary>
    public static Unit UnitOf(string text, Unit unit)
    {
        var part = Parts().Match(text.Trim());
        return part.Success && ReadUnit(part.Groups["unit"].Value.Trim(), unit, out var found) == MeasureReading.Read ? found : unit;
    }

    /// <summary>Writes a base value in a unit with four significant digits, or whole.</summary>
    public static string Write(double value, Unit unit, bool whole = false)
    {
        var shown = unit.FromBase(value);
        var number = whole ? shown.ToString("N0", CultureInfo.InvariantCulture) : Significant(shown, 4);
        return unit.Symbol.Length == 0 ? number : $"{number} {unit.Symbol}";
    }

    /// <summary>A number with so many significant digits, thousands grouped; very large and very small ones by powers of ten.</summary>
    public static string Significant(double value, int digits)
    {
        if (value == 0 || !double.IsFinite(value)) return double.IsInfinity(value) ? "unlimited" : value.ToString("0", CultureInfo.InvariantCulture);
        var power = (int)Math.Floor(Math.Log10(Math.Abs(value)));
        if (power is < -5 or > 9) return value.ToString("0." + new string('#', digits - 1) + "e0", CultureInfo.InvariantCulture);
        return value.ToString("N" + Math.Clamp(digits - 1 - power, 0, 10), CultureInfo.InvariantCulture);
    }

    private static MeasureReading ReadUnit(string symbol, Unit expected, out Unit unit)
    {
        unit = expected;
        if (symbol.Length == 0) return MeasureReading.Read;
        symbol = symbol.Replace('²', '2').Replace('³', '3');
        if (Aliases.TryGetValue(symbol, out var plain)) symbol = plain;
        if (expected.Dimension == Dimension.None && symbol is "each") return MeasureReading.Read;
        symbol = (expected.Dimension, symbol) switch
        {
            (Dimension.Force, "lb") => "lbf",
            (Dimension.TemperatureDifference, "°F") => Units.FahrenheitDegree.Symbol,
            (Dimension.TemperatureDifference, "°C") => Units.Kelvin.Symbol,
            _ => symbol,
        };
        if (!Units.TryFind(symbol, out var found)) return MeasureReading.UnknownUnit;
        unit = found;
        return found.Dimension == expected.Dimension ? MeasureReading.Read : MeasureReading.WrongDimension;
    }

    [GeneratedRegex(
        @"\G(?<number>[+-]?(?:(?:\d{1,3}(?:,\d{3})+|\d+)(?:\.\d+)?|\.\d+)(?:[eE][+-]?\d+)?)\s*"
        + @"(?<unit>(?:1?/)?[^\d\s/,+.-][^\d\s/,]*(?:[23][^\d\s/,]*)?(?:/[^\d\s/]+(?:[23][^\d\s/]*)?)?)?\s*")]
    private static partial Regex Parts();
}
