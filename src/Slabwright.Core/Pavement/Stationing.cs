using System.Collections.Immutable;
using System.Globalization;

namespace Slabwright.Core.Pavement;

/// <summary>How a project writes stations.</summary>
public enum StationStyle
{
    /// <summary>Hundreds of feet: <c>123+45.6</c> is 12,345.6 ft.</summary>
    Feet,

    /// <summary>Thousands of metres: <c>1+234.5</c> is 1,234.5 m.</summary>
    Metres,

    /// <summary>Mileposts: <c>MP 12.345</c>.</summary>
    Mileposts,
}

/// <summary>A place where the written stations jump: from here on the station is <paramref name="Ahead"/> and counts on.</summary>
/// <param name="At">Metres along the road.</param>
/// <param name="Ahead">Station value ahead of the equation, in metres.</param>
public sealed record StationEquation(double At, double Ahead);

/// <summary>
/// Turns metres along the road into written stations and back. Stations may grow against the direction of travel
/// (<see cref="Direction"/> −1) and may jump at station equations, where a written station can stand for more than one place.
/// </summary>
public sealed partial record Stationing
{
    /// <summary>How stations are written.</summary>
    public required StationStyle Style { get; init; }

    /// <summary>Station value at the start of the road, in metres.</summary>
    public double Start { get; init; }

    /// <summary>+1 where stations grow in the direction of travel, −1 where they fall.</summary>
    public int Direction { get; init; } = 1;

    /// <summary>Station equations, sorted by <see cref="StationEquation.At"/>.</summary>
    public ImmutableArray<StationEquation> Equations { get; init; } = [];

    /// <summary>Station value in metres at a place.</summary>
    public double ValueAt(double at)
    {
        var (from, value) = (0.0, Start);
        foreach (var equation in Equations)
        {
            if (at < equation.At) break;
            (from, value) = (equation.At, equation.Ahead);
        }

        return value + Direction * (at - from);
    }

    /// <summary>The written station at a place, e.g. <c>123+45.6</c>, <c>1+234.56</c> or <c>MP 12.345</c>.</summary>
    /// <param name="at">Metres along the road.</param>
    public string Format(double at)
    {
        var value = ValueAt(at);
        return Style switch
        {
            StationStyle.Feet => Plus(value / 0.3048, 100, 1),
            StationStyle.Metres => Plus(value, 1000, 2),
            _ => "MP " + (value / 1609.344).ToString("0.000", CultureInfo.InvariantCulture),
        };
    }

    /// <summary>Writes a value as whole stations, plus sign and remainder with the given decimals, carrying the rounding.</summary>
    private static string Plus(double value, int hundred, int decimals)
    {
        var sign = value < 0 ? "-" : "";
        var rounded = Math.Round(Math.Abs(value), decimals, MidpointRounding.AwayFromZero);
        var whole = Math.Floor(rounded / hundred);
        var rest = rounded - whole * hundred;
        var digits = hundred == 100 ? "00" : "000";
        return sign + whole.ToString("0", CultureInfo.InvariantCulture) + "+"
            + rest.ToString(digits + "." + new string('0', decimals), CultureInfo.InvariantCulture);
    }
}
