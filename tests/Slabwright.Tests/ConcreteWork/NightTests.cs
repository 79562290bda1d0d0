using System.Collections.Immutable;
using CsCheck;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Concrete.Night;
using Slabwright.Core.Concrete.Opening;

namespace Slabwright.Tests.ConcreteWork;

public class NightTests
{
    private static readonly DateTime Placed = new(2026, 9, 14, 22, 0, 0);
    private static readonly SimpleSlab Slab = new();

    [Fact]
    public void Without_readings_the_posterior_is_the_prior()
    {
        var night = NightUpdate.With(SimpleSlab.Case(), Slab, new CheckedReadings([], []), []);
        Assert.Same(night.Prior, night.Posterior);
        Assert.Equal(night.Before, night.Now);
        Assert.Equal((1, 0.08), night.Lot);
    }

    [Fact]
    public void Readings_of_a_colder_night_find_it_and_move_the_opening_later()
    {
        var question = SimpleSlab.Case();
        var night = NightUpdate.With(question, Slab, Readings(question, airShift: -6, placing: 20, hours: 5), []);
        Assert.InRange(night.Now.Air, -6, -1);
        Assert.InRange(night.Now.Placing, -2.5, -0.5);
        Assert.True(night.Now.AirDeviation < night.Before.AirDeviation);
        Assert.True(night.Posterior.Earliest > night.Prior.Earliest);
    }

    [Fact]
    public void The_belief_after_readings_is_that_of_the_normal_equations()
    {
        // Two normal priors and one reading that depends on both: the textbook answer of Bayesian linear regression, worked here anew.
        var question = SimpleSlab.Case();
        var middle = Slab.Run(question.Heat)[1].History;
        var air = Slab.Run(question.Heat with { AirShift = 2 })[1].History;
        var mix = Slab.Run(question.Heat with { PlacingTemperature = 24 })[1].History;
        var measured = Slab.Run(question.Heat with { AirShift = 3, PlacingTemperature = 20 })[1].History.Where(t => t.Hours <= 4).ToImmutableArray();
        var belief = NightUpdate.Temperatures(question, Slab, [new("p", SlabPlace.Surface, measured, true)], TemperatureBelief.Before(question.Spread));
        var a = MathNet.Numerics.LinearAlgebra.Matrix<double>.Build.Dense(2, 2);
        var b = MathNet.Numerics.LinearAlgebra.Vector<double>.Build.Dense(2);
        a[0, 0] = a[1, 1] = 1 / 4.0;
        for (var h = 0; h <= 4; h++)
        {
            double[] row = [(air[4 * h].Temperature - middle[4 * h].Temperature) / 2, (mix[4 * h].Temperature - middle[4 * h].Temperature) / 2];
            for (var i = 0; i < 2; i++)
            {
                b[i] += row[i] * (measured[4 * h].Temperature - middle[4 * h].Temperature) / 4;
                for (var j = 0; j < 2; j++) a[i, j] += row[i] * row[j] / 4;
            }
        }

        var (mean, covariance) = (a.Solve(b), a.Inverse());
        Assert.Equal(mean[0], belief.Air, 1e-9);
        Assert.Equal(mean[1], belief.Placing, 1e-9);
        Assert.Equal(Math.Sqrt(covariance[0, 0]), belief.AirDeviation, 1e-9);
        Assert.Equal(Math.Sqrt(covariance[1, 1]), belief.PlacingSpread, 1e-9);
    }

    [Fact]
    public void Up_to_the_last_reading_the_measured_temperature_holds()
    {
        var question = SimpleSlab.Case();
        var readings = Readings(question, airShift: -6, placing: 20, hours: 5);
        var night = NightUpdate.With(question, Slab, readings, []);
        var measured = readings.Probes[0].History;
        foreach (var hour in night.Posterior.Hours.Where(h => h.Hours <= 5 && h.Governs == SlabPlace.Surface))
            Assert.Equal(ReadingMath.At(measured, hour.Hours)!.Value, hour.Temperature, 1e-9);
    }

    [Fact]
    public void Weak_specimens_move_the_lot_and_the_opening()
    {
        var question = SimpleSlab.Case();
        var weak = NightUpdate.With(question, Slab, new CheckedReadings([], []), [new NightSpecimen(6, 8, 0.8 * question.Curve.Strength(8), StrengthKind.Compressive)]);
        var weights = (1 / (0.08 * 0.08), 1 / (NightUpdate.SpecimenError * NightUpdate.SpecimenError));
        Assert.Equal((weights.Item1 + 0.8 * weights.Item2) / (weights.Item1 + weights.Item2), weak.Lot.Mean, 1e-12);
        Assert.True(weak.Lot.Deviation < 0.08);
        Assert.True(weak.Posterior.HoursAt(0.5) > weak.Prior.HoursAt(0.5));
        var other = NightUpdate.With(question, Slab, new CheckedReadings([], []), [new NightSpecimen(6, 8, 3e6, StrengthKind.ThirdPointFlexural)]);
        Assert.Contains(other.Findings, f => f.Code == "CON-050");
        Assert.Same(other.Prior, other.Posterior);
    }

