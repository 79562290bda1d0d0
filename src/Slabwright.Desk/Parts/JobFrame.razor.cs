using System.Globalization;
using Microsoft.AspNetCore.Components;
using Slabwright.Core.Measures;
using Slabwright.Desk.Jobs;
using Slabwright.Sheets.Words;

namespace Slabwright.Desk.Parts;

/// <summary>A job and the units it is read in.</summary>
public sealed record JobView(OpenJob Job, JobUnits Units);

/// <summary>What every page of a job shares.</summary>
public partial class JobFrame : ComponentBase
{
    /// <summary>Plans made sooner than this are in the page's first answer.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(1.5);

    private JobWork? work;
    private bool missing;
    private Guid opened;

    /// <summary>The job's identifier in the store.</summary>
    [Parameter, EditorRequired] public Guid Id { get; set; }

    /// <summary>Title of the page.</summary>
    [Parameter, EditorRequired] public string Title { get; set; } = "";

    [Parameter, EditorRequired] public RenderFragment<JobView> ChildContent { get; set; } = _ => _ => { };

    /// <summary>The answer being written; null once the page is alive.</summary>
    [CascadingParameter] private HttpContext? Http { get; set; }

    /// <inheritdoc/>
    protected override void OnInitialized() => Units.Changed += Redraw;

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        if (opened == Id) return;
        opened = Id;
        Unwatch();
        work = await Jobs.OpenAsync(Id);
        missing = work is null;
        if (work is null)
        {
            if (Http is { Response.HasStarted: false } http) http.Response.StatusCode = StatusCodes.Status404NotFound;
            return;
        }

        work.Changed += Redraw;
        await Task.WhenAny(work.Shown, Task.Delay(Patience));
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Units.Changed -= Redraw;
        Unwatch();
    }

    private void Unwatch()
    {
        if (work is not null) work.Changed -= Redraw;
    }

    private void Redraw() => _ = InvokeAsync(StateHasChanged);

    private static string Pressed(JobUnits units, UnitSystem system) => units.System == system ? "true" : "false";

    private static IEnumerable<(string Part, string Name, string? Count)> Tabs(OpenJob job) =>
    [
        ("", "Repairs", Count(job.Plan.Boundaries.Repairs.Length)),
        ("/treatments", "Treatments", Count(job.Plan.Decisions.Length)),
        ("/joints", "Joints", Count(job.Plan.Joints.Joints.Length)),
        ("/quantities", "Quantities", null),
        ("/findings", "Findings", Count(job.Plan.Findings.Length)),
        ("/sheets", "Sheets", null),
    ];

    private static string Count(int count) => count.ToString("N0", CultureInfo.InvariantCulture);
}
