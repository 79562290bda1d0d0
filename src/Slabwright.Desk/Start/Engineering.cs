using Slabwright.Core.Job;
using Slabwright.Data.Folder;
using Slabwright.Data.Store;

namespace Slabwright.Desk.Start;

/// <summary>What the desk asks of the engineering: read a folder, make a plan.</summary>
internal static class Engineering
{
    public static FolderContent ReadFolder(string folder)
    {
        var read = ProjectFolder.Read(folder, DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime));
        return new FolderContent(read.Project, read.Findings);
    }

    /// <summary>Everything but the cost range.</summary>
    public static RepairPlan MakePlan(Project project, Action<string> step) =>
        Planner.Plan(project, new PlanOptions { Range = false }, p => step($"Step {p.Number} of {p.Of}: {p.Step}"));

    /// <summary>The same plan with its cost range, which plans the job again trial by trial.</summary>
    public static RepairPlan AddRange(Project project, RepairPlan plan)
    {
        var trials = Planner.Plan(project, new PlanOptions { Studies = false });
        return plan with { Quantities = plan.Quantities with { Range = trials.Quantities.Range } };
    }
}
