using System.Collections.Concurrent;
using Slabwright.Core.Job;
using Slabwright.Data.Store;
using Slabwright.Desk.Start;

namespace Slabwright.Desk.Jobs;

/// <summary>Opens jobs: reads them from the store, takes the plan kept there or makes one, and holds the newest of each in memory.</summary>
public sealed class JobDesk(ProjectStore store, TimeProvider clock, ILogger<JobDesk> log)
{
    private readonly ConcurrentDictionary<Guid, (string Content, JobWork Work)> open = new();
    private readonly Lock gate = new();

    /// <summary>The work on a job's present content, started when it is not yet under way; null when there is no such job.</summary>
    public async Task<JobWork?> OpenAsync(Guid id)
    {
        if (await store.FindAsync(id) is not { } entry) return null;
        lock (gate)
        {
            if (open.TryGetValue(id, out var known) && known.Content == entry.ContentHash && known.Work.State is not JobState.Failed)
                return known.Work;
            var work = new JobWork();
            open[id] = (entry.ContentHash, work);
            _ = Task.Run(() => RunAsync(entry, work));
            return work;
        }
    }

    /// <summary>The job once there is a plan to show; null when there is no such job or it has no plan.</summary>
    public Task<OpenJob?> ShownAsync(Guid id) => WaitAsync(id, work => work.Shown);

    /// <summary>The job once its plan is whole, cost range included; null when there is no such job or it has no plan.</summary>
    public Task<OpenJob?> WholeAsync(Guid id) => WaitAsync(id, work => work.Done);

    private async Task<OpenJob?> WaitAsync(Guid id, Func<JobWork, Task> end)
    {
        if (await OpenAsync(id) is not { } work) return null;
        await end(work);
        return work.State is JobState.Ready ready ? ready.Job : null;
    }

    private async Task RunAsync(ProjectEntry entry, JobWork work)
    {
        try
        {
            var read = await store.LoadAsync(entry.Id);
            if (read?.Project is not { } project)
            {
                work.MoveTo(new JobState.Failed("The project's files could not be read.", read?.Findings ?? []));
                return;
            }

            var plan = await KeptPlanAsync(entry) ?? await MakePlanAsync(entry, project, work);
            Show(entry, project, plan, work, rangePending: false);
        }
        catch (Exception trouble)
        {
            log.LogError(trouble, "The plan of {Job} could not be made.", entry.Name);
            work.MoveTo(new JobState.Failed($"The plan could not be made: {trouble.Message}", []));
        }
    }

    private async Task<RepairPlan?> KeptPlanAsync(ProjectEntry entry)
    {
        try
        {
            return await store.FindPlanAsync(entry.Id, entry.ContentHash);
        }
        catch (System.Text.Json.JsonException trouble)
        {
            log.LogWarning(trouble, "The kept plan of {Job} could not be read and is made anew.", entry.Name);
            return null;
        }
    }

    private async Task<RepairPlan> MakePlanAsync(ProjectEntry entry, Project project, JobWork work)
    {
        var priced = Engineering.MakePlan(project, step => work.MoveTo(new JobState.Working(step)));
        Show(entry, project, priced, work, rangePending: true);
        var plan = Engineering.AddRange(project, priced);
        await store.KeepPlanAsync(entry.Id, entry.ContentHash, plan, project.Prices.Currency);
        return plan;
    }

    private void Show(ProjectEntry entry, Project project, RepairPlan plan, JobWork work, bool rangePending) =>
        work.MoveTo(new JobState.Ready(new OpenJob(entry, project, plan, DateOnly.FromDateTime(clock.GetLocalNow().DateTime), rangePending)));
}
