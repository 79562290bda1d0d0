using System.CommandLine;
using System.CommandLine.Parsing;
using Slabwright.Cli.Output;
using Slabwright.Core.Evidence;
using Slabwright.Core.Handbook;
using Slabwright.Core.Job;
using Slabwright.Core.Measures;

namespace Slabwright.Cli.Commands;

/// <summary>
/// <c>slabwright joints FOLDER</c>: the load transfer of each lane with all alternatives, and every joint; <c>slabwright joints --by-hand</c>:
/// one joint, closed forms beside plate finite elements.
/// </summary>
internal static class JointsCommand
{
    public static Command Build()
    {
        var command = new Command("joints", "Designs the joints of the repairs, or works one joint out by hand.");
        var door = new ProjectDoor(command, folderOptional: true);
        var byHand = new Option<bool>("--by-hand") { Description = "One joint from the options below, without a project." };
        var si = new Option<bool>("--si") { Description = "By hand: bare numbers and results in SI units." };
        var all = new Option<bool>("--all") { Description = "Every alternative, not only the cheapest and the winner." };
        var given = JointByHand.Inputs.Select(ByHandOption).ToArray();
        var bars = new Option<string?>("--" + JointByHand.BarsKey)
        {
            Description = "By hand: bars from the lane's left edge in place of spacing, e.g. \"12 in; 24 in; 36 in\".",
        };
        Option<string?>[] handInputs = [.. given, bars];
        foreach (var option in handInputs.Prepend<Option>(all).Prepend(si).Prepend(byHand)) command.Add(option);
        command.Validators.Add(result => Check(result, door, byHand, handInputs));
        command.SetAction((parsed, cancel) =>
        {
            var report = door.ReportFor(parsed);
            if (parsed.GetValue(byHand))
            {
                var texts = handInputs.Select(o => (Key: o.Name[2..], Text: parsed.GetValue(o))).Where(t => t.Text is not null)
                    .ToDictionary(t => t.Key, t => t.Text!);
                return Task.FromResult(OneJoint(report, texts, parsed.GetValue(si) ? UnitSystem.Si : UnitSystem.UsCustomary));
            }

            var read = door.Read(parsed);
            if (read.Project is not { } project) return Task.FromResult(report.End("joints", ExitCode.InputUnusable, null, read.Findings));
            var plan = Planner.Plan(project, new PlanOptions { Studies = false, Range = false }, cancel: cancel);
            JointPlanText.Write(report, project, plan, parsed.GetValue(all));
            return Task.FromResult(report.End("joints", Endings.Of(plan.Findings), JointPlanText.Document(plan), plan.Findings));
        });
        return command;
    }

    private static Option<string?> ByHandOption(HandbookInput input)
    {
        var taken = input.Default is { } value ? $" If not given: {MeasureText.Write(value, input.Units.Customary, input.Whole)}." : " Must be given.";
        return new Option<string?>("--" + input.Key) { Description = $"By hand: {input.Name}.{taken}" };
    }

    private static void Check(CommandResult result, ProjectDoor door, Option<bool> byHand, Option<string?>[] given)
    {
        var hand = result.GetResult(byHand) is { Tokens.Count: >= 0 } && result.GetValue(byHand);
        var folder = door.HasFolder(result);
        if (hand && folder) result.AddError("Give a project FOLDER or --by-hand, not both.");
        if (!hand && !folder) result.AddError("Give a project FOLDER, or --by-hand with --thickness and what else is known of the joint.");
        if (hand) return;
        foreach (var option in given.Where(o => result.GetResult(o) is { Implicit: false }))
            result.AddError($"{option.Name} goes with --by-hand only; a project says it in project.json.");
    }

    private static int OneJoint(Report report, Dictionary<string, string> texts, UnitSystem system)
    {
        var joint = JointByHand.Evaluate(texts, system);
        HandJointText.Write(report, joint, system);
        foreach (var finding in joint.Findings.Where(f => f.Level == FindingLevel.Note)) report.Line(FindingText.Of(finding));
        return report.End("joints", joint.Succeeded ? Endings.Of(joint.Findings) : ExitCode.Usage, Document(joint), joint.Findings);
    }

    private static object Document(HandJoint joint) => new
    {
        joint.Inputs,
        comparisons = joint.Comparisons.Select(c => new { c.Case, c.Quantity, unit = c.Units.Si.Symbol, closed = In(c.Closed, c), plate = In(c.Plate, c), c.Ratio, c.Form }),
        bars = joint.Bars,
        checks = joint.Checks.Select(JointPlanText.Document),
        joint.Run,
    };

    private static double? In(double? value, HandComparison comparison) => value is { } number ? comparison.Units.Si.FromBase(number) : null;
}
