using System.Text.Json;

namespace Slabwright.SystemTests.Cli;

/// <summary>The verb on concrete as its user meets it: a project, a night, by hand.</summary>
public class ConcreteCommandTests
{
    private const string Columns = "Time=Stamp; T1=mid depth; T2=bottom; unit=°F";

    private static readonly string Logger = Path.Combine(AppContext.BaseDirectory, "data", "night", "two_probes.csv");

    private static Task<CommandLine.Ending> OfDemo(params string[] more) => CommandLine.Run(["concrete", SourceTree.Demo, "--today", "2026-04-01", .. more]);

    private static Task<CommandLine.Ending> OfNight(params string[] more) =>
        OfDemo(["--night", "2026-05-04", "--mix", "FAST", "--placed-at", "22:10", .. more]);

    private static JsonElement[] Array(JsonElement element, string name) => [.. element.GetProperty(name).EnumerateArray()];

    [Fact]
    public async Task The_demo_is_answered_plainly_first_with_every_caution()
    {
        var run = await OfDemo();
        Assert.True(run.ExitCode == 0, run.Errors);
        Assert.Contains("Monday 4 May 2026, placed 22:00, open by 5:00", run.Output, StringComparison.Ordinal);
        Assert.Matches(@"FAST opens at \d:\d\d with 95 %; chance by 5:00 \d+\.\d %; last truck \d+:\d\d\.", run.Output);
        Assert.Contains("Cheapest that opens: FAST, 268.00 USD/yd3.", run.Output, StringComparison.Ordinal);
        Assert.True(run.Output.IndexOf("FAST opens", StringComparison.Ordinal) < run.Output.IndexOf("USD/yd3  opens", StringComparison.Ordinal));
        Assert.All(new[] { "strength curve", "composition", "Opening strength: 2,000 psi", "lb/(ft²·h)", "caustic", "does not open a lane", "Accelerators set fast", "engineer in charge" },
            words => Assert.Contains(words, run.Output, StringComparison.Ordinal));
        Assert.All(run.Output.Split('\n').Skip(1), line => Assert.True(line.Length <= 105, line));
    }

    [Fact]
    public async Task Nights_mixes_deadline_and_confidence_are_those_asked_for()
    {
        var plain = (await OfDemo("--json", "--night", "2026-05-04")).Json.GetProperty("result").GetProperty("nights")[0];
        var sure = (await OfDemo("--json", "--night", "2026-05-04", "--mix", "fast; NIGHT", "--open-by", "10:30", "--confidence", "99%")).Json.GetProperty("result").GetProperty("nights")[0];
        Assert.Equal(["FAST", "NIGHT"], Array(sure, "mixes").Select(m => m.GetProperty("mix").GetString()));
        Assert.Equal("2026-05-05T10:30:00", sure.GetProperty("openBy").GetString());
        JsonElement Fast(JsonElement night) => Array(night, "mixes").Single(m => m.GetProperty("mix").GetString() == "FAST");
        Assert.True(Fast(sure).GetProperty("opensAt").GetDateTime() > Fast(plain).GetProperty("opensAt").GetDateTime());
        Assert.Equal("NIGHT", sure.GetProperty("cheapestThatOpens").GetString());
        var other = (await OfDemo("--json", "--night", "2026-05-20")).Json.GetProperty("result").GetProperty("nights")[0];
        Assert.Equal("2026-05-20", other.GetProperty("day").GetString());
    }

