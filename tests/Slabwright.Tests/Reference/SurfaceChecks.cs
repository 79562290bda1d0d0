using Slabwright.Core.Concrete.Heat;
using Slabwright.Core.Concrete.Mixes;
using Slabwright.Core.Concrete.Weather;

namespace Slabwright.Tests.Reference;

/// <summary>Sun, film, blanket and what evaporation costs.</summary>
public sealed class SurfaceChecks : ICheckRows
{
    private const string Section = "C9 Sun, sky and surface";
    private const string Spa = "Reda and Andreas, Solar Position Algorithm, NREL/TP-560-34302, 2003, table A4.1 example";

    public IEnumerable<CheckRow> Rows() => [.. Sun(), .. Films()];

    private static IEnumerable<CheckRow> Sun()
    {
        var site = new WeatherSite(39.742476, -105.1786, -7, 1830.14);
        var sun = SunPosition.At(site, new DateTime(2003, 10, 17, 12, 30, 30, DateTimeKind.Unspecified));
        const string Accuracy = "low-precision almanac formulas, stated good to 0.01°; the example refracts by 0.016°";
        yield return new(Section, "example", Spa, "zenith angle, 17 October 2003, 12:30:30", 50.11162, sun.Zenith * 180 / Math.PI, "deg", 0.03, Accuracy);
        yield return new(Section, "example", Spa, "azimuth", 194.34024, sun.Azimuth * 180 / Math.PI, "deg", 0.01, Accuracy);
        yield return new(Section, "example", Spa, "distance of the sun", 0.996542, sun.Distance, "AU", 0.0001, Accuracy);
    }

    private static IEnumerable<CheckRow> Films()
    {
        const string Nist = "NISTIR 6551 / ASHRAE (from memory)";
        yield return new(Section, "3.2", Nist, "film at 5 m/s, lower branch", 25.60, Convection.TwoBranch(5), "W/(m²·K)", 0.005);
        yield return new(Section, "3.2", Nist, "film at 5 m/s, upper branch", 25.26, Convection.TwoBranch(5 + 1e-9), "W/(m²·K)", 0.01);
        const string Series = "resistances in series; worked independently";
        yield return new(Section, "3.11", Series, "film of 27 and blanket of R 0.35", 2.58, 1 / (1 / 27.0 + SurfaceCover.Blanket(0).Resistance), "W/(m²·K)", 0.005);
        yield return new(Section, "3.11", Series, "film of 27 and blanket of R 0.70", 1.36, 1 / (1 / 27.0 + SurfaceCover.Blanket(0, 0.70).Resistance), "W/(m²·K)", 0.005);
        yield return new(Section, "3.10", "physics; worked independently", "1 kg/(m²·h) of evaporation costs", 681, Evaporation.HeatLoss(1), "W/m²", 0.6);
    }
}
