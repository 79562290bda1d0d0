using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Concrete.Opening;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Concrete.Night;

/// <summary>A specimen broken on the night: cylinders kept beside the slab.</summary>
/// <param name="Hours">Hours after placing.</param> <param name="Maturity">Maturity of the specimen, on the scale of the curve.</param>
/// <param name="Strength">Strength, Pa.</param> <param name="Kind">How it was tested.</param>
public sealed record NightSpecimen(double Hours, double Maturity, double Strength, StrengthKind Kind);

/// <summary>A forecast before and after the readings.</summary>
public sealed record NightForecast
{
    /// <summary>The forecast before any reading.</summary>
    public required OpeningForecastResult Prior { get; init; }

    /// <summary>The readings used.</summary>
    public required ImmutableArray<ProbeHistory> Readings { get; init; }

    /// <summary>The forecast with the readings: the prior itself where there are none.</summary>
    public required OpeningForecastResult Posterior { get; init; }

    /// <summary>Air and placing temperature believed before.</summary>
    public required TemperatureBelief Before { get; init; }

    /// <summary>The same believed now.</summary>
    public required TemperatureBelief Now { get; init; }

    /// <summary>Strength of the lot over the curve believed now, and its standard deviation.</summary>
    public required (double Mean, double Deviation) Lot { get; init; }

    /// <summary>Hours after placing of the last reading; 0 without one.</summary>
    public required double LastReading { get; init; }

    /// <summary>How it came about.</summary>
    public required ImmutableArray<Reason> Reasons { get; init; }

    /// <summary>What speaks against relying on it.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }
}

/// <summary>
/// Moves a forecast by the readings of the night. Air and placing temperature are normal numbers before; a reading is their straight-line
/// effect on the computed temperature plus an error, so they are normal numbers after. Up to the last reading the measured temperature holds,
/// beyond it the computed one, drawn to the measured and letting go over hours. Specimens move the strength of the lot in the same way.
/// </summary>
public static class NightUpdate
{
    /// <summary>Error of sensor and model together, K, standard deviation of one hourly reading.</summary>
    public const double ReadingError = 2;

    /// <summary>Hours over which the difference between measured and computed temperature fades after the last reading.</summary>
    public const double Fade = 6;

    /// <summary>Scatter of a pair of specimens about the strength of their lot, share.</summary>
    public const double SpecimenError = 0.07;

    private static readonly Reason Method = new("update by readings",
        "Normal beliefs of air and placing temperature, moved by hourly readings with an error of 2 K; the rest of the difference fades over 6 h.",
        new SourceRef("NIGHT-UPDATE", "docs/steps/concrete.md, Night", SourceStatus.Computed));

    /// <summary>Updates a forecast.</summary>
    /// <param name="question">The case as planned, with the true time of placing.</param> <param name="heat">Temperatures.</param>
    /// <param name="readings">Readings, checked; none gives back the forecast as it was.</param> <param name="specimens">Specimens of the night in the kind of the curve; others are named and left out.</param>
    public static NightForecast With(OpeningCase question, ISlabHeat heat, CheckedReadings readings, IReadOnlyList<NightSpecimen> specimens)
    {
        heat = heat.Around(question.Heat);
        var prior = OpeningForecast.Run(question, heat);
        var before = TemperatureBelief.Before(question.Spread);
        var used = readings.Probes.Where(p => p.Trusted && p.History.Length > 0).ToImmutableArray();
        var fitting = specimens.Where(s => s.Kind == question.Curve.Kind && s.Strength > 0 && question.Curve.Strength(s.Maturity) > 0).ToArray();
        ImmutableArray<Finding> findings = [.. readings.Findings, .. specimens.Except(fitting).Select(Left)];
        if (used.IsEmpty && fitting.Length == 0)
            return Made(prior, used, prior, before, before, (question.StrengthFactor, question.Spread.Strength), 0, findings);

        var now = used.IsEmpty ? before : Temperatures(question, heat, used, before);
        var lot = Lot(question, fitting);
        var last = used.IsEmpty ? 0 : used.Max(p => p.History[^1].Hours);
        var moved = question with { StrengthFactor = lot.Mean };
        var posterior = OpeningForecast.Run(moved, heat, now, lot.Deviation, used.IsEmpty ? null : places => Adjust(places, used));
        return Made(prior, used, posterior, before, now, lot, last, findings);
    }

    /// <summary>Air and placing temperature after the readings: least squares with the prior as two more readings.</summary>
    internal static TemperatureBelief Temperatures(OpeningCase question, ISlabHeat heat, ImmutableArray<ProbeHistory> probes, TemperatureBelief before)
    {
        const double Step = 2;
        var planned = question.Heat;
        var middle = heat.Run(planned);
        var warmAir = heat.Run(planned with { AirShift = planned.AirShift + Step });
        var warmMix = heat.Run(planned with { PlacingTemperature = planned.PlacingTemperature + Step });
        var (aa, ap, pp, a, p) = (0.0, 0.0, 0.0, 0.0, 0.0);
        foreach (var probe in probes)
        {
            var k = PlaceOf(middle, probe.Place);
            for (var hour = 0.0; hour <= probe.History[^1].Hours + 1e-9; hour++)
            {
                if (ReadingMath.At(probe.History, hour) is not { } measured || ReadingMath.At(middle[k].History, hour) is not { } computed) continue;
                var byAir = (ReadingMath.At(warmAir[k].History, hour)!.Value - computed) / Step;
                var byMix = (ReadingMath.At(warmMix[k].History, hour)!.Value - computed) / Step;
                var weight = 1 / (ReadingError * ReadingError * probes.Length);
                (aa, ap, pp) = (aa + weight * byAir * byAir, ap + weight * byAir * byMix, pp + weight * byMix * byMix);
                (a, p) = (a + weight * byAir * (measured - computed), p + weight * byMix * (measured - computed));
            }
        }

        return Solve(aa, ap, pp, a, p, before);
    }

