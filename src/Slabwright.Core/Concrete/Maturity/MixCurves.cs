using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Concrete.Mixes;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Concrete.Maturity;

/// <summary>Finds the strength curve of a mix: measured in the kind asked for, else measured in another kind, else from composition.</summary>
public static class MixCurves
{
    private const string File = "breaks.csv";

    /// <summary>Scale of a mix: its own datum and activation energy where measured.</summary>
    public static MaturityScale ScaleOf(ConcreteMix mix, MaturityKind kind)
    {
        var plain = kind == MaturityKind.EquivalentAge ? MaturityScale.Age : MaturityScale.Factor;
        return plain with { Datum = mix.Datum ?? plain.Datum, ActivationEnergy = mix.ActivationEnergy ?? plain.ActivationEnergy };
    }

    /// <summary>The curve in force.</summary>
    /// <param name="mix">The mix.</param> <param name="breaks">Breaks of all mixes.</param> <param name="kind">Maturity function.</param>
    /// <param name="asked">Kind of strength the criterion asks for; null: whichever was tested most.</param>
    public static MixCurve Of(ConcreteMix mix, IEnumerable<StrengthBreak> breaks, MaturityKind kind, StrengthKind? asked)
    {
        var scale = ScaleOf(mix, kind);
        var own = breaks.Where(b => b.Mix == mix.Id && !b.IsCheck).ToArray();
        var findings = ImmutableArray.CreateBuilder<Finding>();
        foreach (var group in own.GroupBy(b => b.Kind)) findings.AddRange(Falling(group));
        foreach (var tested in own.GroupBy(b => b.Kind).OrderByDescending(g => g.Key == asked).ThenByDescending(g => g.Count()))
        {
            ImmutableArray<MaturityStrength> points = [.. tested.Select(b => new MaturityStrength(MaturityOf(b, scale), b.Strength))];
            if (StrengthCurveFit.Best(tested.Key, scale, points) is not { } curve)
            {
                findings.Add(new("CON-020", FindingLevel.Warning, "Too few results at different ages to fit a strength curve.", new(File, Field: "strength"),
                    mix.Id, "Break specimens at two ages at the least, better at five, from the hour of opening on."));
                continue;
            }

            if (asked is { } wanted && wanted != curve.Kind) curve = curve with { Origin = CurveOrigin.Converted };
            if (curve.Freedom < 2)
            {
                findings.Add(new("CON-021", FindingLevel.Warning, "The strength curve has so few results that its error cannot be told.", new(File), mix.Id,
                    "Break more specimens: published practice has 15 at five ages.", null, "ASTM-C1074"));
            }

            return new MixCurve(mix.Id, curve, points, findings.ToImmutable());
        }

        return Estimated(mix, scale, findings);
    }

    /// <summary>Maturity of a specimen: by its own factor where it was logged, else from age and curing temperature.</summary>
    public static double MaturityOf(StrengthBreak specimen, MaturityScale scale)
    {
        if (specimen.Factor is not { } factor) return scale.Rate(specimen.Curing) * specimen.Hours;
        return scale.Kind == MaturityKind.TemperatureTimeFactor ? factor : scale.Rate(factor / specimen.Hours + scale.Datum) * specimen.Hours;
    }

    private static MixCurve Estimated(ConcreteMix mix, MaturityScale scale, ImmutableArray<Finding>.Builder findings)
    {
        var curve = CompositionStrength.Curve(mix, scale);
        findings.Add(curve is null
            ? new("CON-022", FindingLevel.Error, "The mix has no strength curve and none can be estimated for a special rapid cement.", new(File), mix.Id,
                "Break specimens of the mix; no forecast is made until then.")
            : new("CON-023", FindingLevel.Warning, "The strength of the mix is only estimated from its composition; it may be off by a factor of two.",
                new(File), mix.Id, "Break specimens of the mix at the hours of opening; a measured curve is used at once."));
        return new MixCurve(mix.Id, curve, [], findings.ToImmutable());
    }

    /// <summary>Ages at which the mean strength falls: a mistake in the data more often than in the concrete.</summary>
    private static IEnumerable<Finding> Falling(IEnumerable<StrengthBreak> breaks)
    {
        var means = breaks.GroupBy(b => b.Hours).OrderBy(g => g.Key).Select(g => (Hours: g.Key, Mean: g.Average(b => b.Strength), g.First().Row, g.First().Mix)).ToArray();
        for (var i = 1; i < means.Length; i++)
        {
            if (means[i].Mean >= 0.95 * means[i - 1].Mean) continue;
            long? row = means[i].Row > 0 ? means[i].Row : null;
            yield return new("CON-024", FindingLevel.Warning, "The strength is lower than at a younger age.", new(File, row, "strength"),
                string.Create(CultureInfo.InvariantCulture, $"{means[i].Mix}: {means[i].Mean / 1e6:0.0} MPa at {means[i].Hours:0.#} h"),
                "Check the row: an age or a strength may be mistyped, or the specimens come from different batches.",
                string.Create(CultureInfo.InvariantCulture, $"{means[i - 1].Mean / 1e6:0.0} MPa at {means[i - 1].Hours:0.#} h"));
        }
    }
}
