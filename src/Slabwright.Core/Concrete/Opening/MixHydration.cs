using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Concrete.Hydration;
using Slabwright.Core.Concrete.Mixes;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Concrete.Opening;

/// <summary>Hydration of a mix: fitted to the user's measured heat, else from what is in it.</summary>
public static class MixHydration
{
    /// <summary>File the measured heat stands in.</summary>
    public const string File = "heat_curves.csv";

    /// <summary>Baths nearer to each other than this do not tell the activation energy, K.</summary>
    private const double BathsApart = 8;

    private const double LeastEnergy = 15_000;
    private const double MostEnergy = 90_000;

    /// <summary>
    /// The curve from what is in the mix; null for special rapid cements, for which the published regressions do not hold: without measured
    /// heat the slab then warms without heat of its own and the forecast is late. Non-chloride accelerators have no published factor and are
    /// left out.
    /// </summary>
    public static HydrationCurve? Of(ConcreteMix mix) =>
        BinderOf(mix) is { } binder ? HydrationEstimate.From(binder, mix.Cementitious, ChlorideOf(mix, binder)) : null;

    /// <summary>The curve fitted to the measured heat of a mix; null where none was measured.</summary>
    /// <remarks>
    /// Activation energy: fitted with the rest where baths lie 8 K apart or more, else by the published regression on the cement; for special
    /// rapid cements measured at one temperature 41,570 J/mol is assumed and said so.
    /// </remarks>
    /// <param name="mix">The mix.</param> <param name="heats">Measured heat of all mixes.</param>
    public static HydrationFitResult? Fit(ConcreteMix mix, IEnumerable<MeasuredHeat> heats)
    {
        var own = heats.Where(h => h.Mix == mix.Id).ToArray();
        if (own.Length == 0) return null;
        var findings = ImmutableArray.CreateBuilder<Finding>();
        foreach (var bath in own.GroupBy(h => h.Bath)) findings.AddRange(Falling(mix, [.. bath.OrderBy(h => h.Hours)]));
        var (energy, fitted) = EnergyOf(mix, own, findings);
        var fit = fitted ? With(mix, own, Best(mix, own)) : With(mix, own, energy);
        findings.AddRange(fit.Findings.Where(f => f.Code != "CON-116").Select(f => f with
        {
            Place = new FindingPlace(File, Field: "heat"), Value = f.Value is null ? mix.Id : $"{mix.Id}: {f.Value}",
        }));
        return fit with { Findings = findings.ToImmutable() };
    }

    private static HydrationFitResult With(ConcreteMix mix, MeasuredHeat[] heats, double energy)
    {
        const double Reference = 23;
        ImmutableArray<HeatPoint> points =
            [.. heats.GroupBy(h => h.Bath).SelectMany(b => HeatCurve.Isothermal([.. b.Select(h => h.Hours * 3600)], [.. b.Select(h => h.Heat)], b.Key, energy, Reference)).OrderBy(p => p.EquivalentAge)];
        return HydrationFit.Of(points, mix.Cementitious, energy, Reference, mix.Name);
    }

    /// <summary>Activation energy that leaves the least scatter, by golden section.</summary>
    private static double Best(ConcreteMix mix, MeasuredHeat[] heats)
    {
        var golden = (Math.Sqrt(5) - 1) / 2;
        var (low, high) = (LeastEnergy, MostEnergy);
        for (var i = 0; i < 30; i++)
        {
            var (a, b) = (high - golden * (high - low), low + golden * (high - low));
            if (Scatter(a) <= Scatter(b)) high = b;
            else low = a;
        }

        return (low + high) / 2;

        double Scatter(double energy) => With(mix, heats, energy) is { Curve: not null } fit ? fit.Scatter : double.PositiveInfinity;
    }

    private static (double Energy, bool Fitted) EnergyOf(ConcreteMix mix, MeasuredHeat[] heats, ImmutableArray<Finding>.Builder findings)
    {
        const double Assumed = 5000 * EquivalentAge.GasConstant;
        if (heats.Max(h => h.Bath) - heats.Min(h => h.Bath) >= BathsApart) return (Assumed, true);
        if (BinderOf(mix) is { } binder) return (HydrationRegression.ActivationEnergy(binder), false);
        findings.Add(new("CON-119", FindingLevel.Warning, "Heat was measured at one temperature only: how it changes with temperature is assumed.", new(File, Field: "bath_temp"),
            mix.Id, "Measure at a second temperature 8 K (15 °F) or more away.", "41,570 J/mol assumed"));
        return (Assumed, false);
    }

    /// <summary>Rows of one bath at which the heat falls: hydration only frees heat.</summary>
    private static IEnumerable<Finding> Falling(ConcreteMix mix, MeasuredHeat[] heats)
    {
        for (var i = 1; i < heats.Length; i++)
        {
            if (heats[i].Heat >= heats[i - 1].Heat) continue;
            yield return new("CON-116", FindingLevel.Warning, "The heat falls or the age does not rise; hydration only frees heat.",
                new(File, heats[i].Row > 0 ? heats[i].Row : null, "heat"), string.Create(CultureInfo.InvariantCulture, $"{mix.Id}: {heats[i].Heat / 1000:0.#} kJ/kg at {heats[i].Hours:0.##} h"),
                "Check the row and the base line of the calorimeter.", string.Create(CultureInfo.InvariantCulture, $"{heats[i - 1].Heat / 1000:0.#} kJ/kg at {heats[i - 1].Hours:0.##} h"));
        }
    }

    private static AcceleratorFactor? ChlorideOf(ConcreteMix mix, Binder binder) => mix.Accelerator == Accelerator.CalciumChloride && mix.AcceleratorDose > 0
        ? AcceleratorFactor.CalciumChloride(Math.Min(mix.AcceleratorDose, 0.02), HydrationRegression.ActivationEnergy(binder))
        : null;

    private static Binder? BinderOf(ConcreteMix mix)
    {
        if (CementOf(mix.CementKind) is not { } cement || !(mix.Cementitious > 0)) return null;
        var all = mix.Cementitious;
        return new Binder(cement, mix.WaterCement, mix.FlyAsh / all, mix.FlyAshLime, mix.Slag / all, mix.SilicaFume / all);
    }

    private static CementComposition? CementOf(CementKind kind) => kind switch
    {
        CementKind.TypeI => CementComposition.TypeI,
        CementKind.TypeIi => CementComposition.TypeIi,
        CementKind.TypeIii => CementComposition.TypeIii,
        CementKind.TypeIv => CementComposition.TypeIv,
        CementKind.TypeV => CementComposition.TypeV,
        _ => null,
    };
}
