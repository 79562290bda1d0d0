using System.Collections.Immutable;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Job;
using Slabwright.Core.Treatments;

namespace Slabwright.Desk.Jobs;

/// <summary>One piece of work as the table shows it: a repair through the slab, a partial-depth repair or a seal.</summary>
/// <param name="Id">Identifier printed on the sheets.</param>
/// <param name="Lane">Lane number.</param>
/// <param name="From">Metres along the road.</param>
/// <param name="To">Metres along the road.</param>
/// <param name="Kind">What is done.</param>
/// <param name="Length">Length, m.</param>
/// <param name="Area">Area, m²; 0 for sealing.</param>
/// <param name="Cost">Measured quantities of this work × prices.</param>
/// <param name="DistressIds">Distresses it answers.</param>
/// <param name="Repair">The repair; null for work that does not go through the slab.</param>
public sealed record WorkRow(
    string Id, int Lane, double From, double To, Treatment Kind, double Length, double Area, decimal Cost,
    ImmutableArray<string> DistressIds, Repair? Repair)
{
    public static IEnumerable<WorkRow> Of(RepairPlan plan, Project project)
    {
        var cost = plan.Quantities.TakeOff.GroupBy(l => l.WorkId)
            .ToDictionary(g => g.Key, g => g.Sum(l => (decimal)l.Measured * l.UnitPrice));
        var repairs = plan.Boundaries.Repairs.Select(r => new WorkRow(
            r.Id, r.Lane, r.From, r.To, r.Kind, r.Length, r.Area, cost.GetValueOrDefault(r.Id), r.DistressIds, r));
        var surface = plan.SurfaceWorks.Select(w => new WorkRow(
            w.Id, w.Lane, w.From, w.To, w.Treatment, w.Length, w.Area, cost.GetValueOrDefault(w.Id), w.DistressIds, null));
        return repairs.Concat(surface).OrderBy(w => w.From).ThenBy(w => w.Lane);
    }
}
