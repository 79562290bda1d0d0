using System.Globalization;
using Slabwright.Core.Measures;

namespace Slabwright.Core.Survey;

/// <summary>Reads days as people write them; day first or month first follows the unit system where the day itself leaves it open.</summary>
internal static class DayText
{
    // Spreadsheets count days from 1899-12-30; 20,000 is in 1954 and 80,000 in 2119. Common practice.
    private const int LeastSerial = 20_000;
    private const int MostSerial = 80_000;

    private static readonly string[] Named =
    [
        "d MMM yyyy", "d MMMM yyyy", "MMM d yyyy", "MMMM d yyyy", "d MMM yy", "MMM d yy", "ddd d MMM yyyy", "ddd MMM d yyyy",
    ];

    /// <summary>Reads a day; <paramref name="orderAssumed"/> is true when day and month could be the other way round.</summary>
    public static bool TryRead(RawCell cell, UnitSystem system, out DateOnly day, out bool orderAssumed)
    {
        orderAssumed = false;
        day = cell.Day ?? default;
        if (cell.Day is not null) return true;
        if (cell.Number is { } number) return TrySerial(number, out day);
        var text = DatePart(cell.Text.Trim());
        if (TryDigits(text, system, out day, out orderAssumed)) return true;
        var words = text.Replace(',', ' ').Replace('-', ' ').Replace('.', ' ').Replace('/', ' ');
        words = string.Join(' ', words.Split(' ', StringSplitOptions.RemoveEmptyEntries));
        return DateOnly.TryParseExact(words, Named, CultureInfo.InvariantCulture, DateTimeStyles.None, out day);
    }

    /// <summary>Drops a time of day.</summary>
    private static string DatePart(string text)
    {
        var colon = text.IndexOf(':');
        if (colon < 0) return text;
        var cut = text.LastIndexOfAny([' ', 'T', 't'], colon);
        return cut > 0 ? text[..cut].Trim() : text;
    }

    private static bool TrySerial(double number, out DateOnly day)
    {
        day = default;
        if (number is >= 19_000_101 and <= 21_991_231 && number == Math.Floor(number))
        {
            return TryWhole(((int)number).ToString(CultureInfo.InvariantCulture), out day);
        }

        if (number is < LeastSerial or > MostSerial) return false;
        day = new DateOnly(1899, 12, 30).AddDays((int)Math.Floor(number));
        return true;
    }

    private static bool TryWhole(string text, out DateOnly day) =>
        DateOnly.TryParseExact(text, "yyyyMMdd", CultureInfo.InvariantCulture, DateTimeStyles.None, out day);

    private static bool TryDigits(string text, UnitSystem system, out DateOnly day, out bool orderAssumed)
    {
        orderAssumed = false;
        day = default;
        if (text.Length == 8 && TryWhole(text, out day)) return true;
        if (double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var serial)) return TrySerial(serial, out day);
        Span<int> parts = stackalloc int[3];
        if (!TryParts(text, parts, out var mark, out var yearFirst)) return false;
        if (yearFirst) return TryDay(parts[0], parts[1], parts[2], out day);
        var year = parts[2] is >= 0 and < 100 ? 2000 + parts[2] : parts[2];
        var dayFirst = mark == '.' || system == UnitSystem.Si;
        if (parts[0] > 12) dayFirst = true;
        else if (parts[1] > 12) dayFirst = false;
        else orderAssumed = mark != '.' && parts[0] != parts[1];
        return dayFirst ? TryDay(year, parts[1], parts[0], out day) : TryDay(year, parts[0], parts[1], out day);
    }

    private static bool TryParts(string text, Span<int> parts, out char mark, out bool yearFirst)
    {
        (mark, yearFirst) = ('\0', false);
        var (count, start) = (0, 0);
        for (var i = 0; i <= text.Length; i++)
        {
            if (i < text.Length && char.IsAsciiDigit(text[i])) continue;
            if (i < text.Length && text[i] is not ('/' or '-' or '.')) return false;
            if (i < text.Length && mark != '\0' && text[i] != mark) return false;
            if (count == 3 || i == start || i - start > 4) return false;
            if (count == 0) yearFirst = i - start == 4;
            parts[count++] = int.Parse(text.AsSpan(start, i - start), CultureInfo.InvariantCulture);
            if (i < text.Length) mark = text[i];
            start = i + 1;
        }

        return count == 3;
    }

    private static bool TryDay(int year, int month, int dayOfMonth, out DateOnly day)
    {
        day = default;
        if (year is < 1 or > 9999 || month is < 1 or > 12 || dayOfMonth < 1 || dayOfMonth > DateTime.DaysInMonth(year, month)) return false;
        day = new DateOnly(year, month, dayOfMonth);
        return true;
    }
}
