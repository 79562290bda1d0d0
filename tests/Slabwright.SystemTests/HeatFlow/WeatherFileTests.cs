using System.Globalization;
using Slabwright.Core.Concrete.Weather;
using Slabwright.Core.Evidence;
using Slabwright.Data.Weather;

namespace Slabwright.SystemTests.HeatFlow;

public sealed class WeatherFileTests
{
    private static readonly WeatherSite Greensboro = new(36.1, -79.95, -5, 273);

    private static string Data(string name) => Path.Combine(AppContext.BaseDirectory, "data", "weather", name);

    /// <summary>The published file itself: row "1 Jan, hour ending 1" holds at one o'clock, its sun in the hour before.</summary>
    [Fact]
    public void A_typical_year_as_a_table()
    {
        var read = WeatherFile.Read(Data("tmy3_723170_NC.csv"), new() { Site = Greensboro });
        var series = read.Series!;
        Assert.Equal(8760, series.Hours.Length);
        Assert.Equal(new DateTime(2026, 1, 1), series.Start);
        Assert.Equal(10.0, series.Hours[1].Air);
        Assert.Equal(0.77, series.Hours[1].Humidity, 1e-12);
        Assert.Equal(6.2, series.Hours[1].Wind);
        Assert.Equal(9, series.Hours[7].Sun);
        Assert.Equal(46, series.Hours[8].Sun);
        Assert.Equal(1, series.Hours[8].Cloud, 1e-12);
        Assert.DoesNotContain(read.Findings, f => f.Level == FindingLevel.Error);
        Assert.Empty(series.Gaps);
    }

    [Fact]
    public void A_typical_year_in_its_original_layout()
    {
        var read = WeatherFile.Read(Data("723170TYA-two-months.csv"));
        var series = read.Series!;
        Assert.Equal(Greensboro, series.Site);
        Assert.StartsWith("GREENSBORO", series.Name, StringComparison.Ordinal);
        Assert.Equal(new DateTime(2026, 1, 1, 1, 0, 0), series.Start);
        Assert.Equal(10.0, series.Hours[0].Air);
        Assert.Equal(9, series.Hours[6].Sun);
        var hole = Assert.Single(series.Gaps);
        Assert.Equal((new DateTime(2026, 2, 1, 1, 0, 0), (31 + 28 + 31 + 30 + 31 + 30 - 31) * 24, "all"), (hole.From, hole.Hours, hole.Variable));
        Assert.Contains(read.Findings, f => f.Code == "CON-105" && f.Level == FindingLevel.Error && f.Place.Row is not null);
    }

    /// <summary>
    /// Sun above the air on a level surface (ETR) of the TMY3 file, 1,488 hours, against our sun: position and distance together. The file
    /// prints whole W/m².
    /// </summary>
    [Fact]
    public void Sun_above_the_air_is_that_of_the_published_file()
    {
        var (worst, sum, published, hours) = (0.0, 0.0, 0.0, 0);
        foreach (var line in File.ReadLines(Data("723170TYA-two-months.csv")).Skip(2))
        {
            var cells = line.Split(',');
            var date = cells[0].Split('/').Select(c => int.Parse(c, CultureInfo.InvariantCulture)).ToArray();
            var hour = new DateTime(date[2], date[0], date[1]).AddHours(int.Parse(cells[1][..2], CultureInfo.InvariantCulture) - 1);
            var theirs = double.Parse(cells[2], CultureInfo.InvariantCulture);
            var ours = SunPosition.Extraterrestrial(Greensboro, hour);
            worst = Math.Max(worst, Math.Abs(ours - theirs));
            sum += ours;
            published += theirs;
            hours++;
        }

        Assert.Equal(1488, hours);
        Assert.True(worst < 5, $"worst hour {worst} W/m²");
        Assert.Equal(1, sum / published, 0.002);
    }

