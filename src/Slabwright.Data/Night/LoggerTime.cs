using System.Globalization;

namespace Slabwright.Data.Night;

/// <summary>Reads the times of logger files in the forms loggers write.</summary>
internal static class LoggerTime
{
    private static readonly string[] DayFirst = ["d/M/yyyy", "d/M/yy", "d.M.yyyy", "d.M.yy", "d-M-yyyy", "d-M-yy"];
    private static readonly string[] MonthFirst = ["M/d/yyyy", "M/d/yy", "M-d-yyyy", "M-d-yy"];
    private static readonly string[] YearFirst = ["yyyy-MM-dd", "yyyy/MM/dd", "yyyy.MM.dd", "d MMM yyyy", "dd-MMM-yyyy", "dd-MMM-yy", "MMM d yyyy", "MMM d, yyyy"];
    private static readonly string[] Clocks = ["H:mm:ss", "H:mm", "HH:mm:ss.fff", "h:mm:ss tt", "h:mm tt"];

    /// <summary>Every form of a time, the unambiguous first, then by the order of day and month.</summary>
    /// <param name="dayFirst">True to try day before month first.</param>
    public static IEnumerable<string> Forms(bool dayFirst)
    {
        foreach (var day in YearFirst.Concat(dayFirst ? DayFirst.Concat(MonthFirst) : MonthFirst.Concat(DayFirst)))
        {
            foreach (var clock in Clocks)
            {
                yield return $"{day} {clock}";
                yield return $"{day}'T'{clock}";
                yield return $"{day}, {clock}";
            }
        }
    }

    /// <summary>The first form that reads every text; null when none does.</summary>
    public static string? FormOf(IReadOnlyList<string> texts, bool dayFirst) =>
        texts.Count == 0 ? null : Forms(dayFirst).FirstOrDefault(f => texts.All(t => TryRead(t, f, out _)));

    /// <summary>True when the texts read as well with day and month changed over.</summary>
    public static bool IsAmbiguous(IReadOnlyList<string> texts, string form) =>
        FormOf(texts, dayFirst: !form.StartsWith('d')) is { } other && other != form;

    /// <summary>Reads a time; a trailing Z or offset is left off: loggers write local time.</summary>
    public static bool TryRead(string text, string form, out DateTime time) =>
        DateTime.TryParseExact(text.Trim().TrimEnd('Z'), form, CultureInfo.InvariantCulture, DateTimeStyles.AllowWhiteSpaces, out time);
}
