using System.Globalization;
using Microsoft.AspNetCore.Components;
using Slabwright.Core.Joints.Design;
using Slabwright.Core.Measures;
using Slabwright.Sheets.Figures;
using Slabwright.Sheets.Joints;
using Slabwright.Sheets.Words;

namespace Slabwright.Desk.Parts.Joints;

/// <summary>One alternative with its mark in the table.</summary>
public sealed record AlternativeRow(string Mark, JointAlternative Alternative, bool IsWinner);

/// <summary>One lane: its conditions, its alternatives and why one was chosen.</summary>
public partial class LaneSheet : ComponentBase
{
    private (LaneJointDesign Lane, UnitSystem Units)? drawn;

    /// <summary>The job.</summary>
    [Parameter, EditorRequired] public JobView View { get; set; } = null!;

    /// <summary>The lane.</summary>
    [Parameter, EditorRequired] public LaneJointDesign Lane { get; set; } = null!;

    /// <summary>Alternative picked.</summary>
    [Parameter, EditorRequired] public JointAlternative Picked { get; set; } = null!;

    /// <summary>Raised when an alternative is picked.</summary>
    [Parameter] public EventCallback<JointAlternative> OnPick { get; set; }

    private string Chart { get; set; } = "";

    private IReadOnlyList<AlternativeRow> Rows { get; set; } = [];

    private IReadOnlyList<ConditionRow> Conditions { get; set; } = [];

    private JobUnits Units => View.Units;

    private IReadOnlyList<Column<ConditionRow>> ConditionColumns { get; } =
        [new("Condition", c => c.Name), new("Value", c => c.Value) { Wide = true }, new("Source", c => c.Source) { Wide = true }];

    private IReadOnlyList<Column<AlternativeRow>> Columns =>
    [
        new("Mark", r => r.Mark),
        new("Verdict", Verdict),
        new("Bars", r => r.Alternative.Layout is { } l ? N(l.Bars) : "none") { Number = true, SortBy = r => r.Alternative.Layout?.Bars ?? 0 },
        new("Diameter", r => r.Alternative.Layout is { } l ? Units.Detail(l.Diameter) : "–") { Number = true, SortBy = r => r.Alternative.Layout?.Diameter ?? 0 },
        new("Length", r => r.Alternative.Layout is { } l ? Units.Detail(l.Length) : "–") { Number = true, SortBy = r => r.Alternative.Layout?.Length ?? 0 },
        new("Arrangement", r => r.Alternative.Layout is { } l ? JointWords.Of(l.Arrangement) : "–"),
        new("Cost a joint", r => JobUnits.Cents(r.Alternative.CostPerJoint)) { Number = true, Unit = View.Job.Project.Prices.Currency, SortBy = r => r.Alternative.CostPerJoint },
        new("Life", r => double.IsInfinity(r.Alternative.Life) ? "not reached" : JobUnits.Number(r.Alternative.Life, 1)) { Number = true, Unit = "years", SortBy = r => r.Alternative.Life },
        new("Governing limit", r => CheckWords.Of(r.Alternative.Governing, Units)) { Wide = true },
        new("Share used", r => CheckWords.Use(r.Alternative.Governing)) { Number = true, SortBy = r => r.Alternative.Governing.Use },
        Stress("Bearing, plate", a => a.Layout is null ? null : a.Bearing),
        Stress("Bearing, closed 1.0 l", a => a.Layout is null ? null : a.ClosedBearing.Reach10),
        Stress("Bearing, closed 1.8 l", a => a.Layout is null ? null : a.ClosedBearing.Reach18),
        new("Transfer", r => JobUnits.Number(r.Alternative.DeflectionTransfer * 100, 1)) { Number = true, Unit = "%", SortBy = r => r.Alternative.DeflectionTransfer },
        new("Deflection", r => Units.MovementNumber(r.Alternative.Deflection)) { Number = true, Unit = Units.Thickness.Symbol, SortBy = r => r.Alternative.Deflection },
        Stress("Slab stress", a => a.Stress),
        new("Faulting", r => Units.MovementNumber(r.Alternative.Faulting)) { Number = true, Unit = Units.Thickness.Symbol, SortBy = r => r.Alternative.Faulting },
    ];

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (drawn == (Lane, Units.System)) return;
        drawn = (Lane, Units.System);
        Rows = [.. Lane.Alternatives.Select((a, n) => new AlternativeRow("A" + N(n + 1), a, a == Lane.Winner))];
        Conditions = [.. ConditionRows.Of(Lane.Conditions, View.Job.Plan.Joints.Findings, Units)];
        var chart = AlternativesChart.Draw(Lane, Units, View.Job.Project.Prices.Currency, new PlotOptions { Width = 680, TextSize = 12, GreatestHeight = 300 });
        Chart = FigureSvg.Write(chart, "alternatives", "joint-chart");
    }

    private Task PickAsync(string mark) => OnPick.InvokeAsync(Rows.First(r => r.Mark == mark).Alternative);

    private Column<AlternativeRow> Stress(string title, Func<JointAlternative, double?> of) =>
        new(title, r => of(r.Alternative) is { } value ? Units.StressNumber(value) : "–") { Number = true, Unit = Units.Stress.Symbol, SortBy = r => of(r.Alternative) ?? 0 };

    private static string Verdict(AlternativeRow row) => row.IsWinner ? "◆ chosen" : row.Alternative.Passes ? "✓ passes" : "✕ fails";

    private static string N(int value) => value.ToString(CultureInfo.InvariantCulture);
}
