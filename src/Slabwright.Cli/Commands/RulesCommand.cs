using System.CommandLine;
using System.Globalization;
using Slabwright.Cli.Output;
using Slabwright.Core.Evidence;
using Slabwright.Core.RuleSets;

namespace Slabwright.Cli.Commands;

/// <summary><c>slabwright rules [ID]</c>: the published rule sets, or one with every source.</summary>
internal static class RulesCommand
{
    public static Command Build()
    {
        var id = new Argument<string?>("ID") { Description = "Rule set to show whole.", Arity = ArgumentArity.ZeroOrOne };
        var json = new Option<bool>("--json") { Description = "One JSON document on standard output." };
        var command = new Command("rules", "Lists the published rule sets, or shows one with every source.") { id, json };
        command.SetAction(parsed =>
        {
            var report = new Report(parsed.GetValue(json), quiet: true);
            return parsed.GetValue(id) is { } wanted ? Show(report, wanted) : List(report);
        });
        return command;
    }

    private static int List(Report report)
    {
        var table = new TextTable("id", "name", "rules>", "switched off>");
        foreach (var set in PublishedRuleSets.All)
            table.Add(set.Id, set.Name, Count(set.Treatments.Length), Count(set.Treatments.Count(r => !r.On)));
        report.Table(table);
        return report.End("rules", ExitCode.Done, PublishedRuleSets.All.Select(s => new { s.Id, s.Name, s.Summary }), []);
    }

    private static int Show(Report report, string id)
    {
        if (PublishedRuleSets.Find(id) is not { } set)
        {
            var finding = new Finding("JOB-001", FindingLevel.Error, "There is no rule set of this name.", new FindingPlace(Field: "ID"), id,
                "Use one of: " + string.Join(", ", PublishedRuleSets.All.Select(s => s.Id)) + ".");
            return report.End("rules", ExitCode.Usage, null, [finding]);
        }

        report.Line(set.Name);
        report.Line(set.Summary);
        report.Line();
        var table = new TextTable("rule", "calls for", "on", "source", "sentence");
        foreach (var rule in set.Treatments)
            table.Add(rule.Id, TradeWords.Of(rule.Treatment), rule.On ? "on" : "off", rule.Source.ToString(), rule.Sentence);
        report.Table(table);
        return report.End("rules", ExitCode.Done, set, []);
    }

    private static string Count(int number) => number.ToString(CultureInfo.InvariantCulture);
}
