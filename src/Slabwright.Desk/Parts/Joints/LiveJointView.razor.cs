using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Slabwright.Core.Evidence;
using Slabwright.Core.Joints.Design;
using Slabwright.Core.Joints.Live;
using Slabwright.Core.Measures;
using Slabwright.Sheets.Words;

namespace Slabwright.Desk.Parts.Joints;

/// <summary>
/// A joint that is built once off the page's thread, and an axle on it. While an answer is worked out further moves wait and only the newest
/// is answered next, so the page follows the hand however long an answer takes.
/// </summary>
public partial class LiveJointView : ComponentBase
{
    /// <summary>How far from the joint the axle may go and the plan is drawn, m.</summary>
    private const double Reach = 3;

    /// <summary>Greatest difference of top and bottom taken, degrees of the units shown: beyond what any slab sees.</summary>
    private const double MostWarmer = 60;

    private readonly List<AxleClass> axles = [];
    private ImmutableArray<Finding> findings = [];
    private (JointConditions, BarLayout?, LiveSurroundings)? built;
    private CancellationTokenSource? stop;
    private LiveSurroundings around = new();
    private LiveQuantity quantity;
    private LiveJoint? joint;
    private LiveAxle? axle;
    private LiveAxle? wanted;
    private LiveAnswer? answer;
    private LiveDrawings figures = LiveDrawings.None;
    private UnitSystem? drawnIn;
    private ElementReference plan;
    private IJSObjectReference? module;
    private IJSObjectReference? hand;
    private DotNetObjectReference<LiveJointView>? self;
    private double milliseconds;
    private int chosen;
    private bool busy;
    private bool stopped;
    private string? step;
    private string? trouble;
    private string? warmerNote;

    /// <summary>The job.</summary>
    [Parameter, EditorRequired] public JobView View { get; set; } = null!;

    /// <summary>Conditions of the joint.</summary>
    [Parameter, EditorRequired] public JointConditions Conditions { get; set; } = null!;

    /// <summary>Its bars; null for none.</summary>
    [Parameter] public BarLayout? Bars { get; set; }

    [Inject] private IJSRuntime Js { get; set; } = null!;

    private bool IsUs => View.Units.System == UnitSystem.UsCustomary;

    private double ReachAhead => Math.Min(Reach, joint?.Model.System.Pieces[^1].To ?? Reach);

    private string PlaceText => $"{AlongText(axle!.Along)}, its middle {View.Units.Running(axle.Across)} from the lane’s left edge";

    private string WarmerText => JobUnits.Number(WarmthUnit.FromBase(around.TopWarmer), 0);

    private Unit WarmthUnit => IsUs ? Units.FahrenheitDegree : Units.Kelvin;

    /// <summary>A place under the pointer, metres from the joint and from the left edge.</summary>
    [JSInvokable]
    public Task MoveTo(double along, double across) => axle is null ? Task.CompletedTask : InvokeAsync(() => GoAsync(axle with { Along = along, Across = across }));

    /// <summary>Steps of the arrow keys, m.</summary>
    [JSInvokable]
    public Task StepBy(double along, double across) => axle is null ? Task.CompletedTask : MoveTo(axle.Along + along, axle.Across + across);

