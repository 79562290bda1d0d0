using CsCheck;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Concrete.Opening;
using Slabwright.Core.Joints;
using Slabwright.Core.Numerics;
using Slabwright.Core.RuleSets;

namespace Slabwright.Tests.ConcreteWork;

public class OpeningForecastTests
{
    private static readonly SimpleSlab Slab = new();

    [Fact]
    public void Without_spread_the_opening_is_where_the_coldest_place_reaches_the_maturity()
    {
        var sure = SimpleSlab.Case() with { Spread = OpeningSpread.None, Curve = SimpleSlab.Curve with { Covariance = [], Residual = 0 } };
        var forecast = OpeningForecast.Run(sure, Slab);
        var surface = Slab.Run(sure.Heat)[1];
        var byHand = MaturityScale.Age.HoursTo(SimpleSlab.Curve.MaturityFor(13.79e6), surface.History)!.Value;
        Assert.Equal(byHand, forecast.Earliest!.Value, 1e-3);
        Assert.All(forecast.Openings, o => Assert.Equal(byHand, o, 1e-3));
        Assert.Equal(SlabPlace.Surface, forecast.Hours[^1].Governs);
    }

    [Fact]
    public void Trials_between_computed_paths_agree_with_heat_computed_for_each()
    {
        var question = SimpleSlab.Case();
        var belief = TemperatureBelief.Before(question.Spread);
        var paths = MaturityPaths.Of(Slab, question.Heat, question.Curve.Scale, belief, null);
        var weights = new double[paths.Count];
        var worst = 0.0;
        for (var i = 0; i < 200; i++)
        {
            var (a, p) = (Normal.Quantile((i + 0.5) / 200), Normal.Quantile((i * 77 % 200 + 0.5) / 200));
            paths.Weights(a, p, weights);
            var direct = Slab.Run(question.Heat with { AirShift = 2 * a, PlacingTemperature = 22 + 2 * p })[1].History;
            var needed = question.Curve.MaturityFor(13.79e6);
            worst = Math.Max(worst, Math.Abs(paths.HoursTo(needed, weights) - question.Curve.Scale.HoursTo(needed, direct)!.Value));
        }

        Assert.InRange(worst, 0, 0.02);
    }

    [Fact]
    public void The_distribution_is_that_of_drawing_every_trial_anew()
    {
        var question = SimpleSlab.Case() with { Trials = 4000 };
        var forecast = OpeningForecast.Run(question, Slab);
        var random = new CounterRandom(99);
        var direct = new double[4000];
        for (var i = 0; i < direct.Length; i++)
        {
            var (a, p, z) = (Normal.Quantile(random.Uniform(0, i, 0)), Normal.Quantile(random.Uniform(1, i, 0)), Normal.Quantile(random.Uniform(2, i, 0)));
            var history = Slab.Run(question.Heat with { AirShift = 2 * a, PlacingTemperature = 22 + 2 * p })[1].History;
            var sums = question.Curve.Scale.Along(history);
            var step = Enumerable.Range(0, sums.Length).First(k => NeededMaturity.Strength(question, question.Spread.Strength, sums[k], z) >= 13.79e6);
            direct[i] = history[step].Hours;
        }

        Array.Sort(direct);
        foreach (var share in new[] { 0.1, 0.5, 0.9, 0.95 })
            Assert.Equal(Samples.Quantile(direct, share), forecast.HoursAt(share)!.Value, 0.3);
    }

    [Fact]
    public void More_confidence_never_opens_earlier() => Gen.Select(Gen.Double[0.5, 0.99], Gen.Double[0, 0.009]).Sample((c, more) =>
        OpeningForecast.Run(SimpleSlab.Case(c + more), Slab).Earliest >= OpeningForecast.Run(SimpleSlab.Case(c), Slab).Earliest, iter: 20);

    [Fact]
    public void Colder_never_opens_earlier() => Gen.Select(Gen.Double[0, 15], Gen.Double[0.1, 6]).Sample((cold, more) =>
    {
        var question = SimpleSlab.Case();
        var one = OpeningForecast.Run(WhatIfChange.Colder(cold, "").Change(question), Slab).Earliest ?? 999;
        var two = OpeningForecast.Run(WhatIfChange.Colder(cold + more, "").Change(question), Slab).Earliest ?? 999;
        return two >= one;
    }, iter: 20);

