using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Concrete.Heat;
using Slabwright.Core.Concrete.Hydration;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Concrete.Mixes;
using Slabwright.Core.Concrete.Night;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Concrete.Opening;

/// <summary>
/// The concrete of a job opened for questions: weather moved into the year of the nights, strength curves fitted once. Night times are clock
/// times of the project, heat runs in standard time; the study turns the one into the other. Thread safe.
/// </summary>
public sealed class ConcreteStudy
{
    /// <summary>Trials that settle the last placing: of the whole number, no more than this many.</summary>
    private const int PlacingTrials = 500;

    private ConcreteStudy(ConcreteJob job, ImmutableArray<MixCurve> curves, ImmutableArray<Finding> findings) => (Job, Curves, Findings) = (job, curves, findings);

    /// <summary>The job, its weather in the year of the nights and its temperatures ready.</summary>
    public ConcreteJob Job { get; }

    /// <summary>Strength curve of each mix, by mix.</summary>
    public ImmutableArray<MixCurve> Curves { get; }

    /// <summary>What was wrong or is missing in the job and its curves.</summary>
    public ImmutableArray<Finding> Findings { get; }

    /// <summary>Temperatures under the weather; null without weather, or where the job brings its own temperatures.</summary>
    public WeatherSlabHeat? Heat => Job.Heat as WeatherSlabHeat;

    /// <summary>Opens a job.</summary>
    /// <param name="job">The job.</param>
    public static ConcreteStudy Of(ConcreteJob job)
    {
        var findings = ImmutableArray.CreateBuilder<Finding>();
        job = InYear(job, findings);
        if (job.Heat is null && job.Weather is not null) job = job with { Heat = new WeatherSlabHeat(job.Weather) { Fitted = Fitted(job.Settings, findings) } };
        findings.AddRange(Check(job));
        var curves = job.Settings.Mixes.Select(m => CurveOf(job.Settings, m, job.Settings.Maturity)).ToImmutableArray();
        foreach (var curve in curves) findings.AddRange(curve.Findings);
        var study = new ConcreteStudy(job, curves, []) { Validations = Validated(job.Settings, curves) };
        foreach (var validation in study.Validations.Values) findings.AddRange(validation.Findings);
        foreach (var mix in job.Settings.Mixes) findings.AddRange(study.Unpriced(mix));
        return new(job, curves, findings.ToImmutable()) { Validations = study.Validations };
    }

    /// <summary>Check specimens against the curve, by mix; mixes without check specimens are not in it.</summary>
    public ImmutableSortedDictionary<string, CurveValidationResult> Validations { get; private init; } = ImmutableSortedDictionary<string, CurveValidationResult>.Empty;

    /// <summary>Strength over pulse velocity, by mix, in the kind of its strength curve.</summary>
    public ImmutableSortedDictionary<string, PulseVelocityCurve> PulseCurves => Curves
        .Select(c => (c.MixId, Curve: c.Curve is { } curve ? PulseVelocityCurve.Fit(Job.Settings.Breaks.Where(b => b.Mix == c.MixId), curve.Kind) : null))
        .Where(c => c.Curve is not null).ToImmutableSortedDictionary(c => c.MixId, c => c.Curve!, StringComparer.Ordinal);

    /// <summary>Hydration of each mix that has one, by mix.</summary>
    public ImmutableSortedDictionary<string, HydrationCurve> Hydration => Job.Settings.Mixes.Select(m => (m.Id, Curve: HydrationOf(m)))
        .Where(m => m.Curve is not null).ToImmutableSortedDictionary(m => m.Id, m => m.Curve!, StringComparer.Ordinal);

    /// <summary>Cost of a cubic metre in the project's currency: delivered, else from its ingredients; null when no price is known.</summary>
    /// <param name="mix">The mix.</param>
    public decimal? CostOf(ConcreteMix mix) => MixCost.PerCubicMetre(mix, Job.Settings.IngredientPrices);

    /// <summary>When a mix opens; null when it has no curve, no strength is asked for, or no weather reaches over the night.</summary>
    /// <param name="night">The night.</param> <param name="mix">The mix.</param> <param name="change">What is changed.</param>
    public NightAnswer? Answer(WorkNight night, ConcreteMix mix, NightChange change)
    {
        if (Ready(night, mix, change) is not { } question) return null;
        var forecast = OpeningForecast.Run(question, Job.Heat!);
        var placed = Placed(night, change);
        return new NightAnswer
        {
            Forecast = forecast,
            Placed = placed,
            OpensAt = forecast.Earliest is { } earliest ? placed.AddHours(earliest) : null,
            MedianAt = forecast.HoursAt(0.5) is { } middle ? placed.AddHours(middle) : null,
            ChanceByDeadline = forecast.ChanceBy((night.Deadline - placed).TotalHours),
        };
    }

