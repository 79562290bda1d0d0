using System.Globalization;
using Microsoft.AspNetCore.Components;
using Slabwright.Core.Survey;
using Slabwright.Core.Treatments;
using Slabwright.Desk.Jobs;
using Slabwright.Sheets.Words;

namespace Slabwright.Desk.Parts;

/// <summary>What each distress gets, why, and where the rule sets would have it otherwise.</summary>
public partial class TreatmentsSheet : ComponentBase
{
    private string? picked;
    private string? asked;

    /// <summary>The job.</summary>
    [Parameter, EditorRequired] public JobView View { get; set; } = null!;

    /// <summary>Distress asked for by the page's address.</summary>
    [Parameter] public string? Picked { get; set; }

    private OpenJob Job => View.Job;

    private IReadOnlyList<Column<TreatmentDecision>> DecisionColumns =>
    [
        new("Distress", d => d.DistressId),
        new("Station", d => At(d.DistressId) is { } at ? Job.Project.Road.Stationing.Format(at) : "") { Number = true, SortBy = d => At(d.DistressId) ?? -1 },
        new("Lane", d => Found(d.DistressId)?.Lane.ToString(CultureInfo.InvariantCulture) ?? "") { Number = true, SortBy = d => Found(d.DistressId)?.Lane ?? 0 },
        new("Type", d => Found(d.DistressId) is { } found ? SheetWords.Of(found.Type) : ""),
        new("Severity", d => Found(d.DistressId) is { } found ? SheetWords.Of(found.Severity) : "") { SortBy = d => Found(d.DistressId)?.Severity ?? 0 },
        new("Treatment", d => SheetWords.Of(d.Treatment)) { SortBy = d => d.Treatment },
        new("Rule", d => d.Reasons.IsEmpty ? "" : d.Reasons[0].Rule),
        new("By", d => d.Override is null ? "rules" : "engineer"),
    ];

    private IReadOnlyList<Column<Disagreement>> DisagreementColumns =>
    [
        new("Distress", d => d.DistressId),
        new("Station", d => At(d.DistressId) is { } at ? Job.Project.Road.Stationing.Format(at) : "") { Number = true, SortBy = d => At(d.DistressId) ?? -1 },
        new("Type", d => Found(d.DistressId) is { } found ? SheetWords.Of(found.Type) : ""),
        .. RuleSetIds.Select(set => new Column<Disagreement>(NameOf(set), d => CallOf(d, set)) { Wide = true }),
    ];

    private IEnumerable<string> RuleSetIds => Job.Plan.Disagreements.SelectMany(d => d.Calls).Select(c => c.RuleSet).Distinct();

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (Picked == asked) return;
        picked = asked = Picked;
    }

    private Distress? Found(string id) => Job.Distresses.GetValueOrDefault(id);

    private double? At(string id) => Found(id)?.From;

    private string NameOf(string set) =>
        Job.Project.OtherRuleSets.Prepend(Job.Project.RuleSet).FirstOrDefault(s => s.Id == set)?.Name ?? set;

    private static string CallOf(Disagreement disagreement, string set) =>
        disagreement.Calls.FirstOrDefault(c => c.RuleSet == set) is { } call ? $"{SheetWords.Of(call.Treatment)} ({call.Rule})" : "";

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
