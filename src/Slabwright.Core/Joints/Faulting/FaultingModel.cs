using System.Collections.Immutable;

namespace Slabwright.Core.Joints.Faulting;

/// <summary>Faulting and its greatest possible value after one month, with the month's differential energy.</summary>
/// <param name="Energy">Differential energy of the month, N/m.</param>
/// <param name="Faulting">Mean faulting, m.</param>
/// <param name="Greatest">Value the faulting tends to, m.</param>
public readonly record struct FaultingMonth(double Energy, double Faulting, double Greatest);

/// <summary>How one month's growth is worked out.</summary>
public enum FaultingStep
{
    /// <summary>As printed: one step a month. Heavy months may overshoot the greatest value.</summary>
    Printed,

    /// <summary>The same law integrated over the month; tends to the printed step for little energy and never overshoots.</summary>
    Integrated,
}

/// <summary>Mean faulting of transverse joints of plain slabs, month by month.</summary>
/// <remarks>
/// Source: NCHRP 1-37A part 3 ch. 4 (from memory throughout). Inside, inches, psi and lb/in as the coefficients ask. The energies are those
/// of the subgrade at the loaded and unloaded corner, summed over the passes of a month.
/// </remarks>
public static class FaultingModel
{
    private const double Inch = 0.0254;
    private const double Psi = 6894.757293168361;

    /// <summary>
    /// Share of the energy that the growth of the greatest faulting counts when energies are summed over passes: a millionth.
    /// </summary>
    /// <remarks>
    /// Worked out, not read: with sums over all passes in lb/in, the formula as remembered (share 1) would take the greatest faulting past
    /// a hundred inches within a year of highway traffic, while a millionth gives the tenths of an inch that roads show.
    /// </remarks>
    public const double PerMillion = 1e-6;

    /// <summary>Differential energy of one pass, N/m: k/2 (d_l² − d_u²); 0 at full load transfer.</summary>
    /// <param name="reaction">k, Pa/m.</param> <param name="loaded">Deflection of the loaded corner, m.</param>
    /// <param name="unloaded">Deflection of the unloaded corner, m.</param>
    public static double Energy(double reaction, double loaded, double unloaded) =>
        reaction / 2 * (loaded + unloaded) * (loaded - unloaded);

    /// <summary>C12 = C1 + C2 FR^¼.</summary>
    public static double GreatestFactor(FaultingCoefficients c, double frozenShare) => c.C1 + c.C2 * Math.Pow(frozenShare, 0.25);

    /// <summary>C34 = C3 + C4 FR^¼, 1/in.</summary>
    public static double GrowthFactor(FaultingCoefficients c, double frozenShare) => c.C3 + c.C4 * Math.Pow(frozenShare, 0.25);

    /// <summary>log(1 + C5 5^EROD).</summary>
    public static double Erosion(FaultingCoefficients c, double erodibility) => Math.Log10(1 + c.C5 * Math.Pow(5, erodibility));

    /// <summary>Greatest faulting before any traffic, m: C12 δ [log(1 + C5 5^EROD) log(P200 W/ps)]^C6.</summary>
    /// <remarks>P200 in percent, ps in psi. Not defined where P200 W/ps is 1 or less; then the answer is not a number.</remarks>
    public static double FirstGreatest(FaultingCoefficients c, FaultingSite site)
    {
        var wetness = Math.Log10(100 * site.FinesShare * site.WetDays / (site.Overburden / Psi));
        return GreatestFactor(c, site.FrozenShare) * site.CornerLift * Math.Pow(Erosion(c, site.Erodibility) * wetness, c.C6);
    }

    /// <summary>Faulting after each month, m.</summary>
    /// <param name="coefficients">One published set.</param> <param name="site">The place.</param>
    /// <param name="energies">Differential energy of each month, N/m, 0 or more.</param>
    /// <param name="step">Printed or integrated.</param>
    /// <param name="growthShare">Share of the energy that lets the greatest faulting grow: 1 as printed, <see cref="PerMillion"/> for sums over passes.</param>
    public static ImmutableArray<FaultingMonth> Run(
        FaultingCoefficients coefficients, FaultingSite site, IEnumerable<double> energies, FaultingStep step = FaultingStep.Integrated,
        double growthShare = PerMillion)
    {
        var months = ImmutableArray.CreateBuilder<FaultingMonth>();
        var last = new FaultingMonth(0, 0, FirstGreatest(coefficients, site));
        foreach (var energy in energies) months.Add(last = Next(coefficients, site, last, energy, step, growthShare));
        return months.DrainToImmutable();
    }

    /// <summary>The month after a month.</summary>
    /// <param name="coefficients">One published set.</param> <param name="site">The place.</param>
    /// <param name="last">The month before; before the first, no faulting and <see cref="FirstGreatest"/>.</param>
    /// <param name="energy">Differential energy of this month, N/m.</param> <param name="step">Printed or integrated.</param>
    /// <param name="growthShare">As in <see cref="Run"/>.</param>
    public static FaultingMonth Next(
        FaultingCoefficients coefficients, FaultingSite site, FaultingMonth last, double energy, FaultingStep step, double growthShare)
    {
        var inchEnergy = energy / (Psi * Inch);
        var room = (last.Greatest - last.Faulting) / Inch;
        var rate = GrowthFactor(coefficients, site.FrozenShare) * inchEnergy;
        var growth = step == FaultingStep.Printed ? rate * room * room : rate * room * room / (1 + rate * Math.Abs(room));
        var greatest = coefficients.C7 * growthShare * inchEnergy
            * Math.Pow(Erosion(coefficients, site.Erodibility), coefficients.C6);
        return new FaultingMonth(energy, last.Faulting + growth * Inch, last.Greatest + greatest * Inch);
    }
}
