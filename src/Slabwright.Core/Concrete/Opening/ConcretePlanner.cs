using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Concrete.Mixes;
using Slabwright.Core.Concrete.Night;
using Slabwright.Core.Concrete.Weather;
using Slabwright.Core.Evidence;
using Slabwright.Core.RuleSets;

namespace Slabwright.Core.Concrete.Opening;

/// <summary>What the look at concrete needs.</summary>
public sealed record ConcreteJob
{
    /// <summary>What the project says.</summary>
    public required ConcreteSettings Settings { get; init; }

    /// <summary>Opening rows of the rule set.</summary>
    public required ImmutableArray<OpeningRow> Rows { get; init; }

    /// <summary>Slab thickness the nights are computed for, m: the thinnest repaired, which cools most.</summary>
    public required double Thickness { get; init; }

    /// <summary>Length of the repairs for the rows, m: the longest.</summary>
    public required double Length { get; init; }

    /// <summary>Length of the shortest repair, m, whose middle cools most from its ends; 0: <see cref="Length"/>.</summary>
    public double ShortestLength { get; init; }

    /// <summary>First traffic; null where the project gives none.</summary>
    public EarlyTrafficLoads? Traffic { get; init; }

    /// <summary>Weather of the nights; null when the project gives none.</summary>
    public WeatherSeries? Weather { get; init; }

    /// <summary>Temperatures; null: down a column under <see cref="Weather"/>.</summary>
    public ISlabHeat? Heat { get; init; }

    /// <summary>Hours computed after placing, at the least; a night's own hours are always reached.</summary>
    public double LeastHours { get; init; } = 24;
}

/// <summary>Every mix on every work night: when it opens, with which chance, how late it may be placed and what it costs.</summary>
public static class ConcretePlanner
{
    /// <summary>Looks at all mixes and nights. The same job gives the same plan.</summary>
    /// <param name="job">The job.</param> <param name="cancel">Stops the run.</param>
    public static ConcretePlan Plan(ConcreteJob job, CancellationToken cancel = default) => job.Settings.HasWork ? Plan(ConcreteStudy.Of(job), cancel) : ConcretePlan.Empty;

    /// <summary>Looks at all mixes and nights of a job opened already.</summary>
    /// <param name="study">The job.</param> <param name="cancel">Stops the run.</param>
    public static ConcretePlan Plan(ConcreteStudy study, CancellationToken cancel = default)
    {
        var (job, settings) = (study.Job, study.Job.Settings);
        var cells = settings.Nights.SelectMany(n => settings.Mixes.Select(m => (Night: n, Mix: m))).ToArray();
        var rows = new MixNight[cells.Length];
        var traffic = job is { Traffic: { AxlesPerHour: > 0 } loads, Length: > 0 } ? new EarlyTrafficStudy(loads, job.Length, job.Thickness) : null;
        Parallel.For(0, cells.Length, new ParallelOptions { CancellationToken = cancel, MaxDegreeOfParallelism = Math.Max(1, Environment.ProcessorCount) },
            i => rows[i] = Cell(study, traffic, cells[i].Night, cells[i].Mix));
        var (nights, ofNights) = NightResults.Of(study);
        return new ConcretePlan
        {
            MixNights = [.. rows],
            Curves = study.Curves,
            Nights = nights,
            Validations = study.Validations,
            PulseCurves = study.PulseCurves,
            Hydration = study.Hydration,
            Thickness = job.Thickness,
            Findings = [.. study.Findings, .. ofNights, .. rows.SelectMany(r => r.Findings).DistinctBy(f => (f.Code, f.Place, f.Value))],
        };
    }

    private static MixNight Cell(ConcreteStudy study, EarlyTrafficStudy? traffic, WorkNight night, ConcreteMix mix)
    {
        var answer = study.Answer(night, mix, NightChange.None);
        ImmutableArray<Finding> findings = answer?.Forecast.Findings ?? [];
        if (study.Job.Heat is not null && study.CaseOf(night, mix, NightChange.None) is { } question && !study.Covers(question.Heat)) findings = findings.Add(NoWeather(night));
        var early = answer is null ? null : traffic?.Of(answer.Forecast);
        if (early is not null) findings = findings.AddRange(early.Findings.Select(f => f with { Value = $"{mix.Id}: {f.Value}" }));
        return new MixNight
        {
            Mix = mix,
            Night = night,
            Forecast = answer?.Forecast,
            OpensAt = answer?.OpensAt,
            ChanceByDeadline = answer?.ChanceByDeadline,
            LastPlacing = answer is null ? null : study.LastPlacing(night, mix, NightChange.None),
            CostPerCubicMetre = study.CostOf(mix),
            MedianByOtherLaw = answer is null ? null : study.MedianByOtherLaw(night, mix),
            Evaporation = answer is null || study.Job.Weather is null ? null : Drying(study.Job.Weather, answer.Forecast.Case.Heat),
            SawWindow = answer is null ? null : study.SawWindow(night, mix, NightChange.None),
            EarlyTraffic = early,
            Findings = findings,
        };
    }

    private static EvaporationCall Drying(WeatherSeries weather, HeatCase heat)
    {
        var air = weather.At(weather.SecondsTo(heat.PlacedAt));
        return CuringCalls.Of(heat.Mix, heat.PlacingTemperature, air.Air, air.Humidity, Evaporation.NearSurface(air.Wind));
    }

    private static Finding NoWeather(WorkNight night) => new(
        "CON-063", FindingLevel.Warning, "The weather does not reach over this night: no forecast.", new("weather_hourly.csv"),
        night.Day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), "Add the hours of the night and of the day after.");
}
