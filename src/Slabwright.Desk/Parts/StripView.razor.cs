using System.Globalization;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Slabwright.Core.Pavement;
using Slabwright.Desk.Jobs;
using Slabwright.Sheets.Words;

namespace Slabwright.Desk.Parts;

/// <summary>
/// The road from end to end, and a window of it to scale. The browser keeps the window's place and scale and asks the desk for the
/// drawing of what it shows; see wwwroot/strip.js.
/// </summary>
public partial class StripView : ComponentBase
{
    private ElementReference scroll;
    private IJSObjectReference? module;
    private IJSObjectReference? strip;
    private DotNetObjectReference<StripView>? self;
    private string? shown;

    /// <summary>The job.</summary>
    [Parameter, EditorRequired] public JobView View { get; set; } = null!;

    /// <summary>Work picked, or null.</summary>
    [Parameter] public string? Picked { get; set; }

    /// <summary>Raised with the work that is picked on the strip.</summary>
    [Parameter] public EventCallback<string> OnPick { get; set; }

    [Inject] private IJSRuntime Js { get; set; } = null!;

    private Road Road => View.Job.Project.Road;

    private string MapBox => $"0 0 {N(Road.Length)} {N(Road.Lanes.Length * 10)}";

    private string MapLabel => $"Whole road, {View.Units.DistanceText(Road.Length)}, "
        + $"{SheetWords.Count(Road.Lanes.Length, "lane")}, {SheetWords.Count(View.Job.Works.Length, "piece")} of work";

    /// <summary>A repair, surface work or distress was clicked on the strip.</summary>
    [JSInvokable]
    public Task PickFromStrip(string reference)
    {
        var work = View.Job.Works.FirstOrDefault(w => w.Id == reference)
            ?? View.Job.Works.FirstOrDefault(w => w.DistressIds.Contains(reference));
        if (work is null || work.Id == Picked) return Task.CompletedTask;
        shown = work.Id;
        return InvokeAsync(() => OnPick.InvokeAsync(work.Id));
    }

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender) await OpenAsync();
        if (strip is null) return;
        var work = View.Job.Works.FirstOrDefault(w => w.Id == Picked);
        await strip.InvokeVoidAsync("mark", work is null ? [] : Lit(work), work?.From, work?.To);
        if (work is not null && work.Id != shown) await strip.InvokeVoidAsync("goTo", work.From, work.To);
        shown = work?.Id;
    }

    private async Task OpenAsync()
    {
        self = DotNetObjectReference.Create(this);
        module = await Js.InvokeAsync<IJSObjectReference>("import", "./strip.js");
        var start = View.Job.Works.FirstOrDefault()?.From ?? 0;
        strip = await module.InvokeAsync<IJSObjectReference>("open", scroll, self, new
        {
            url = $"/jobs/{View.Job.Entry.Id}/strip/{View.Job.Entry.ContentHash[..12]}",
            length = Road.Length,
            start,
        });
    }

    /// <summary>What lights up with a work: itself and the distresses it answers.</summary>
    private static string[] Lit(WorkRow work) => [work.Id, .. work.DistressIds];

    private async Task StepAsync(int step)
    {
        var works = View.Job.Works;
        if (works.IsEmpty) return;
        var index = Picked is null ? (step > 0 ? -1 : works.Length) : works.ToList().FindIndex(w => w.Id == Picked);
        var next = works[Math.Clamp(index + step, 0, works.Length - 1)];
        if (next.Id != Picked) await OnPick.InvokeAsync(next.Id);
    }

    private static double Top(int lane) => (lane - 1) * 10 + 1;

    private static string N(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        try
        {
            if (strip is not null) await strip.InvokeVoidAsync("close");
            if (strip is not null) await strip.DisposeAsync();
            if (module is not null) await module.DisposeAsync();
        }
        catch (JSDisconnectedException)
        {
            // The reader has left; the browser has nothing to tidy up any more.
        }

        self?.Dispose();
        GC.SuppressFinalize(this);
    }
}
