using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using Slabwright.Cli.Output;
using Slabwright.Core.Evidence;
using Slabwright.Core.Job;
using Slabwright.Core.RuleSets;
using Slabwright.Data.Folder;

namespace Slabwright.Cli.Commands;

/// <summary>What every verb on a project shares: the folder, the options and reading it.</summary>
internal sealed class ProjectDoor
{
    private readonly Argument<string?> _folder = new("FOLDER") { Description = "Project folder with its project.json." };
    private readonly Option<string?> _ruleSet = new("--rule-set") { Description = "Plan with another rule set; see 'slabwright rules'." };
    private readonly Option<string?> _today = new("--today") { Description = "Date the survey is checked against, YYYY-MM-DD; today when left out." };
    private readonly Option<bool> _json = new("--json") { Description = "One JSON document on standard output." };
    private readonly Option<bool> _quiet = new("--quiet") { Description = "No progress lines." };
    private readonly Option<bool>? _noRange;

    /// <summary>Adds the shared argument and options to a verb.</summary>
    /// <param name="command">The verb.</param>
    /// <param name="withRange">True for verbs that compute the cost range.</param>
    /// <param name="folderOptional">True for verbs that can do without a project; the verb checks then that it has what it needs.</param>
    public ProjectDoor(Command command, bool withRange = false, bool folderOptional = false)
    {
        _folder.Arity = folderOptional ? ArgumentArity.ZeroOrOne : ArgumentArity.ExactlyOne;
        _today.Validators.Add(result =>
        {
            if (result.Tokens.Count > 0 && !TryDay(result.Tokens[0].Value, out _))
                result.AddError($"--today takes a date such as 2026-04-01, not '{result.Tokens[0].Value}'.");
        });
        command.Add(_folder);
        command.Add(_ruleSet);
        command.Add(_today);
        command.Add(_json);
        command.Add(_quiet);
        if (!withRange) return;
        _noRange = new Option<bool>("--no-range") { Description = "Leave out the cost range." };
        command.Add(_noRange);
    }

    /// <summary>Where the verb's output goes.</summary>
    public Report ReportFor(ParseResult parsed) => new(parsed.GetValue(_json), parsed.GetValue(_quiet));

    /// <summary>The folder as typed.</summary>
    public string FolderOf(ParseResult parsed) => parsed.GetRequiredValue(_folder)!;

    /// <summary>The rule set typed; null where none was.</summary>
    public string? RuleSetOf(ParseResult parsed) => parsed.GetValue(_ruleSet);

    /// <summary>True where a folder was typed.</summary>
    public bool HasFolder(CommandResult result) => result.GetValue(_folder) is not null;

    /// <summary>False under --no-range.</summary>
    public bool RangeOf(ParseResult parsed) => _noRange is null || !parsed.GetValue(_noRange);

    /// <summary>The day the survey is checked against.</summary>
    public DateOnly TodayOf(ParseResult parsed) =>
        TryDay(parsed.GetValue(_today), out var day) ? day : DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().Date);

    /// <summary>Reads the folder and swaps the rule set when asked. A null project comes with the findings that say why.</summary>
    public ProjectReadResult Read(ParseResult parsed)
    {
        var read = ProjectFolder.Read(FolderOf(parsed), FolderDoors.On(TodayOf(parsed)));
        return read.Project is { } project && parsed.GetValue(_ruleSet) is { } id ? WithRuleSet(project, id) : read;
    }

    private static ProjectReadResult WithRuleSet(Project project, string id)
    {
        var known = project.OtherRuleSets.Prepend(project.RuleSet).Concat(PublishedRuleSets.All).DistinctBy(s => s.Id).ToArray();
        if (known.FirstOrDefault(s => s.Id == id) is { } chosen)
        {
            var others = known.Where(s => s.Id != id);
            return new ProjectReadResult(project with { RuleSet = chosen, OtherRuleSets = [.. others] }, project.Findings);
        }

        var finding = new Finding("JOB-001", FindingLevel.Error, "There is no rule set of this name.", new FindingPlace(Field: "--rule-set"), id,
            "Use one of: " + string.Join(", ", known.Select(s => s.Id)) + ".");
        return new ProjectReadResult(null, [.. project.Findings, finding]);
    }

    private static bool TryDay(string? text, out DateOnly day) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out day);
}
