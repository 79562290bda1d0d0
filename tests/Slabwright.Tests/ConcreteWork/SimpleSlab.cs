using System.Collections.Immutable;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Concrete.Mixes;
using Slabwright.Core.Concrete.Opening;

namespace Slabwright.Tests.ConcreteWork;

/// <summary>A slab that warms by a pulse of hydration and drifts towards the air: a law simple enough to work by hand.</summary>
internal sealed class SimpleSlab : ISlabHeat
{
    /// <summary>Air temperature of the forecast, °C.</summary>
    public double Air { get; init; } = 15;

    /// <summary>Rise by hydration, K.</summary>
    public double Rise { get; init; } = 25;

    /// <summary>Cases run.</summary>
    public int Runs { get; private set; }

    public ImmutableArray<PlaceHistory> Run(HeatCase heatCase)
    {
        Runs++;
        var air = Air + heatCase.AirShift;
        var rate = heatCase.Blanket is null ? 0.10 : 0.04;
        return [Place(SlabPlace.MidDepth, rate), Place(SlabPlace.Surface, 2 * rate)];

        PlaceHistory Place(SlabPlace place, double loss) => new(place, [.. Enumerable.Range(0, (int)(heatCase.Hours * 4) + 1).Select(i =>
        {
            var t = i / 4.0;
            var cooled = air + (heatCase.PlacingTemperature - air) * Math.Exp(-loss * t);
            return new ConcreteTemperature(t, cooled + Rise * t / 6 * Math.Exp(1 - t / 6) * (1 - loss));
        })]);
    }

    public static ConcreteMix Mix { get; } = new()
    {
        Id = "M", Name = "M", CementKind = CementKind.TypeIii, Cement = 480, Water = 182, Coarse = 1000, Fine = 640, Air = 0.06, Price = 190,
    };

    public static StrengthCurve Curve { get; } = StrengthCurveFit.Fit(StrengthForm.HyperbolicFromSet, StrengthKind.Compressive, MaturityScale.Age,
        [.. new[] { (4.0, 3.1), (6, 9.4), (8, 14.6), (10, 17.5), (12, 20.6), (18, 26.1), (24, 28.9), (72, 38.0) }.Select(p => new MaturityStrength(p.Item1, p.Item2 * 1e6))])!;

    public static OpeningCase Case(double confidence = 0.95) => new()
    {
        Heat = new HeatCase(Mix, new DateTime(2026, 9, 14, 22, 0, 0), 22, 0.23, 24),
        Curve = Curve,
        Criterion = new OpeningCriterion { Kind = StrengthKind.Compressive, Strength = 13.79e6, Confidence = confidence, Reasons = [] },
        Trials = 1000,
    };
}