    [Fact]
    public void Bad_values_are_named_and_not_used()
    {
        const string text = """
            hour_lst,air_temp_f,humidity_share,wind_mph,sun_w_per_m2,cloud_share
            2026-04-01T00:00,50,0.5,5,0,0.1
            2026-04-01T01:00,-9900,0.5,1048,0,0.1
            2026-04-01T02:00,54,50,7,0,x
            2026-04-01T02:00,54,0.5,7,0,0.1
            2026-04-01T05:00,60,0.5,7,0,0.1
            4 am,60,0.5,7,0,0.1
            2026-04-01T06:00,62,0.5,7,5,0.1
            """;
        var read = WeatherFile.ReadText(text, "night.csv");
        var series = read.Series!;
        Assert.Equal(7, series.Hours.Length);
        Assert.Equal((50 - 32) / 1.8, series.Hours[0].Air, 1e-9);
        Assert.Equal((52 - 32) / 1.8, series.Hours[1].Air, 1e-9);
        Assert.Equal(6 * 0.44704, series.Hours[1].Wind, 1e-9);
        Assert.Equal((56 - 32) / 1.8, series.Hours[3].Air, 1e-9);
        void Named(string code, long row, string field, string value) =>
            Assert.True(read.Findings.Any(f => f.Code == code && f.Place.File == "night.csv" && f.Place.Row == row && f.Place.Field == field && f.Value!.Contains(value, StringComparison.Ordinal) && f.Mend!.Length > 0),
                string.Join("\n", read.Findings));
        Named("CON-102", 3, "air_temp_f", "-9900");
        Named("CON-103", 3, "wind_mph", "468.498 m/s");
        Named("CON-103", 4, "humidity_share", "50");
        Named("CON-102", 4, "cloud_share", "x");
        Named("CON-104", 5, "hour_lst", "2026-04-01T02:00");
        Named("CON-106", 7, "hour_lst", "4 am");
        Named("CON-105", 6, "hour_lst", "2 h");
        Assert.Contains(series.Gaps, g => g.Variable == "all" && g.Hours == 2);
        Assert.Contains(series.Gaps, g => g.Variable == "wind" && g.From == new DateTime(2026, 4, 1, 1, 0, 0));
        Assert.Equal(read.Findings.Count, series.Findings.Length);
    }

    /// <summary>Rows of the real file in which a logger's sign for "missing" and a wind of 1,048 mph stand, as published files bring them.</summary>
    [Fact]
    public void Signs_for_missing_and_impossible_winds_in_real_rows_are_bridged_and_named()
    {
        var lines = File.ReadAllLines(Data("tmy3_723170_NC.csv"));
        var (air, wind) = (lines[100].Split(','), lines[200].Split(','));
        (air[4], wind[7]) = ("-9900", "468.5");
        (lines[100], lines[200]) = (string.Join(',', air), string.Join(',', wind));
        var read = WeatherFile.ReadText(string.Join('\n', lines), "tmy3.csv", new() { Site = Greensboro });
        var whole = WeatherFile.Read(Data("tmy3_723170_NC.csv"), new() { Site = Greensboro }).Series!;
        Assert.Contains(read.Findings, f => f is { Code: "CON-102" or "CON-103", Place.Row: 101 } && f.Value!.Contains("-9900", StringComparison.Ordinal));
        Assert.Contains(read.Findings, f => f is { Code: "CON-103", Place.Row: 201 } && f.Value!.Contains("468.5", StringComparison.Ordinal));
        var series = read.Series!;
        Assert.Equal(2, series.Gaps.Length);
        Assert.Equal((whole.Hours[99].Air + whole.Hours[101].Air) / 2, series.Hours[100].Air, 1e-9);
        Assert.Equal((whole.Hours[199].Wind + whole.Hours[201].Wind) / 2, series.Hours[200].Wind, 1e-9);
        Assert.Equal(whole.Hours[100].Wind, series.Hours[100].Wind);
    }

