using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;

namespace Slabwright.Core.Pavement;

/// <content>Reads written stations back into places along the road.</content>
public sealed partial record Stationing
{
    /// <summary>
    /// Reads a written station and gives every place it can stand for, in metres along the road and in order: two where stations
    /// overlap behind an equation, none where an equation skips the value. Places before the start or past the end of the road are
    /// given too; the road's length is the caller's to check.
    /// </summary>
    /// <remarks>
    /// Understands <c>123+45.6</c> in feet, <c>1+234.5</c> in metres, <c>MP 12.345</c> and <c>12.345</c> for mileposts, plain numbers
    /// in the style's unit, and numbers with <c>ft</c>, <c>m</c>, <c>km</c> or <c>mi</c>. A decimal comma is understood unless exactly
    /// three digits follow it in a plain number, which could be thousands.
    /// </remarks>
    /// <param name="text">The station as written.</param>
    /// <param name="places">Metres along the road; empty when the text is a station that this road does not have.</param>
    /// <returns>False when the text is no station in this style.</returns>
    public bool TryParse(string text, out ImmutableArray<double> places)
    {
        var read = TryParseValue(text, out var value);
        places = read ? PlacesOf(value) : [];
        return read;
    }

    /// <summary>Reads a written station as a station value in metres, without asking where on the road it lies.</summary>
    /// <param name="text">The station as written.</param>
    /// <param name="value">Station value, m.</param>
    /// <returns>False when the text is no station in this style.</returns>
    public bool TryParseValue(string text, out double value)
    {
        value = 0;
        var match = StationPattern().Match(text.Replace('\u2212', '-').Trim());
        if (!match.Success || !PrefixFits(match.Groups["prefix"].Value)) return false;
        var plus = match.Groups["rest"];
        var read = plus.Success
            ? TryReadPlus(match.Groups["whole"].Value, plus.Value, match.Groups["unit"].Value, out value)
            : TryReadPlain(match.Groups["plain"].Value, match.Groups["unit"].Value, match.Groups["prefix"].Value, out value);
        if (read && match.Groups["sign"].Value == "-") value = -value;
        return read;
    }

    /// <summary>Every place along the road that carries a station value, in order.</summary>
    /// <param name="value">Station value, m.</param>
    /// <remarks>
    /// A rounded station just outside its stretch stands for the stretch's end, unless a place next to it carries the station exactly.
    /// </remarks>
    public ImmutableArray<double> PlacesOf(double value)
    {
        var rounding = HalfLastDigit + 1e-9;
        var found = new List<(double Place, bool Exact)>(Equations.Length + 1);
        for (var i = 0; i <= Equations.Length; i++)
        {
            var (origin, first) = i == 0 ? (0.0, Start) : (Equations[i - 1].At, Equations[i - 1].Ahead);
            var from = i == 0 ? double.NegativeInfinity : origin;
            var to = i == Equations.Length ? double.PositiveInfinity : Equations[i].At;
            var at = origin + Direction * (value - first);
            if (at < from - rounding || at > to + rounding) continue;
            found.Add((Math.Min(Math.Max(at, from), to), at >= from && at <= to));
        }

        return [.. found.Where(f => f.Exact || !found.Any(o => o.Exact && Math.Abs(o.Place - f.Place) <= rounding)).Select(f => f.Place).Distinct()];
    }

    /// <summary>Half of the last digit that <see cref="Format"/> writes, m: a written station is this exact and no more.</summary>
    public double HalfLastDigit => Style switch
    {
        StationStyle.Feet => 0.05 * Foot,
        StationStyle.Metres => 0.005,
        _ => 0.0005 * Mile,
    };

    private const double Foot = 0.3048;
    private const double Mile = 1609.344;

    private bool PrefixFits(string prefix) => prefix.ToUpperInvariant() switch
    {
        "" => true,
        "MP" => Style == StationStyle.Mileposts,
        "KM" => Style == StationStyle.Metres,
        _ => Style != StationStyle.Mileposts,
    };

    private bool TryReadPlus(string whole, string rest, string unit, out double value)
    {
        value = 0;
        var (hundred, digits, factor, own) = Style == StationStyle.Feet ? (100, 2, Foot, "ft") : (1000, 3, 1.0, "m");
        var integral = rest.Split('.', ',')[0].Length;
        var fits = Style != StationStyle.Mileposts && integral == digits
            && (unit.Length == 0 || unit.Equals(own, StringComparison.OrdinalIgnoreCase));
        if (!fits) return false;
        value = (Number(whole) * hundred + Number(rest.Replace(',', '.'))) * factor;
        return true;
    }

    private bool TryReadPlain(string plain, string unit, string prefix, out double value)
    {
        value = 0;
        var comma = plain.IndexOf(',');
        if (comma >= 0 && plain.Length - comma - 1 == 3 && Style != StationStyle.Mileposts) return false;
        if (prefix.Length > 0 && unit.Length > 0) return false;
        value = Number(plain.Replace(',', '.')) * (prefix.Equals("km", StringComparison.OrdinalIgnoreCase) ? 1000 : FactorOf(unit));
        return true;
    }

    private double FactorOf(string unit) => unit.ToUpperInvariant() switch
    {
        "FT" => Foot,
        "M" => 1,
        "KM" => 1000,
        "MI" => Mile,
        _ => Style switch { StationStyle.Feet => Foot, StationStyle.Metres => 1, _ => Mile },
    };

    private static double Number(string text) => double.Parse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    [GeneratedRegex(
        @"^(?<prefix>MP|KM|STA\.?)?\s*(?<sign>[-+])?(?:(?<whole>\d{1,9})\+(?<rest>\d{2,3}(?:[.,]\d{1,9})?)|(?<plain>\d{1,12}(?:[.,]\d{1,20})?))"
        + @"\s*(?<unit>ft|m|km|mi)?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex StationPattern();
}
