using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Concrete.Mixes;

namespace Slabwright.Tests.Reference;

/// <summary>Proportions by absolute volume, placing temperature, evaporation and strength conversions.</summary>
public sealed class MixChecksRows : ICheckRows
{
    private const double PoundsPerYard = 0.45359237 / (0.9144 * 0.9144 * 0.9144);
    private const string Training = "NAVEDTRA 14070, ch. 17, worked example (NAVEDTRA-14070)";

    public IEnumerable<CheckRow> Rows() => [.. Proportions(), .. Temperatures(), .. Drying(), .. Conversions()];

    private static IEnumerable<CheckRow> Proportions()
    {
        var made = Proportioning.Of(new ProportionRequest
        {
            Id = "example", Slump = 3 * US.Inch, AggregateSize = 0.75 * US.Inch, WaterCement = 0.50, AirEntrained = true, Exposure = AirExposure.Moderate,
            Fineness = 2.70, DryRodded = 102 * US.Pcf, Densities = RelativeDensities.Usual with { Fine = 2.65, Coarse = 2.60 },
        }).Mix!;
        yield return Row("S16", "air", 5, 100 * made.Air, "%", 1e-9);
        yield return Row("S16", "water", 305, made.Water / PoundsPerYard, "lb/yd³", 0.01);
        yield return Row("S16", "cement", 610, made.Cement / PoundsPerYard, "lb/yd³", 0.01);
        yield return Row("S16", "coarse aggregate", 1735, made.Coarse / PoundsPerYard, "lb/yd³", 0.1);
        yield return Row("S16", "fine aggregate, worked by the example", 1152, made.Fine / PoundsPerYard, "lb/yd³", 1);
        yield return Row("S16", "fine aggregate, recap of the page", 1153, made.Fine / PoundsPerYard, "lb/yd³", 2, "The page's recap is a pound above its own working.");
        yield return Row("ACI 211.1", "volume of 588 lb of cement at 3.15", 2.99, AbsoluteVolume.Of(588 * 0.45359237, 3.15) / Math.Pow(US.Foot, 3), "ft³", 0.005);
        yield return Row("S17", "room left for air in Mix 1 of NCHRP 540", 7.3, Air(525, 0.40, 1030, 427), "%", 0.05, "The densities are not published with the mix.");
        yield return Row("S17", "room left for air in Mix 4 of NCHRP 540", 7.5, Air(400, 0.43, 1030, 628), "%", 0.05, "The densities are not published with the mix.");

        static CheckRow Row(string item, string what, double published, double ours, string unit, double tolerance, string remark = "") =>
            new("C3 Proportions", item, item == "S17" ? "worked independently from the published masses (NCHRP-540)" : Training, what, published, ours, unit, tolerance, remark);
    }

    private static double Air(double cement, double ratio, double coarse, double fine) => 100 * (1 - AbsoluteVolume.Of(cement, 3.15)
        - AbsoluteVolume.Of(cement * ratio, 1) - AbsoluteVolume.Of(coarse, 2.65) - AbsoluteVolume.Of(fine, 2.65));

    private static IEnumerable<CheckRow> Temperatures()
    {
        const string Aci = "worked independently from ACI 305R (from memory)";
        yield return Row("S20", Aci, "hot mix", 90.2, F(PlacingTemperature.Of(new(new(3000, C(80)), new(850, C(150)), new(250, C(75)), new(60, C(80))))), "°F", 0.05);
        yield return Row("S20", Aci, "cold mix, water heated", 64.8, F(PlacingTemperature.Of(new(new(3000, C(40)), new(850, C(60)), new(250, C(140)), new(60, C(40))))), "°F", 0.05);
        yield return Row("PCA", "PCA Design and Control, hot weather (from memory)", "heat balance",
            31.8, PlacingTemperature.Balance([(335, 0.92, 66), (123, 4.184, 27), (1839, 0.92, 27)]), "°C", 0.05);

        static CheckRow Row(string item, string source, string what, double published, double ours, string unit, double tolerance) =>
            new("C4 Placing temperature", item, source, what, published, ours, unit, tolerance);
    }

    private static IEnumerable<CheckRow> Drying()
    {
        double[] chart = [.015, .038, .062, .085, .110, .135], worked = [.012, .037, .061, .086, .111, .135];
        for (var i = 0; i < chart.Length; i++)
        {
            var rate = Evaporation.Rate(C(70), C(70), 0.70, 5 * i * 0.44704) * US.Foot * US.Foot / 0.45359237;
            yield return Row("curing chart of PCA (from memory)", $"70 °F, 70 %, {5 * i} mph", chart[i], rate, 0.0035, "Read off a chart.");
            yield return Row("worked independently from the formula in °F and mph (from memory)", $"70 °F, 70 %, {5 * i} mph", worked[i], rate, 0.0006, "");
        }

        static CheckRow Row(string source, string what, double published, double ours, double tolerance, string remark) =>
            new("C5 Evaporation", "S15", source, what, published, ours, "lb/(ft²·h)", tolerance, remark);
    }

    private static IEnumerable<CheckRow> Conversions()
    {
        (double Strength, double Power, double Root, double Split, double Nine)[] table =
            [(2000, 506.9, 460.7, 338.3, 402.5), (3000, 598.1, 564.3, 410.7, 493.0), (4000, 672.7, 651.6, 471.3, 569.2), (5000, 736.8, 728.5, 524.4, 636.4)];
        foreach (var (strength, power, root, split, nine) in table)
        {
            var pa = strength * US.Psi;
            yield return Row("FHWA-HRT-12-030 Fig. 172", $"rupture by power law at {strength} psi", power, StrengthConversions.MatureRupture(pa), 0.05);
            yield return Row("FHWA-HRT-12-031 ch. 4", $"rupture by root at {strength} psi", root, StrengthConversions.MatureRuptureByRoot(pa), 0.05);
            yield return Row("FHWA-HRT-12-031 ch. 6", $"splitting at {strength} psi", split, StrengthConversions.MatureSplitting(pa), 0.05);
            yield return Row("TM 5-809-1", $"9 √f'c at {strength} psi", nine, StrengthConversions.ThirdPointByManual(pa), 0.05);
        }

        yield return Row("published pairs at opening (NJDOT, Ohio, CSA criterion)", "lower end, times √2000", 5.6 * Math.Sqrt(2000),
            StrengthConversions.ThirdPointOf(2000 * US.Psi) * Math.Exp(-2 * StrengthConversions.RootSpread), 25, "The band of the conversion reaches the published pairs.");

        static CheckRow Row(string source, string what, double published, double ours, double tolerance, string remark = "") =>
            new("C6 Strength conversions", "S14", source, what, published, ours / US.Psi, "psi", tolerance, remark);
    }

    private static double C(double fahrenheit) => (fahrenheit - 32) / 1.8;

    private static double F(double celsius) => celsius * 1.8 + 32;
}
