namespace Slabwright.Core.Concrete.Hydration;

/// <summary>Regressions of the hydration parameters on what is in the mix.</summary>
/// <remarks>
/// Source of all but the activation energy: Schindler and Folliard, ACI Materials Journal 102(1), 2005 (from memory). Compounds enter as
/// shares of the cement, fineness in m²/kg.
/// </remarks>
public static class HydrationRegression
{
    /// <summary>Heat of complete hydration of the cement, J/kg: 500 C3S + 260 C2S + 866 C3A + 420 C4AF + 624 SO3 + 1186 CaO + 850 MgO, J/g.</summary>
    public static double CementHeat(CementComposition cement) => 1000 * (500 * cement.C3S + 260 * cement.C2S + 866 * cement.C3A + 420 * cement.C4AF
        + 624 * cement.SO3 + 1186 * cement.FreeLime + 850 * cement.Magnesia);

    /// <summary>Heat of complete hydration of the cementitious material, J/kg: slag 461, fly ash 1,800 times its CaO, silica fume 330 J/g.</summary>
    public static double UltimateHeat(Binder binder) => CementHeat(binder.Cement) * binder.CementShare
        + 1000 * (461 * binder.Slag + 1800 * binder.FlyAsh * binder.FlyAshLime + 330 * binder.SilicaFume);

    /// <summary>Degree reached in the end: 1.031 w/(0.194 + w) + 0.50 p_FA + 0.30 p_slag, at most 1 as the source says.</summary>
    public static double UltimateDegree(Binder binder) =>
        Math.Min(1, 1.031 * binder.WaterCement / (0.194 + binder.WaterCement) + 0.50 * binder.FlyAsh + 0.30 * binder.Slag);

    /// <summary>Slope β: 181.4 C3A^0.146 C3S^0.227 Blaine^−0.535 SO3^0.558 e^(−0.647 p_slag).</summary>
    public static double Slope(Binder binder) => 181.4 * Math.Pow(binder.Cement.C3A, 0.146) * Math.Pow(binder.Cement.C3S, 0.227)
        * Math.Pow(binder.Cement.Blaine, -0.535) * Math.Pow(binder.Cement.SO3, 0.558) * Math.Exp(-0.647 * binder.Slag);

    /// <summary>Time τ, s: 66.78 C3A^−0.154 C3S^−0.401 Blaine^−0.804 SO3^−0.758 e^(2.187 p_slag + 9.50 p_FA CaO_FA), h.</summary>
    public static double Time(Binder binder) => 3600 * 66.78 * Math.Pow(binder.Cement.C3A, -0.154) * Math.Pow(binder.Cement.C3S, -0.401)
        * Math.Pow(binder.Cement.Blaine, -0.804) * Math.Pow(binder.Cement.SO3, -0.758) * Math.Exp(2.187 * binder.Slag + 9.50 * binder.FlyAsh * binder.FlyAshLime);

    /// <summary>Activation energy, J/mol: 22,100 f C3A^0.30 C4AF^0.25 Blaine^0.35, f = 1 − 1.05 p_FA (1 − CaO_FA/0.40) + 0.40 p_slag.</summary>
    /// <remarks>Source: Schindler, ACI Materials Journal 101(1), 2004 (from memory). For heat; strength has its own.</remarks>
    public static double ActivationEnergy(Binder binder) => 22_100 * (1 - 1.05 * binder.FlyAsh * (1 - binder.FlyAshLime / 0.40) + 0.40 * binder.Slag)
        * Math.Pow(binder.Cement.C3A, 0.30) * Math.Pow(binder.Cement.C4AF, 0.25) * Math.Pow(binder.Cement.Blaine, 0.35);

    /// <summary>Degree of hydration at initial set: 0.15 w/cm.</summary>
    /// <remarks>From memory; as in the concrete reference.</remarks>
    public static double InitialSet(double waterCement) => 0.15 * waterCement;

    /// <summary>Degree of hydration at final set: 0.26 w/cm.</summary>
    /// <remarks>From memory; as in the concrete reference.</remarks>
    public static double FinalSet(double waterCement) => 0.26 * waterCement;
}
