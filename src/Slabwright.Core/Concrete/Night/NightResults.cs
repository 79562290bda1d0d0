using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Concrete.Mixes;
using Slabwright.Core.Concrete.Opening;
using Slabwright.Core.Evidence;
using Slabwright.Core.Numerics;

namespace Slabwright.Core.Concrete.Night;

/// <summary>Readings and specimens of worked nights against the study of the job.</summary>
public static class NightResults
{
    private const string SpecimenFile = "night_specimens.csv";

    /// <summary>What every worked night of a job says; a night or mix the job does not have is named and left out.</summary>
    /// <param name="study">The job.</param>
    public static (ImmutableArray<NightResult> Nights, ImmutableArray<Finding> Findings) Of(ConcreteStudy study)
    {
        var findings = ImmutableArray.CreateBuilder<Finding>();
        var nights = ImmutableArray.CreateBuilder<NightResult>();
        foreach (var worked in study.Job.Settings.Worked)
        {
            var place = new FindingPlace(worked.Readings.File, worked.Readings.Probes.SelectMany(p => p.Readings).Select(r => r.Row > 0 ? (long?)r.Row : null).FirstOrDefault());
            if (study.Job.Settings.Nights.FirstOrDefault(n => n.Day == worked.Day) is not { } night)
            {
                findings.Add(new("CON-074", FindingLevel.Warning, "Readings are of a night the project does not have.", place with { Field = "night" },
                    worked.Day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), "Add the night to project.json, or mend the day."));
            }
            else if (study.Job.Settings.Mixes.FirstOrDefault(m => m.Id == worked.Readings.Mix) is not { } mix)
            {
                findings.Add(new("CON-075", FindingLevel.Warning, "Readings are of a mix the project does not have.", place with { Field = "mix" }, worked.Readings.Mix,
                    "Give an identifier from mixes.csv."));
            }
            else nights.Add(Of(study, night, mix, worked));
        }

        findings.AddRange(nights.SelectMany(n => n.Findings));
        return (nights.ToImmutable(), findings.ToImmutable());
    }

    /// <summary>What one worked night says.</summary>
    /// <param name="study">The job.</param> <param name="night">The night.</param> <param name="mix">The mix placed.</param> <param name="worked">Readings and specimens.</param>
    public static NightResult Of(ConcreteStudy study, WorkNight night, ConcreteMix mix, WorkedNight worked)
    {
        var checkedReadings = ReadingCheck.Of(worked.Readings);
        var curve = study.CaseOf(night, mix, NightChange.None)?.Curve;
        ImmutableArray<NightSpecimen> specimens = curve is null
            ? []
            : [.. worked.Specimens.Select(s => new NightSpecimen(s.Hours, MixCurves.MaturityOf(s, curve.Scale), s.Strength, s.Kind))];
        var forecast = study.Update(night, worked.Readings, specimens, already: checkedReadings);
        var validation = curve is null ? null : CurveValidation.Check(curve, worked.Specimens, SpecimenFile);
        return new NightResult
        {
            Night = night,
            Mix = mix,
            Worked = worked,
            Checked = checkedReadings,
            Forecast = forecast,
            PriorOpensAt = forecast?.Prior.Earliest is { } before ? study.ClockOf(forecast.Prior, before) : null,
            OpensAt = forecast?.Posterior.Earliest is { } now ? study.ClockOf(forecast.Posterior, now) : null,
            Evidence = forecast is null ? [] : [.. Evidence(forecast, worked.Readings.PlacedAt, specimens)],
            Validation = validation,
            Findings = [.. forecast?.Findings ?? checkedReadings.Findings, .. validation?.Findings ?? []],
        };
    }

    /// <summary>Evidence of strength at the place that lags behind: the readings carried there by the computed difference, at their last hour.</summary>
    /// <param name="forecast">The forecast with its readings.</param> <param name="at">When it is read, clock time.</param>
    /// <param name="hours">Hours after placing, no later than the last reading.</param>
    public static StrengthEvidence? AtGoverningPlace(NightForecast forecast, DateTime at, double hours)
    {
        if (forecast.LastReading <= 0 || hours > forecast.LastReading + 1e-6) return null;
        var row = forecast.Posterior.Hours.LastOrDefault(h => h.Hours <= hours + 1e-6);
        if (row is null || row.Hours <= 0) return null;
        var question = forecast.Posterior.Case;
        var low = row.Strength.Middle - Normal.Quantile(question.Criterion.Confidence) / Normal.Quantile(0.95) * (row.Strength.Middle - row.Strength.Low);
        return new StrengthEvidence(EvidenceKind.Maturity, at, question.Curve.Kind, row.Strength.Middle, string.Create(CultureInfo.InvariantCulture,
            $"Readings carried to the place that lags behind ({TradeWords.Of(row.Governs)}): {row.Maturity:0.0} {question.Curve.Scale.Unit} after {row.Hours:0.0} h, {row.Strength.Middle / 1e6:0.0} MPa, at least {low / 1e6:0.0} MPa with {100 * question.Criterion.Confidence:0} %."))
        {
            Low = Math.Max(0, low), BeforeFirstTested = question.Curve.IsBeforeFirstTested(row.Maturity), AtGoverningPlace = true, Carried = true,
        };
    }

    /// <summary>Everything that shows strength: each probe at its last reading, the readings carried to the place that lags behind, the specimens.</summary>
    /// <param name="forecast">The forecast with its readings.</param> <param name="placed">When placed, clock time.</param> <param name="specimens">Specimens of the night.</param>
    public static IEnumerable<StrengthEvidence> Evidence(NightForecast forecast, DateTime placed, IEnumerable<NightSpecimen> specimens)
    {
        var question = forecast.Posterior.Case;
        foreach (var probe in forecast.Readings)
        {
            var hours = probe.History[^1].Hours;
            var governs = GoverningPlace.At(forecast.Posterior, hours) == probe.Place;
            yield return OpeningDecision.FromProbe(probe, question.Curve, placed.AddHours(hours), question.Criterion.Confidence, governs);
        }

        if (AtGoverningPlace(forecast, placed.AddHours(forecast.LastReading), forecast.LastReading) is { } carried) yield return carried;
        foreach (var s in specimens)
        {
            yield return new StrengthEvidence(EvidenceKind.Specimens, placed.AddHours(s.Hours), s.Kind, s.Strength,
                string.Create(CultureInfo.InvariantCulture, $"Specimen of the night: {s.Strength / 1e6:0.0} MPa {OpeningCriteria.Words(s.Kind)} after {s.Hours:0.0} h."));
        }
    }
}
