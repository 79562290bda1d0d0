using System.Text.Json;
using System.Text.RegularExpressions;
using Slabwright.Core.Handbook;
using Slabwright.Core.RuleSets;

namespace Slabwright.SystemTests.Cli;

/// <summary>The command line as a script meets it: verbs, exit codes, one JSON document.</summary>
public sealed partial class CommandLineTests : IDisposable
{
    private static readonly string Demo = SourceTree.Demo;
    private readonly string _folder = Directory.CreateTempSubdirectory("slabwright-cli-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public async Task Plan_does_the_whole_job_and_says_so_in_one_document()
    {
        var run = await CommandLine.Run("plan", Demo, "--out", _folder, "--json", "--today", "2026-04-01");
        Assert.True(run.ExitCode == 0, run.Errors + run.Output[..Math.Min(2000, run.Output.Length)]);
        Assert.Equal("plan", run.Json.GetProperty("command").GetString());
        var result = run.Json.GetProperty("result");
        var bid = result.GetProperty("bid").EnumerateArray().Sum(l => l.GetProperty("amount").GetDecimal());
        Assert.Equal(result.GetProperty("total").GetDecimal(), bid);
        var range = result.GetProperty("range");
        Assert.True(range.GetProperty("p10").GetDecimal() <= range.GetProperty("p50").GetDecimal());
        Assert.True(range.GetProperty("p50").GetDecimal() <= range.GetProperty("p90").GetDecimal());
        foreach (var file in result.GetProperty("files").EnumerateArray())
            Assert.True(new FileInfo(Path.Combine(_folder, file.GetString()!)).Length > 0, file.GetString());
        Assert.Contains(result.GetProperty("files").EnumerateArray(), f => f.GetString()!.EndsWith(".pdf", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Plan_speaks_to_people_with_progress_on_the_error_stream()
    {
        var run = await CommandLine.Run("plan", Demo, "--out", _folder, "--today", "2026-04-01", "--no-range");
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("[1/5] treatments", run.Errors, StringComparison.Ordinal);
        Assert.Contains("Bid total", run.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("Range of cost", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_same_project_gives_the_same_document_twice()
    {
        var first = await CommandLine.Run("boundaries", Demo, "--json", "--today", "2026-04-01");
        var second = await CommandLine.Run("boundaries", Demo, "--json", "--today", "2026-04-01");
        Assert.Equal(first.Output, second.Output);
    }

    [Theory]
    [InlineData("survey")]
    [InlineData("treatments")]
    [InlineData("boundaries")]
    [InlineData("joints")]
    [InlineData("concrete")]
    [InlineData("quantities")]
    public async Task Each_step_has_a_verb_for_people_and_for_scripts(string verb)
    {
        var people = await CommandLine.Run(verb, Demo, "--today", "2026-04-01");
        var script = await CommandLine.Run(verb, Demo, "--today", "2026-04-01", "--json");
        Assert.Equal(0, people.ExitCode);
        Assert.Equal(0, script.ExitCode);
        Assert.True(people.Output.Split('\n').Length > 5, people.Output);
        Assert.Equal(verb, script.Json.GetProperty("command").GetString());
        Assert.NotEqual(JsonValueKind.Null, script.Json.GetProperty("result").ValueKind);
    }

    [Fact]
    public async Task A_survey_with_mistakes_is_compared_row_by_row_and_its_bad_rows_are_named()
    {
        var run = await CommandLine.Run(
            "survey", Demo, "--today", "2026-04-01", "--json", "--with", Path.Combine(Demo, "survey_with_mistakes.csv"));
        Assert.Equal(1, run.ExitCode);
        var finding = run.Json.GetProperty("findings").EnumerateArray().First(f => f.GetProperty("level").GetString() == "error");
        Assert.Equal("survey_with_mistakes.csv", finding.GetProperty("place").GetProperty("file").GetString());
        Assert.True(finding.GetProperty("place").GetProperty("row").GetInt64() > 1);
        Assert.False(string.IsNullOrWhiteSpace(finding.GetProperty("mend").GetString()));
    }

    [Fact]
    public async Task Another_rule_set_can_be_chosen_and_an_unknown_one_is_refused_with_the_list()
    {
        var known = await CommandLine.Run("treatments", Demo, "--rule-set", "fhwa", "--json", "--today", "2026-04-01");
        Assert.Equal("fhwa", known.Json.GetProperty("result").GetProperty("decisions")[0].GetProperty("ruleSet").GetString());
        var unknown = await CommandLine.Run("treatments", Demo, "--rule-set", "nowhere", "--today", "2026-04-01");
        Assert.Equal(3, unknown.ExitCode);
        Assert.Contains("common-practice", unknown.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_folder_that_is_no_project_ends_with_code_3_and_the_mend()
    {
        var run = await CommandLine.Run("plan", _folder, "--out", Path.Combine(_folder, "out"));
        Assert.Equal(3, run.ExitCode);
        Assert.Contains("project.json", run.Errors, StringComparison.Ordinal);
        Assert.Contains("Mend:", run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Sheets_that_cannot_be_written_end_with_code_4()
    {
        var file = Path.Combine(_folder, "in-the-way");
        await File.WriteAllTextAsync(file, "a file where a folder should be", TestContext.Current.CancellationToken);
        var run = await CommandLine.Run("sheets", Demo, "--out", file, "--no-range", "--today", "2026-04-01");
        Assert.Equal(4, run.ExitCode);
        Assert.Contains("in-the-way", run.Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("plan")]
    [InlineData("plan", "folder", "--out", "x", "--today", "yesterday")]
    [InlineData("calc", "repair-area", "length")]
    [InlineData("joints")]
    [InlineData("joints", "folder", "--by-hand", "--thickness", "10 in")]
    [InlineData("joints", "folder", "--thickness", "10 in")]
    [InlineData("concrete")]
    [InlineData("concrete", "folder", "--by-hand", "--thickness", "10 in")]
    [InlineData("concrete", "folder", "--cement", "900 lb/yd3")]
    [InlineData("concrete", "folder", "--readings", "night.csv")]
    [InlineData("concrete", "folder", "--by", "A. Mason")]
    [InlineData("concrete", "--by-hand", "--decide")]
    [InlineData("fly")]
    public async Task A_wrong_command_line_ends_with_code_2_and_a_sentence(params string[] arguments)
    {
        var run = await CommandLine.Run(arguments);
        Assert.Equal(2, run.ExitCode);
        Assert.False(string.IsNullOrWhiteSpace(run.Errors));
    }

    [Fact]
    public async Task Calc_works_out_a_formula_from_values_with_units()
    {
        var run = await CommandLine.Run("calc", "repair-area", "length=6 ft", "width=12 ft", "--json");
        var value = run.Json.GetProperty("result").GetProperty("values")[0];
        Assert.Equal(8.0, value.GetProperty("value").GetDouble(), 1e-9); // 6 × 12 ft is 8.0 yd²
        Assert.Equal("yd2", value.GetProperty("unit").GetString());
        var wrong = await CommandLine.Run("calc", "repair-area", "length=6 psi", "width=12 ft");
        Assert.Equal(2, wrong.ExitCode);
        Assert.Contains("Mend:", wrong.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Joints_shows_conditions_winner_alternatives_limits_and_joints_by_kind()
    {
        var run = await CommandLine.Run("joints", Demo, "--today", "2026-04-01");
        Assert.All(new[] { "Lane 1:", "design years", "cheapest of", "governing limit", "bearing on the concrete", "dowelled", "holes for" },
            words => Assert.Contains(words, run.Output, StringComparison.Ordinal));
        var every = await CommandLine.Run("joints", Demo, "--today", "2026-04-01", "--all");
        Assert.True(every.Output.Split('\n').Length > run.Output.Split('\n').Length);
        var result = (await CommandLine.Run("joints", Demo, "--today", "2026-04-01", "--json")).Json.GetProperty("result");
        foreach (var lane in result.GetProperty("lanes").EnumerateArray())
        {
            var passing = lane.GetProperty("alternatives").EnumerateArray().Where(a => a.GetProperty("passes").GetBoolean()).ToArray();
            Assert.Equal(passing.Min(a => a.GetProperty("costPerJoint").GetDecimal()), lane.GetProperty("winner").GetProperty("costPerJoint").GetDecimal());
        }
    }

    [Fact]
    public async Task Joints_by_hand_works_one_joint_out_and_tells_what_it_took()
    {
        var people = await CommandLine.Run("joints", "--by-hand", "--thickness", "10 in", "--k", "40 MPa/m");
        Assert.Equal(0, people.ExitCode);
        Assert.Contains("common practice", people.Output, StringComparison.Ordinal);
        Assert.Contains("two elastic sides", people.Output, StringComparison.Ordinal);
        var script = await CommandLine.Run("joints", "--by-hand", "--thickness", "250", "--si", "--json");
        Assert.Equal(11, script.Json.GetProperty("result").GetProperty("bars").GetArrayLength());
        var wrong = await CommandLine.Run("joints", "--by-hand", "--thickness", "0 in");
        Assert.Equal(2, wrong.ExitCode);
        Assert.Contains("[thickness]", wrong.Errors, StringComparison.Ordinal);
        Assert.Contains("Mend:", wrong.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Calc_and_rules_list_everything_there_is()
    {
        var handbook = await CommandLine.Run("calc");
        Assert.All(FormulaBook.All, e => Assert.Contains(e.Id, handbook.Output, StringComparison.Ordinal));
        var rules = await CommandLine.Run("rules");
        Assert.All(PublishedRuleSets.All, s => Assert.Contains(s.Id, rules.Output, StringComparison.Ordinal));
    }

    [Fact]
    public async Task The_page_on_the_command_line_names_every_verb_and_exit_code()
    {
        var page = await File.ReadAllTextAsync(Path.Combine(SourceTree.Root, "docs", "command-line.md"), TestContext.Current.CancellationToken);
        var help = await CommandLine.Run("--help");
        var verbs = Verb().Matches(help.Output[help.Output.IndexOf("Commands:", StringComparison.Ordinal)..]).Select(m => m.Groups[1].Value).ToArray();
        Assert.Equal(10, verbs.Length);
        Assert.All(verbs, v => Assert.Contains($"`{v} ", page.Replace($"`{v}`", $"`{v} `", StringComparison.Ordinal), StringComparison.Ordinal));
        var codes = File.ReadAllText(Path.Combine(SourceTree.Root, "src", "Slabwright.Cli", "ExitCode.cs"));
        Assert.All(Code().Matches(codes), m => Assert.Contains($"| {m.Groups[2].Value} | {m.Groups[1].Value} |", page, StringComparison.Ordinal));
    }

    [GeneratedRegex(@"^  (\w+)\b", RegexOptions.Multiline)]
    private static partial Regex Verb();

    [GeneratedRegex(@"^    (\w+) = (\d+),", RegexOptions.Multiline)]
    private static partial Regex Code();
}
