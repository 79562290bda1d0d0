using System.Collections.Frozen;
using System.Collections.Immutable;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Job;
using Slabwright.Core.Survey;
using Slabwright.Core.Treatments;
using Slabwright.Data.Store;

namespace Slabwright.Desk.Jobs;

/// <summary>A job with its plan, ready to show; built once for each content and shared by all pages.</summary>
public sealed class OpenJob
{
    public OpenJob(ProjectEntry entry, Project project, RepairPlan plan, DateOnly today, bool rangePending)
    {
        (Entry, Project, Plan, Today, RangePending) = (entry, project, plan, today, rangePending);
        Distresses = project.Survey.Distresses.ToFrozenDictionary(d => d.Id);
        Decisions = plan.Decisions.ToFrozenDictionary(d => d.DistressId);
        Works = [.. WorkRow.Of(plan, project)];
        Sheets = new JobSheets(this);
    }

    public ProjectEntry Entry { get; }

    public Project Project { get; }

    public RepairPlan Plan { get; }

    /// <summary>The day the plan was opened; the survey's age is counted to it.</summary>
    public DateOnly Today { get; }

    /// <summary>True while the cost range is still being worked out.</summary>
    public bool RangePending { get; }

    public FrozenDictionary<string, Distress> Distresses { get; }

    public FrozenDictionary<string, TreatmentDecision> Decisions { get; }

    /// <summary>Repairs, partial-depth repairs and sealing as rows of one table, along the road.</summary>
    public ImmutableArray<WorkRow> Works { get; }

    public JobSheets Sheets { get; }

    /// <summary>Demands that a repair answers, for its reasons.</summary>
    public IEnumerable<RemovalDemand> DemandsOf(WorkRow work) =>
        Plan.Demands.Where(d => d.Lane == work.Lane && d.DistressIds.Any(work.DistressIds.Contains));
}
