using System.Globalization;
using Microsoft.AspNetCore.Components;
using Slabwright.Core.Boundaries;
using Slabwright.Desk.Jobs;
using Slabwright.Sheets.Words;

namespace Slabwright.Desk.Parts;

/// <summary>The road strip, the repairs and their reasons.</summary>
public partial class RepairsSheet : ComponentBase
{
    private string? picked;
    private string? asked;

    /// <summary>The job.</summary>
    [Parameter, EditorRequired] public JobView View { get; set; } = null!;

    /// <summary>Work asked for by the page's address.</summary>
    [Parameter] public string? Picked { get; set; }

    private OpenJob Job => View.Job;

    private WorkRow? Work => Job.Works.FirstOrDefault(w => w.Id == picked);

    private IReadOnlyList<Column<WorkRow>> Columns =>
    [
        new("Mark", w => w.Id),
        new("Lane", w => w.Lane.ToString(CultureInfo.InvariantCulture)) { Number = true, SortBy = w => w.Lane },
        new("From", w => Job.Project.Road.Stationing.Format(w.From)) { Number = true, Unit = "station", SortBy = w => w.From },
        new("To", w => Job.Project.Road.Stationing.Format(w.To)) { Number = true, Unit = "station", SortBy = w => w.To },
        new("Kind", w => SheetWords.Of(w.Kind)) { SortBy = w => w.Kind },
        new("Length", w => View.Units.LengthNumber(w.Length)) { Number = true, Unit = View.Units.Length.Symbol, SortBy = w => w.Length },
        new("Area", w => w.Area > 0 ? View.Units.AreaNumber(w.Area) : "") { Number = true, Unit = JobUnits.Symbol(View.Units.Area), SortBy = w => w.Area },
        new("Start joint", w => Ends(w.Repair?.Start)),
        new("End joint", w => Ends(w.Repair?.End)),
        new("Joints inside", w => w.Repair is { } r ? r.Intermediate.Length.ToString(CultureInfo.InvariantCulture) : "") { Number = true, SortBy = w => w.Repair?.Intermediate.Length ?? -1 },
        new("Measured cost", w => JobUnits.Number((double)w.Cost)) { Number = true, Unit = Job.Project.Prices.Currency, SortBy = w => w.Cost },
    ];

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (Picked == asked) return;
        picked = asked = Picked;
    }

    private void Pick(string id) => picked = id == picked ? null : id;

    private static string Ends(RepairJoint? joint) =>
        joint is null ? "" : string.Create(CultureInfo.InvariantCulture, $"{SheetWords.Of(joint.Design)}{(joint.Bars > 0 ? $", {joint.Bars} bars" : "")}");
}
