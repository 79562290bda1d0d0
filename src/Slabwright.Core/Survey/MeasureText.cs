using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text;
using Slabwright.Core.Measures;

namespace Slabwright.Core.Survey;

/// <summary>How reading a measure from a cell ended.</summary>
internal enum MeasureEnding
{
    /// <summary>A number with its unit, or without one.</summary>
    Read,

    /// <summary>Not a number.</summary>
    NotANumber,

    /// <summary>A number, but what follows is no known unit.</summary>
    UnitUnknown,
}

/// <summary>
/// Reads numbers and measures as people write them: <c>3</c>, <c>3 in</c>, <c>0.25"</c>, <c>1/4 in</c>, <c>1 1/2"</c>, <c>2' 6"</c>,
/// <c>½ in</c>, <c>3,5</c>, <c>1,234.5 ft</c>, <c>40 %</c>.
/// </summary>
internal static class MeasureText
{
    private static readonly Unit Yard = new("yd", Dimension.Length, 0.9144);

    private static readonly Dictionary<string, Unit> Names = new(StringComparer.OrdinalIgnoreCase)
    {
        ["in"] = Units.Inch, ["in."] = Units.Inch, ["inch"] = Units.Inch, ["inches"] = Units.Inch, ["ins"] = Units.Inch, ["\""] = Units.Inch,
        ["''"] = Units.Inch, ["ft"] = Units.Foot, ["ft."] = Units.Foot, ["foot"] = Units.Foot, ["feet"] = Units.Foot, ["'"] = Units.Foot,
        ["lf"] = Units.Foot, ["yd"] = Yard, ["yds"] = Yard, ["yard"] = Yard, ["yards"] = Yard,
        ["mm"] = Units.Millimetre, ["millimetre"] = Units.Millimetre, ["millimetres"] = Units.Millimetre, ["millimeter"] = Units.Millimetre,
        ["millimeters"] = Units.Millimetre, ["cm"] = Units.Centimetre, ["centimetre"] = Units.Centimetre, ["centimetres"] = Units.Centimetre,
        ["centimeter"] = Units.Centimetre, ["centimeters"] = Units.Centimetre, ["m"] = Units.Metre, ["metre"] = Units.Metre,
        ["metres"] = Units.Metre, ["meter"] = Units.Metre, ["meters"] = Units.Metre, ["km"] = Units.Kilometre,
        ["kilometre"] = Units.Kilometre, ["kilometres"] = Units.Kilometre, ["kilometer"] = Units.Kilometre, ["kilometers"] = Units.Kilometre,
        ["mi"] = Units.Mile, ["mile"] = Units.Mile, ["miles"] = Units.Mile,
        ["m2"] = Units.SquareMetre, ["m²"] = Units.SquareMetre, ["sqm"] = Units.SquareMetre, ["sq m"] = Units.SquareMetre,
        ["m^2"] = Units.SquareMetre, ["ft2"] = Units.SquareFoot, ["ft²"] = Units.SquareFoot, ["ft^2"] = Units.SquareFoot,
        ["sf"] = Units.SquareFoot, ["sqft"] = Units.SquareFoot, ["sq ft"] = Units.SquareFoot, ["sq. ft."] = Units.SquareFoot,
        ["yd2"] = Units.SquareYard, ["yd²"] = Units.SquareYard, ["yd^2"] = Units.SquareYard, ["sy"] = Units.SquareYard,
        ["sqyd"] = Units.SquareYard, ["sq yd"] = Units.SquareYard,
        ["%"] = Units.Percent, ["pct"] = Units.Percent, ["percent"] = Units.Percent, ["per cent"] = Units.Percent,
        ["% of thickness"] = Units.Percent, ["% of slab"] = Units.Percent, ["share"] = Units.ShareOfOne,
        ["share of thickness"] = Units.ShareOfOne, ["ratio"] = Units.ShareOfOne,
    };

    private static readonly Dictionary<string, Unit>.AlternateLookup<ReadOnlySpan<char>> NamesBySpan =
        Names.GetAlternateLookup<ReadOnlySpan<char>>();