    /// <summary>Brings the axle back to the joint, in the wheel paths.</summary>
    [JSInvokable]
    public Task Home() => InvokeAsync(() => GoAsync(LiveAxle.AtJoint(axles[chosen], Conditions)));

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (built is not { } old || (old.Item1, old.Item2) != (Conditions, Bars)) TakeTraffic();
        if (RendererInfo.IsInteractive && built != (Conditions, Bars, around)) Rebuild();
        if (answer is not null && drawnIn != View.Units.System) Draw(answer);
    }

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender)
        {
            self = DotNetObjectReference.Create(this);
            module = await Js.InvokeAsync<IJSObjectReference>("import", "./joint.js");
        }

        if (module is null || joint is null || axle is null || hand is not null) return;
        hand = await module.InvokeAsync<IJSObjectReference>("open", plan, self);
    }

    private void TakeTraffic()
    {
        axles.Clear();
        axles.AddRange(Conditions.Traffic.Select(a => a with { PerDay = 0 }).Distinct().OrderBy(a => a.Axles).ThenBy(a => a.Load));
        if (axles.Count == 0) axles.Add(new AxleClass(1, Units.Kip.ToBase(18), 0));
        chosen = Math.Max(0, axles.FindLastIndex(a => a.Axles == 1));
        axle = null;
    }

    private void Rebuild()
    {
        built = (Conditions, Bars, around);
        stop?.Cancel();
        (joint, answer, trouble, stopped, step, wanted) = (null, null, null, false, null, null);
        _ = DropHandAsync();
        findings = LiveJoint.Check(Conditions, Bars, around);
        if (findings.Any(f => f.Level == FindingLevel.Error)) return;
        findings = [];
        stop = new CancellationTokenSource();
        _ = BuildAsync(Conditions, Bars, around, stop.Token);
    }

    private async Task BuildAsync(JointConditions conditions, BarLayout? bars, LiveSurroundings surroundings, CancellationToken cancel)
    {
        try
        {
            var made = await Task.Run(() => LiveJoint.Build(conditions, bars, surroundings, Tell, cancel), cancel);
            if (cancel.IsCancellationRequested) return;
            joint = made;
            await GoAsync(axle ?? LiveAxle.AtJoint(axles[chosen], conditions));
        }
        catch (OperationCanceledException)
        {
            // Somebody chose something else, stopped it or left; whoever did says what is shown now.
        }
        catch (Exception failure) when (failure is ArgumentException or InvalidOperationException)
        {
            if (!cancel.IsCancellationRequested) trouble = failure.Message;
            StateHasChanged();
        }

        void Tell(string what) => _ = InvokeAsync(() => { if (!cancel.IsCancellationRequested) { step = what; StateHasChanged(); } });
    }

    private void Stop()
    {
        stop?.Cancel();
        stopped = true;
    }

    /// <summary>Puts the axle somewhere and answers; while busy the newest place waits.</summary>
    private async Task GoAsync(LiveAxle next)
    {
        if (joint is null) return;
        axle = wanted = next.KeptOn(joint, Reach);
        if (busy)
        {
            StateHasChanged();
            return;
        }

        busy = true;
        StateHasChanged();
        try
        {
            while (wanted is { } place && joint is { } asked)
            {
                wanted = null;
                var (found, drawn, took) = await Task.Run(() => Answer(asked, place));
                if (asked != joint) continue;
                (answer, figures, milliseconds, drawnIn) = (found, drawn, took, View.Units.System);
                StateHasChanged();
            }
        }
        finally
        {
            busy = false;
            StateHasChanged();
        }
    }

    private (LiveAnswer Answer, LiveDrawings Drawings, double Milliseconds) Answer(LiveJoint asked, LiveAxle place)
    {
        var watch = Stopwatch.StartNew();
        var found = asked.Under(place);
        var drawn = LiveDrawings.Of(asked, found, quantity, View.Units, -Reach, Reach);
        return (found, drawn, watch.Elapsed.TotalMilliseconds);
    }

    private void Draw(LiveAnswer found)
    {
        drawnIn = View.Units.System;
        figures = LiveDrawings.Of(joint!, found, quantity, View.Units, -Reach, Reach);
    }

    private Task TakeAxle(int index)
    {
        chosen = index;
        return axle is null ? Task.CompletedTask : GoAsync(axle with { Class = axles[index] });
    }

    private void TakeQuantity(LiveQuantity what)
    {
        quantity = what;
        if (answer is not null) Draw(answer);
    }

    private void TakeWarmer(string? text)
    {
        warmerNote = double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && Math.Abs(value) <= MostWarmer
            ? null
            : $"“{text}” was not taken: give a number from −{MostWarmer:0} to {MostWarmer:0} {WarmthUnit.Symbol}.";
        if (warmerNote is null) Surround(around with { TopWarmer = WarmthUnit.ToBase(value) });
    }

    private void Surround(LiveSurroundings next)
    {
        around = next;
        Rebuild();
    }

    private string AxleText(AxleClass one)
    {
        var kind = one.Axles switch { 1 => "single axle", 2 => "tandem", _ => "tridem" };
        return $"{kind} {View.Units.ForceText(one.Load)}, {(JointLoads.Tyre(one, Conditions).OnWheel == 1 ? "single tyres" : "dual tyres")}";
    }

    private string AlongText(double along) =>
        Math.Abs(along) < 0.005 ? "over the joint" : $"{View.Units.Running(Math.Abs(along))} {(along < 0 ? "before the joint, on the old slab" : "after the joint, on the repair")}";

    private static string Named(LiveQuantity what) => LiveDrawings.Named(what);

    private static string HollowText(HollowCorner corner) => corner switch
    {
        HollowCorner.None => "none",
        HollowCorner.OldSlab => "under the old slab’s right corner",
        _ => "under the repair’s right corner",
    };

    private static string Inv(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);

    private static double Number(ChangeEventArgs e) => double.Parse((string)e.Value!, CultureInfo.InvariantCulture);

    private async Task DropHandAsync()
    {
        if (hand is not { } old) return;
        hand = null;
        try
        {
            await old.InvokeVoidAsync("close");
            await old.DisposeAsync();
        }
        catch (JSDisconnectedException)
        {
            // The reader has left; the browser has nothing to tidy up any more.
        }
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        stop?.Cancel();
        joint = null;
        await DropHandAsync();
        try
        {
            if (module is not null) await module.DisposeAsync();
        }
        catch (JSDisconnectedException)
        {
            // As above.
        }

        self?.Dispose();
        GC.SuppressFinalize(this);
    }
}
