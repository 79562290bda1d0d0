using CsCheck;
using MathNet.Numerics.Distributions;
using MathNet.Numerics;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Concrete.Mixes;

namespace Slabwright.Tests.ConcreteWork;

public class StrengthCurveTests
{
    private static readonly ConcreteMix Mix = new()
    {
        Id = "M", Name = "M", CementKind = CementKind.TypeI, Cement = 480, Water = 182, Coarse = 1000, Fine = 640, Air = 0.06,
    };

    [Theory]
    [InlineData(StrengthForm.Hyperbolic, new[] { 40e6, 0.05 })]
    [InlineData(StrengthForm.HyperbolicFromSet, new[] { 40e6, 0.05, 3 })]
    [InlineData(StrengthForm.Exponential, new[] { 45e6, 14, 0.8 })]
    [InlineData(StrengthForm.Logarithmic, new[] { -8e6, 17e6 })]
    public void A_fit_finds_the_constants_the_points_were_made_with(StrengthForm form, double[] constants)
    {
        var points = new[] { 5, 7, 10, 16, 24, 48, 96.0 }.Select(m => new MaturityStrength(m, StrengthForms.Value(form, constants, m))).Where(p => p.Strength > 0).ToArray();
        var curve = StrengthCurveFit.Fit(form, StrengthKind.Compressive, MaturityScale.Age, points)!;
        for (var j = 0; j < constants.Length; j++) Assert.Equal(1, curve.Parameters[j] / constants[j], 1e-5);
        Assert.InRange(curve.Residual, 0, 10);
        foreach (var p in points) Assert.Equal(p.Maturity, curve.MaturityFor(p.Strength), p.Maturity * 1e-4);
    }

    [Fact]
    public void The_fit_is_that_of_a_general_library()
    {
        double[] ages = [4, 6, 8, 12, 24, 72], strengths = [4.1, 9.8, 14.2, 19.5, 29.7, 37.2];
        var (end, k) = Fit.Curve(ages, strengths, (a, b, x) => a * b * x / (1 + b * x), 40, 0.05, tolerance: 1e-12, maxIterations: 100_000);
        var curve = StrengthCurveFit.Fit(StrengthForm.Hyperbolic, StrengthKind.Compressive, MaturityScale.Age,
            [.. ages.Zip(strengths, (a, s) => new MaturityStrength(a, s * 1e6))])!;
        Assert.Equal(end, curve.Parameters[0] / 1e6, 1e-3);
        Assert.Equal(k, curve.Parameters[1], 1e-5);
    }

    [Fact]
    public void Students_quantile_is_that_of_a_general_library()
    {
        foreach (var freedom in new[] { 1, 2, 3, 5, 10, 40.0 })
            foreach (var p in new[] { 0.6, 0.8, 0.9, 0.95, 0.975, 0.995 })
                Assert.Equal(StudentT.InvCDF(0, 1, freedom, p), Core.Numerics.StudentT.Quantile(p, freedom), 1e-7 * (1 + freedom * 10));
    }

    [Fact]
    public void The_band_of_the_straight_line_is_the_text_books()
    {
        // y = a + b log10 x is linear, so the band must equal the regression band with Student's factor.
        double[] x = [1, 2, 4, 8, 16, 32], y = [5.1, 9.7, 15.6, 19.8, 25.4, 29.8];
        var curve = StrengthCurveFit.Fit(StrengthForm.Logarithmic, StrengthKind.Compressive, MaturityScale.Age, [.. x.Zip(y, (a, b) => new MaturityStrength(a, b * 1e6))])!;
        var u = x.Select(Math.Log10).ToArray();
        var (intercept, slope) = Fit.Line(u, y);
        var s2 = u.Zip(y, (a, b) => Math.Pow(b - intercept - slope * a, 2)).Sum() / 4;
        var mean = u.Average();
        var error = Math.Sqrt(s2 * (1.0 / 6 + Math.Pow(Math.Log10(10) - mean, 2) / u.Sum(a => (a - mean) * (a - mean))));
        var half = StudentT.InvCDF(0, 1, 4, 0.95) * error;
        var band = curve.Band(10, 0.90);
        Assert.Equal(intercept + slope, band.Middle / 1e6, 1e-6);
        Assert.Equal(half, (band.High - band.Middle) / 1e6, 1e-4);
    }

