namespace Slabwright.Desk.Jobs;

/// <summary>
/// The work on one content of one job: it runs once, in the background, and tells its watchers when it moves on. The plan is shown as
/// soon as it is priced; the cost range, which plans the job again trial by trial, comes after it.
/// </summary>
public sealed class JobWork
{
    private readonly TaskCompletionSource shown = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private readonly TaskCompletionSource done = new(TaskCreationOptions.RunContinuationsAsynchronously);

    public JobState State { get; private set; } = new JobState.Working("Reading the project");

    /// <summary>Raised on any thread after <see cref="State"/> has changed.</summary>
    public event Action? Changed;

    /// <summary>Ends when there is a plan to show, or a failure.</summary>
    public Task Shown => shown.Task;

    /// <summary>Ends when the plan is whole, cost range included, or with the failure.</summary>
    public Task Done => done.Task;

    public void MoveTo(JobState state)
    {
        State = state;
        if (state is not JobState.Working) shown.TrySetResult();
        if (state is JobState.Failed or JobState.Ready { Job.RangePending: false }) done.TrySetResult();
        Changed?.Invoke();
    }
}
