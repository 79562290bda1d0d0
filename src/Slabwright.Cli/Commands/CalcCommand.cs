using System.Collections.Immutable;
using System.CommandLine;
using Slabwright.Cli.Output;
using Slabwright.Core.Evidence;
using Slabwright.Core.Handbook;
using Slabwright.Core.Measures;

namespace Slabwright.Cli.Commands;

/// <summary><c>slabwright calc [ID] [name=value ...]</c>: the handbook, listed, shown or worked out.</summary>
internal static class CalcCommand
{
    public static Command Build()
    {
        var id = new Argument<string?>("ID") { Description = "Formula; left out, the handbook is listed.", Arity = ArgumentArity.ZeroOrOne };
        var inputs = new Argument<string[]>("INPUTS") { Description = "name=value pairs, e.g. length=\"6 ft\".", Arity = ArgumentArity.ZeroOrMore };
        var si = new Option<bool>("--si") { Description = "Bare numbers and results in SI units." };
        var json = new Option<bool>("--json") { Description = "One JSON document on standard output." };
        inputs.Validators.Add(result =>
        {
            foreach (var token in result.Tokens.Where(t => t.Value.IndexOf('=', StringComparison.Ordinal) <= 0))
                result.AddError($"'{token.Value}' is not of the form name=value, e.g. length=\"6 ft\".");
        });
        var command = new Command("calc", "Lists the handbook, shows one formula, or works it out.") { id, inputs, si, json };
        command.SetAction(parsed =>
        {
            var report = new Report(parsed.GetValue(json), quiet: true);
            var system = parsed.GetValue(si) ? UnitSystem.Si : UnitSystem.UsCustomary;
            var given = parsed.GetValue(inputs) ?? [];
            if (parsed.GetValue(id) is not { } wanted) return List(report);
            return given.Length == 0 ? Show(report, wanted, system) : Work(report, wanted, given, system);
        });
        return command;
    }

    private static int List(Report report)
    {
        foreach (var chapter in FormulaBook.All.GroupBy(e => e.Topic))
        {
            report.Line(chapter.Key);
            foreach (var entry in chapter) report.Line($"  {entry.Id,-34} {entry.Title}");
        }

        var all = FormulaBook.All.Select(e => new { e.Id, e.Title, e.Topic, e.Expression, e.Source });
        return report.End("calc", ExitCode.Done, all, []);
    }

    private static int Show(Report report, string id, UnitSystem system)
    {
        if (FormulaBook.Find(id) is not { } entry)
            return report.End("calc", ExitCode.Usage, null, FormulaBook.Evaluate(id, ImmutableDictionary<string, string>.Empty).Findings);

        report.Line(entry.Title);
        report.Line("  " + entry.Expression);
        report.Line("Source: " + entry.Source);
        report.Line(entry.Notes);
        if (entry.Caution.Length > 0) report.Line("Caution: " + entry.Caution);
        report.Line();
        var inputs = new TextTable("input", "symbol", "unit", "meaning", "if not given");
        foreach (var input in entry.Inputs)
        {
            var unit = input.Units.In(system);
            inputs.Add(input.Key, input.Symbol, unit.Symbol, input.Name, input.Default is { } value ? unit.Format(value, 3) : "");
        }

        report.Table(inputs);
        foreach (var example in entry.Examples)
        {
            report.Line();
            report.Line($"Worked example: {example.Title} ({example.Source})");
            report.Line($"  slabwright calc {entry.Id} {string.Join(' ', example.Inputs.Select(i => $"{i.Key}=\"{i.Text}\""))}");
            report.Line("  answer " + string.Join(", ", example.Expected.Select(e => $"{e.Symbol} = {e.Text}")));
        }

        return report.End("calc", ExitCode.Done, new { entry.Id, entry.Title, entry.Topic, entry.Expression, entry.Notes, entry.Caution, entry.Source }, []);
    }

    private static int Work(Report report, string id, string[] given, UnitSystem system)
    {
        var inputs = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        foreach (var pair in given)
        {
            var at = pair.IndexOf('=', StringComparison.Ordinal);
            inputs[pair[..at]] = pair[(at + 1)..];
        }

        var result = FormulaBook.Evaluate(id, inputs, system);
        if (result.Entry is { } entry && result.Succeeded)
        {
            report.Line($"{entry.Title}: {entry.Expression}");
            foreach (var input in result.Inputs) report.Line($"  {input.Name}: {input.Value}");
            foreach (var value in result.Values) report.Line($"{value.Output.Name}: {value.Output.Symbol} = {value.Text}");
            report.Line("Source: " + entry.Source);
            if (entry.Caution.Length > 0) report.Line("Caution: " + entry.Caution);
        }

        var outcome = new
        {
            id,
            inputs = result.Inputs,
            values = result.Values.Select(v => new { v.Output.Symbol, v.Output.Name, v.Value, unit = v.Unit.Symbol, v.Text }),
            source = result.Entry?.Source,
            reasons = result.Reasons,
        };
        return report.End("calc", result.Succeeded ? Endings.Of(result.Findings) : ExitCode.Usage, outcome, result.Findings);
    }
}
