using System.Collections.Immutable;
using Slabwright.Core.Concrete.Mixes;
using Slabwright.Core.Concrete.Weather;
using Slabwright.Core.Evidence;
using Slabwright.Core.RuleSets;

namespace Slabwright.Core.Concrete.Heat;

/// <summary>How the road's surface trades heat with air, sun and sky. Every coefficient can be changed and says where it comes from.</summary>
public sealed record SurfaceSettings
{
    private static readonly SourceRef Bentz = new("NISTIR-6551", "values used", SourceStatus.FromMemory);

    /// <summary>The defaults.</summary>
    public static SurfaceSettings Default { get; } = new();

    /// <summary>Share of the sun a bare concrete surface takes up.</summary>
    public Sourced<double> Absorptivity { get; init; } = new(0.65, Bentz);

    /// <summary>Emissivity of the surface for long waves.</summary>
    public Sourced<double> Emissivity { get; init; } = new(0.90, Bentz);

    /// <summary>Heat carried off by air.</summary>
    public Sourced<ConvectionLaw> Convection { get; init; } = new(ConvectionLaw.TwoBranch, new SourceRef("NISTIR-6551", "two branches", SourceStatus.FromMemory));

    /// <summary>Radiation of the sky.</summary>
    public Sourced<SkyLaw> Sky { get; init; } = new(SkyLaw.ClarkAllen, new SourceRef("NBSIR-83-2655", "Clark and Allen, cloud after Walton", SourceStatus.Verified));

    /// <summary>Wind at the slab over the wind in the file, for convection.</summary>
    public Sourced<double> WindFactor { get; init; } = new(1, SourceRef.CommonPractice);

    /// <summary>Wind half a metre above the slab over the wind in the file, for evaporation.</summary>
    public Sourced<double> EvaporationWindFactor { get; init; } = new(Evaporation.NearSurface(1), new SourceRef("common practice", "one-seventh power law from 10 m", SourceStatus.CommonPractice));

    /// <summary>Heat of evaporation, J/kg.</summary>
    public Sourced<double> LatentHeat { get; init; } = new(3600 * Evaporation.HeatLoss(1), new SourceRef("physics", "water near 20 °C", SourceStatus.FromMemory));
}

/// <summary>What lies on the fresh concrete from a time on: nothing, curing compound, wet burlap, a blanket.</summary>
/// <param name="Name">Printed name.</param>
/// <param name="From">Seconds after placing from which it lies there.</param>
/// <param name="Resistance">Thermal resistance, m²K/W; 0 for a film.</param>
/// <param name="Absorptivity">Share of the sun its face takes up; null: that of the concrete.</param>
/// <param name="Emissivity">Emissivity of its face; null: that of the concrete.</param>
/// <param name="WetShare">Evaporation over that of a free wet surface: 1 wet, 0 sealed or dry.</param>
/// <param name="Source">Where the values come from.</param>
public sealed record SurfaceCover(string Name, double From, double Resistance, double? Absorptivity, double? Emissivity, double WetShare, SourceRef Source)
{
    /// <summary>Fresh concrete before curing: wet, evaporating freely.</summary>
    public static SurfaceCover Wet(double from = 0) => new("bare and wet", from, 0, null, null, 1, SourceRef.CommonPractice);

    /// <summary>White-pigmented curing compound: reflects more sun and stops nearly all evaporation.</summary>
    public static SurfaceCover WhiteCompound(double from) =>
        new("white curing compound", from, 0, 0.40, null, 0, new SourceRef("common practice", "white membrane below grey concrete's 0.5 to 0.65", SourceStatus.CommonPractice));

    /// <summary>Insulating blanket: R 0.35 m²K/W is half an inch to an inch of mineral fibre (3.1 ft²h°F/Btu an inch, from memory).</summary>
    public static SurfaceCover Blanket(double from, double resistance = 0.35) =>
        new("insulating blanket", from, resistance, 0.65, 0.90, 0, new SourceRef("PCA-COLD", "R of blankets by inch", SourceStatus.FromMemory));

    /// <summary>Hardened and dry: no evaporation, nothing on it.</summary>
    public static SurfaceCover Dry(double from = 0) => new("bare and dry", from, 0, null, null, 0, SourceRef.CommonPractice);
}

/// <summary>Covers one after the other; each lies until the next begins.</summary>
/// <param name="Covers">In order of <see cref="SurfaceCover.From"/>, the first from 0.</param>
public sealed record CoverSchedule(ImmutableArray<SurfaceCover> Covers)
{
    /// <summary>Wet for an hour, then white curing compound.</summary>
    public static CoverSchedule Compound { get; } = new([SurfaceCover.Wet(), SurfaceCover.WhiteCompound(3600)]);

    /// <summary>Old concrete: bare and dry.</summary>
    public static CoverSchedule Dry { get; } = new([SurfaceCover.Dry()]);

    /// <summary>Curing compound after an hour, a blanket for a while, then compound alone again.</summary>
    /// <param name="from">Blanket laid, s after placing, after one hour.</param> <param name="to">Blanket taken off, s after placing; infinity when it stays.</param>
    /// <param name="resistance">Resistance of the blanket, m²K/W.</param>
    public static CoverSchedule WithBlanket(double from, double to, double resistance = 0.35)
    {
        var covers = ImmutableArray.Create(SurfaceCover.Wet(), SurfaceCover.WhiteCompound(Math.Min(3600, from)), SurfaceCover.Blanket(from, resistance));
        return new(double.IsFinite(to) ? covers.Add(SurfaceCover.WhiteCompound(to)) : covers);
    }

    /// <summary>What lies there at a time; before the first begins, the first.</summary>
    /// <param name="time">Seconds after placing.</param>
    public SurfaceCover At(double time)
    {
        var found = Covers[0];
        foreach (var cover in Covers)
        {
            if (cover.From > time) break;
            found = cover;
        }

        return found;
    }
}
