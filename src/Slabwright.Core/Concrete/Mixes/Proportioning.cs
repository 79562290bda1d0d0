using System.Collections.Immutable;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Concrete.Mixes;

/// <summary>What a mix is proportioned for by absolute volume. SI.</summary>
public sealed record ProportionRequest
{
    /// <summary>Identifier of the mix to make.</summary>
    public required string Id { get; init; }

    /// <summary>Slump, m.</summary>
    public required double Slump { get; init; }

    /// <summary>Greatest aggregate size, m; one of the sizes of the table.</summary>
    public required double AggregateSize { get; init; }

    /// <summary>Water–cement ratio; null: by strength.</summary>
    public double? WaterCement { get; init; }

    /// <summary>Compressive strength at 28 days, Pa; needed where no water–cement ratio is given.</summary>
    public double? Strength { get; init; }

    /// <summary>Greatest water–cement ratio that exposure allows; null: none.</summary>
    public double? MostWaterCement { get; init; }

    /// <summary>Air entrained.</summary>
    public bool AirEntrained { get; init; } = true;

    /// <summary>Exposure that sets the air.</summary>
    public AirExposure Exposure { get; init; } = AirExposure.Severe;

    /// <summary>Air, share; null: by size and exposure.</summary>
    public double? Air { get; init; }

    /// <summary>Fineness modulus of the sand.</summary>
    public required double Fineness { get; init; }

    /// <summary>Dry-rodded mass of the coarse aggregate, kg/m³.</summary>
    public required double DryRodded { get; init; }

    /// <summary>Share more of coarse aggregate than the table gives: up to 0.10 for paving.</summary>
    public double MoreCoarse { get; init; }

    /// <summary>Cement.</summary>
    public CementKind CementKind { get; init; }

    /// <summary>Relative densities.</summary>
    public RelativeDensities Densities { get; init; } = RelativeDensities.Usual;
}

/// <summary>A proportioned mix and how each figure came about.</summary>
/// <param name="Mix">The mix; null when the request cannot be met.</param>
/// <param name="Reasons">How.</param>
/// <param name="Findings">What is wrong with the request.</param>
public sealed record Proportions(ConcreteMix? Mix, ImmutableArray<Reason> Reasons, ImmutableArray<Finding> Findings);

/// <summary>Proportions by absolute volume.</summary>
/// <remarks>Source: ACI 211.1 steps and tables as copied in NAVEDTRA 14070 ch. 17 and other pages.</remarks>
public static class Proportioning
{
    private static readonly SourceRef Source = new("ACI-211-1", "absolute-volume method", SourceStatus.Verified);

    /// <summary>Proportions one cubic metre.</summary>
    public static Proportions Of(ProportionRequest request)
    {
        var findings = Check(request);
        if (findings.Length > 0) return new(null, [], findings);
        var row = ProportionTables.RowOf(request.AggregateSize)!;
        var water = row.Water(request.AirEntrained, request.Slump)!.Value;
        var air = request.Air ?? row.Air(request.AirEntrained, request.Exposure);
        var byStrength = request.WaterCement ?? ProportionTables.WaterCementFor(request.Strength!.Value, request.AirEntrained)!.Value;
        var ratio = Math.Min(byStrength, request.MostWaterCement ?? double.PositiveInfinity);
        var cement = water / ratio;
        var bulk = row.BulkCoarse(request.Fineness) * (1 + request.MoreCoarse);
        var coarse = bulk * request.DryRodded;
        var fineVolume = 1 - AbsoluteVolume.Of(cement, request.Densities.Cement) - AbsoluteVolume.Of(water, 1)
            - AbsoluteVolume.Of(coarse, request.Densities.Coarse) - air;
        if (fineVolume <= 0) return new(null, [], [Wrong("fine", "No room is left for sand.", "Take less coarse aggregate, water or cement.")]);
        var mix = new ConcreteMix
        {
            Id = request.Id, Name = request.Id, CementKind = request.CementKind, Cement = cement, Water = water, Coarse = coarse,
            Fine = fineVolume * request.Densities.Fine * AbsoluteVolume.WaterDensity, Air = air, Densities = request.Densities, Source = Source,
        };
        return new(mix, Reasons(mix, ratio, bulk, fineVolume), []);
    }