    [Fact]
    public void More_readings_never_leave_a_wider_belief() => Gen.Int[1, 8].Sample(hours =>
    {
        var question = SimpleSlab.Case();
        var one = NightUpdate.Temperatures(question, Slab, Readings(question, -3, 21, hours).Probes, TemperatureBelief.Before(question.Spread));
        var two = NightUpdate.Temperatures(question, Slab, Readings(question, -3, 21, hours + 1).Probes, TemperatureBelief.Before(question.Spread));
        return two.AirDeviation <= one.AirDeviation + 1e-12 && two.PlacingSpread <= one.PlacingSpread + 1e-12;
    }, iter: 8);

    [Fact]
    public void Good_readings_have_no_findings()
    {
        var check = ReadingCheck.Of(Night(Steady("a", 24)));
        Assert.Empty(check.Findings);
        Assert.True(check.Probes[0].Trusted);
        Assert.Equal(12, check.Probes[0].History[^1].Hours, 9);
    }

    [Fact]
    public void Faults_are_named_and_left_out()
    {
        var rows = Steady("a", 24).Readings.ToList();
        rows[5] = rows[5] with { Temperature = -9900 };
        rows[9] = rows[9] with { Temperature = null };
        rows.RemoveRange(14, 2);
        var check = ReadingCheck.Of(Night(new Probe("a", SlabPlace.Surface, [.. rows])));
        Assert.Equal(2, check.Findings.Count(f => f.Code == "CON-045"));
        Assert.Contains(check.Findings, f => f.Code == "CON-040");
        Assert.True(check.Probes[0].Trusted);
        Assert.DoesNotContain(check.Probes[0].History, t => t.Temperature < 0);
        Assert.Equal(rows[5].Row, check.Findings.First(f => f.Code == "CON-045").Place.Row);
    }

    [Fact]
    public void A_long_gap_a_dead_sensor_and_a_clock_set_back_cost_trust_or_are_told()
    {
        var gap = Steady("a", 24).Readings.Where((_, i) => i is < 4 or > 12);
        Assert.False(ReadingCheck.Of(Night(new Probe("a", SlabPlace.Surface, [.. gap]))).Probes[0].Trusted);

        var dead = Steady("a", 24).Readings.Select((r, i) => i > 8 ? r with { Temperature = 31 } : r);
        var stuck = ReadingCheck.Of(Night(new Probe("a", SlabPlace.Surface, [.. dead])));
        Assert.False(stuck.Probes[0].Trusted);
        Assert.Contains(stuck.Findings, f => f.Code == "CON-044");
        Assert.Contains(stuck.Findings, f => f.Code == "CON-048");

        var set = Steady("a", 24).Readings.Select((r, i) => i > 10 ? r with { At = r.At.AddHours(-1) } : r);
        Assert.Contains(ReadingCheck.Of(Night(new Probe("a", SlabPlace.Surface, [.. set]))).Findings, f => f.Code == "CON-041");
        var forward = Steady("a", 24).Readings.Select((r, i) => i > 10 ? r with { At = r.At.AddHours(1) } : r);
        Assert.Contains(ReadingCheck.Of(Night(new Probe("a", SlabPlace.Surface, [.. forward]))).Findings, f => f.Code == "CON-042");
    }

    [Fact]
    public void Probes_that_disagree_are_told()
    {
        var other = Steady("b", 24);
        other = other with { Readings = [.. other.Readings.Select((r, i) => i > 10 ? r with { Temperature = r.Temperature + 8 * Math.Min(1, (i - 10) / 4.0) } : r)] };
        Assert.Contains(ReadingCheck.Of(Night(Steady("a", 24), other)).Findings, f => f.Code == "CON-046");
    }

    [Fact]
    public void A_lane_opens_only_when_everything_is_there()
    {
        var good = Question();
        Assert.Equal(OpeningVerdict.Open, OpeningDecision.Decide(good).Verdict);
        AssertRefused(good with { By = " " }, "name");
        AssertRefused(good with { Criterion = good.Criterion with { LeastAge = 9 } }, "Age");
        AssertRefused(good with { Evidence = [] }, "Evidence of strength");
        AssertRefused(good with { Evidence = [good.Evidence[0] with { Low = 12e6 }] }, "are needed");
        AssertRefused(good with { Evidence = [good.Evidence[0] with { AtGoverningPlace = false }] }, "lags behind");

        // Readings carried to the place that lags behind open a lane, but never in silence.
        var carried = OpeningDecision.Decide(good with { Evidence = [good.Evidence[0] with { Carried = true }] });
        Assert.Equal(OpeningVerdict.Open, carried.Verdict);
        Assert.Contains(carried.Reasons, r => r.Rule == "carried evidence");
        Assert.DoesNotContain(OpeningDecision.Decide(good).Reasons, r => r.Rule == "carried evidence");
        AssertRefused(good with { Evidence = [good.Evidence[0] with { BeforeFirstTested = true }] }, "youngest specimens");
        AssertRefused(good with { Evidence = [good.Evidence[0] with { Kind = EvidenceKind.PulseVelocity }] }, "second evidence");
        AssertRefused(good with { Curve = SimpleSlab.Curve with { Origin = CurveOrigin.Composition } }, "measured");
        AssertRefused(good with { Evidence = [good.Evidence[0] with { At = Placed.AddHours(9) }] }, "later");
        AssertRefused(good with { Evidence = [good.Evidence[0] with { At = Placed.AddHours(-1) }] }, "older");
    }

