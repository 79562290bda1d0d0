using System.Collections.Immutable;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Concrete.Hydration;

/// <summary>What a cement is made of; mass shares of the cement, fineness in m²/kg.</summary>
/// <param name="Name">Printed name.</param>
/// <param name="C3S">Tricalcium silicate.</param>
/// <param name="C2S">Dicalcium silicate.</param>
/// <param name="C3A">Tricalcium aluminate.</param>
/// <param name="C4AF">Tetracalcium aluminoferrite.</param>
/// <param name="SO3">Sulphate.</param>
/// <param name="Blaine">Fineness, m²/kg.</param>
/// <param name="FreeLime">Free CaO.</param>
/// <param name="Magnesia">MgO.</param>
/// <param name="Source">Where the values come from: a mill certificate is the only sound input.</param>
public sealed record CementComposition(
    string Name, double C3S, double C2S, double C3A, double C4AF, double SO3, double Blaine, double FreeLime, double Magnesia, SourceRef Source)
{
    private static readonly SourceRef Pca = new("PCA-EB001", "mean compositions, 14th ed.; free CaO 1 % and MgO 2 % assumed", SourceStatus.FromMemory);

    /// <summary>Type I.</summary>
    public static CementComposition TypeI { get; } = new("Type I", 0.54, 0.18, 0.10, 0.08, 0.030, 369, 0.01, 0.02, Pca);

    /// <summary>Type II.</summary>
    public static CementComposition TypeIi { get; } = new("Type II", 0.55, 0.19, 0.06, 0.11, 0.027, 377, 0.01, 0.02, Pca);

    /// <summary>Type III.</summary>
    public static CementComposition TypeIii { get; } = new("Type III", 0.55, 0.17, 0.09, 0.08, 0.035, 548, 0.01, 0.02, Pca);

    /// <summary>Type IV.</summary>
    public static CementComposition TypeIv { get; } = new("Type IV", 0.42, 0.32, 0.04, 0.15, 0.022, 340, 0.01, 0.02, Pca);

    /// <summary>Type V.</summary>
    public static CementComposition TypeV { get; } = new("Type V", 0.54, 0.22, 0.04, 0.13, 0.023, 373, 0.01, 0.02, Pca);

    /// <summary>The types with a published mean composition.</summary>
    public static ImmutableArray<CementComposition> All { get; } = [TypeI, TypeIi, TypeIii, TypeIv, TypeV];
}

/// <summary>What of the cementitious material is what; shares of its mass.</summary>
/// <param name="Cement">The cement.</param>
/// <param name="WaterCement">Water over cementitious mass.</param>
/// <param name="FlyAsh">Share of fly ash.</param>
/// <param name="FlyAshLime">CaO of the ash, share of its mass.</param>
/// <param name="Slag">Share of slag.</param>
/// <param name="SilicaFume">Share of silica fume.</param>
public sealed record Binder(
    CementComposition Cement, double WaterCement, double FlyAsh = 0, double FlyAshLime = 0, double Slag = 0, double SilicaFume = 0)
{
    /// <summary>Share of cement.</summary>
    public double CementShare => 1 - FlyAsh - Slag - SilicaFume;
}
