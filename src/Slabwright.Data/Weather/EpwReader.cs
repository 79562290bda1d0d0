using Slabwright.Core.Concrete.Weather;
using Slabwright.Core.Evidence;

namespace Slabwright.Data.Weather;

/// <summary>EPW files: eight lines about the place, then a row an hour, marked at its end, with fixed columns and numbers that stand for missing.</summary>
internal static class EpwReader
{
    private const int HeaderLines = 8;

    /// <summary>Columns from 0, names and the number from which on a value is missing, as the format's data dictionary says.</summary>
    private static readonly (int Index, WeatherColumn Column, double MissingFrom)[] Columns =
    [
        (6, new(WeatherVariable.Air, "dry bulb temperature"), 99.9), (7, new(WeatherVariable.DewPoint, "dew point temperature"), 99.9),
        (8, new(WeatherVariable.Humidity, "relative humidity", 0.01), 999), (13, new(WeatherVariable.Sun, "global horizontal radiation"), 9999),
        (21, new(WeatherVariable.Wind, "wind speed"), 999), (22, new(WeatherVariable.Cloud, "total sky cover", 0.1), 99),
    ];

    public static WeatherSeries? Read(string text, string name, WeatherFileOptions options, List<Finding> findings)
    {
        var table = new WeatherTable(name, findings);
        var (site, title, line) = (options.Site, "", 0);
        foreach (var row in WeatherTable.Lines(text))
        {
            line++;
            if (line == 1)
            {
                title = WeatherTable.Cell(row, 1);
                site ??= Tmy3Reader.Site(row, [6, 7, 8, 9], table);
            }

            if (row.Number <= HeaderLines) continue;
            if (Tmy3Reader.Stamp(options.TypicalYear, WeatherTable.Cell(row, 1), WeatherTable.Cell(row, 2), WeatherTable.Cell(row, 3)) is not { } time)
            {
                table.Add("CON-106", FindingLevel.Error, "The hour cannot be read; the row is not used.", row.Number, "hour", WeatherTable.Cell(row, 3), "Give month, day and an hour from 1 to 24.");
                continue;
            }

            var reading = WeatherReading.Empty(row.Number, time);
            foreach (var (index, column, missingFrom) in Columns) table.Read(reading, row, index, column, missingFrom);
            table.Rows.Add(reading);
        }

        return WeatherIntake.Build(table.Rows, new()
        {
            File = name, Name = title, Site = site, MarkedAtEnd = true, Typical = Tmy3Reader.IsYear(table.Rows),
            Headers = Columns.ToDictionary(c => c.Column.Variable, c => c.Column.Header), HourHeader = "hour",
        }, findings);
    }
}
