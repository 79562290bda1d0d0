using System.Globalization;
using Slabwright.Core.Evidence;
using Slabwright.Core.Job;
using Slabwright.Core.Survey;
using Slabwright.Core.Treatments;
using Slabwright.Sheets.Paper;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.PlanSet;

/// <summary>Why each distress is treated as it is: overrides first, then where rule sets disagree, then every decision in order.</summary>
internal sealed class ReasonSheets(Project project, RepairPlan plan, SheetFrame frame, PaperFonts fonts)
{
    private const string NotMeasured = "not measured";

    private readonly JobUnits units = JobUnits.Of(project.UnitSystem);
    private readonly Dictionary<string, Distress> distresses = ById(project.Survey);

    public IEnumerable<SheetDraft> Drafts()
    {
        var blocks = new List<FlowBlock>();
        var overridden = plan.Decisions.Where(d => d.Override is not null).ToList();
        if (overridden.Count > 0)
        {
            blocks.Add(new FlowHeading("Overrides: the engineer's decision in place of the rules'"));
            blocks.Add(new FlowTable(OverrideTable(overridden)));
        }

        if (!plan.Disagreements.IsEmpty)
        {
            blocks.Add(new FlowHeading($"Where rule sets disagree ({SheetWords.Count(plan.Disagreements.Length, "distress", "distresses")})"));
            blocks.Add(new FlowTable(DisagreementTable()));
        }

        if (!plan.Decisions.IsEmpty)
        {
            blocks.Add(new FlowHeading("Every decision"));
            blocks.Add(new FlowTable(DecisionTable()));
        }

        if (blocks.Count == 0) blocks.Add(new FlowText("The survey holds no distress, so there is nothing to decide."));
        return FlowSheets.Of("Reasons for the treatments", new PaperFlow(fonts, frame.Body).Lay(blocks)).Concat(BoundaryDrafts());
    }

    private PaperTable OverrideTable(List<TreatmentDecision> decisions)
    {
        PaperColumn[] columns =
        [
            new("Distress", 50), new("Station", 80), new("Lane", 31, Side.Right), new("What", 150), new("Rules called", 90), new("Engineer decided", 90),
            new("Because", 330), new("By", 90), new("On", 56),
        ];
        var rows = decisions.Select(d => new PaperRow(
        [
            d.DistressId, Station(d.DistressId), LaneOf(d.DistressId), What(d.DistressId), SheetWords.Of(d.CalledByRules), SheetWords.Of(d.Treatment), d.Override!.Because,
            d.Override.By, d.Override.On?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "",
        ], RowTone.Strong));
        return new PaperTable(fonts, columns, rows, frame.Body.Width, 7.6f);
    }

    private PaperTable DisagreementTable()
    {
        PaperColumn[] columns = [new("Distress", 50), new("Station", 70), new("Lane", 31, Side.Right), new("What", 140), new("Calls: rule set, treatment (rule)", 600)];
        var rows = plan.Disagreements.Select(d => new PaperRow(
        [
            d.DistressId, Station(d.DistressId), LaneOf(d.DistressId), What(d.DistressId),
            string.Join("; ", d.Calls.GroupBy(c => c.Treatment).Select(g => $"{SheetWords.Of(g.Key)}: {string.Join(", ", g.Select(c => $"{c.RuleSet} ({c.Rule})"))}")),
        ]));
        return new PaperTable(fonts, columns, rows, frame.Body.Width, 7.4f);
    }

    private PaperTable DecisionTable()
    {
        PaperColumn[] columns =
        [
            new("Distress", 46), new("Station", 66), new("Lane", 31, Side.Right), new("Slab", 32, Side.Right), new("What was seen", 142), new("Decision", 78), new("Rule", 104),
            new("Why", 222), new("Source", 84), new("Inputs", 306),
        ];
        return new PaperTable(fonts, columns, plan.Decisions.Select(DecisionRow), frame.Body.Width, 7.2f);
    }

