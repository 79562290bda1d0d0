using System.Collections.Immutable;
using Slabwright.Core.Numerics;

namespace Slabwright.Core.Concrete.Maturity;

/// <summary>Strength of a mix over maturity, with what is known of its error. Pa; maturity on <see cref="Scale"/>.</summary>
public sealed record StrengthCurve
{
    /// <summary>Which strength.</summary>
    public required StrengthKind Kind { get; init; }

    /// <summary>Form of the curve.</summary>
    public required StrengthForm Form { get; init; }

    /// <summary>Maturity the curve runs over.</summary>
    public required MaturityScale Scale { get; init; }

    /// <summary>
    /// Constants in the order of the form: end strength Pa and k per unit of maturity (and M0); end strength, τ in maturity and a; or a and b, Pa.
    /// </summary>
    public required ImmutableArray<double> Parameters { get; init; }

    /// <summary>Covariance of the constants, row by row, taken of their logarithms except M0, a and b of the straight line; empty where unknown.</summary>
    public ImmutableArray<double> Covariance { get; init; } = [];

    /// <summary>Standard deviation of the results about the curve, Pa; 0 where it cannot be told.</summary>
    public double Residual { get; init; }

    /// <summary>Mean of the tested strengths, Pa: below it the scatter about the curve is taken in proportion.</summary>
    public double MeanTested { get; init; }

    /// <summary>Results it was fitted to.</summary>
    public int Count { get; init; }

    /// <summary>Maturity of the youngest result.</summary>
    public double FirstTested { get; init; }

    /// <summary>Maturity of the oldest result.</summary>
    public double LastTested { get; init; } = double.PositiveInfinity;

    /// <summary>Where the curve comes from.</summary>
    public required CurveOrigin Origin { get; init; }

    /// <summary>Standard deviation of the logarithm of strength beyond the fit: of a conversion or of an estimate from composition.</summary>
    public double LogSpread { get; init; }

    /// <summary>How it came about, in one sentence.</summary>
    public string Sentence { get; init; } = "";

    /// <summary>Strength that the curve tends to, Pa; infinite for the logarithmic form.</summary>
    public double EndStrength => Form == StrengthForm.Logarithmic ? double.PositiveInfinity : Parameters[0];

    /// <summary>Degrees of freedom left after the fit.</summary>
    public int Freedom => Count - Parameters.Length;

    /// <summary>Strength at a maturity, Pa; never below 0.</summary>
    public double Strength(double maturity) => Math.Max(0, StrengthForms.Value(Form, Parameters.AsSpan(), maturity));

    /// <summary>Maturity at which a strength is reached; infinite when it never is.</summary>
    public double MaturityFor(double strength) => StrengthForms.Inverse(Form, Parameters.AsSpan(), strength);

    /// <summary>
    /// The same curve over another maturity: constants turned by what both gain in an hour at the reference temperature, at which specimens
    /// are taken to have been cured.
    /// </summary>
    /// <param name="scale">The other maturity.</param>
    public StrengthCurve On(MaturityScale scale)
    {
        if (scale == Scale) return this;
        var ratio = scale.Rate(scale.Reference) / Scale.Rate(scale.Reference);
        ImmutableArray<double> turned = Form switch
        {
            StrengthForm.Hyperbolic => [Parameters[0], Parameters[1] / ratio],
            StrengthForm.HyperbolicFromSet => [Parameters[0], Parameters[1] / ratio, Parameters[2] * ratio],
            StrengthForm.Exponential => [Parameters[0], Parameters[1] * ratio, Parameters[2]],
            _ => [Parameters[0] - Parameters[1] * Math.Log10(ratio), Parameters[1]],
        };
        return this with { Scale = scale, Parameters = turned, FirstTested = FirstTested * ratio, LastTested = LastTested * ratio };
    }

    /// <summary>True when a maturity lies before the youngest result: what the curve says there is an extrapolation.</summary>
    public bool IsBeforeFirstTested(double maturity) => maturity < FirstTested * (1 - 1e-9);

    /// <summary>Standard error of the curve itself at a maturity, Pa; 0 where it cannot be told.</summary>
    /// <remarks>Source: linearised propagation of the covariance of the fit.</remarks>
    public double CurveError(double maturity)
    {
        if (Covariance.IsEmpty) return 0;
        var slopes = StrengthForms.Slopes(Form, Parameters.AsSpan(), maturity);
        var variance = 0.0;
        for (var j = 0; j < slopes.Length; j++)
            for (var k = 0; k < slopes.Length; k++) variance += slopes[j] * slopes[k] * Covariance[j * slopes.Length + k];
        return Math.Sqrt(Math.Max(0, variance));
    }

    /// <summary>Scatter of single results about the curve at a maturity, Pa: in proportion to strength below the mean tested strength.</summary>
    public double Scatter(double maturity)
    {
        var share = MeanTested > 0 ? Math.Min(1, Strength(maturity) / MeanTested) : 1;
        return Residual * share;
    }

    /// <summary>Standard deviation of the strength of one place at a maturity: curve, results about it and conversion together, Pa.</summary>
    public double Deviation(double maturity)
    {
        var (curve, scatter, converted) = (CurveError(maturity), Scatter(maturity), LogSpread * Strength(maturity));
        return Math.Sqrt(curve * curve + scatter * scatter + converted * converted);
    }

    /// <summary>Two-sided band of the curve: where the true mean strength lies. Student's factor for the results left over by the fit.</summary>
    /// <param name="maturity">Maturity.</param> <param name="confidence">Chance of the band, e.g. 0.90.</param>
    public StrengthBand Band(double maturity, double confidence) => BandOf(maturity, confidence, CurveError(maturity));

    /// <summary>Two-sided band of a single result: curve, scatter and conversion.</summary>
    /// <param name="maturity">Maturity.</param> <param name="confidence">Chance of the band.</param>
    public StrengthBand ResultBand(double maturity, double confidence) => BandOf(maturity, confidence, Deviation(maturity));

    private StrengthBand BandOf(double maturity, double confidence, double deviation)
    {
        var probability = (1 + confidence) / 2;
        var factor = Freedom > 0 ? StudentT.Quantile(probability, Freedom) : Normal.Quantile(probability);
        var middle = Strength(maturity);
        return new StrengthBand(Math.Max(0, middle - factor * deviation), middle, middle + factor * deviation);
    }
}