    /// <summary>Finds a unit by any of its common spellings.</summary>
    public static bool TryUnit(ReadOnlySpan<char> text, [NotNullWhen(true)] out Unit? unit) => NamesBySpan.TryGetValue(text.Trim(), out unit);

    /// <summary>Reads a measure. A feet-and-inches text ends in feet.</summary>
    /// <param name="text">Cell text.</param>
    /// <param name="mark">The file's decimal mark.</param>
    /// <param name="value">The number.</param>
    /// <param name="unit">The unit written in the cell, or null.</param>
    public static MeasureEnding Read(string text, DecimalMark mark, out double value, out Unit? unit)
    {
        unit = null;
        var plain = Plain(text).AsSpan();
        var cut = NumberLength(plain);
        if (cut == 0 || !TryNumber(plain[..cut], mark, out value))
        {
            value = 0;
            return MeasureEnding.NotANumber;
        }

        var rest = plain[cut..].Trim();
        if (rest.Length == 0) return MeasureEnding.Read;
        if (TryUnit(rest, out unit)) return MeasureEnding.Read;
        return TryFeetAndInches(rest, mark, ref value, out unit) ? MeasureEnding.Read : MeasureEnding.UnitUnknown;
    }

    /// <summary>Reads a number with decimal point or comma, grouped thousands, or a fraction such as <c>1 1/4</c>.</summary>
    public static bool TryNumber(ReadOnlySpan<char> text, DecimalMark mark, out double value)
    {
        text = text.Trim();
        var slash = text.IndexOf('/');
        if (slash >= 0) return TryFraction(text, slash, mark, out value);
        Span<char> digits = stackalloc char[40];
        return TryPlainDigits(text, mark, digits, out var used)
            & double.TryParse(digits[..used], NumberStyles.Float, CultureInfo.InvariantCulture, out value) && double.IsFinite(value);
    }

    private static bool TryFeetAndInches(ReadOnlySpan<char> rest, DecimalMark mark, ref double feet, out Unit? unit)
    {
        unit = null;
        var end = 0;
        while (end < rest.Length && !char.IsAsciiDigit(rest[end]) && rest[end] != ' ' && rest[end] != '-') end++;
        if (end == 0 || !TryUnit(rest[..end], out var first) || first != Units.Foot) return false;
        var inches = rest[end..].TrimStart(" -");
        var cut = NumberLength(inches);
        if (cut == 0 || !TryNumber(inches[..cut], mark, out var more) || more is < 0 or >= 12) return false;
        if (!TryUnit(inches[cut..], out var second) || second != Units.Inch) return false;
        feet += (feet < 0 || double.IsNegative(feet) ? -more : more) / 12;
        unit = Units.Foot;
        return true;
    }

    private static bool TryFraction(ReadOnlySpan<char> text, int slash, DecimalMark mark, out double value)
    {
        value = 0;
        var front = text[..slash].TrimEnd();
        var gap = front.LastIndexOfAny(' ', '-');
        var whole = 0.0;
        if (gap > 0 && !TryNumber(front[..gap], mark, out whole)) return false;
        if (!int.TryParse(front[(gap > 0 ? gap + 1 : 0)..], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var top)) return false;
        if (!int.TryParse(text[(slash + 1)..].Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var bottom) || bottom == 0) return false;
        value = whole < 0 ? whole - (double)top / bottom : whole + (double)top / bottom;
        return true;
    }

    /// <summary>Length of the leading part made of what numbers are made of.</summary>
    private static int NumberLength(ReadOnlySpan<char> text)
    {
        var end = 0;
        for (var i = 0; i < text.Length; i++)
        {
            var c = text[i];
            var exponent = c is 'e' or 'E' && i > 0 && char.IsAsciiDigit(text[i - 1]) && i + 1 < text.Length
                && (char.IsAsciiDigit(text[i + 1]) || text[i + 1] is '-' or '+');
            if (char.IsAsciiDigit(c) || exponent) end = i + 1;
            else if (c is not ('.' or ',' or ' ' or '/' or '+' or '-' or '’') && !(c == '\'' && IsGroup(text, i))) break;
        }

        return end;
    }

