using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Concrete.Mixes;
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

    /// <summary>Weather of the nights; null when the project gives none.</summary>
    public WeatherSeries? Weather { get; init; }

    /// <summary>Temperatures; null: down a column under <see cref="Weather"/>.</summary>
    public ISlabHeat? Heat { get; init; }

    /// <summary>Prices of ingredients for mixes without a delivered price.</summary>
    public IngredientPrices? Prices { get; init; }

    /// <summary>Hours computed after placing, at the least; a night's own hours are always reached.</summary>
    public double LeastHours { get; init; } = 24;
}

/// <summary>Every mix on every work night: when it opens, with which chance, how late it may be placed and what it costs.</summary>
public static class ConcretePlanner
{
    private const string File = "project.json";

    /// <summary>Looks at all mixes and nights. The same job gives the same plan.</summary>
    /// <param name="job">The job.</param> <param name="cancel">Stops the run.</param>
    public static ConcretePlan Plan(ConcreteJob job, CancellationToken cancel = default)
    {
        var settings = job.Settings;
        if (!settings.HasWork) return ConcretePlan.Empty;
        var findings = ImmutableArray.CreateBuilder<Finding>();
        job = InYear(job, findings);
        if (job.Heat is null && job.Weather is not null) job = job with { Heat = new WeatherSlabHeat(job.Weather) };
        findings.AddRange(Check(job));
        var curves = settings.Mixes.Select(m => MixCurves.Of(m, settings.Breaks, settings.Maturity, Asked(settings, m))).ToImmutableArray();
        var cells = settings.Nights.SelectMany(n => settings.Mixes.Select((m, i) => (Night: n, Mix: m, Curve: curves[i]))).ToArray();
        var rows = new MixNight[cells.Length];
        Parallel.For(0, cells.Length, new ParallelOptions { CancellationToken = cancel, MaxDegreeOfParallelism = Math.Max(1, Environment.ProcessorCount) },
            i => rows[i] = Cell(job, cells[i].Night, cells[i].Mix, cells[i].Curve));
        foreach (var curve in curves) findings.AddRange(curve.Findings);
        foreach (var finding in rows.SelectMany(r => r.Findings).DistinctBy(f => (f.Code, f.Place, f.Value))) findings.Add(finding);
        return new ConcretePlan { MixNights = [.. rows], Curves = curves, Thickness = job.Thickness, Findings = findings.ToImmutable() };
    }

    /// <summary>The case of a mix on a night; null when the mix has no curve or no strength is asked for.</summary>
    /// <param name="job">The job.</param> <param name="night">The night.</param> <param name="mix">The mix.</param> <param name="curve">Its curve.</param>
    public static OpeningCase? CaseOf(ConcreteJob job, WorkNight night, ConcreteMix mix, StrengthCurve? curve)
    {
        var settings = job.Settings;
        if (curve is null || OpeningCriteria.For(settings, job.Rows, job.Thickness, job.Length, curve.Kind) is not { } asked) return null;
        var (criterion, fitting) = OpeningCriteria.InKindOf(asked, curve);
        var placed = night.Placed.AddHours(-settings.ClockAhead);
        var hours = Math.Max(job.LeastHours, (night.Deadline - night.Placed).TotalHours + 1);
        return new OpeningCase
        {
            Heat = new HeatCase(mix, placed, settings.PlacingTemperature ?? ConcreteSettings.AssumedPlacing, job.Thickness, hours) { Blanket = settings.Blanket },
            Curve = fitting,
            Criterion = criterion,
            Spread = settings.Spread,
            Trials = settings.Trials,
            Seed = settings.Seed,
        };
    }

    private static MixNight Cell(ConcreteJob job, WorkNight night, ConcreteMix mix, MixCurve curve)
    {
        var settings = job.Settings;
        var question = CaseOf(job, night, mix, curve.Curve);
        var covered = question is not null && job.Heat is not null && Covers(job, question);
        var forecast = covered ? OpeningForecast.Run(question!, job.Heat!) : null;
        var last = covered
            ? OpeningStudies.LastPlacing(question! with { Trials = Math.Min(500, settings.Trials) }, job.Heat!, night.From.AddHours(-settings.ClockAhead), night.Deadline.AddHours(-settings.ClockAhead),
                (night.Deadline - night.From).TotalHours / 3)
            : null;
        ImmutableArray<Finding> findings = forecast?.Findings ?? [];
        if (question is not null && job.Heat is not null && !covered) findings = findings.Add(NoWeather(night));
        return new MixNight
        {
            Mix = mix,
            Night = night,
            Forecast = forecast,
            OpensAt = forecast?.Earliest is { } hours ? night.Placed.AddHours(hours) : null,
            ChanceByDeadline = forecast?.ChanceBy((night.Deadline - night.Placed).TotalHours),
            LastPlacing = last?.AddHours(settings.ClockAhead),
            CostPerCubicMetre = MixCost.PerCubicMetre(mix, job.Prices),
            MedianByOtherLaw = forecast is null ? null : OtherLaw(job, night, mix),
            Evaporation = forecast is null || job.Weather is null ? null : Drying(job, question!, mix),
            Findings = findings,
        };
    }

