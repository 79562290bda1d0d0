using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Concrete.Night;

/// <summary>What checks of a curve call for.</summary>
public enum CurveVerdict
{
    /// <summary>No check specimens yet.</summary>
    Unchecked,

    /// <summary>Specimens agree within 10 %.</summary>
    Agrees,

    /// <summary>Repeatedly 10 to 15 % off: move the curve.</summary>
    Adjust,

    /// <summary>More than 15 % off: make a new curve.</summary>
    Renew,
}

/// <summary>A check specimen against the curve.</summary>
/// <param name="Break">The specimen.</param> <param name="Maturity">Its maturity.</param> <param name="Expected">Strength of the curve, Pa.</param>
/// <param name="Deviation">Measured over expected, less 1.</param>
public sealed record CurveCheck(StrengthBreak Break, double Maturity, double Expected, double Deviation);

/// <summary>Checks of a curve.</summary>
/// <param name="Verdict">What they call for.</param> <param name="Checks">Each specimen.</param>
/// <param name="Factor">Mean of measured over expected; the factor a moved curve would take.</param>
/// <param name="Findings">The call in words.</param>
public sealed record CurveValidationResult(CurveVerdict Verdict, ImmutableArray<CurveCheck> Checks, double Factor, ImmutableArray<Finding> Findings);

/// <summary>Holds a strength curve against later specimens of the same mix.</summary>
/// <remarks>Tolerances of Texas Tex-426-A (from memory): within 10 % accepted, 10 to 15 % repeatedly adjusted, above 15 % a new curve.</remarks>
public static class CurveValidation
{
    /// <summary>Deviation that is accepted, share.</summary>
    public const double Accepted = 0.10;

    /// <summary>Deviation above which a new curve is made, share.</summary>
    public const double Renewed = 0.15;

    /// <summary>Checks a curve.</summary>
    /// <param name="curve">The curve.</param> <param name="breaks">Check specimens of the mix; those of another kind are passed over.</param>
    /// <param name="file">File they stand in.</param>
    public static CurveValidationResult Check(StrengthCurve curve, IEnumerable<StrengthBreak> breaks, string file = "breaks.csv")
    {
        var checks = breaks.Where(b => b.Kind == curve.Kind).Select(b =>
        {
            var maturity = MixCurves.MaturityOf(b, curve.Scale);
            var expected = curve.Strength(maturity);
            return new CurveCheck(b, maturity, expected, expected > 0 ? b.Strength / expected - 1 : double.PositiveInfinity);
        }).ToImmutableArray();
        if (checks.IsEmpty) return new(CurveVerdict.Unchecked, checks, 1, []);
        var off = checks.Count(c => Math.Abs(c.Deviation) > Accepted);
        var far = checks.Where(c => Math.Abs(c.Deviation) > Renewed).ToArray();
        var verdict = far.Length > 0 ? CurveVerdict.Renew : off > 1 ? CurveVerdict.Adjust : CurveVerdict.Agrees;
        var factor = checks.Average(c => 1 + c.Deviation);
        return new(verdict, checks, factor, Findings(verdict, checks, factor, file));
    }

    private static ImmutableArray<Finding> Findings(CurveVerdict verdict, ImmutableArray<CurveCheck> checks, double factor, string file)
    {
        var worst = checks.MaxBy(c => Math.Abs(c.Deviation))!;
        long? row = worst.Break.Row > 0 ? worst.Break.Row : null;
        var place = new FindingPlace(file, row, "strength");
        var value = string.Create(CultureInfo.InvariantCulture, $"{worst.Break.Mix}: {100 * worst.Deviation:+0;−0} % at {worst.Break.Hours:0.#} h");
        return verdict switch
        {
            CurveVerdict.Adjust =>
            [
                new("CON-051", FindingLevel.Warning, "Check specimens are off the strength curve again and again: move the curve.", place, value,
                    string.Create(CultureInfo.InvariantCulture, $"Take {factor:0.00} of the curve, and find out what changed in the mix."), "10 %", "TEX-426-A"),
            ],
            CurveVerdict.Renew =>
            [
                new("CON-052", FindingLevel.Error, "A check specimen is so far off the strength curve that a new curve is needed.", place, value,
                    "Make a new curve; until then open on specimens.", "15 %", "TEX-426-A"),
            ],
            _ => [],
        };
    }
}