    [Fact]
    public void The_same_case_gives_the_same_answer()
    {
        var (one, two) = (OpeningForecast.Run(SimpleSlab.Case(), Slab), OpeningForecast.Run(SimpleSlab.Case(), Slab));
        Assert.Equal(one.Openings, two.Openings);
        Assert.NotEqual(one.Openings, OpeningForecast.Run(SimpleSlab.Case() with { Seed = 1 }, Slab).Openings);
    }

    [Fact]
    public void Chance_and_hours_answer_each_other()
    {
        var forecast = OpeningForecast.Run(SimpleSlab.Case(), Slab);
        Assert.Equal(0.95, forecast.ChanceBy(forecast.Earliest!.Value), 0.002);
        Assert.Equal(0, forecast.ChanceBy(0));
        Assert.Equal(forecast.Hours[40].Chance, forecast.ChanceBy(forecast.Hours[40].Hours));
        Assert.True(forecast.Hours[30].Strength.Low <= forecast.Hours[30].Strength.Middle);
    }

    [Fact]
    public void A_least_age_holds_the_lane_closed()
    {
        var question = SimpleSlab.Case();
        var forecast = OpeningForecast.Run(question with { Criterion = question.Criterion with { LeastAge = 20 } }, Slab);
        Assert.Equal(20, forecast.Earliest);
    }

    [Fact]
    public void A_strength_the_curve_never_reaches_is_an_error_and_no_time()
    {
        var question = SimpleSlab.Case();
        var forecast = OpeningForecast.Run(question with { Criterion = question.Criterion with { Strength = 90e6 } }, Slab);
        Assert.Null(forecast.Earliest);
        Assert.Contains(forecast.Findings, f => f.Code == "CON-032");
    }

    [Fact]
    public void An_opening_before_the_youngest_specimens_is_said()
    {
        var question = SimpleSlab.Case();
        var forecast = OpeningForecast.Run(question with { Criterion = question.Criterion with { Strength = 2e6 } }, Slab);
        Assert.True(forecast.BeforeFirstTested);
        Assert.Contains(forecast.Findings, f => f.Code == "CON-031");
        Assert.False(OpeningForecast.Run(question, Slab).BeforeFirstTested);
    }

    [Fact]
    public void What_ifs_move_the_time_the_way_they_must()
    {
        var answers = OpeningStudies.WhatIf(OpeningForecast.Run(SimpleSlab.Case(), Slab), Slab, WhatIfChange.Usual);
        Assert.Equal(3, answers.Length);
        Assert.True(answers[0].Later > 0.2);
        Assert.True(answers[1].Later < 0);
        Assert.True(answers[2].Later > 0);
    }

    [Fact]
    public void The_last_placing_opens_at_the_deadline_and_not_after()
    {
        var question = SimpleSlab.Case();
        var (first, deadline) = (question.Heat.PlacedAt, question.Heat.PlacedAt.AddHours(12));
        var last = OpeningStudies.LastPlacing(question, Slab, first, deadline)!.Value;
        var hours = OpeningForecast.Run(question with { Heat = question.Heat with { PlacedAt = last } }, Slab).Earliest!.Value;
        Assert.Equal(0, (deadline - last.AddHours(hours)).TotalHours, 0.05);
        Assert.Null(OpeningStudies.LastPlacing(question, Slab, first, first.AddHours(3)));
    }

    [Theory]
    [InlineData(9, 6, 2000, "common-practice")]
    [InlineData(9, 6, 2200, "florida")]
    public void The_criterion_comes_from_the_rule_set(double inches, double feet, double psi, string set)
    {
        var criterion = OpeningCriteria.For(ConcreteSettings.Default, PublishedRuleSets.Find(set)!.Opening, inches * 0.0254, feet * 0.3048, StrengthKind.Compressive)!;
        Assert.Equal(psi * 6894.757293168361, criterion.Strength, 1);
    }

