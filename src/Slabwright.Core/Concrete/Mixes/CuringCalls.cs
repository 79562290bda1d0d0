using System.Collections.Immutable;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Concrete.Mixes;

/// <summary>Curing and protection that weather calls for while concrete is placed.</summary>
public static class CuringCalls
{
    /// <summary>Limit for plain mixes, kg/(m²·h): 0.2 lb/(ft²·h).</summary>
    public const double Limit = 0.2 * PoundsPerFoot;

    /// <summary>Limit for mixes with silica fume, kg/(m²·h): 0.1 lb/(ft²·h).</summary>
    public const double FumeLimit = 0.1 * PoundsPerFoot;

    /// <summary>Line of caution for paving concrete that bleeds little, kg/(m²·h).</summary>
    public const double PavingCaution = 0.5;

    /// <summary>Surface that a litre of pigmented curing compound covers, m²/L: 150 ft² a gallon, the rate common for paving.</summary>
    public const double CompoundCover = 150 * 0.3048 * 0.3048 / 3.785411784;

    private const double PoundsPerFoot = 0.45359237 / (0.3048 * 0.3048);

    private static readonly SourceRef Chart = new("UNO-1998", "curing chart and limits", SourceStatus.Verified);
    private static readonly SourceRef Paving = new("FHWA-HRT-05-038", "ch. 5", SourceStatus.Verified);
    private static readonly SourceRef Cold = new("PCA-COLD", "ch. 14", SourceStatus.Verified);

    /// <summary>Evaporation and what it and the air call for.</summary>
    /// <param name="mix">The mix.</param> <param name="concrete">Concrete temperature, °C.</param> <param name="air">Air, °C.</param>
    /// <param name="humidity">Share.</param> <param name="wind">Wind near the surface, m/s.</param>
    public static EvaporationCall Of(ConcreteMix mix, double concrete, double air, double humidity, double wind)
    {
        var rate = Evaporation.Rate(concrete, air, humidity, wind);
        var limit = mix.SilicaFume > 0 ? FumeLimit : Limit;
        var inputs = ImmutableArray.Create(
            new ReasonInput("evaporation", FormattableString.Invariant($"{rate:0.00} kg/(m²·h)")), new ReasonInput("air", FormattableString.Invariant($"{air:0.0} °C")),
            new ReasonInput("humidity", FormattableString.Invariant($"{100 * humidity:0} %")), new ReasonInput("wind", FormattableString.Invariant($"{wind:0.0} m/s")));
        var measures = ImmutableArray.CreateBuilder<CuringMeasure>();
        measures.Add(new(FormattableString.Invariant($"White-pigmented curing compound, a litre for each {CompoundCover:0.0} m² (a gallon for 150 ft²), as soon as the sheen is gone."),
            new("curing compound", "Every repair is cured; paving covers at most 150 ft² with a gallon.", SourceRef.CommonPractice)));
        if (rate > PavingCaution)
            measures.Add(new("Have an evaporation retarder at hand and cure at once.", new("paving caution line", "Concrete that bleeds little dries from 0.5 kg/(m²·h) on.", Paving, inputs)));
        if (rate > limit)
            measures.Add(new("Wet burlap under plastic, wind breaks or fog until the compound holds.", new("evaporation limit", FormattableString.Invariant($"The rate is above {limit:0.00} kg/(m²·h)."), Chart, inputs)));
        if (air < 10)
            measures.Add(new("Insulating blankets from finishing to opening; take them off when the surface is within 11 K (20 °F) of the air.",
                new("cold weather", "Below 10 °C (50 °F) hydration slows and the surface lags.", Cold, inputs)));
        return new EvaporationCall(rate, limit, measures.ToImmutable());
    }
}
