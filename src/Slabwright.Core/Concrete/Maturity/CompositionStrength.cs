using Slabwright.Core.Concrete.Mixes;

namespace Slabwright.Core.Concrete.Maturity;

/// <summary>
/// Strength estimated from what is in a mix, for a first look when no specimen was broken. Published early strengths differ from such
/// estimates by a factor of two; a curve measured on the mix always wins.
/// </summary>
/// <remarks>
/// Fitted here to an open data set of ordinary mixes without admixture (I-C. Yeh, UCI Machine Learning Repository): 29 mixes with a ratio up
/// to 0.60 for the strength at 28 days, 142 results for its growth. Type III by the published ratios to Type I at 1, 3, 7, 28 and 90 days.
/// No published factor for accelerators was found: they are left out and the estimate is then late.
/// </remarks>
public static class CompositionStrength
{
    private const double Day = 24;

    /// <summary>Standard deviation of the logarithm of an estimate: a factor of two is taken as the 95 % limit.</summary>
    public static double LogSpread { get; } = Math.Log(2) / 1.96;

    /// <summary>Compressive strength at 28 days and the reference temperature, Pa: exp(5.059 − 2.984 w/c) MPa.</summary>
    /// <remarks>Source: fitted to YEH-1998; standard deviation of the logarithm 0.15.</remarks>
    /// <param name="waterCement">Water over cementitious mass.</param>
    public static double At28Days(double waterCement) => Math.Exp(5.05903337 - 2.98435035 * waterCement) * 1e6;

    /// <summary>Compressive strength over equivalent age; null for special rapid cements, for which only a measured curve holds.</summary>
    public static StrengthCurve? Curve(ConcreteMix mix, MaturityScale scale)
    {
        if (mix.CementKind == CementKind.SpecialRapid || !(mix.WaterCement > 0)) return null;
        var (time, power, factor) = mix.CementKind == CementKind.TypeIii ? (1.73324433, 0.45165472, 1.07906911) : (4.90735858, 0.44730447, 1.0);
        var end = factor * At28Days(mix.WaterCement) * Math.Exp(Math.Pow(time / 28, power));
        var perHour = scale.Rate(scale.Reference);
        return new StrengthCurve
        {
            Kind = StrengthKind.Compressive,
            Form = StrengthForm.Exponential,
            Scale = scale,
            Parameters = [end, time * Day * perHour, power],
            Count = 0,
            FirstTested = double.PositiveInfinity,
            LastTested = 0,
            Origin = CurveOrigin.Composition,
            LogSpread = LogSpread,
            Sentence = "estimated from water, cement and the type of cement; accelerators left out; early strengths may differ by a factor of two",
        };
    }
}
