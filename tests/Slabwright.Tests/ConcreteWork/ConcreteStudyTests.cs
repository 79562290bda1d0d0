using System.Collections.Immutable;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Concrete.Night;
using Slabwright.Core.Concrete.Opening;
using Slabwright.Core.Numerics;
using Slabwright.Tests.HeatFlow;

namespace Slabwright.Tests.ConcreteWork;

public class ConcreteStudyTests
{
    private static readonly WorkNight Night = new(new(2026, 9, 16), new(21, 0), new(5, 0)) { PlacedAt = new(22, 0) };

    private static readonly ConcreteStudy Study = ConcreteStudy.Of(Job(1));

    [Fact]
    public void The_plan_is_what_the_study_answers_without_a_change()
    {
        var row = Assert.Single(ConcretePlanner.Plan(Job(1), TestContext.Current.CancellationToken).MixNights);
        var answer = Answer(NightChange.None);
        Assert.Equal(row.OpensAt, answer.OpensAt);
        Assert.Equal(row.ChanceByDeadline, answer.ChanceByDeadline);
        Assert.Equal(row.LastPlacing, Study.LastPlacing(Night, SimpleSlab.Mix, NightChange.None));
        Assert.True(answer.MedianAt < answer.OpensAt);
    }

    [Fact]
    public void Clock_times_run_ahead_of_the_weather_by_the_hours_the_project_says()
    {
        var answer = Answer(NightChange.None);
        Assert.Equal(new DateTime(2026, 9, 16, 22, 0, 0), answer.Placed);
        Assert.Equal(new DateTime(2026, 9, 16, 21, 0, 0), answer.Forecast.Case.Heat.PlacedAt);
        Assert.Equal(answer.OpensAt, Study.ClockOf(answer.Forecast, answer.Forecast.Earliest!.Value));
    }

    [Fact]
    public void Each_change_reaches_the_case_it_is_asked_for()
    {
        var none = Answer(NightChange.None);
        Assert.True(Answer(new NightChange { Air = -8 }).OpensAt > none.OpensAt);
        Assert.True(Answer(new NightChange { Strength = 0.9 }).OpensAt > none.OpensAt);
        Assert.True(Answer(new NightChange { PlacingTemperature = 14 }).OpensAt > none.OpensAt);
        Assert.True(Answer(new NightChange { Confidence = 0.6 }).OpensAt < none.OpensAt);
        Assert.True(Answer(new NightChange { Blanket = new(new BlanketCover(1, double.PositiveInfinity, 0.35)) }).OpensAt < none.OpensAt);
        Assert.NotEqual(none.OpensAt, Answer(new NightChange { Wind = 3 }).OpensAt);
        Assert.NotEqual(none.OpensAt, Answer(new NightChange { Thickness = 0.3 }).OpensAt);
        Assert.Equal(new DateTime(2026, 9, 17, 0, 30, 0), Answer(new NightChange { PlacedAt = new(0, 30) }).Placed);
    }

    [Fact]
    public void A_blanket_of_the_project_can_be_left_away()
    {
        var job = Job(1);
        var covered = ConcreteStudy.Of(job with { Settings = job.Settings with { Blanket = new BlanketCover(1, 8, 0.35) } });
        Assert.Null(covered.Answer(Night, SimpleSlab.Mix, new NightChange { Blanket = new(null) })!.Forecast.Case.Heat.Blanket);
        Assert.NotNull(covered.Answer(Night, SimpleSlab.Mix, NightChange.None)!.Forecast.Case.Heat.Blanket);
    }

    [Fact]
    public void What_ifs_start_from_the_night_as_changed()
    {
        var colder = Study.WhatIf(Night, SimpleSlab.Mix, new NightChange { Air = -3 }).First();
        Assert.Equal(-3 - 10 / 1.8, colder.Forecast.Case.Heat.AirShift, 1e-9);
        Assert.True(colder.Later > 0);
    }