    /// <summary>Latest clock time of placing that still opens by the deadline with the confidence asked for; null when none does.</summary>
    /// <param name="night">The night.</param> <param name="mix">The mix.</param> <param name="change">What is changed.</param>
    public DateTime? LastPlacing(WorkNight night, ConcreteMix mix, NightChange change)
    {
        if (Ready(night, mix, change) is not { } question) return null;
        var last = OpeningStudies.LastPlacing(
            question with { Trials = Math.Min(PlacingTrials, question.Trials) }, Job.Heat!, Standard(night.From), Standard(night.Deadline), (night.Deadline - night.From).TotalHours / 3);
        return last?.AddHours(Job.Settings.ClockAhead);
    }

    /// <summary>Answers what-ifs against the night as changed; nothing when it cannot be forecast.</summary>
    /// <param name="night">The night.</param> <param name="mix">The mix.</param> <param name="change">What is changed.</param>
    /// <param name="changes">The questions; the usual three when null.</param>
    public ImmutableArray<WhatIfAnswer> WhatIf(WorkNight night, ConcreteMix mix, NightChange change, IEnumerable<WhatIfChange>? changes = null) =>
        Ready(night, mix, change) is { } question
            ? OpeningStudies.WhatIf(OpeningForecast.Run(question, Job.Heat!), Job.Heat!, changes ?? WhatIfChange.Usual)
            : [];

    /// <summary>The section through the repair with its whole field every half hour; null without weather over the night or without a length.</summary>
    /// <param name="night">The night.</param> <param name="mix">The mix.</param> <param name="change">What is changed.</param>
    public TemperatureHistory? Section(WorkNight night, ConcreteMix mix, NightChange change)
    {
        var heatCase = HeatCaseOf(night, mix, change);
        return Heat is { } heat && heatCase.RepairLength > 0 && Covers(heatCase) ? heat.Section(heatCase, keepFields: true) : null;
    }

    /// <summary>When a joint inside the repair can be sawn; null when the night cannot be forecast.</summary>
    /// <param name="night">The night.</param> <param name="mix">The mix.</param> <param name="change">What is changed.</param>
    public SawWindow? SawWindow(WorkNight night, ConcreteMix mix, NightChange change)
    {
        var heatCase = HeatCaseOf(night, mix, change);
        if (Job.Heat is null || !Covers(heatCase)) return null;
        var (settings, kind) = (Job.Settings, Job.Settings.Maturity);
        if ((Stated(settings, mix, kind) ?? MixCurves.Of(mix, settings.Breaks, kind, StrengthKind.Compressive)).Curve is not { } curve) return null;
        var surface = Job.Heat.Run(heatCase).FirstOrDefault(p => p.Place == SlabPlace.Surface);
        return surface is null ? null : Opening.SawWindow.Of(surface.History, curve);
    }

    /// <summary>
    /// Moves the forecast of a night by its readings, which are checked first. Mix and time of placing are those of the readings, as the
    /// clock shows them; null when the mix is not the job's or the night cannot be forecast.
    /// </summary>
    /// <param name="night">The night.</param> <param name="readings">Readings as they came.</param> <param name="specimens">Specimens of the night.</param>
    /// <param name="change">What else is changed.</param> <param name="already">The readings, where they are checked already.</param>
    public NightForecast? Update(
        WorkNight night, NightReadings readings, IReadOnlyList<NightSpecimen> specimens, NightChange? change = null, CheckedReadings? already = null)
    {
        if (Job.Settings.Mixes.FirstOrDefault(m => m.Id == readings.Mix) is not { } mix || CaseOf(night, mix, change ?? NightChange.None) is not { } planned) return null;
        var hours = Math.Max(planned.Heat.Hours, (night.Deadline - readings.PlacedAt).TotalHours + 1);
        var question = planned with { Heat = planned.Heat with { PlacedAt = Standard(readings.PlacedAt), Hours = hours } };
        return Job.Heat is not null && Covers(question.Heat) ? NightUpdate.With(Spread(question, night), Job.Heat, already ?? ReadingCheck.Of(readings), specimens) : null;
    }

