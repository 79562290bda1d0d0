using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Concrete.Mixes;
using Slabwright.Core.Concrete.Opening;
using Slabwright.Core.Evidence;
using Slabwright.Core.Handbook;
using Slabwright.Core.Measures;

namespace Slabwright.Tests.Handbook;

public class ConcreteByHandTests
{
    private const string Breaks = "3 h 900 psi; 4 h 1800 psi; 5 h 2500 psi; 6 h 3000 psi; 12 h 4300 psi";

    private static readonly string[] Night = ["thickness", "10 in", "night", "2026-05-04", "low", "52 °F", "high", "72 °F", "trials", "400"];

    private static HandConcrete Given(Dictionary<string, string> texts) => ConcreteByHand.Evaluate(texts, cancel: TestContext.Current.CancellationToken);

    private static HandConcrete Of(params string[] more) =>
        Given(Night.Concat(more).Chunk(2).GroupBy(p => p[0]).ToDictionary(g => g.Key, g => g.Last()[1]));

    [Fact]
    public void The_question_in_quotes_is_answered()
    {
        var hand = Of("mix", "Class FS", "breaks", Breaks, "blanket", "yes");
        Assert.True(hand.Succeeded, string.Join("\n", hand.Findings));
        var row = Assert.Single(hand.Plan.MixNights);
        Assert.True(row.OpensAt <= row.Night.Deadline);
        Assert.True(row.ChanceByDeadline >= 0.95);
        Assert.InRange(row.LastPlacing!.Value, row.Night.Placed, row.Night.Deadline);
        Assert.InRange(hand.Details[0].Peak!.Temperature, 30, 75);
        Assert.True(hand.Plan.MixNights[0].SawWindow!.From < hand.Plan.MixNights[0].SawWindow!.FromHard);
        Assert.Equal(2000 * Units.Psi.Factor, row.Forecast!.Case.Criterion.Strength, 1e-3);

        double Later(NightChange change) => (hand.Study!.Answer(row.Night, row.Mix, change)!.OpensAt!.Value - row.OpensAt.Value).TotalHours;
        Assert.True(Later(new NightChange { Air = -5.6 }) > 0.02);
        Assert.True(Later(new NightChange { Blanket = new BlanketChange(null) }) > 0.2);
        Assert.True(Later(new NightChange { Strength = 0.95 }) > 0.02);
    }

    [Fact]
    public void A_published_mix_is_filled_up_to_a_whole_volume_and_says_so()
    {
        var mix = Assert.Single(Of("mix", "Class FS").Mixes);
        Assert.Equal(1, mix.Yield, 1e-9);
        Assert.Equal(1, mix.Volumes.Sum(v => v.Volume), 1e-9);
        Assert.Equal(900 * Units.PoundPerCubicYard.Factor, mix.Mix.Cement, 1e-6);
        Assert.Equal(0.40, mix.Mix.WaterCement, 1e-12);
        Assert.Contains(mix.Reasons, r => r.Rule == "air" && r.Source == SourceRef.CommonPractice);
        Assert.Contains(mix.Reasons, r => r.Rule == "cement" && r.Source.Tag == "ODOT-499");
    }

    /// <summary>NAVEDTRA 14070, ch. 17: 610 lb of cement, 305 lb of water, 1,735 lb of stone of 2.60 and 5 % air leave 1,152 lb of sand; ours takes 2.65 for both.</summary>
    [Fact]
    public void Contents_and_ingredient_prices_make_volume_and_cost()
    {
        var hand = Of(
            "cement", "610 lb/yd3", "water", "305 lb/yd3", "coarse", "1735 lb/yd3", "fine", "1152 lb/yd3", "air", "5 %", "mix", "mine",
            "ingredient-prices", "cement 0.08; coarse 0.01; fine 0.01; water 0");
        var mix = Assert.Single(hand.Mixes);
        Assert.Equal("mine", mix.Mix.Id);
        Assert.InRange(mix.Yield, 0.985, 1.0);
        var perYard = (double)mix.CostPerCubicMetre!.Value * Units.CubicYard.Factor;
        Assert.Equal(610 * 0.08 + (1735 + 1152) * 0.01, perYard, 0.02);
    }

    [Fact]
    public void A_class_asks_for_every_mix_of_it_and_breaks_name_theirs()
    {
        var hand = Of("mix", "eight hours", "breaks", "Mix 1: " + Breaks);
        Assert.Equal(PublishedMixes.Of(MixClassId.EightHours).Select(m => m.Name), hand.Mixes.Select(m => m.Mix.Id));
        Assert.Equal([CurveOrigin.Measured, CurveOrigin.Composition], hand.Plan.Curves.Select(c => c.Curve!.Origin));
        Assert.Contains(hand.Findings, f => f.Code == "CON-023");
    }

    [Fact]
    public void A_curve_by_its_constants_wins_over_composition_on_either_maturity()
    {
        string[] curve = ["mix", "Class FS", "curve", "hyperbolic from set; 5600 psi; 0.30; 2", "first-tested", "3 h"];
        var age = Of(curve).Plan;
        var stated = age.Curves[0].Curve!;
        Assert.Equal((CurveOrigin.Measured, StrengthForm.HyperbolicFromSet), (stated.Origin, stated.Form));
        var needed = 2 + 2000.0 / (5600 - 2000) / 0.30;
        Assert.Equal(needed, stated.MaturityFor(2000 * Units.Psi.Factor), 1e-6);
        var factor = Of([.. curve, "maturity", "temperature time factor"]).Plan;
        Assert.Equal(needed * 33, factor.Curves[0].Curve!.MaturityFor(2000 * Units.Psi.Factor), 1e-3);
        Assert.Equal(age.MixNights[0].MedianByOtherLaw!.Value, factor.MixNights[0].Forecast!.HoursAt(0.5)!.Value, 0.15);
    }

