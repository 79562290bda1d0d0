using Slabwright.Core.Evidence;

namespace Slabwright.Core.Concrete.Mixes;

/// <summary>Cements of repair mixes.</summary>
public enum CementKind
{
    /// <summary>Type I, ordinary.</summary>
    TypeI,

    /// <summary>Type II, moderate heat and sulphate resistance.</summary>
    TypeIi,

    /// <summary>Type III, high early strength.</summary>
    TypeIii,

    /// <summary>Type IV, low heat.</summary>
    TypeIv,

    /// <summary>Type V, sulphate resisting.</summary>
    TypeV,

    /// <summary>Calcium sulphoaluminate or another special rapid cement: no general model holds, only the mix's own measured curve.</summary>
    SpecialRapid,
}

/// <summary>What speeds the setting of a mix.</summary>
public enum Accelerator
{
    /// <summary>None.</summary>
    None,

    /// <summary>Calcium chloride; corrodes steel.</summary>
    CalciumChloride,

    /// <summary>A non-chloride accelerator such as calcium nitrite.</summary>
    NonChloride,
}

/// <summary>A concrete mix: what is in one cubic metre of compacted concrete. SI; aggregates saturated and surface-dry.</summary>
public sealed record ConcreteMix
{
    /// <summary>Identifier in the project's files.</summary>
    public required string Id { get; init; }

    /// <summary>Printed name.</summary>
    public required string Name { get; init; }

    /// <summary>The hours after placing the mix is meant to open in; null when not said.</summary>
    public MixClassId? Class { get; init; }

    /// <summary>Cement.</summary>
    public required CementKind CementKind { get; init; }

    /// <summary>Cement, kg/m³.</summary>
    public required double Cement { get; init; }

    /// <summary>Fly ash, kg/m³.</summary>
    public double FlyAsh { get; init; }

    /// <summary>Lime (CaO) of the fly ash, share of its mass.</summary>
    public double FlyAshLime { get; init; } = 0.10;

    /// <summary>Slag, kg/m³.</summary>
    public double Slag { get; init; }

    /// <summary>Silica fume, kg/m³.</summary>
    public double SilicaFume { get; init; }

    /// <summary>Mixing water beyond what the aggregates hold, kg/m³.</summary>
    public required double Water { get; init; }

    /// <summary>Coarse aggregate, kg/m³.</summary>
    public required double Coarse { get; init; }

    /// <summary>Fine aggregate, kg/m³.</summary>
    public required double Fine { get; init; }

    /// <summary>Air, share of the volume.</summary>
    public required double Air { get; init; }

    /// <summary>Accelerator.</summary>
    public Accelerator Accelerator { get; init; }

    /// <summary>Accelerator, solids as a share of the cementitious mass.</summary>
    public double AcceleratorDose { get; init; }

    /// <summary>Price of a cubic metre delivered, currency of the project; null when the ingredient prices shall give it.</summary>
    public decimal? Price { get; init; }

    /// <summary>Relative densities of the ingredients.</summary>
    public RelativeDensities Densities { get; init; } = RelativeDensities.Usual;

    /// <summary>Datum temperature of the temperature–time factor, °C; null: −10 °C.</summary>
    public double? Datum { get; init; }

    /// <summary>Activation energy, J/mol, measured on mortar of this mix; null: 41,570 J/mol (Q = 5,000 K).</summary>
    public double? ActivationEnergy { get; init; }

    /// <summary>Where the proportions come from.</summary>
    public SourceRef Source { get; init; } = SourceRef.Project;

    /// <summary>Cement, ash, slag and fume together, kg/m³.</summary>
    public double Cementitious => Cement + FlyAsh + Slag + SilicaFume;

    /// <summary>Water over cementitious mass.</summary>
    public double WaterCement => Cementitious > 0 ? Water / Cementitious : double.NaN;

    /// <summary>Mass of a cubic metre, kg/m³, air included in the volume.</summary>
    public double Density => Cementitious + Water + Coarse + Fine;
}

/// <summary>Relative densities (specific gravities) of the ingredients, water 1.</summary>
/// <param name="Cement">Cement.</param> <param name="FlyAsh">Fly ash.</param> <param name="Slag">Slag.</param>
/// <param name="SilicaFume">Silica fume.</param> <param name="Coarse">Coarse aggregate.</param> <param name="Fine">Fine aggregate.</param>
public sealed record RelativeDensities(double Cement, double FlyAsh, double Slag, double SilicaFume, double Coarse, double Fine)
{
    /// <summary>3.15 for cement as in the published examples; the others common practice.</summary>
    public static RelativeDensities Usual { get; } = new(3.15, 2.40, 2.90, 2.20, 2.65, 2.65);
}