    /// <summary>Clock time some hours after the placing of a forecast.</summary>
    /// <param name="forecast">The forecast.</param> <param name="hours">Hours after placing.</param>
    public DateTime ClockOf(OpeningForecastResult forecast, double hours) => forecast.Case.Heat.PlacedAt.AddHours(Job.Settings.ClockAhead + hours);

    /// <summary>The case of a mix on a night; null when the mix has no curve or no strength is asked for. Weather is not looked at.</summary>
    /// <param name="night">The night.</param> <param name="mix">The mix.</param> <param name="change">What is changed.</param>
    public OpeningCase? CaseOf(WorkNight night, ConcreteMix mix, NightChange change) => CaseOf(night, mix, change, CurveOf(mix));

    /// <summary>True when the weather reaches over a case.</summary>
    internal bool Covers(HeatCase heatCase) => Job.Weather is null || Job.Weather.Covers(heatCase.PlacedAt, heatCase.PlacedAt.AddHours(heatCase.Hours));

    /// <summary>Median hours to opening by the maturity function not chosen, nothing varying.</summary>
    internal double? MedianByOtherLaw(WorkNight night, ConcreteMix mix)
    {
        var other = Job.Settings.Maturity == MaturityKind.EquivalentAge ? MaturityKind.TemperatureTimeFactor : MaturityKind.EquivalentAge;
        if (CaseOf(night, mix, NightChange.None, CurveOf(Job.Settings, mix, other).Curve) is not { } question) return null;
        var paths = MaturityPaths.Of(Job.Heat!, question.Heat, question.Curve.Scale, TemperatureBelief.Before(OpeningSpread.None), null);
        var hours = Math.Max(question.Criterion.LeastAge, paths.HoursTo(question.Curve.MaturityFor(question.Criterion.Strength), [1]));
        return double.IsFinite(hours) ? hours : null;
    }

    private OpeningCase? Ready(WorkNight night, ConcreteMix mix, NightChange change) =>
        Job.Heat is not null && CaseOf(night, mix, change) is { } question && Covers(question.Heat) ? Spread(question, night) : null;

    /// <summary>The case with the spread of the forecast where the weather file gives one.</summary>
    private OpeningCase Spread(OpeningCase question, WorkNight night) => Heat is not { Weather.Spreads.IsEmpty: false } heat ? question : question with
    {
        Spread = ForecastSpread.Of(question.Spread, heat, question.Heat, question.Curve.Scale, Math.Max(1, (Standard(night.Deadline) - question.Heat.PlacedAt).TotalHours)),
    };

    private HydrationCurve? HydrationOf(ConcreteMix mix) => Heat?.HydrationOf(mix);

    private OpeningCase? CaseOf(WorkNight night, ConcreteMix mix, NightChange change, StrengthCurve? curve)
    {
        var settings = Job.Settings with { Confidence = change.Confidence ?? Job.Settings.Confidence };
        var heatCase = HeatCaseOf(night, mix, change);
        if (curve is null || OpeningCriteria.For(settings, Job.Rows, heatCase.Thickness, change.Length ?? Job.Length, curve.Kind) is not { } asked) return null;
        var (criterion, fitting) = OpeningCriteria.InKindOf(asked, curve);
        return new OpeningCase
        {
            Heat = heatCase,
            Curve = fitting,
            Criterion = criterion,
            Spread = settings.Spread,
            StrengthFactor = change.Strength,
            Hydration = HydrationOf(mix),
            Trials = settings.Trials,
            Seed = settings.Seed,
        };
    }

    private HeatCase HeatCaseOf(WorkNight night, ConcreteMix mix, NightChange change)
    {
        var placed = Placed(night, change);
        var hours = Math.Max(Job.LeastHours, (night.Deadline - placed).TotalHours + 1);
        var placing = change.PlacingTemperature ?? Job.Settings.PlacingTemperature ?? ConcreteSettings.AssumedPlacing;
        return new HeatCase(mix, Standard(placed), placing, change.Thickness ?? Job.Thickness, hours)
        {
            AirShift = change.Air,
            WindFactor = change.Wind,
            Blanket = change.Blanket is { } other ? other.Cover : Job.Settings.Blanket,
            RepairLength = change.Length ?? (Job.ShortestLength > 0 ? Job.ShortestLength : Job.Length),
            Form = Job.Settings.Form,
        };
    }

