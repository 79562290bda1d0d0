using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Concrete.Hydration;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Concrete.Mixes;
using Slabwright.Core.Evidence;
using Slabwright.Core.Numerics;

namespace Slabwright.Core.Concrete.Opening;

/// <summary>
/// The opening time as a distribution: air, placing temperature, curve and lot vary from trial to trial, the place that lags behind governs.
/// Repeatable: the same case gives the same answer.
/// </summary>
public static class OpeningForecast
{
    private const int AirStream = 0;
    private const int PlacingStream = 1;
    private const int StrengthStream = 2;

    /// <summary>Forecasts an opening.</summary>
    /// <param name="question">What for.</param> <param name="heat">Temperatures.</param>
    public static OpeningForecastResult Run(OpeningCase question, ISlabHeat heat) =>
        Run(question, heat, TemperatureBelief.Before(question.Spread), question.Spread.Strength, null);

    /// <summary>Earliest hours after placing with the confidence asked for, and nothing else; null when not within the hours computed.</summary>
    internal static double? Earliest(OpeningCase question, ISlabHeat heat)
    {
        var paths = MaturityPaths.Of(heat, question.Heat, question.Curve.Scale, TemperatureBelief.Before(question.Spread), null);
        return Earliest(question, Openings(question, paths, question.Spread.Strength, new Draws(question)));
    }

    /// <summary>Forecasts with what is believed of temperatures and lot, as readings have moved it.</summary>
    /// <param name="question">What for.</param> <param name="heat">Temperatures.</param>
    /// <param name="belief">Air and placing temperature.</param> <param name="lotDeviation">Standard deviation of the lot's strength, share.</param>
    /// <param name="adjust">Puts computed histories right by readings.</param>
    internal static OpeningForecastResult Run(
        OpeningCase question, ISlabHeat heat, TemperatureBelief belief, double lotDeviation,
        Func<ImmutableArray<PlaceHistory>, ImmutableArray<PlaceHistory>>? adjust)
    {
        var paths = MaturityPaths.Of(heat, question.Heat, question.Curve.Scale, belief, adjust);
        var draws = new Draws(question);
        var openings = Openings(question, paths, lotDeviation, draws);
        var earliest = Earliest(question, openings);
        var hours = StrengthHours.Of(question, paths, lotDeviation, openings);
        var middle = openings[openings.Length / 2];
        var before = double.IsFinite(middle) && question.Curve.IsBeforeFirstTested(question.Curve.MaturityFor(question.Criterion.Strength));
        return new OpeningForecastResult
        {
            Case = question,
            Openings = [.. openings],
            Earliest = earliest,
            Hours = hours,
            BeforeFirstTested = before,
            Reasons = Reasons(question, belief, lotDeviation),
            Findings = Findings(question, before, earliest),
        };
    }

    private static double? Earliest(OpeningCase question, double[] openings)
    {
        var hours = Samples.Quantile(openings, question.Criterion.Confidence);
        return double.IsFinite(hours) ? hours : null;
    }

    /// <summary>Hours to opening of every trial, rising.</summary>
    private static double[] Openings(OpeningCase question, MaturityPaths paths, double lotDeviation, Draws draws)
    {
        var openings = new double[question.Trials];
        Span<double> weights = stackalloc double[9];
        weights = weights[..paths.Count];
        var needs = new NeededMaturity(question, lotDeviation);
        for (var trial = 0; trial < openings.Length; trial++)
        {
            paths.Weights(draws.Air[trial], draws.Placing[trial], weights);
            openings[trial] = Math.Max(question.Criterion.LeastAge, paths.HoursTo(needs.At(draws.Strength[trial]), weights));
        }

        Array.Sort(openings);
        return openings;
    }

    private static ImmutableArray<Reason> Reasons(OpeningCase question, TemperatureBelief belief, double lotDeviation)
    {
        var curve = question.Curve;
        return
        [
            .. question.Criterion.Reasons,
            .. HeatOf(question),
            new("strength curve", $"{curve.Sentence}; the place of least maturity governs.", new("CARINO-1984", "form of the curve", SourceStatus.FromMemory)),
            new("what varies", string.Create(CultureInfo.InvariantCulture,
                $"Air {belief.Air:+0.0;−0.0;0} K ± {belief.AirDeviation:0.0} K ({1.8 * belief.AirDeviation:0.0} °F) against the forecast, placing temperature {belief.Placing:+0.0;−0.0;0} K ± {belief.PlacingSpread:0.0} K ({1.8 * belief.PlacingSpread:0.0} °F) against the plan, lot {100 * question.StrengthFactor:0} % ± {100 * lotDeviation:0} % of the curve, and the scatter of the curve; {question.Trials} trials."),
                SourceRef.Project),
            .. question.Spread.Because is { } because ? [because] : ImmutableArray<Reason>.Empty,
            .. question.Heat.RepairLength > 0 ? [SectionLag.Because] : ImmutableArray<Reason>.Empty,
        ];
    }

