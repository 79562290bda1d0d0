using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Concrete.Weather;

/// <summary>
/// Makes a series of the rows of a file: drops values no hour can bring, bridges what is missing, and names all of it. Nothing is
/// filled in without a finding and an entry in <see cref="WeatherSeries.Gaps"/>.
/// </summary>
public static class WeatherIntake
{
    /// <summary>Longest hole that is bridged with a warning, h; longer ones are errors, bridged all the same and listed.</summary>
    public const int ShortGap = 3;

    private const int ListedAtMost = 20;

    /// <summary>The series, or null where no hour can be used.</summary>
    /// <param name="rows">Rows in file order.</param> <param name="origin">What the file is.</param> <param name="findings">Added to.</param>
    public static WeatherSeries? Build(IReadOnlyList<WeatherReading> rows, WeatherOrigin origin, ICollection<Finding> findings)
    {
        var own = new List<Finding>();
        if (!origin.Headers.ContainsKey(WeatherVariable.Air))
        {
            findings.Add(new("CON-101", FindingLevel.Error, "The weather has no air temperature.", new(origin.File, 1), null, "Add a column of air temperature, or map one."));
            return null;
        }

        foreach (var row in rows) DropUnbelievable(row, origin, own);
        var hours = InOrder(rows, origin, own);
        var gaps = ImmutableArray.CreateBuilder<WeatherGap>();
        var table = hours.Length == 0 ? null : Table(hours, origin, own, gaps);
        List(own, origin, findings);
        if (table is null)
        {
            findings.Add(new("CON-101", FindingLevel.Error, "The weather has no hour that can be used.", new(origin.File), null, "Check the hours and the air temperatures."));
            return null;
        }

        var series = WeatherAssembly.Series(table, hours[0].Time, origin, findings);
        return series with { Gaps = gaps.ToImmutable(), Findings = [.. findings] };
    }

    private static void DropUnbelievable(WeatherReading row, WeatherOrigin origin, List<Finding> findings)
    {
        foreach (var (variable, header) in origin.Headers)
        {
            var value = row[variable];
            var (least, most, unit) = WeatherLimits.Of(variable);
            if (double.IsNaN(value) || (value >= least && value <= most)) continue;
            row.Values[(int)variable] = double.NaN;
            if (origin.Checked) continue;
            findings.Add(new("CON-103", FindingLevel.Error, "The value is not one an hour can bring; it is not used.", new(origin.File, row.Row, header),
                $"{Text(value)} {unit}", "Check the value and its unit; leave the cell empty where it was not measured.", $"{Text(least)} to {Text(most)} {unit}"));
        }
    }

    /// <summary>Rows that follow one another; others are named and left out.</summary>
    private static WeatherReading[] InOrder(IReadOnlyList<WeatherReading> rows, WeatherOrigin origin, List<Finding> findings)
    {
        var kept = new List<WeatherReading>(rows.Count);
        foreach (var row in rows)
        {
            if (kept.Count == 0 || row.Time > kept[^1].Time) kept.Add(row);
            else if (!origin.Checked)
            {
                findings.Add(new("CON-104", FindingLevel.Error, "The hour is not after the one before; the row is not used.",
                    new(origin.File, row.Row, origin.HourHeader), Stamp(row.Time), "Sort the rows, remove doubled hours and use standard time all year."));
            }
        }

        return [.. kept];
    }

    /// <summary>Values hour by hour from the first row to the last, holes bridged; null where the air temperature is missing throughout.</summary>
    private static double[][]? Table(WeatherReading[] hours, WeatherOrigin origin, List<Finding> findings, ImmutableArray<WeatherGap>.Builder gaps)
    {
        var count = (int)Math.Round((hours[^1].Time - hours[0].Time).TotalHours) + 1;
        var table = new double[WeatherReading.Variables][];
        var rowOf = new long[count];
        for (var v = 0; v < table.Length; v++)
        {
            table[v] = new double[count];
            Array.Fill(table[v], double.NaN);
        }

        foreach (var row in hours)
        {
            var at = (int)Math.Round((row.Time - hours[0].Time).TotalHours);
            rowOf[at] = row.Row;
            for (var v = 0; v < table.Length; v++) table[v][at] = row.Values[v];
        }

        var whole = Holes(count, i => rowOf[i] == 0);
        foreach (var (from, length) in whole) Name(from, length, "all", origin.HourHeader);
        foreach (var (variable, header) in origin.Headers)
        {
            var values = table[(int)variable];
            foreach (var (from, length) in Holes(count, i => double.IsNaN(values[i]) && rowOf[i] != 0)) Name(from, length, WeatherLimits.Words(variable), header);
            Bridge(values);
        }

        return double.IsNaN(table[(int)WeatherVariable.Air][0]) ? null : table;

        void Name(int from, int length, string what, string header)
        {
            gaps.Add(new(hours[0].Time.AddHours(from), length, what));
            if (origin.Checked && what == "all") return;
            var row = Enumerable.Range(from, count - from).Select(i => rowOf[i]).FirstOrDefault(r => r > 0);
            findings.Add(new("CON-105", length <= ShortGap ? FindingLevel.Warning : FindingLevel.Error,
                what == "all" ? "Hours are missing before this row; they are bridged straight." : $"The {what} is missing; it is bridged straight.",
                new(origin.File, row == 0 ? null : row, header), $"{Stamp(hours[0].Time.AddHours(from))}, {length} h", "Fill in the values.", $"{ShortGap} h"));
        }
    }

    private static IEnumerable<(int From, int Length)> Holes(int count, Func<int, bool> missing)
    {
        for (var i = 0; i < count; i++)
        {
            if (!missing(i)) continue;
            var from = i;
            while (i < count && missing(i)) i++;
            yield return (from, i - from);
        }
    }

    /// <summary>Straight between the values on both sides; the nearest value at the ends. All stay missing where none is given.</summary>
    private static void Bridge(double[] values)
    {
        var last = -1;
        for (var i = 0; i < values.Length; i++)
        {
            if (double.IsNaN(values[i])) continue;
            for (var j = last + 1; j < i; j++)
                values[j] = last < 0 ? values[i] : values[last] + (values[i] - values[last]) * (j - last) / (i - last);
            last = i;
        }

        for (var j = last + 1; last >= 0 && j < values.Length; j++) values[j] = values[last];
    }

    private static void List(List<Finding> own, WeatherOrigin origin, ICollection<Finding> findings)
    {
        foreach (var finding in own.Take(ListedAtMost)) findings.Add(finding);
        if (own.Count <= ListedAtMost) return;
        findings.Add(new("CON-110", FindingLevel.Note, "The weather file has more findings than are listed.", new(origin.File), Text(own.Count - ListedAtMost) + " more",
            "Mend those listed and read again."));
    }

    private static string Text(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);

    private static string Stamp(DateTime time) => time.ToString("yyyy-MM-dd'T'HH:mm", CultureInfo.InvariantCulture);
}