    /// <summary>True for an apostrophe between a digit and exactly three digits, as some countries group thousands.</summary>
    private static bool IsGroup(ReadOnlySpan<char> text, int i) =>
        i > 0 && char.IsAsciiDigit(text[i - 1]) && i + 3 < text.Length && char.IsAsciiDigit(text[i + 1]) && char.IsAsciiDigit(text[i + 2])
        && char.IsAsciiDigit(text[i + 3]) && (i + 4 == text.Length || !char.IsAsciiDigit(text[i + 4]));

    /// <summary>Writes a number with a decimal point and no grouping.</summary>
    private static bool TryPlainDigits(ReadOnlySpan<char> text, DecimalMark mark, Span<char> digits, out int used)
    {
        used = 0;
        if (text.Length is 0 or > 40) return false;
        var (point, group) = Marks(text, mark);
        var lastGroup = -1;
        var seenPoint = false;
        for (var i = 0; i < text.Length; i++)
        {
            var c = text[i];
            if (c == point && !seenPoint)
            {
                if (lastGroup >= 0 && i - lastGroup != 4) return false;
                seenPoint = true;
                digits[used++] = '.';
            }
            else if (c == group || c is ' ' or '\'' or '’')
            {
                if (seenPoint || i == 0 || !char.IsAsciiDigit(text[i - 1]) || (lastGroup >= 0 && i - lastGroup != 4)) return false;
                lastGroup = i;
            }
            else if (c is '.' or ',')
            {
                return false;
            }
            else
            {
                digits[used++] = c;
            }
        }

        return lastGroup < 0 || seenPoint || text.Length - lastGroup == 4;
    }

    /// <summary>Which of point and comma is the decimal mark in this number, and which one groups.</summary>
    private static (char Point, char Group) Marks(ReadOnlySpan<char> text, DecimalMark mark)
    {
        var point = text.LastIndexOf('.');
        var comma = text.LastIndexOf(',');
        if (point >= 0 && comma >= 0) return comma > point ? (',', '.') : ('.', ',');
        if (comma >= 0) return mark != DecimalMark.Comma && Groups(text, ',') ? ('.', ',') : (',', '.');
        return point >= 0 && (mark == DecimalMark.Comma || text.Count('.') > 1) && Groups(text, '.') ? (',', '.') : ('.', ',');
    }

    /// <summary>True when a mark stands only before groups of three digits and not after a leading zero.</summary>
    private static bool Groups(ReadOnlySpan<char> text, char mark)
    {
        var digits = text.TrimStart("+-");
        var first = digits.IndexOf(mark);
        if (first is < 1 or > 3 || digits[0] == '0') return false;
        for (var rest = digits[(first + 1)..]; ; rest = rest[4..])
        {
            if (rest.Length < 3 || !char.IsAsciiDigit(rest[0]) || !char.IsAsciiDigit(rest[1]) || !char.IsAsciiDigit(rest[2])) return false;
            if (rest.Length == 3) return true;
            if (rest[3] != mark) return false;
        }
    }

    /// <summary>Straight quotes, plain spaces, spelled-out fractions, trimmed.</summary>
    private static string Plain(string text)
    {
        var trimmed = text.Trim();
        if (IsPlain(trimmed)) return trimmed;
        var plain = new StringBuilder(trimmed.Length + 4);
        foreach (var c in trimmed)
        {
            if (c is '½' or '¼' or '¾' or '⅛' or '⅜' or '⅝' or '⅞')
            {
                if (plain.Length > 0 && char.IsAsciiDigit(plain[^1])) plain.Append(' ');
                plain.Append(c switch { '½' => "1/2", '¼' => "1/4", '¾' => "3/4", '⅛' => "1/8", '⅜' => "3/8", '⅝' => "5/8", _ => "7/8" });
            }
            else
            {
                plain.Append(c switch
                {
                    '″' or '”' or '“' => '"',
                    '′' or '’' or '‘' => '\'',
                    '−' or '–' => '-',
                    '\u00a0' or '\u202f' or '\u2009' or '\t' => ' ',
                    _ => c,
                });
            }
        }

        return plain.ToString();
    }

    private static bool IsPlain(string text)
    {
        foreach (var c in text)
        {
            if (c > 126 || c == '\t') return false;
        }

        return true;
    }
}
