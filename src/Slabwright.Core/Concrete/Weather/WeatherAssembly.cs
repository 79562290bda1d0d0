using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Concrete.Weather;

/// <summary>Puts checked values together into a series: what the file has no column for, hours marked at their end, typical years.</summary>
internal static class WeatherAssembly
{
    private static readonly WeatherVariable[] Needed = [WeatherVariable.Humidity, WeatherVariable.Wind, WeatherVariable.Cloud, WeatherVariable.Sun];

    /// <summary>The series of a table of values by variable and hour.</summary>
    public static WeatherSeries Series(double[][] table, DateTime first, WeatherOrigin origin, ICollection<Finding> findings)
    {
        var start = origin.MarkedAtEnd && origin.Typical ? first.AddHours(-1) : first;
        Complete(table, start, origin, findings);
        if (origin.MarkedAtEnd) table = origin.Typical ? Turn(table) : Shift(table);
        var count = table[0].Length;
        var hours = ImmutableArray.CreateBuilder<WeatherHour>(count);
        for (var i = 0; i < count; i++)
        {
            hours.Add(new(At(WeatherVariable.Air, i), At(WeatherVariable.Humidity, i), At(WeatherVariable.Wind, i), At(WeatherVariable.Sun, i),
                At(WeatherVariable.Cloud, i), origin.Headers.ContainsKey(WeatherVariable.Rain) ? At(WeatherVariable.Rain, i) : 0));
        }

        return new WeatherSeries { Start = start, Hours = hours.MoveToImmutable(), Spreads = Spreads(table, origin), Site = origin.Site, Name = origin.Name.Length > 0 ? origin.Name : origin.File };

        double At(WeatherVariable variable, int i) => table[(int)variable][i];
    }

    private static ImmutableArray<WeatherSpread> Spreads(double[][] table, WeatherOrigin origin)
    {
        if (!origin.Headers.Keys.Any(v => v >= WeatherVariable.AirSpread)) return [];
        return [.. Enumerable.Range(0, table[0].Length).Select(i =>
            new WeatherSpread(Or0(WeatherVariable.AirSpread, i), Or0(WeatherVariable.HumiditySpread, i), Or0(WeatherVariable.WindSpread, i), Or0(WeatherVariable.SunSpread, i), Or0(WeatherVariable.CloudSpread, i)))];

        double Or0(WeatherVariable variable, int i) => origin.Headers.ContainsKey(variable) ? table[(int)variable][i] : 0;
    }

    /// <summary>Works out or assumes what the file has no column for, and says so.</summary>
    private static void Complete(double[][] table, DateTime start, WeatherOrigin origin, ICollection<Finding> findings)
    {
        foreach (var variable in Needed.Where(v => double.IsNaN(table[(int)v][0])))
        {
            var values = table[(int)variable];
            if (variable == WeatherVariable.Humidity && !double.IsNaN(table[(int)WeatherVariable.DewPoint][0]))
            {
                for (var i = 0; i < values.Length; i++) values[i] = Math.Min(1, Sky.Humidity(table[(int)WeatherVariable.Air][i], table[(int)WeatherVariable.DewPoint][i]));
                findings.Add(Assumed(variable, origin, FindingLevel.Note, "worked out from the dew point"));
            }
            else if (variable == WeatherVariable.Sun && origin.Site is { } site)
            {
                for (var i = 0; i < values.Length; i++)
                    values[i] = SlabSun.Mean(site, start.AddHours(i - (origin.MarkedAtEnd && !origin.Typical ? 1 : 0)), table[(int)WeatherVariable.Cloud][i]);
                findings.Add(Assumed(variable, origin, FindingLevel.Note, "worked out from the sun's height and the cloud"));
            }
            else
            {
                var value = WeatherLimits.WhenMissing(variable)!.Value;
                Array.Fill(values, value);
                findings.Add(Assumed(variable, origin, FindingLevel.Warning, $"{value.ToString(CultureInfo.InvariantCulture)} {WeatherLimits.Of(variable).Unit} taken throughout"));
            }
        }
    }

    private static Finding Assumed(WeatherVariable variable, WeatherOrigin origin, FindingLevel level, string how) => new(
        "CON-107", level, $"The weather file gives no {WeatherLimits.Words(variable)}; it was filled in.", new(origin.File, 1), how,
        "Add the column, or accept the assumption.");

    /// <summary>Hours marked at their end in a typical year: row k holds at k o'clock, its sun in the hour before; the last row leads to the first.</summary>
    private static double[][] Turn(double[][] table) => Moved(table, (values, i) => values[(i + values.Length - 1) % values.Length], table[0].Length, values => values);

    /// <summary>Hours marked at their end otherwise: sun and rain of a row go to the hour before; the last row's hour has none and is left out.</summary>
    private static double[][] Shift(double[][] table) => table[0].Length < 2 ? table : Moved(table, (values, i) => values[i], table[0].Length - 1, values => values[1..]);

    private static double[][] Moved(double[][] table, Func<double[], int, double> instant, int count, Func<double[], double[]> sums)
    {
        var moved = new double[table.Length][];
        for (var v = 0; v < table.Length; v++)
        {
            var values = table[v];
            moved[v] = (WeatherVariable)v is WeatherVariable.Sun or WeatherVariable.Rain
                ? sums(values)
                : [.. Enumerable.Range(0, count).Select(i => instant(values, i))];
        }

        return moved;
    }
}