    [Fact]
    public void More_maturity_never_means_less_strength() =>
        Gen.Select(Gen.Enum<StrengthForm>(), Gen.Double[5e6, 8e7], Gen.Double[0.001, 1], Gen.Double[0.2, 2], Gen.Double[0.1, 500], Gen.Double[0, 300]).Sample((form, end, k, power, m, more) =>
        {
            double[] constants = form switch
            {
                StrengthForm.Hyperbolic => [end, k],
                StrengthForm.HyperbolicFromSet => [end, k, 5],
                StrengthForm.Exponential => [end, 1 / k, power],
                _ => [-end / 4, end / 2],
            };
            return StrengthForms.Value(form, constants, m + more) >= StrengthForms.Value(form, constants, m) - 1e-6;
        });

    [Fact]
    public void A_measured_curve_wins_over_the_composition()
    {
        StrengthBreak[] breaks = [.. new[] { (4.0, 6e6), (6, 13e6), (8, 17e6), (12, 22e6), (24, 30e6) }.Select(b => new StrengthBreak("M", StrengthKind.Compressive, b.Item1, b.Item2))];
        var measured = MixCurves.Of(Mix, breaks, MaturityKind.EquivalentAge, StrengthKind.Compressive);
        Assert.Equal(CurveOrigin.Measured, measured.Curve!.Origin);
        Assert.InRange(measured.Curve.Strength(6), 10e6, 14e6);
        var estimated = MixCurves.Of(Mix, [], MaturityKind.EquivalentAge, StrengthKind.Compressive);
        Assert.Equal(CurveOrigin.Composition, estimated.Curve!.Origin);
        Assert.Contains(estimated.Findings, f => f.Code == "CON-023");
        Assert.InRange(estimated.Curve.Strength(6), 0.5e6, 5e6);
        Assert.True(estimated.Curve.IsBeforeFirstTested(1000));
    }

    [Fact]
    public void No_curve_is_made_up_for_a_special_cement()
    {
        var curve = MixCurves.Of(Mix with { CementKind = CementKind.SpecialRapid }, [], MaturityKind.EquivalentAge, null);
        Assert.Null(curve.Curve);
        Assert.Contains(curve.Findings, f => f.Code == "CON-022");
    }

    [Fact]
    public void A_strength_that_falls_with_age_is_named()
    {
        // The open data set holds such a series: 349/192/1056/809.
        StrengthBreak[] breaks = [new("M", StrengthKind.Compressive, 72, 15.87e6) { Row = 2 }, new("M", StrengthKind.Compressive, 168, 9.01e6) { Row = 3 }, new("M", StrengthKind.Compressive, 672, 33.61e6) { Row = 4 }];
        var finding = Assert.Single(MixCurves.Of(Mix, breaks, MaturityKind.EquivalentAge, null).Findings, f => f.Code == "CON-024");
        Assert.Equal(3, finding.Place.Row);
    }

    [Fact]
    public void Maturity_of_a_specimen_comes_from_its_logger_where_it_has_one()
    {
        var warm = new StrengthBreak("M", StrengthKind.Compressive, 10, 1e7) { Factor = 450, Curing = 20 };
        Assert.Equal(450, MixCurves.MaturityOf(warm, MaturityScale.Factor));
        Assert.Equal(300, MixCurves.MaturityOf(warm with { Factor = null }, MaturityScale.Factor), 9);
        Assert.Equal(10 * MaturityScale.Age.Rate(35), MixCurves.MaturityOf(warm, MaturityScale.Age), 9);
    }

    [Fact]
    public void Conversions_ask_for_more_where_the_published_range_leaves_a_choice()
    {
        var centre = StrengthConversions.Needed(300, StrengthKind.CentrePointFlexural, StrengthKind.ThirdPointFlexural);
        var third = StrengthConversions.Needed(300, StrengthKind.ThirdPointFlexural, StrengthKind.CentrePointFlexural);
        Assert.Equal(300 / 1.15, centre.Strength, 9);
        Assert.Equal(360, third.Strength, 9);
        Assert.True(StrengthConversions.Needed(2e6, StrengthKind.ThirdPointFlexural, StrengthKind.Compressive).LogSpread > 0.2);
    }

    [Fact]
    public void Pulse_velocity_has_a_curve_of_its_own()
    {
        StrengthBreak[] breaks = [.. new[] { 3000, 3300, 3600, 3900.0 }.Select(v => new StrengthBreak("M", StrengthKind.Compressive, 10, 2e5 * Math.Exp(0.00115 * v)) { PulseVelocity = v })];
        var curve = PulseVelocityCurve.Fit(breaks, StrengthKind.Compressive)!;
        Assert.Equal(0.00115, curve.Rate, 9);
        Assert.Equal(2e5, curve.Factor, 2e5 * 1e-6);
        Assert.True(curve.IsOutside(2900));
        Assert.Null(PulseVelocityCurve.Fit(breaks, StrengthKind.ThirdPointFlexural));
    }
}