    [Fact]
    public void Nights_have_their_own_lows_and_a_forecast_may_be_typed()
    {
        var cold = Of("mix", "Class FS", "breaks", Breaks, "night", "2026-05-04; 2026-05-05 30 °F to 72 °F").Plan.MixNights;
        Assert.True(cold[1].OpensAt!.Value.TimeOfDay > cold[0].OpensAt!.Value.TimeOfDay);
        var typed = Given(new Dictionary<string, string>
        {
            ["thickness"] = "10 in", ["night"] = "2026-05-04", ["mix"] = "Class FS", ["breaks"] = Breaks, ["trials"] = "400", ["clock-ahead"] = "1 h",
            ["forecast"] = "22:00 58 °F 70 % 5 mph 20 %; 2:00 52 °F 80 %; 14:00 70 °F 45 %",
        });
        Assert.True(typed.Succeeded, string.Join("\n", typed.Findings));
        var weather = typed.Study!.Job.Weather!;
        var air = weather.At(weather.SecondsTo(new DateTime(2026, 5, 4, 21, 0, 0)));
        Assert.Equal(58, Units.Fahrenheit.FromBase(air.Air), 1e-6);
        Assert.Equal(0.70, air.Humidity, 1e-6);
        Assert.Equal(5, Units.MilePerHour.FromBase(air.Wind), 1e-9);
        Assert.Equal(0.2, air.Cloud, 1e-12);
    }

    [Fact]
    public void What_is_not_given_is_taken_and_says_from_where()
    {
        var hand = Of("mix", "Class FS");
        Assert.All(hand.Inputs, i => Assert.Equal(Night.Contains(i.Key) || i.Key == "mix", i.Source is null));
        Assert.Equal(4 * 60, hand.Plan.MixNights[0].Night.Placed.TimeOfDay.TotalMinutes - 18 * 60);
        Assert.Equal(new TimeOnly(20, 0), hand.Plan.MixNights[0].Night.PlacingFrom);
    }

    [Theory]
    [InlineData("HBK-005", "thickness", "thickness", "0 in")]
    [InlineData("HBK-004", "low", "low", "50 psi")]
    [InlineData("HBK-006", "colour", "colour", "grey")]
    [InlineData("CON-130", "mix", "mix", "Mix 99")]
    [InlineData("CON-131", "breaks", "breaks", "six hours 900 psi")]
    [InlineData("CON-131", "breaks", "mix", "Class FS; Mix 1", "breaks", "6 h 900 psi")]
    [InlineData("CON-132", "open-by", "open-by", "noon")]
    [InlineData("CON-133", "night", "night", "4 May")]
    [InlineData("CON-133", "night", "night", "2026-05-04; 2026-09-04")]
    [InlineData("CON-135", "curve", "curve", "hyperbolic; 5600 psi", "first-tested", "4 h")]
    [InlineData("CON-135", "first-tested", "curve", "hyperbolic; 5600 psi; 0.3")]
    [InlineData("CON-136", "ingredient-prices", "ingredient-prices", "gravel 3")]
    [InlineData("CON-137", "curve", "breaks", "6 h 900 psi; 8 h 1500 psi", "curve", "hyperbolic; 5600 psi; 0.3", "first-tested", "4 h")]
    [InlineData("CON-137", "cement", "mix", "Class FS; Mix 1", "cement", "600 lb/yd3")]
    [InlineData("CON-138", "low", "low", "80 °F")]
    [InlineData("CON-139", "kind", "kind", "tensile")]
    [InlineData("CON-139", "blanket", "blanket", "maybe")]
    [InlineData("CON-072", "placed-at", "placed-at", "5:00")]
    public void Bad_input_becomes_a_finding_that_names_field_and_mend(string code, string field, params string[] pairs)
    {
        var hand = Of(["mix", "Class FS", .. pairs]);
        Assert.False(hand.Succeeded);
        var finding = hand.Findings.First(f => f.Level == FindingLevel.Error);
        Assert.Equal((code, field), (finding.Code, finding.Place.Field));
        Assert.NotEmpty(finding.Mend!);
    }

    [Fact]
    public void Nothing_given_names_everything_that_must_be_and_a_forecast_that_cannot_be_read_is_named()
    {
        var nothing = Given(new Dictionary<string, string>());
        Assert.Equal(["thickness", "low", "high", "night"], nothing.Findings.Where(f => f.Code == "HBK-002").Select(f => f.Place.Field));
        var odd = Given(new Dictionary<string, string> { ["thickness"] = "10 in", ["night"] = "2026-05-04", ["mix"] = "Class FS", ["forecast"] = "22:00 warm" });
        Assert.Contains(odd.Findings, f => f is { Code: "CON-134", Level: FindingLevel.Error });
        var twice = Of("mix", "Class FS", "forecast", "22:00 58 °F; 5:00 50 °F");
        Assert.Contains(twice.Findings, f => f is { Code: "CON-137", Level: FindingLevel.Error });
    }
}
