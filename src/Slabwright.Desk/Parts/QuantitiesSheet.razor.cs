using System.Globalization;
using Microsoft.AspNetCore.Components;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;
using Slabwright.Core.Quantities;
using Slabwright.Sheets.Words;

namespace Slabwright.Desk.Parts;

/// <summary>Bid schedule, totals, the spread of the cost and what each rule costs.</summary>
public partial class QuantitiesSheet : ComponentBase
{
    /// <summary>The job.</summary>
    [Parameter, EditorRequired] public JobView View { get; set; } = null!;

    private QuantityResult Quantities => View.Job.Plan.Quantities;

    private BoundaryResult Boundaries => View.Job.Plan.Boundaries;

    private Stationing Stationing => View.Job.Project.Road.Stationing;

    private string Currency => View.Job.Project.Prices.Currency;

    private IReadOnlyList<Column<BidLine>> BidColumns =>
    [
        new("Item", l => l.Item.Code),
        new("Name", l => l.Name) { Wide = true },
        new("Unit", l => JobUnits.Symbol(l.Item.Unit)),
        new("Measured", l => JobUnits.Number(l.Measured, l.Item.Unit.Dimension == Dimension.None ? 0 : 2)) { Number = true, SortBy = l => l.Measured },
        new("Pay quantity", l => JobUnits.Number(l.Pay)) { Number = true, SortBy = l => l.Pay },
        new("Unit price", l => JobUnits.Cents(l.UnitPrice)) { Number = true, Unit = Currency, SortBy = l => l.UnitPrice },
        new("Amount", l => JobUnits.Cents(l.Amount)) { Number = true, Unit = Currency, SortBy = l => l.Amount },
    ];

    private IReadOnlyList<Column<CostDriver>> DriverColumns =>
    [
        new("What varies", d => d.Name),
        new("Median when low", d => JobUnits.Money("", d.LowCost)) { Number = true, Unit = Currency, SortBy = d => d.LowCost },
        new("Median when high", d => JobUnits.Money("", d.HighCost)) { Number = true, Unit = Currency, SortBy = d => d.HighCost },
    ];

    private IReadOnlyList<Column<RuleCost>> RuleColumns =>
    [
        new("Rule", r => r.Rule),
        new("What it asks", r => r.Sentence) { Wide = true },
        new("Cost it adds", r => JobUnits.Money("", r.Cost)) { Number = true, Unit = Currency, SortBy = r => r.Cost },
        new("Least cost without it", r => JobUnits.Money("", r.CostWithout)) { Number = true, Unit = Currency, SortBy = r => r.CostWithout },
    ];

    private IReadOnlyList<Column<LargeRemoval>> LargeColumns =>
    [
        new("Lane", l => l.Lane.ToString(CultureInfo.InvariantCulture)) { Number = true, SortBy = l => l.Lane },
        new("From", l => Stationing.Format(l.From)) { Number = true, Unit = "station", SortBy = l => l.From },
        new("To", l => Stationing.Format(l.To)) { Number = true, Unit = "station", SortBy = l => l.To },
        new("Length", l => View.Units.LengthNumber(l.To - l.From)) { Number = true, Unit = View.Units.Length.Symbol, SortBy = l => l.To - l.From },
        new("Separate repairs", l => JobUnits.Money("", l.SpotCost)) { Number = true, Unit = Currency, SortBy = l => l.SpotCost },
        new("One removal", l => JobUnits.Money("", l.RunCost)) { Number = true, Unit = Currency, SortBy = l => l.RunCost },
        new("Chosen", l => l.Chosen ? "one removal" : "separate repairs"),
    ];

    private IReadOnlyList<Column<GroupTotal>> GroupColumns =>
    [
        new("Group", g => g.Name) { Wide = true },
        new("Works", g => JobUnits.Number(g.Count)) { Number = true, SortBy = g => g.Count },
        new("Area", g => View.Units.AreaNumber(g.Area)) { Number = true, Unit = JobUnits.Symbol(View.Units.Area), SortBy = g => g.Area },
        new("Amount", g => JobUnits.Money("", g.Amount)) { Number = true, Unit = Currency, SortBy = g => g.Amount },
    ];

    private static string BidKey(BidLine line) => string.Create(CultureInfo.InvariantCulture, $"{line.Item.Code}-{line.SizeClass}");
}