    private static ImmutableArray<Reason> Reasons(ConcreteMix mix, double ratio, double bulk, double fineVolume) =>
    [
        new("mixing water", FormattableString.Invariant($"{mix.Water:0} kg/m³ by slump and greatest size; air {100 * mix.Air:0.0} %."), Source),
        new("cement", FormattableString.Invariant($"{mix.Water:0} / {ratio:0.00} = {mix.Cement:0} kg/m³."), Source),
        new("coarse aggregate", FormattableString.Invariant($"{bulk:0.00} of the volume, dry-rodded: {mix.Coarse:0} kg/m³."), Source),
        new("fine aggregate", FormattableString.Invariant($"What is left of the volume, {fineVolume:0.000} m³: {mix.Fine:0} kg/m³."), Source),
    ];

    private static ImmutableArray<Finding> Check(ProportionRequest request)
    {
        var findings = ImmutableArray.CreateBuilder<Finding>();
        if (ProportionTables.RowOf(request.AggregateSize) is not { } row)
            findings.Add(Wrong("aggregate size", "The table has no such aggregate size.", "Take 3/8, 1/2, 3/4, 1, 1 1/2, 2 or 3 in."));
        else if (row.Water(request.AirEntrained, request.Slump) is null)
            findings.Add(Wrong("slump", "The table has no water for this slump.", "Take a slump of 1 to 7 in."));
        if (request.WaterCement is null && (request.Strength is not { } strength || ProportionTables.WaterCementFor(strength, request.AirEntrained) is null))
            findings.Add(Wrong("strength", "No water–cement ratio can be read for this strength.",
                "Give the ratio, or a strength from 2,000 psi to 6,000 psi plain or 5,000 psi with entrained air."));
        if (request.WaterCement is <= 0.15 or > 1) findings.Add(Wrong("water–cement ratio", "The ratio is not one of concrete.", "Give 0.15 to 1."));
        if (request.Fineness is < 2.3 or > 3.1) findings.Add(Wrong("fineness modulus", "The sand is outside the table.", "Take a sand of 2.4 to 3.0."));
        if (request.DryRodded is < 1000 or > 2200) findings.Add(Wrong("dry-rodded mass", "The mass is not one of aggregate.", "Give 1,000 to 2,200 kg/m³."));
        return findings.ToImmutable();
    }

    private static Finding Wrong(string field, string sentence, string mend) =>
        new("CON-001", FindingLevel.Error, sentence, new FindingPlace(Field: field), null, mend);
}

/// <summary>Absolute volumes and yield.</summary>
public static class AbsoluteVolume
{
    /// <summary>Density of water, kg/m³: the 62.4 lb/ft³ of the published examples.</summary>
    public const double WaterDensity = 62.4 * 0.45359237 / (0.3048 * 0.3048 * 0.3048);

    /// <summary>Volume of a mass without voids, m³.</summary>
    /// <remarks>Source: ACI 211.1; 588 lb of cement at 3.15 are 2.99 ft³.</remarks>
    /// <param name="mass">kg.</param> <param name="relativeDensity">Relative to water.</param>
    public static double Of(double mass, double relativeDensity) => mass / (relativeDensity * WaterDensity);

    /// <summary>Volume that the ingredients of a mix make with its air, m³; 1 when the proportions close.</summary>
    public static double Yield(ConcreteMix mix)
    {
        var d = mix.Densities;
        var solid = Of(mix.Cement, d.Cement) + Of(mix.FlyAsh, d.FlyAsh) + Of(mix.Slag, d.Slag) + Of(mix.SilicaFume, d.SilicaFume)
            + Of(mix.Water, 1) + Of(mix.Coarse, d.Coarse) + Of(mix.Fine, d.Fine);
        return solid / (1 - mix.Air);
    }
}