    [Fact]
    public void An_override_needs_a_reason_and_a_name_and_keeps_what_was_missing()
    {
        var short_ = Question() with { Evidence = [] };
        Assert.Equal(OpeningVerdict.StayClosed, OpeningDecision.Decide(short_ with { OverrideReason = "  " }).Verdict);
        Assert.Equal(OpeningVerdict.StayClosed, OpeningDecision.Decide(short_ with { OverrideReason = "emergency route", By = "" }).Verdict);
        var record = OpeningDecision.Decide(short_ with { OverrideReason = "emergency route" });
        Assert.Equal(OpeningVerdict.OpenByOverride, record.Verdict);
        Assert.NotEmpty(record.Missing);
        Assert.Equal("emergency route", record.OverrideReason);
    }

    [Fact]
    public void A_third_point_criterion_is_not_met_by_an_uncorrected_centre_point_test()
    {
        var good = Question();
        var question = good with
        {
            Criterion = good.Criterion with { Kind = StrengthKind.ThirdPointFlexural, Strength = 2.0e6 },
            Evidence = [new StrengthEvidence(EvidenceKind.Specimens, Placed.AddHours(6), StrengthKind.CentrePointFlexural, 2.2e6, "")],
        };
        AssertRefused(question, "are needed");
        Assert.Equal(OpeningVerdict.Open, OpeningDecision.Decide(question with { Evidence = [question.Evidence[0] with { Strength = 2.41e6 }] }).Verdict);
    }

    [Theory]
    [InlineData(new[] { 1.05, 0.95 }, CurveVerdict.Agrees)]
    [InlineData(new[] { 0.88, 0.95 }, CurveVerdict.Agrees)]
    [InlineData(new[] { 0.88, 0.87 }, CurveVerdict.Adjust)]
    [InlineData(new[] { 0.84, 1.0 }, CurveVerdict.Renew)]
    [InlineData(new double[0], CurveVerdict.Unchecked)]
    public void Check_specimens_judge_the_curve(double[] ratios, CurveVerdict verdict)
    {
        var breaks = ratios.Select(r => new StrengthBreak("M", StrengthKind.Compressive, 10, r * SimpleSlab.Curve.Strength(10)) { IsCheck = true, Curing = 23 });
        var result = CurveValidation.Check(SimpleSlab.Curve, breaks);
        Assert.Equal(verdict, result.Verdict);
        if (ratios.Length > 0) Assert.Equal(ratios.Average(), result.Factor, 1e-9);
        Assert.Equal(verdict is CurveVerdict.Adjust or CurveVerdict.Renew, result.Findings.Length == 1);
    }

    private static void AssertRefused(OpeningQuestion question, string says)
    {
        var record = OpeningDecision.Decide(question);
        Assert.Equal(OpeningVerdict.StayClosed, record.Verdict);
        Assert.Contains(record.Missing, m => m.Contains(says, StringComparison.Ordinal));
    }

    private static OpeningQuestion Question() => new()
    {
        Repair = "R001", Criterion = SimpleSlab.Case().Criterion, PlacedAt = Placed, By = "N. Example", At = Placed.AddHours(7), Curve = SimpleSlab.Curve,
        Evidence = [new StrengthEvidence(EvidenceKind.Maturity, Placed.AddHours(6.9), StrengthKind.Compressive, 16e6, "") { Low = 14e6, AtGoverningPlace = true }],
    };

    private static NightReadings Night(params ReadOnlySpan<Probe> probes) => new() { Repair = "R001", Mix = "M", PlacedAt = Placed, Probes = [.. probes], File = "night.csv" };

    private static Probe Steady(string name, int count) => new(name, SlabPlace.Surface,
        [.. Enumerable.Range(0, count + 1).Select(i => new ProbeReading(Placed.AddMinutes(30 * i), 22 + 10 * Math.Sin(i / 8.0) + 0.01 * i, i + 2))]);

    private static CheckedReadings Readings(OpeningCase question, double airShift, double placing, double hours) => new(
        [new ProbeHistory("edge", SlabPlace.Surface, [.. Slab.Run(question.Heat with { AirShift = airShift, PlacingTemperature = placing })[1].History.Where(t => t.Hours <= hours)], true)], []);
}
