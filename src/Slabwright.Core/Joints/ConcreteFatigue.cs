namespace Slabwright.Core.Joints;

/// <summary>Allowable load repetitions of concrete in bending by the ratio of stress to modulus of rupture, and damage by many loads.</summary>
public static class ConcreteFatigue
{
    /// <summary>PCA 1984: repetitions to failure; infinite where the ratio is 0.45 or less.</summary>
    /// <remarks>
    /// Source: PCA EB109 1984 (from memory); the same law is behind the IRC:58 tables, which it reproduces within 0.9 %. Valid with the
    /// stress calculation of that method only; fatigue laws must not be mixed.
    /// </remarks>
    /// <param name="ratio">Stress over modulus of rupture, above 0.</param>
    public static double AllowableRepetitions(double ratio) => ratio switch
    {
        > 0.55 => Math.Pow(10, (0.9718 - ratio) / 0.0828),
        > 0.45 => Math.Pow(4.2577 / (ratio - 0.4325), 3.268),
        _ => double.PositiveInfinity,
    };

    /// <summary>Repetitions by one law; see <see cref="FatigueLaws"/> for formula, source and the stress it belongs to.</summary>
    /// <param name="law">The law; one and the same for all loads of a sum.</param>
    /// <param name="ratio">Stress over modulus of rupture, above 0.</param>
    public static double AllowableRepetitions(FatigueLaw law, double ratio) => law switch
    {
        FatigueLaw.Pca1984 => AllowableRepetitions(ratio),
        FatigueLaw.ZeroMaintenance50 => Math.Pow(10, 17.61 * (1 - ratio)),
        FatigueLaw.ZeroMaintenance24 => Math.Pow(10, 16.61 - 17.61 * ratio),
        FatigueLaw.Power213 => Math.Pow(10, 2.13 * Math.Pow(ratio, -1.2)),
        FatigueLaw.Nchrp126 => Math.Pow(10, 2.8127 * Math.Pow(ratio, -1.2214)),
        FatigueLaw.VesicSaxena => 225_000 * Math.Pow(ratio, -4),
        FatigueLaw.Are => 23_440 * Math.Pow(ratio, -3.21),
        FatigueLaw.Nchrp137A => Math.Pow(10, 2.0 * Math.Pow(ratio, -1.22)),
        FatigueLaw.Nchrp137AReport => Math.Pow(10, 2.0 * Math.Pow(ratio, -1.22) + 0.4371),
        _ => throw new ArgumentOutOfRangeException(nameof(law)),
    };

    /// <summary>Fatigue damage Σ n/N by one law; 1 at the predicted failure.</summary>
    /// <remarks>
    /// Source: Miner's rule. Where strength grows, give each time step its own ratio. A load of no stress does no damage.
    /// </remarks>
    /// <param name="law">The one law for all loads.</param>
    /// <param name="loads">Passes and ratio of stress to modulus of rupture of each load; a ratio of 0 or less adds nothing.</param>
    public static double Damage(FatigueLaw law, IEnumerable<(double Passes, double Ratio)> loads) =>
        loads.Where(l => l.Ratio > 0).Sum(l => l.Passes / AllowableRepetitions(law, l.Ratio));

    /// <summary>Share of slabs cracked at a fatigue damage.</summary>
    /// <remarks>Source: NCHRP 1-37A report 2004 and later calibrations (from memory).</remarks>
    /// <param name="calibration">The calibration, the same that gave the damage.</param> <param name="damage">FD, 0 or more.</param>
    public static double CrackedSlabs(CrackingCalibration calibration, double damage)
    {
        var (factor, power) = calibration switch
        {
            CrackingCalibration.Report2004 => (1.0, -1.68),
            CrackingCalibration.Manual2008 => (1.0, -1.98),
            CrackingCalibration.Recalibrated2015 => (0.52, -2.17),
            _ => throw new ArgumentOutOfRangeException(nameof(calibration)),
        };
        return damage <= 0 ? 0 : 1 / (1 + factor * Math.Pow(damage, power));
    }

    /// <summary>Share of slabs cracked from the bottom or the top, taken as independent: b + t − b t.</summary>
    /// <remarks>Source: NCHRP 1-37A (from memory).</remarks>
    public static double Cracked(double bottomUp, double topDown) => bottomUp + topDown - bottomUp * topDown;

    /// <summary>Stress of an axle from that of the standard axle: s (load/standard)^0.94.</summary>
    /// <remarks>Source: PCA EB109 1984 (from memory); 18 kip single, 36 kip tandem.</remarks>
    public static double ScaledStress(double standardStress, double load, double standardLoad) =>
        standardStress * Math.Pow(load / standardLoad, 0.94);
}

/// <summary>Calibrations of the share of cracked slabs.</summary>
public enum CrackingCalibration
{
    /// <summary>1/(1 + FD^−1.68), NCHRP 1-37A report 2004.</summary>
    Report2004,

    /// <summary>1/(1 + FD^−1.98), manual of practice 2008.</summary>
    Manual2008,

    /// <summary>1/(1 + 0.52 FD^−2.17), from 2015 on.</summary>
    Recalibrated2015,
}