    /// <summary>Where the heat of the mix comes from.</summary>
    private static ImmutableArray<Reason> HeatOf(OpeningCase question) => question.Hydration switch
    {
        null => [],
        { Origin: HydrationOrigin.Measured, Reasons: [var fit, ..] } => [new("heat of the mix", $"User-fitted: {fit.Sentence}.", fit.Source, fit.Inputs)],
        { Origin: HydrationOrigin.CompositionAccelerated } => [Published("with the published factor for calcium chloride")],
        _ => [Published(question.Heat.Mix.Accelerator == Accelerator.NonChloride ? "the accelerator left out" : "nothing measured")],
    };

    private static Reason Published(string how) => new("heat of the mix", $"From the cement's usual composition by published regressions, {how}.",
        new("SCHINDLER-2005", "ACI Materials Journal 102(1)", SourceStatus.FromMemory));

    private static ImmutableArray<Finding> Findings(OpeningCase question, bool before, double? earliest)
    {
        var findings = ImmutableArray.CreateBuilder<Finding>();
        var curve = question.Curve;
        if (curve.Origin == CurveOrigin.Composition)
        {
            findings.Add(new("CON-030", FindingLevel.Warning, "The opening is forecast from the composition of the mix, not from its specimens.",
                new(Field: question.Heat.Mix.Id), null, "Use it to choose mixes to try; break specimens before planning a night on it."));
        }
        else if (before)
        {
            findings.Add(new("CON-031", FindingLevel.Warning, "The opening strength lies below the youngest specimens: the curve is extended there.",
                new(Field: question.Heat.Mix.Id), null, "Break specimens from the hour of opening on.",
                string.Create(CultureInfo.InvariantCulture, $"{curve.FirstTested:0.#} {curve.Scale.Unit}")));
        }

        findings.AddRange(OfMix(question));
        if (question.Criterion.Strength >= curve.EndStrength)
        {
            findings.Add(new("CON-032", FindingLevel.Error, "The curve of the mix never reaches the opening strength.", new(Field: question.Heat.Mix.Id),
                string.Create(CultureInfo.InvariantCulture, $"{curve.EndStrength / 1e6:0.0} MPa"), "Choose another mix or check its breaks.",
                string.Create(CultureInfo.InvariantCulture, $"{question.Criterion.Strength / 1e6:0.0} MPa")));
        }
        else if (earliest is null)
        {
            findings.Add(new("CON-033", FindingLevel.Note, "The mix does not open with the confidence asked for within the hours computed.",
                new(Field: question.Heat.Mix.Id), string.Create(CultureInfo.InvariantCulture, $"{question.Heat.Hours:0} h"), "Compute more hours or choose a faster mix."));
        }

        return findings.ToImmutable();
    }

    /// <summary>What the computation of heat cannot know of a mix, and the danger of accelerators in heat.</summary>
    private static IEnumerable<Finding> OfMix(OpeningCase question)
    {
        const double Hot = 80 * 5 / 9.0 - 160 / 9.0;
        var (heat, measured) = (question.Heat, question.Hydration?.Origin == HydrationOrigin.Measured);
        if (heat.Mix.CementKind == CementKind.SpecialRapid && !measured)
        {
            yield return new("CON-036", FindingLevel.Warning, "No published heat holds for a special rapid cement: temperatures are computed without heat of its own, too low.",
                new(Field: heat.Mix.Id), null, "Give its measured heat in heat_curves.csv, or rely on readings of the night; the forecast is late.");
        }
        else if (heat.Mix.Accelerator == Accelerator.NonChloride && !measured)
        {
            yield return new("CON-038", FindingLevel.Note, "Non-chloride accelerators have no published heat: temperatures are those of the mix without it, too low.",
                new(Field: heat.Mix.Id), null, "Give its measured heat in heat_curves.csv; until then the forecast is late.");
        }

        if (heat.Mix.Accelerator != Accelerator.None && heat.PlacingTemperature > Hot)
        {
            yield return new("CON-037", FindingLevel.Warning, "An accelerator in hot concrete: it may set before it is finished.", new(Field: heat.Mix.Id),
                string.Create(CultureInfo.InvariantCulture, $"{heat.PlacingTemperature:0.0} °C"), "Try the dose at this temperature, take less, or have a retarder at hand.", "26.7 °C (80 °F)", "FHWA-CHECKLIST-FDR");
        }
    }

    /// <summary>Standard normal draws of a case, stratified so that few trials settle the quantiles.</summary>
    private sealed class Draws(OpeningCase question)
    {
        public double[] Air { get; } = Of(question, AirStream);

        public double[] Placing { get; } = Of(question, PlacingStream);

        public double[] Strength { get; } = Of(question, StrengthStream);

        private static double[] Of(OpeningCase question, int stream) =>
            [.. new CounterRandom(question.Seed).Stratified(stream, question.Trials).Select(Normal.Quantile)];
    }
}