    [Fact]
    public void The_section_shows_the_whole_field_every_half_hour()
    {
        var section = Study.Section(Night, SimpleSlab.Mix, new NightChange { Length = 2.4 })!;
        Assert.Equal(section.Times.Length, section.Fields.Length);
        Assert.Equal(1800, section.Times[1], 1e-6);
        Assert.True(section.Along[^1] > 1.2);
        Assert.InRange(section.Balance.Error, 0, 1e-6);
        Assert.Null(Study.Section(Night, SimpleSlab.Mix, new NightChange { Length = 0 }));
    }

    [Fact]
    public void Sawing_limits_of_a_flexural_curve_are_converted_and_say_so()
    {
        var job = Job(1);
        var bent = job.Settings.Breaks.Select(b => b with { Kind = StrengthKind.ThirdPointFlexural, Strength = StrengthConversions.ThirdPointOf(b.Strength) });
        var beams = ConcreteStudy.Of(job with { Settings = job.Settings with { Breaks = [.. bent] } });
        var (plain, other) = (Study.SawWindow(Night, SimpleSlab.Mix, NightChange.None)!, beams.SawWindow(Night, SimpleSlab.Mix, NightChange.None)!);
        Assert.True(plain.From < plain.FromHard);
        Assert.Equal(plain.FromHard!.Value, other.FromHard!.Value, 0.5);
        Assert.Contains(other.Reasons, r => r.Rule == "strength conversion");
        Assert.DoesNotContain(plain.Reasons, r => r.Rule == "strength conversion");
    }

    [Fact]
    public void Readings_are_checked_and_move_the_night_from_the_time_they_say_it_was_placed()
    {
        var placed = new DateTime(2026, 9, 16, 22, 20, 0);
        var random = new CounterRandom(5);
        var probe = new Probe("A", SlabPlace.MidDepth, [.. Enumerable.Range(0, 9).Select(i => new ProbeReading(placed.AddMinutes(30 * i), 15 + 0.8 * i + random.Uniform(0, i, 0)))]);
        var dead = new Probe("B", SlabPlace.MidDepth, [.. Enumerable.Range(0, 9).Select(i => new ProbeReading(placed.AddMinutes(30 * i), 300))]);
        var readings = new NightReadings { Repair = "R1", Mix = SimpleSlab.Mix.Id, PlacedAt = placed, Probes = [probe, dead] };
        var night = Study.Update(Night, readings, [])!;
        Assert.Equal(placed.AddHours(-1), night.Prior.Case.Heat.PlacedAt);
        Assert.NotEmpty(night.Findings);
        Assert.Equal("A", Assert.Single(night.Readings).Name);
        Assert.NotEqual(night.Prior.Earliest, night.Posterior.Earliest);
        Assert.Null(Study.Update(Night, readings with { Mix = "unknown" }, []));
    }

    [Fact]
    public void Without_weather_or_curve_there_is_no_answer()
    {
        var job = Job(1);
        Assert.Null(ConcreteStudy.Of(job with { Weather = null }).Answer(Night, SimpleSlab.Mix, NightChange.None));
        Assert.Null(Study.Answer(Night with { Day = new(2026, 12, 1) }, SimpleSlab.Mix, NightChange.None));
        Assert.Null(ConcreteStudy.Of(job with { Settings = job.Settings with { CriterionStrength = null } }).Answer(Night, SimpleSlab.Mix, NightChange.None));
    }

    private static NightAnswer Answer(NightChange change) => Study.Answer(Night, SimpleSlab.Mix, change)!;

    internal static ConcreteJob Job(double ahead) => new()
    {
        Settings = new ConcreteSettings
        {
            Mixes = [SimpleSlab.Mix],
            Nights = [Night],
            CriterionStrength = 13.79e6,
            CriterionKind = StrengthKind.Compressive,
            PlacingTemperature = 22,
            ClockAhead = ahead,
            Trials = 500,
            Breaks = [.. new[] { (4.0, 3.1), (6, 9.4), (8, 14.6), (10, 17.5), (12, 20.6), (18, 26.1), (24, 28.9), (72, 38.0) }
                .Select(b => new StrengthBreak(SimpleSlab.Mix.Id, StrengthKind.Compressive, b.Item1, b.Item2 * 1e6))],
        },
        Rows = [],
        Thickness = 0.23,
        Length = 1.8,
        Weather = Invented.Weather(),
    };
}