    /// <summary>Median hours to opening by the maturity function not chosen, nothing varying.</summary>
    private static double? OtherLaw(ConcreteJob job, WorkNight night, ConcreteMix mix)
    {
        var other = job.Settings.Maturity == MaturityKind.EquivalentAge ? MaturityKind.TemperatureTimeFactor : MaturityKind.EquivalentAge;
        var curve = MixCurves.Of(mix, job.Settings.Breaks, other, Asked(job.Settings, mix)).Curve;
        if (CaseOf(job, night, mix, curve) is not { } question) return null;
        var paths = MaturityPaths.Of(job.Heat!, question.Heat, question.Curve.Scale, TemperatureBelief.Before(OpeningSpread.None), null);
        var hours = Math.Max(question.Criterion.LeastAge, paths.HoursTo(question.Curve.MaturityFor(question.Criterion.Strength), [1]));
        return double.IsFinite(hours) ? hours : null;
    }

    private static EvaporationCall Drying(ConcreteJob job, OpeningCase question, ConcreteMix mix)
    {
        var air = job.Weather!.At(job.Weather.SecondsTo(question.Heat.PlacedAt));
        return CuringCalls.Of(mix, question.Heat.PlacingTemperature, air.Air, air.Humidity, Evaporation.NearSurface(air.Wind));
    }

    private static bool Covers(ConcreteJob job, OpeningCase question) =>
        job.Weather is null || job.Weather.Covers(question.Heat.PlacedAt, question.Heat.PlacedAt.AddHours(question.Heat.Hours));

    /// <summary>Kind of strength the criterion will be in: the project's, else the one most of the mix's specimens were tested in.</summary>
    private static StrengthKind? Asked(ConcreteSettings settings, ConcreteMix mix) => settings.CriterionKind
        ?? settings.Breaks.Where(b => b.Mix == mix.Id && !b.IsCheck).GroupBy(b => b.Kind).OrderByDescending(g => g.Count()).Select(g => (StrengthKind?)g.Key).FirstOrDefault();

    private static IEnumerable<Finding> Check(ConcreteJob job)
    {
        if (job.Heat is null)
        {
            yield return new("CON-060", FindingLevel.Warning, "No weather is given: nothing can be forecast.", new(File), null,
                "Add weather_hourly.csv with the weather of the nights and some days before.");
        }

        if (job.Settings.CriterionStrength is null && job.Rows.All(r => !r.Holds(job.Thickness, job.Length)))
        {
            yield return new("CON-061", FindingLevel.Warning, "Neither the project nor the rule set says which strength opens a repair.", new(File, Field: "concrete"),
                string.Create(CultureInfo.InvariantCulture, $"{job.Thickness / 0.0254:0.0} in slab"), "Set opening_strength in the project, or take the rows of the rule set over.");
        }

        if (job.Settings.PlacingTemperature is null)
        {
            yield return new("CON-062", FindingLevel.Note, "No placing temperature is given; 21 °C (70 °F) is taken.", new(File, Field: "placing_temperature"), null,
                "Set the temperature the plant delivers at on such nights.");
        }
    }

    /// <summary>The job with its weather moved by whole years onto the nights where it is of another year, and a note of it.</summary>
    private static ConcreteJob InYear(ConcreteJob job, ImmutableArray<Finding>.Builder findings)
    {
        if (job.Weather is null) return job;
        var night = job.Settings.Nights[0].Day;
        var (weather, year) = WeatherYear.On(job.Weather, night);
        if (year is not { } from) return job;
        findings.Add(new("CON-064", FindingLevel.Note, "The weather is of another year; it stands for the weather of the nights.", new("weather_hourly.csv"),
            string.Create(CultureInfo.InvariantCulture, $"{from} for {night.Year}"), "Give the forecast of the night before relying on a time."));
        return job with { Weather = weather };
    }

    private static Finding NoWeather(WorkNight night) => new(
        "CON-063", FindingLevel.Warning, "The weather does not reach over this night: no forecast.", new("weather_hourly.csv"),
        night.Day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), "Add the hours of the night and of the day after.");
}