    /// <summary>Strength of the lot after specimens: weighted mean of the prior and of each ratio of measured to curve.</summary>
    internal static (double Mean, double Deviation) Lot(OpeningCase question, IReadOnlyList<NightSpecimen> specimens)
    {
        var spread = question.Spread.Strength;
        if (specimens.Count == 0 || spread <= 0) return (question.StrengthFactor, spread);
        var weight = 1 / (spread * spread);
        var (sum, mean) = (weight, weight * question.StrengthFactor);
        foreach (var s in specimens)
        {
            var own = 1 / (SpecimenError * SpecimenError);
            (sum, mean) = (sum + own, mean + own * s.Strength / question.Curve.Strength(s.Maturity));
        }

        return (mean / sum, Math.Sqrt(1 / sum));
    }

    /// <summary>Computed histories drawn to the measured ones: alike up to the last reading, fading after. A place without a probe moves with the coldest probe.</summary>
    internal static ImmutableArray<PlaceHistory> Adjust(ImmutableArray<PlaceHistory> places, ImmutableArray<ProbeHistory> probes)
    {
        var factor = MaturityScale.Factor;
        return [.. places.Select(place =>
        {
            var own = probes.Where(p => p.Place == place.Place).ToArray();
            var probe = (own.Length > 0 ? own : [.. probes]).MinBy(p => factor.Of(p.History) / Math.Max(p.History[^1].Hours, 1e-9))!;
            var reference = places[PlaceOf(places, probe.Place)].History;
            var end = probe.History[^1].Hours;
            var final = probe.History[^1].Temperature - (ReadingMath.At(reference, end) ?? reference[^1].Temperature);
            return place with
            {
                History = [.. place.History.Select((t, i) => t with
                {
                    Temperature = t.Temperature + (t.Hours <= end
                        ? (ReadingMath.At(probe.History, t.Hours) ?? probe.History[0].Temperature) - reference[i].Temperature
                        : final * Math.Exp(-(t.Hours - end) / Fade)),
                })],
            };
        })];
    }

    /// <summary>The computed place a probe is held against: its own kind, else the one that is coldest on the mean.</summary>
    private static int PlaceOf(ImmutableArray<PlaceHistory> places, SlabPlace wanted)
    {
        for (var k = 0; k < places.Length; k++)
            if (places[k].Place == wanted) return k;
        return Enumerable.Range(0, places.Length).MinBy(k => places[k].History.Average(t => t.Temperature));
    }

    private static TemperatureBelief Solve(double aa, double ap, double pp, double a, double p, TemperatureBelief before)
    {
        // A belief without spread is certain: it does not move.
        var (priorA, priorP) = (Inverse(before.AirDeviation), Inverse(before.PlacingDeviation));
        if (double.IsPositiveInfinity(priorA) && double.IsPositiveInfinity(priorP)) return before;
        if (double.IsPositiveInfinity(priorA)) return before with { Placing = p / (pp + priorP), PlacingDeviation = Math.Sqrt(1 / (pp + priorP)) };
        if (double.IsPositiveInfinity(priorP)) return before with { Air = a / (aa + priorA), AirDeviation = Math.Sqrt(1 / (aa + priorA)) };
        (aa, pp) = (aa + priorA, pp + priorP);
        var determinant = aa * pp - ap * ap;
        var (varianceA, covariance) = (pp / determinant, -ap / determinant);
        var deviation = Math.Sqrt(varianceA);
        return new((pp * a - ap * p) / determinant, (aa * p - ap * a) / determinant, deviation, covariance / deviation, Math.Sqrt(1 / pp));

        static double Inverse(double deviation) => deviation > 0 ? 1 / (deviation * deviation) : double.PositiveInfinity;
    }

    private static Finding Left(NightSpecimen specimen) => new(
        "CON-050", FindingLevel.Warning, "The specimen cannot move the forecast: its kind is not that of the curve, or the curve gives no strength there.",
        new(Field: "specimen"), string.Create(CultureInfo.InvariantCulture, $"{OpeningCriteria.Words(specimen.Kind)}, {specimen.Hours:0.0} h"),
        "Test in the kind the curve was made in.");

    private static NightForecast Made(
        OpeningForecastResult prior, ImmutableArray<ProbeHistory> used, OpeningForecastResult posterior, TemperatureBelief before, TemperatureBelief now,
        (double, double) lot, double last, ImmutableArray<Finding> findings) => new()
        {
            Prior = prior, Readings = used, Posterior = posterior, Before = before, Now = now, Lot = lot, LastReading = last, Reasons = [Method], Findings = findings,
        };
}