    [Theory]
    [InlineData(9, 6, 2000, 275)]
    [InlineData(6, 15, 3600, 540)]
    [InlineData(7.5, 15, 2700, 410)]
    [InlineData(12, 6, 2000, 250)]
    public void The_table_by_thickness_and_length_takes_the_thinner_row(double inches, double feet, double compressive, double thirdPoint)
    {
        // Published worked look-ups of the table, which is from memory and starts switched off.
        var rows = PublishedRuleSets.Find("fhwa")!.Opening.Select(r => r with { On = r.Source.Tag == "ACPA-TB002" }).ToArray();
        foreach (var (kind, psi) in new[] { (StrengthKind.Compressive, compressive), (StrengthKind.ThirdPointFlexural, thirdPoint) })
        {
            var criterion = OpeningCriteria.For(ConcreteSettings.Default with { CriterionKind = kind }, [.. rows], inches * 0.0254, feet * 0.3048, null)!;
            Assert.Equal(kind, criterion.Kind);
            Assert.Equal(psi * 6894.757293168361, criterion.Strength, 1);
        }
    }

    [Fact]
    public void Rows_from_memory_start_switched_off()
    {
        foreach (var set in PublishedRuleSets.All)
        {
            Assert.NotEmpty(set.Opening);
            Assert.Contains(set.Opening, r => r.On);
            Assert.DoesNotContain(set.Opening, r => r.On && r.Source.Status == Core.Evidence.SourceStatus.FromMemory);
        }
    }

    [Fact]
    public void A_rule_set_keeps_its_opening_rows_through_its_file()
    {
        foreach (var set in PublishedRuleSets.All)
        {
            var (read, findings) = RuleSetFile.Parse(RuleSetFile.Write(set), "copy.json");
            Assert.DoesNotContain(findings, f => f.Level == Core.Evidence.FindingLevel.Error);
            Assert.Equal(set.Opening, read!.Opening);
        }
    }

    [Fact]
    public void An_opening_row_with_a_wrong_unit_is_named()
    {
        var json = RuleSetFile.Write(PublishedRuleSets.Find("ohio")!).Replace("\"unit\": \"psi\"", "\"unit\": \"ft\"", StringComparison.Ordinal);
        var finding = RuleSetFile.Parse(json, "copy.json").Findings.First(f => f.Code == "TRT-005");
        Assert.Contains("stress", finding.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Special_cements_and_accelerators_in_heat_are_told()
    {
        var question = SimpleSlab.Case();
        var special = question with { Heat = question.Heat with { Mix = SimpleSlab.Mix with { CementKind = Core.Concrete.Mixes.CementKind.SpecialRapid } } };
        Assert.Contains(OpeningForecast.Run(special, Slab).Findings, f => f.Code == "CON-036");
        var hot = question with { Heat = question.Heat with { PlacingTemperature = 30, Mix = SimpleSlab.Mix with { Accelerator = Core.Concrete.Mixes.Accelerator.NonChloride } } };
        Assert.Contains(OpeningForecast.Run(hot, Slab).Findings, f => f.Code == "CON-037");
        Assert.Empty(OpeningForecast.Run(question, Slab).Findings);
    }

    [Fact]
    public void Early_traffic_uses_less_as_strength_grows_and_stops_when_it_would_break()
    {
        var input = new EarlyTrafficInput
        {
            Length = 1.83, Width = 3.66, Thickness = 0.23, Reaction = 54e6, AxlesPerHour = 100, RuptureByHour = [2.1e6, 2.4e6, 2.7e6, 3.0e6],
        };
        var early = EarlyTraffic.Of(input);
        var later = EarlyTraffic.Of(input with { RuptureByHour = [3.0e6, 3.2e6, 3.4e6, 3.5e6] });
        Assert.True(later.Damage < early.Damage);
        Assert.InRange(early.FirstRatio, 0.3, 1.2);
        var byHand = early.StressByHour.Select((s, i) => 100 / ConcreteFatigue.AllowableRepetitions(FatigueLaw.ZeroMaintenance50, s / input.RuptureByHour[i])).Sum();
        Assert.Equal(byHand, early.Damage, byHand * 1e-9);
        Assert.Contains(EarlyTraffic.Of(input with { RuptureByHour = [0.8e6] }).Findings, f => f.Code == "CON-034");
    }

    [Fact]
    public void The_saw_window_opens_with_strength_and_closes_with_the_peak()
    {
        var surface = Slab.Run(SimpleSlab.Case().Heat)[1].History;
        var window = SawWindow.Of(surface, SimpleSlab.Curve);
        Assert.True(window.From < window.FromHard);
        Assert.Equal(MaturityScale.Age.HoursTo(SimpleSlab.Curve.MaturityFor(310 * 6894.757293168361), surface), window.From);
        Assert.True(window.To is null || window.To >= window.From);
    }
}
