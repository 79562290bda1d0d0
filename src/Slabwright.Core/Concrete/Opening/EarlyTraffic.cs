using System.Collections.Immutable;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Evidence;
using Slabwright.Core.Joints;
using Slabwright.Core.Joints.Slabs;

namespace Slabwright.Core.Concrete.Opening;

/// <summary>A repair under its first traffic. SI.</summary>
public sealed record EarlyTrafficInput
{
    /// <summary>Repair length, m.</summary>
    public required double Length { get; init; }

    /// <summary>Lane width, m.</summary>
    public required double Width { get; init; }

    /// <summary>Thickness, m.</summary>
    public required double Thickness { get; init; }

    /// <summary>Modulus of foundation reaction, Pa/m.</summary>
    public required double Reaction { get; init; }

    /// <summary>Load of a half axle (one dual wheel), N.</summary>
    public double WheelLoad { get; init; } = 40_000;

    /// <summary>Tyre pressure, Pa.</summary>
    public double TyrePressure { get; init; } = 690_000;

    /// <summary>Axles of this load in an hour.</summary>
    public required double AxlesPerHour { get; init; }

    /// <summary>Modulus of rupture, Pa, hour by hour from opening on.</summary>
    public required ImmutableArray<double> RuptureByHour { get; init; }

    /// <summary>Law of fatigue.</summary>
    public FatigueLaw Law { get; init; } = FatigueLaw.ZeroMaintenance50;
}

/// <summary>Fatigue used in the first hours.</summary>
/// <param name="Damage">Share of the life used by the axles of those hours.</param>
/// <param name="FirstRatio">Stress over modulus of rupture of the first axle.</param>
/// <param name="StressByHour">Edge stress hour by hour, Pa.</param>
/// <param name="Reasons">The law and the stress it is held against.</param>
/// <param name="Findings">A first axle that may break the slab, stresses outside the law.</param>
public sealed record EarlyTrafficResult(
    double Damage, double FirstRatio, ImmutableArray<double> StressByHour, ImmutableArray<Reason> Reasons, ImmutableArray<Finding> Findings);

/// <summary>Fatigue that early traffic uses, by the plate model's stress.</summary>
/// <remarks>
/// The repair stands alone, a wheel at the middle of its long edge, its ends and sides free: no neighbour helps. Young's modulus follows
/// strength; curling is left out, and the law's own stress would hold it.
/// </remarks>
public static class EarlyTraffic
{
    private const int ModulusPoints = 3;

    /// <summary>Fatigue used over the hours given.</summary>
    public static EarlyTrafficResult Of(EarlyTrafficInput input)
    {
        var moduli = input.RuptureByHour.Select(Modulus).ToArray();
        var points = Points(moduli.Min(), moduli.Max());
        var stresses = points.Select(e => EdgeStress(input, e)).ToArray();
        return Of(input, e => Between(points, stresses, e));
    }

    /// <summary>Fatigue used over the hours given, stresses found elsewhere.</summary>
    /// <param name="input">The repair and its wheel.</param> <param name="stress">Edge stress at a modulus, Pa.</param>
    internal static EarlyTrafficResult Of(EarlyTrafficInput input, Func<double, double> stress)
    {
        ImmutableArray<double> byHour = [.. input.RuptureByHour.Select(r => stress(Modulus(r)))];
        var ratios = byHour.Select((s, i) => s / input.RuptureByHour[i]).ToArray();
        var damage = ConcreteFatigue.Damage(input.Law, ratios.Select(r => (input.AxlesPerHour, r)));
        var facts = FatigueLaws.Of(input.Law);
        return new(damage, ratios[0], byHour,
            [
                new("early traffic", $"{facts.Name}: {facts.Expression}; fitted with {facts.BelongsTo}. {FatigueLaws.NeverMix}", facts.Source),
                new("edge stress", "Wheel at the middle of the long edge of the repair alone, by plate finite elements.", new("SLAB-MODEL", "docs/joint-checks.md", SourceStatus.Computed)),
            ],
            Findings(ratios));
    }

    /// <summary>Stress at the long edge under the wheel, Pa.</summary>
    /// <param name="input">The repair and its wheel.</param> <param name="modulus">Young's modulus, Pa.</param>
    public static double EdgeStress(EarlyTrafficInput input, double modulus)
    {
        var side = Math.Sqrt(input.WheelLoad / input.TyrePressure);
        var wheel = new WheelPatch(input.Length / 2, input.Width - side / 2, side, side, input.WheelLoad);
        var model = new SlabModel(new SlabSystem
        {
            Pieces = [new SlabPiece { Name = "repair", From = 0, To = input.Length, Left = 0, Right = input.Width, Thickness = input.Thickness, Modulus = modulus }],
            Reaction = input.Reaction,
            FineAt = [wheel],
        });
        return model.Wheels([wheel]).BottomStress(0, input.Length / 2, input.Width).X;
    }

    private static ImmutableArray<Finding> Findings(double[] ratios) => ratios[0] switch
    {
        >= 1 => [new("CON-034", FindingLevel.Error, "The first axle would bend the slab beyond its strength.", new(Field: "opening"),
            FormattableString.Invariant($"{ratios[0]:0.00}"), "Wait, or keep trucks off.", "1")],
        > 0.7 => [new("CON-035", FindingLevel.Warning, "The first axles bend the slab to more than 70 % of its strength.", new(Field: "opening"),
            FormattableString.Invariant($"{ratios[0]:0.00}"), "Wait, or keep trucks to other lanes for some hours.", "0.7")],
        _ => [],
    };

    /// <summary>Young's modulus from modulus of rupture over the compressive strength that goes with it.</summary>
    private static double Modulus(double rupture) => StrengthConversions.Modulus(StrengthConversions.CompressiveOf(rupture));

    private static double[] Points(double least, double most) => most - least < 1e-6 * most
        ? [least]
        : [.. Enumerable.Range(0, ModulusPoints).Select(i => least + i * (most - least) / (ModulusPoints - 1))];

    private static double Between(double[] at, double[] values, double x)
    {
        if (at.Length == 1) return values[0];
        var i = x < at[1] ? 0 : 1;
        return values[i] + (x - at[i]) / (at[i + 1] - at[i]) * (values[i + 1] - values[i]);
    }
}