    private PaperRow DecisionRow(TreatmentDecision d)
    {
        var first = d.Reasons.IsEmpty ? null : d.Reasons[0];
        var why = string.Join("\n", d.Reasons.Select(r => r.Sentence));
        var slab = distresses.TryGetValue(d.DistressId, out var distress) ? distress.Slab.ToString(CultureInfo.InvariantCulture) : "";
        var decision = d.Override is null ? SheetWords.Of(d.Treatment) : $"{SheetWords.Of(d.Treatment)}\n(override; rules: {SheetWords.Of(d.CalledByRules).ToLowerInvariant()})";
        return new PaperRow(
        [
            d.DistressId, Station(d.DistressId), LaneOf(d.DistressId), slab, What(d.DistressId), decision, first?.Rule ?? "", why, first?.Source.ToString() ?? "",
            InputWords(d.Reasons.SelectMany(r => r.Inputs).Distinct()),
        ], d.Override is null ? RowTone.Normal : RowTone.Strong);
    }

    /// <summary>Inputs in one line; type and severity stand under what was seen, and what was not measured is named at the end.</summary>
    private static string InputWords(IEnumerable<ReasonInput> inputs)
    {
        var told = inputs.Where(i => i.Name is not ("type" or "severity")).ToList();
        var words = told.Where(i => i.Value != NotMeasured).Select(i => $"{i.Name} {i.Value}").ToList();
        var missing = told.Where(i => i.Value == NotMeasured).Select(i => i.Name).ToList();
        if (missing.Count > 0) words.Add($"{NotMeasured}: {string.Join(", ", missing)}");
        return string.Join("; ", words);
    }

    /// <summary>Sheets of their own in two columns: many short lines.</summary>
    private IEnumerable<SheetDraft> BoundaryDrafts()
    {
        var rows = plan.Boundaries.Repairs.Where(r => !r.Reasons.IsEmpty)
            .Select(r => new PaperRow([r.Id, string.Join(", ", r.DistressIds), string.Join("\n", r.Reasons.Select(Sentence))])).ToList();
        if (rows.Count == 0) return [];
        var flow = new PaperFlow(fonts, frame.Body, 2);
        PaperColumn[] columns = [new("Repair", 34), new("Answers", 74), new("Why the boundaries are where they are, and the source", 460)];
        return FlowSheets.Of("Reasons for the boundaries", flow.Lay([new FlowTable(new PaperTable(fonts, columns, rows, flow.ColumnWidth, 7.2f))]));
    }

    private static string Sentence(Reason reason)
    {
        var inputs = string.Join("; ", reason.Inputs.Select(i => $"{i.Name} {i.Value}"));
        return $"{reason.Sentence} {(inputs.Length > 0 ? JobUnits.Raised(inputs) + ". " : "")}[{reason.Source}]";
    }

    private string Station(string id) => distresses.TryGetValue(id, out var d) ? project.Road.Stationing.Format(d.Middle) : "";

    private string LaneOf(string id) => distresses.TryGetValue(id, out var d) ? d.Lane.ToString(CultureInfo.InvariantCulture) : "";

    private string What(string id)
    {
        if (!distresses.TryGetValue(id, out var d)) return "";
        var parts = new List<string> { $"{SheetWords.Of(d.Type)}{(d.Severity == Severity.None ? "" : ", " + SheetWords.Of(d.Severity))}" };
        if (d.Depth is { } depth) parts.Add($"depth {units.ThicknessText(depth)}");
        if (d.Width is { } wide) parts.Add($"width {units.SmallText(wide)}");
        if (d.Faulting is { } fault) parts.Add($"faulting {units.SmallText(fault)}");
        if (d.WideningBelow is { } below) parts.Add($"widening below {units.LengthText(below)}");
        if (d.Note.Length > 0) parts.Add($"“{d.Note}”");
        return string.Join(", ", parts);
    }

    private static Dictionary<string, Distress> ById(SurveyRecord survey)
    {
        var byId = new Dictionary<string, Distress>(StringComparer.Ordinal);
        foreach (var distress in survey.Distresses) byId[distress.Id] = distress;
        return byId;
    }
}