    [Fact]
    public async Task What_ifs_move_the_right_way_beside_the_plan()
    {
        var run = await OfDemo("--json", "--night", "2026-05-04", "--mix", "FAST", "--colder", "10 °F", "--weaker", "5%", "--no-blanket");
        var later = Array(run.Json.GetProperty("result"), "whatIfs").ToDictionary(w => w.GetProperty("change").GetString()!, w => w.GetProperty("laterHours").GetDouble());
        Assert.Equal(["10 °F colder", "5 % less strength", "no blanket", "all of these"], later.Keys);
        Assert.All(later.Values, hours => Assert.True(hours > 0));
        Assert.True(later["all of these"] > later.Values.SkipLast(1).Max());
        var warm = await OfDemo("--night", "2026-05-04", "--mix", "NIGHT", "--warmer", "15 °F");
        Assert.Contains("earlier", warm.Output, StringComparison.Ordinal);
        var usual = await OfDemo("--night", "2026-05-04", "--mix", "FAST", "--what-if");
        Assert.All(new[] { "10 °F (5.6 K) colder", "no blanket", "5 % less strength", "later" }, words => Assert.Contains(words, usual.Output, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Another_weather_file_takes_the_place_of_the_projects()
    {
        var file = Path.Combine(AppContext.BaseDirectory, "data", "weather", "tmy3_723170_NC.csv");
        var own = (await OfDemo("--json", "--night", "2026-05-04", "--mix", "FAST")).Json.GetProperty("result").GetProperty("nights")[0].GetProperty("mixes")[0];
        var run = await OfDemo("--json", "--night", "2026-05-04", "--mix", "FAST", "--weather", file);
        Assert.True(run.ExitCode == 0, run.Errors);
        Assert.NotEqual(own.GetProperty("opensAt").GetDateTime(), run.Json.GetProperty("result").GetProperty("nights")[0].GetProperty("mixes")[0].GetProperty("opensAt").GetDateTime());
        var none = await OfDemo("--weather", "nowhere.csv");
        Assert.Equal(2, none.ExitCode);
        Assert.Contains("CON-101", none.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Readings_move_the_forecast_and_the_decision_opens_on_them()
    {
        var run = await OfNight("--json", "--readings", Logger, "--columns", Columns, "--decide", "--by", "A. Mason", "--at", "3:40", "--repair", "R-7");
        Assert.True(run.ExitCode == 0, run.Errors);
        var result = run.Json.GetProperty("result");
        Assert.NotEqual(result.GetProperty("prior").GetProperty("opensAt").GetDateTime(), result.GetProperty("posterior").GetProperty("opensAt").GetDateTime());
        Assert.Equal(2, Array(result, "probes").Length);
        Assert.Contains(Array(result, "evidence"), e => e.GetProperty("atGoverningPlace").GetBoolean() && e.GetProperty("low").GetDouble() > 2000 * 6894.757);
        Assert.Equal("open", result.GetProperty("decision").GetProperty("verdict").GetString());
        Assert.Equal(4, Array(result, "cautions").Length);
    }

    [Fact]
    public async Task A_refusal_lists_what_is_missing_and_an_override_keeps_it()
    {
        var early = await OfNight("--readings", Logger, "--columns", Columns, "--decide", "--at", "0:40");
        Assert.Equal(0, early.ExitCode);
        Assert.Contains("STAY CLOSED at 0:40", early.Output, StringComparison.Ordinal);
        Assert.Contains("missing: The name of the person who decides.", early.Output, StringComparison.Ordinal);
        Assert.Contains("missing: Strength by maturity", early.Output, StringComparison.Ordinal);
        Assert.Contains("caustic", early.Output, StringComparison.Ordinal);
        var forced = (await OfNight("--json", "--readings", Logger, "--columns", Columns, "--decide", "--at", "0:40", "--by", "A. Mason", "--override", "ambulance")).Json.GetProperty("result").GetProperty("decision");
        Assert.Equal(("openByOverride", "ambulance"), (forced.GetProperty("verdict").GetString(), forced.GetProperty("overrideReason").GetString()));
        Assert.NotEmpty(Array(forced, "missing"));
    }

    /// <summary>What is read after the time of the decision does not count: the forecast at 0:40 does not know of 4:10.</summary>
    [Fact]
    public async Task Later_readings_are_not_looked_at()
    {
        var early = (await OfNight("--json", "--readings", Logger, "--columns", Columns, "--at", "0:40")).Json.GetProperty("result");
        var last = Array(early, "probes")[0].GetProperty("history").EnumerateArray().Last().GetProperty("hours").GetDouble();
        Assert.Equal(2.5, last, 1e-9);
        Assert.Equal(2, (await OfNight("--readings", Logger, "--columns", Columns, "--at", "soon")).ExitCode);
    }

    [Fact]
    public async Task Specimens_alone_move_the_lot()
    {
        var run = await OfNight("--json", "--specimens", "5 h 2250 psi 73.4 °F; 5 h 2150 psi 73.4 °F", "--decide", "--by", "A. Mason", "--at", "3:40");
        var result = run.Json.GetProperty("result");
        Assert.InRange(result.GetProperty("believed").GetProperty("lot").GetProperty("mean").GetDouble(), 0.8, 0.97);
        Assert.Equal("open", result.GetProperty("decision").GetProperty("verdict").GetString());
    }

    [Fact]
    public async Task Checks_of_the_curves_say_whether_they_hold()
    {
        var run = await OfDemo("--check-curve");
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("FAST: the curve holds.", run.Output, StringComparison.Ordinal);
        Assert.Contains("EARLY: no later specimens", run.Output, StringComparison.Ordinal);
        Assert.Matches(@"2,410 psi\s+2,\d\d0 psi\s+−\d\.\d %", run.Output);
    }

    [Theory]
    [InlineData("colder", "lots")]
    [InlineData("mix", "NOPE")]
    [InlineData("night", "may")]
    [InlineData("open-by", "dawn")]
    [InlineData("confidence", "20%")]
    [InlineData("thickness", "0 in")]
    public async Task A_bad_option_ends_with_code_2_and_names_option_value_and_mend(string key, string value)
    {
        var run = await OfDemo("--" + key, value);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains($"[{key}]", run.Errors, StringComparison.Ordinal);
        Assert.Contains(value, run.Errors, StringComparison.Ordinal);
        Assert.Contains("Mend:", run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Bad_readings_are_named()
    {
        var absent = await OfNight("--readings", "nowhere.csv");
        Assert.Equal(3, absent.ExitCode);
        Assert.Contains("nowhere.csv", absent.Errors, StringComparison.Ordinal);
        var unmapped = await OfNight("--readings", Logger, "--columns", "T9=mid depth");
        Assert.Equal(2, unmapped.ExitCode);
        Assert.Contains("T9=mid depth", unmapped.Errors, StringComparison.Ordinal);
        var later = await OfNight("--specimens", "five hours 2000");
        Assert.Equal(2, later.ExitCode);
        Assert.Contains("CON-131", later.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public async Task By_hand_answers_without_a_project_in_both_unit_systems()
    {
        string[] asked = ["concrete", "--by-hand", "--night", "2026-05-04", "--mix", "Class FS", "--trials", "500", "--breaks", "3 h 900 psi; 4 h 1800 psi; 6 h 3000 psi; 12 h 4300 psi"];
        var run = await CommandLine.Run([.. asked, "--thickness", "10 in", "--low", "52 °F", "--high", "72 °F"]);
        Assert.True(run.ExitCode == 0, run.Errors);
        Assert.Matches(@"Class FS opens at \d:\d\d with 95 %|No mix opens by 5:00", run.Output);
        Assert.All(new[] { "10 °F (5.6 K) colder", "a blanket from 1 h on", "5 % less strength", "ft3 in 1 yd3", "ODOT-499", "common practice", "caustic", "--humidity" },
            words => Assert.Contains(words, run.Output, StringComparison.Ordinal));
        var si = await CommandLine.Run([.. asked, "--si", "--thickness", "254", "--low", "11.111111", "--high", "22.222222", "--wind", "2"]);
        Assert.Contains("kg/(m²·h)", si.Output, StringComparison.Ordinal);
        Assert.Contains("MPa", si.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("lb/yd3", si.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task By_hand_takes_weather_and_mixes_from_files()
    {
        var weather = Path.Combine(SourceTree.Demo, "weather_hourly.csv");
        var run = await CommandLine.Run(
            "concrete", "--by-hand", "--thickness", "9 in", "--night", "2026-05-04", "--mixes", SourceTree.Demo, "--weather", weather, "--clock-ahead", "1 h", "--placing-temperature", "77 °F", "--blanket", "--json");
        Assert.True(run.ExitCode == 0, run.Errors);
        var hand = run.Json.GetProperty("result").GetProperty("nights")[0].GetProperty("mixes")[0];
        var project = (await OfDemo("--json", "--night", "2026-05-04", "--mix", "FAST")).Json.GetProperty("result").GetProperty("nights")[0].GetProperty("mixes")[0];
        Assert.Equal("FAST", hand.GetProperty("mix").GetString());
        Assert.Equal(project.GetProperty("opensAt").GetDateTime(), hand.GetProperty("opensAt").GetDateTime(), TimeSpan.FromMinutes(10));
        var twice = await CommandLine.Run("concrete", "--by-hand", "--thickness", "9 in", "--night", "2026-05-04", "--mixes", SourceTree.Demo, "--weather", weather, "--low", "50 °F");
        Assert.Equal(2, twice.ExitCode);
        Assert.Contains("CON-137", twice.Errors, StringComparison.Ordinal);
        var none = await CommandLine.Run("concrete", "--by-hand", "--thickness", "9 in", "--night", "2026-05-04", "--mixes", AppContext.BaseDirectory);
        Assert.Equal(3, none.ExitCode);
    }
}