    private static DateTime Placed(WorkNight night, NightChange change) => (night with { PlacedAt = change.PlacedAt ?? night.PlacedAt }).Placed;

    private DateTime Standard(DateTime clock) => clock.AddHours(-Job.Settings.ClockAhead);

    /// <summary>Curve of a mix of the job; that of another mix is found when asked for.</summary>
    private StrengthCurve? CurveOf(ConcreteMix mix)
    {
        var index = Job.Settings.Mixes.IndexOf(mix);
        return (index < 0 ? CurveOf(Job.Settings, mix, Job.Settings.Maturity) : Curves[index]).Curve;
    }

    /// <summary>The curve in the kind the criterion will be in: the project's, else the one most of the mix's specimens were tested in.</summary>
    private static MixCurve CurveOf(ConcreteSettings settings, ConcreteMix mix, MaturityKind kind)
    {
        if (Stated(settings, mix, kind) is { } stated) return stated;
        var asked = settings.CriterionKind
            ?? settings.Breaks.Where(b => b.Mix == mix.Id && !b.IsCheck).GroupBy(b => b.Kind).OrderByDescending(g => g.Count()).Select(g => (StrengthKind?)g.Key).FirstOrDefault();
        return MixCurves.Of(mix, settings.Breaks, kind, asked);
    }

    /// <summary>Curve stated by its constants, on a maturity function; null where none is stated.</summary>
    private static MixCurve? Stated(ConcreteSettings settings, ConcreteMix mix, MaturityKind kind) =>
        settings.Stated.FirstOrDefault(c => c.MixId == mix.Id) is { Curve: { } curve } known ? known with { Curve = curve.On(MixCurves.ScaleOf(mix, kind)) } : null;

    /// <summary>Curves fitted to measured heat, by mix.</summary>
    private static ImmutableDictionary<string, HydrationCurve> Fitted(ConcreteSettings settings, ImmutableArray<Finding>.Builder findings)
    {
        var fitted = ImmutableDictionary.CreateBuilder<string, HydrationCurve>(StringComparer.Ordinal);
        foreach (var mix in settings.Mixes)
        {
            if (MixHydration.Fit(mix, settings.HeatCurves) is not { } fit) continue;
            findings.AddRange(fit.Findings);
            if (fit.Curve is { } curve) fitted[mix.Id] = curve;
        }

        return fitted.ToImmutable();
    }

    private static ImmutableSortedDictionary<string, CurveValidationResult> Validated(ConcreteSettings settings, ImmutableArray<MixCurve> curves) => curves
        .Where(c => c.Curve is not null).Select(c => (c.MixId, Result: CurveValidation.Check(c.Curve!, settings.Breaks.Where(b => b.Mix == c.MixId && b.IsCheck))))
        .Where(v => !v.Result.Checks.IsEmpty).ToImmutableSortedDictionary(v => v.MixId, v => v.Result, StringComparer.Ordinal);

    private IEnumerable<Finding> Unpriced(ConcreteMix mix)
    {
        if (mix.Price is not null || Job.Settings.IngredientPrices.IsEmpty) yield break;
        var missing = MixCost.Of(mix, Job.Settings.IngredientPrices).Unpriced;
        if (missing.IsEmpty) yield break;
        yield return new("CON-065", FindingLevel.Warning, "The mix has no cost: an ingredient it holds has no price.", new("ingredient_prices.csv", Field: "ingredient"),
            $"{mix.Id}: {string.Join(", ", missing.Select(m => TradeWords.Of(m)))}", "Add the price of the ingredient, or the price of the mix delivered.");
    }

    private static IEnumerable<Finding> Check(ConcreteJob job)
    {
        const string File = "project.json";
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
        if (job.Weather is null || job.Settings.Nights is not [var first, ..]) return job;
        var (weather, year) = WeatherYear.On(job.Weather, first.Day);
        if (year is not { } from) return job;
        findings.Add(new("CON-064", FindingLevel.Note, "The weather is of another year; it stands for the weather of the nights.", new("weather_hourly.csv"),
            string.Create(CultureInfo.InvariantCulture, $"{from} for {first.Day.Year}"), "Give the forecast of the night before relying on a time."));
        return job with { Weather = weather };
    }
}
