using System.Globalization;
using Slabwright.Core.Measures;

namespace Slabwright.Data.Folder;

/// <summary>
/// Numbers in files without loss: text goes to SI through decimal arithmetic with the exact factor of the unit, and a value is written
/// with as few digits as bring the same double back.
/// </summary>
public static class ExactNumber
{
    /// <summary>Reads a number in a unit as its base value.</summary>
    public static bool TryRead(string text, Unit unit, out double value)
    {
        if (unit.Factor.Equals(1.0)) return double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out value) && double.IsFinite(value);
        value = 0;
        if (!decimal.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)) return false;
        try
        {
            value = ToDouble(number * (decimal)unit.Factor);
            return true;
        }
        catch (OverflowException)
        {
            return false;
        }
    }

    /// <summary>Writes a base value in a unit; reading it back gives the same value.</summary>
    public static string Write(double value, Unit unit)
    {
        if (unit.Factor.Equals(1.0)) return value.ToString("R", CultureInfo.InvariantCulture);
        if (!decimal.TryParse(value.ToString("R", CultureInfo.InvariantCulture), NumberStyles.Float, CultureInfo.InvariantCulture, out var number))
            throw new ArgumentOutOfRangeException(nameof(value), value, "The value is not one that a road has.");
        number /= (decimal)unit.Factor;
        for (var decimals = 0; decimals <= 24; decimals++)
        {
            var text = Math.Round(number, decimals).ToString("0.############################", CultureInfo.InvariantCulture);
            if (TryRead(text, unit, out var back) && back.Equals(value)) return text == "-0" ? "0" : text;
        }

        return number.ToString("0.############################", CultureInfo.InvariantCulture);
    }

    /// <summary>Nearest double to a decimal; the plain conversion may miss by the last bit.</summary>
    private static double ToDouble(decimal number) => double.Parse(number.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