    [Fact]
    public void A_forecast_has_its_spread()
    {
        const string text = """
            Time;Temperature (°C);Temp SD (°C);Relative humidity (%);Wind speed (km/h);wind_sd_mph;Cloud cover (%)
            2026-04-01 20:00;12,5;1,0;60;18;2;20
            2026-04-01 21:00;11,0;1,5;65;18;2;30
            2026-04-01 22:00;10,0;2,0;70;18;2;40
            """;
        var read = WeatherFile.ReadText(text, "forecast.csv", new() { Site = new(40, -90, -6) });
        var series = read.Series!;
        Assert.Equal((12.5, 0.6, 5.0), (series.Hours[0].Air, series.Hours[0].Humidity, series.Hours[0].Wind));
        Assert.Equal(1.5, series.Spreads[1].Air);
        Assert.Equal(2 * 0.44704, series.Spreads[1].Wind, 1e-12);
        Assert.Equal(10 - 2 * 2.0, series.Drawn(new(-2, 0, 0, 0, 0)).Hours[2].Air);
        Assert.Equal(0.2, series.Hours[0].Cloud, 1e-12);
        Assert.Contains(read.Findings, f => f.Code == "CON-107" && f.Level == FindingLevel.Note);
    }

    [Fact]
    public void An_epw_file()
    {
        var text = new System.Text.StringBuilder("LOCATION,Invented,ST,XXX,TEST,000000,40.0,-90.0,-6.0,200.0\n");
        for (var i = 0; i < 7; i++) text.Append("HEADER,").Append(i).Append('\n');
        for (var i = 1; i <= 48; i++)
        {
            var (day, hour) = ((i - 1) / 24 + 1, (i - 1) % 24 + 1);
            text.Append(CultureInfo.InvariantCulture, $"1999,7,{day},{hour},0,flags,{20 + hour * 0.5},{(i == 5 ? 99.9 : 12)},60,98000,0,0,300,{(hour is > 6 and < 19 ? 500 : 0)},0,0,0,0,0,0,180,3.5,{(i == 9 ? 99 : 4)},3,20,77777,9,0,0,0,0,0,0,0,0\n");
        }

        var read = WeatherFile.ReadText(text.ToString(), "place.epw");
        var series = read.Series!;
        Assert.Equal(new WeatherSite(40, -90, -6, 200), series.Site);
        Assert.Equal(new DateTime(2026, 7, 1, 1, 0, 0), series.Start);
        Assert.Equal(47, series.Hours.Length);
        Assert.Equal((20.5, 0.6, 3.5), (series.Hours[0].Air, series.Hours[0].Humidity, series.Hours[0].Wind));
        Assert.Equal((0.0, 500.0), (series.Hours[4].Sun, series.Hours[5].Sun));
        Assert.Equal(0.4, series.Hours[8].Cloud, 1e-12);
        Assert.Contains(series.Gaps, g => g.Variable == "cloud" && g.Hours == 1);
    }

    [Theory]
    [InlineData("", "CON-108")]
    [InlineData("a,b\n1,2", "CON-108")]
    [InlineData("hour_lst,wind_mph\n2026-04-01T00:00,3", "CON-101")]
    [InlineData("hour_lst,air_temp_c\n", "CON-101")]
    [InlineData("hour_lst,air_temp_c\n2026-04-01T00:00,nan", "CON-101")]
    public void Files_without_weather_are_named(string text, string code)
    {
        var read = WeatherFile.ReadText(text, "odd.csv");
        Assert.Null(read.Series);
        Assert.Contains(read.Findings, f => f.Code == code && f.Level == FindingLevel.Error);
    }

    [Fact]
    public void A_stated_mapping_names_columns_it_cannot_find()
    {
        const string text = "When,T,W\n2026-04-01 20:00,50,3\n2026-04-01 21:00,48,3";
        var mapping = new WeatherMapping("When", [new(WeatherVariable.Air, "T", 5.0 / 9, -160.0 / 9), new(WeatherVariable.Sun, "Solar")]);
        var read = WeatherFile.ReadText(text, "odd.csv", new() { Mapping = mapping });
        Assert.Equal(10, read.Series!.Hours[0].Air, 1e-9);
        Assert.Contains(read.Findings, f => f.Code == "CON-108" && f.Value == "Solar");
        Assert.Contains(read.Findings, f => f.Code == "CON-107" && f.Level == FindingLevel.Warning);
    }
}
