using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Evidence;
using Slabwright.Core.Numerics;

namespace Slabwright.Core.Concrete.Hydration;

/// <summary>Heat measured on a mix.</summary>
/// <param name="EquivalentAge">Equivalent age at the reference temperature, s.</param>
/// <param name="Heat">Heat freed since mixing, J/kg of cementitious material.</param>
public readonly record struct HeatPoint(double EquivalentAge, double Heat);

/// <summary>Heat curves from what laboratories measure.</summary>
public static class HeatCurve
{
    /// <summary>From a calorimeter at a steady temperature.</summary>
    /// <param name="ages">Times since mixing, s.</param> <param name="heats">Heat since mixing, J/kg.</param> <param name="temperature">Temperature of the bath, °C.</param>
    /// <param name="activationEnergy">J/mol.</param> <param name="reference">Reference temperature, °C.</param>
    public static ImmutableArray<HeatPoint> Isothermal(IReadOnlyList<double> ages, IReadOnlyList<double> heats, double temperature, double activationEnergy, double reference)
    {
        var factor = EquivalentAge.Factor(activationEnergy, temperature, reference);
        return [.. ages.Select((age, i) => new HeatPoint(factor * age, heats[i]))];
    }

    /// <summary>From the temperatures of a concrete specimen in an insulated box: heat stored plus heat lost.</summary>
    /// <param name="ages">Times since mixing, s, the first temperature at mixing.</param> <param name="temperatures">Of the concrete, °C.</param> <param name="around">Air around the box, °C.</param>
    /// <param name="capacity">Heat capacity of the specimen, J/K.</param> <param name="loss">Heat lost for each kelvin, W/K, from a calibration with water.</param>
    /// <param name="cementitious">Cementitious material in the specimen, kg.</param>
    /// <param name="activationEnergy">J/mol.</param> <param name="reference">Reference temperature, °C.</param>
    public static ImmutableArray<HeatPoint> SemiAdiabatic(
        ReadOnlySpan<double> ages, ReadOnlySpan<double> temperatures, double around, double capacity, double loss, double cementitious, double activationEnergy, double reference)
    {
        var equivalent = EquivalentAge.Along(ages, temperatures, activationEnergy, reference);
        var points = ImmutableArray.CreateBuilder<HeatPoint>(ages.Length);
        var lost = 0.0;
        for (var i = 0; i < ages.Length; i++)
        {
            if (i > 0) lost += loss * ((temperatures[i] + temperatures[i - 1]) / 2 - around) * (ages[i] - ages[i - 1]);
            points.Add(new(equivalent[i], (capacity * (temperatures[i] - temperatures[0]) + lost) / cementitious));
        }

        return points.MoveToImmutable();
    }
}

/// <summary>A fitted hydration curve.</summary>
/// <param name="Curve">The curve; null where the points do not allow one. Its degree is the share of the heat it runs up to.</param>
/// <param name="Scatter">Root mean square deviation of the points, J/kg.</param>
/// <param name="Findings">What speaks against relying on it.</param>
public sealed record HydrationFitResult(HydrationCurve? Curve, double Scatter, ImmutableArray<Finding> Findings);

/// <summary>
/// Fits heat in the end, time and slope to measured heat. The way for calcium sulphoaluminate and other special rapid cements, for which no
/// general model holds, and for accelerators without published factors.
/// </summary>
public static class HydrationFit
{
    private const int LeastPoints = 5;
    private const double FarBeyond = 1.5;

    /// <summary>The fit.</summary>
    /// <param name="points">Measured heat, ages rising.</param> <param name="cementitious">Cementitious material of the concrete, kg/m³.</param>
    /// <param name="activationEnergy">J/mol, the one the ages were worked out with.</param> <param name="reference">Reference temperature, °C.</param>
    /// <param name="name">What was measured, for findings.</param>
    public static HydrationFitResult Of(ImmutableArray<HeatPoint> points, double cementitious, double activationEnergy, double reference, string name)
    {
        var place = new FindingPlace(name);
        var used = points.Where(p => p is { EquivalentAge: > 0, Heat: > 0 }).ToArray();
        if (used.Length < LeastPoints)
            return new(null, double.NaN, [new("CON-115", FindingLevel.Error, "Too few points for a hydration curve.", place, Text(used.Length), "Give heat at more ages.", Text(LeastPoints))]);
        var findings = ImmutableArray.CreateBuilder<Finding>();
        for (var i = 1; i < used.Length; i++)
        {
            if (used[i].EquivalentAge > used[i - 1].EquivalentAge && used[i].Heat >= used[i - 1].Heat) continue;
            findings.Add(new("CON-116", FindingLevel.Warning, "The heat falls or the age does not rise; hydration only frees heat.", place with { Row = i + 1 }, Text(used[i].Heat), "Check the loss coefficient and the order of the rows."));
        }

        var fit = LeastSquares.Fit((p, i) => Heat(p, used[i].EquivalentAge), [.. used.Select(p => p.Heat)], Guess(used));
        var scatter = Math.Sqrt(fit.SumOfSquares / used.Length);
        if (!fit.Settled || !double.IsFinite(scatter))
            return new(null, scatter, [.. findings, new("CON-117", FindingLevel.Error, "No hydration curve fits the heat.", place, null, "Check the points; the form needs a rise that slows down.")]);
        var (end, last) = (Math.Exp(fit.Parameters[0]), used[^1].Heat);
        if (end > FarBeyond * last)
        {
            findings.Add(new("CON-118", FindingLevel.Warning, "The curve ends far above the last heat measured; beyond the last age it is a guess.", place,
                $"{Text(end / 1000)} kJ/kg", "Measure longer.", $"{Text(last / 1000)} kJ/kg measured"));
        }

        return new(Curve(fit.Parameters, scatter, cementitious, activationEnergy, reference, name), scatter, findings.ToImmutable());
    }

    private static double Heat(double[] p, double age) => Math.Exp(p[0] - Math.Pow(Math.Exp(p[1]) / age, Math.Exp(p[2])));

    /// <summary>Heat a little above the last; the time where 1/e of it is reached; slope 1.</summary>
    private static double[] Guess(HeatPoint[] points)
    {
        var end = 1.2 * points[^1].Heat;
        var at = points.FirstOrDefault(p => p.Heat >= end / Math.E, points[^1]);
        return [Math.Log(end), Math.Log(at.EquivalentAge), 0];
    }

    private static HydrationCurve Curve(double[] p, double scatter, double cementitious, double activationEnergy, double reference, string name) => new()
    {
        Cementitious = cementitious,
        UltimateHeat = Math.Exp(p[0]),
        UltimateDegree = 1,
        Time = Math.Exp(p[1]),
        Slope = Math.Exp(p[2]),
        ActivationEnergy = activationEnergy,
        Reference = reference,
        Origin = HydrationOrigin.Measured,
        Reasons =
        [
            new("hydration-fit", $"fitted to heat measured on {name}; good for this mix and the ages measured", SourceRef.Project,
                [new("scatter", Text(scatter / 1000) + " kJ/kg"), new("heat in the end", Text(Math.Exp(p[0]) / 1000) + " kJ/kg"), new("time", Text(Math.Exp(p[1]) / 3600) + " h"), new("slope", Text(Math.Exp(p[2])))]),
        ],
    };

    private static string Text(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);
}
