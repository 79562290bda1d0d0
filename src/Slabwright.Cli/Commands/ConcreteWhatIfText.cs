using Slabwright.Cli.Output;
using Slabwright.Core.Concrete.Mixes;
using Slabwright.Core.Concrete.Opening;
using Slabwright.Core.Handbook;

namespace Slabwright.Cli.Commands;

/// <summary>A what-if answered beside the plan.</summary>
/// <param name="Night">The night.</param> <param name="Mix">The mix.</param> <param name="Change">The change, in words.</param>
/// <param name="Plain">Answer as planned.</param> <param name="Changed">Answer under the change.</param> <param name="LastPlacing">Latest placing under the change.</param>
internal sealed record ChangedNight(WorkNight Night, ConcreteMix Mix, string Change, NightAnswer Plain, NightAnswer Changed, DateTime? LastPlacing)
{
    /// <summary>Hours later on the clock; null where one of the two does not open.</summary>
    public double? Later => Changed.OpensAt is { } late && Plain.OpensAt is { } plain ? (late - plain).TotalHours : null;
}

/// <summary>Answers and prints what-ifs.</summary>
internal static class ConcreteWhatIfText
{
    /// <summary>The three questions everyone asks.</summary>
    public static IReadOnlyList<(string Name, NightChange Change)> Usual { get; } =
    [
        ("10 °F (5.6 K) colder", new NightChange { Air = -10 / 1.8 }),
        ("a blanket from 1 h on", new NightChange { Blanket = new BlanketChange(new BlanketCover(1, double.PositiveInfinity, 0.35)) }),
        ("no blanket", new NightChange { Blanket = new BlanketChange(null) }),
        ("5 % less strength", new NightChange { Strength = 0.95 }),
    ];

    /// <summary>Answers of every row under every change.</summary>
    public static IReadOnlyList<ChangedNight> Of(ConcreteStudy study, ConcretePlan plan, IEnumerable<(string Name, NightChange Change)> changes, CancellationToken cancel)
    {
        var blanketed = study.Job.Settings.Blanket is not null;
        var cells = plan.MixNights.Where(r => r.Forecast is not null)
            .SelectMany(r => changes.Where(c => c.Change.Blanket is null || !ReferenceEquals(changes, Usual) || (c.Change.Blanket.Cover is null) == blanketed).Select(c => (r.Night, r.Mix, c.Name, c.Change))).ToArray();
        return [.. cells.AsParallel().AsOrdered().WithCancellation(cancel).Select(c =>
            study.Answer(c.Night, c.Mix, NightChange.None) is { } plain && study.Answer(From(c.Night, c.Change), c.Mix, c.Change) is { } changed
                ? new ChangedNight(c.Night, c.Mix, c.Name, plain, changed, study.LastPlacing(From(c.Night, c.Change), c.Mix, c.Change))
                : null).OfType<ChangedNight>()];

        // An evening hour before the closure begins is meant as it is typed, not as that of the next day.
        static WorkNight From(WorkNight night, NightChange change) =>
            change.PlacedAt is { Hour: >= 12 } at && at < night.PlacingFrom && night.PlacingFrom.Hour >= 12 ? night with { PlacingFrom = at } : night;
    }

    /// <summary>A table for each night.</summary>
    public static void Write(Report report, IReadOnlyList<ChangedNight> answers)
    {
        foreach (var night in answers.GroupBy(a => a.Night))
        {
            report.Line($"What if, {ConcreteWords.Night(night.Key, night.Key.Placed)}:");
            var table = new TextTable("mix", "change", "planned>", "changed>", "difference>", $"by {ClockText.Of(night.Key.Deadline)}>", "was>", "last truck>");
            foreach (var a in night)
            {
                table.Add(a.Mix.Id, a.Change, ConcreteWords.Opens(a.Plain.OpensAt, night.Key, "not yet"), ConcreteWords.Opens(a.Changed.OpensAt, night.Key, "not yet"), ConcreteWords.Later(a.Later),
                    ConcreteWords.Chance(a.Changed.ChanceByDeadline), ConcreteWords.Chance(a.Plain.ChanceByDeadline), ConcreteWords.Last(a.LastPlacing, night.Key, "none"));
            }

            report.Table(table);
            report.Line();
        }
    }
}
