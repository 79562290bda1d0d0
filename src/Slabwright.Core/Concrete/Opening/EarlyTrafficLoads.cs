using System.Collections.Immutable;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Evidence;
using Slabwright.Core.Joints.Design;
using Slabwright.Core.Pavement;

namespace Slabwright.Core.Concrete.Opening;

/// <summary>First traffic of the job: the lane with most axles, the softest base. SI.</summary>
/// <param name="AxlesPerHour">18-kip (80 kN) axles an hour, the day's evened out.</param>
/// <param name="Reaction">Modulus of foundation reaction, Pa/m.</param> <param name="Width">Lane width, m.</param>
/// <param name="TyrePressure">Tyre pressure, Pa.</param>
public sealed record EarlyTrafficLoads(double AxlesPerHour, double Reaction, double Width, double TyrePressure)
{
    /// <summary>The loads of a road by the settings of its joints; null where the project gives no traffic.</summary>
    /// <param name="road">The road.</param> <param name="settings">Settings of its joints.</param>
    public static EarlyTrafficLoads? Of(Road road, JointSettings settings)
    {
        if (road.Traffic is null && settings.EquivalentAxlesPerDay is null && settings.Axles.IsEmpty) return null;
        var inputs = new JointInputs(settings, road.Climate);
        var lanes = road.Lanes.Where(l => !l.Sections.IsEmpty)
            .Select(l => (Lane: l, Axles: LaneTraffic.Of(road, l, l.Sections.Min(s => s.Thickness), inputs, []).Equivalent)).ToArray();
        if (lanes.Length == 0) return null;
        var most = lanes.MaxBy(l => l.Axles);
        return new(most.Axles / 24, most.Lane.Sections.Min(s => inputs.Reaction(s.Base)), most.Lane.Width, inputs.TyrePressure);
    }
}

/// <summary>
/// Fatigue by early traffic night by night. Edge stress is found at a few moduli once for a thickness and taken between; every mix and night
/// then costs next to nothing.
/// </summary>
internal sealed class EarlyTrafficStudy
{
    private const double Least = 6e9;
    private const double Most = 42e9;
    private const int Knots = 3;

    private readonly EarlyTrafficLoads _loads;
    private readonly double _length;
    private readonly double _thickness;
    private readonly Lazy<double[]> _stresses;

    /// <summary>A study for one thickness and length.</summary>
    public EarlyTrafficStudy(EarlyTrafficLoads loads, double length, double thickness)
    {
        (_loads, _length, _thickness) = (loads, length, thickness);
        _stresses = new(() => [.. Moduli.Select(e => EarlyTraffic.EdgeStress(Input([1]), e))]);
    }

    private static double[] Moduli { get; } = [.. Enumerable.Range(0, Knots).Select(i => Least * Math.Pow(Most / Least, i / (Knots - 1.0)))];

    /// <summary>Edge stress at a modulus, Pa: by a parabola over its logarithm through the knots, carried on outside them.</summary>
    public double Stress(double modulus)
    {
        var u = 2 * Math.Log(modulus / Least) / Math.Log(Most / Least) - 1;
        var s = _stresses.Value;
        return s[0] * u * (u - 1) / 2 + s[1] * (1 - u * u) + s[2] * u * (u + 1) / 2;
    }

    /// <summary>Fatigue used from opening to the end of the forecast by the weakest strength that may be there (5 %); null where it never opens.</summary>
    public EarlyTrafficResult? Of(OpeningForecastResult forecast)
    {
        if (forecast.Earliest is not { } opens) return null;
        var curve = forecast.Case.Curve.Kind;
        ImmutableArray<double> rupture = [.. Enumerable.Range(0, (int)Math.Max(1, forecast.Hours[^1].Hours - opens))
            .Select(hour => Rupture(LowAt(forecast, opens + hour), curve)).TakeWhile(r => r > 0)];
        if (rupture.IsEmpty) return null;
        var result = EarlyTraffic.Of(Input(rupture), Stress);
        return result with
        {
            Reasons = result.Reasons.Add(new("early axles", FormattableString.Invariant(
                $"{_loads.AxlesPerHour:0.#} axles of 80 kN an hour for {rupture.Length} h, on the lower 5 % of the strength forecast."), SourceRef.Project)),
        };
    }

    private EarlyTrafficInput Input(ImmutableArray<double> rupture) => new()
    {
        Length = _length, Width = _loads.Width, Thickness = _thickness, Reaction = _loads.Reaction, TyrePressure = _loads.TyrePressure,
        AxlesPerHour = _loads.AxlesPerHour, RuptureByHour = rupture,
    };

    private static double Rupture(double strength, StrengthKind kind) => kind switch
    {
        StrengthKind.Compressive => StrengthConversions.ThirdPointOf(strength),
        StrengthKind.CentrePointFlexural => strength / StrengthConversions.MostCentreOverThird,
        _ => strength,
    };

    private static double LowAt(OpeningForecastResult forecast, double hours)
    {
        var rows = forecast.Hours;
        var i = 1;
        while (i < rows.Length - 1 && rows[i].Hours < hours) i++;
        var (a, b) = (rows[i - 1], rows[i]);
        return a.Strength.Low + (hours - a.Hours) / (b.Hours - a.Hours) * (b.Strength.Low - a.Strength.Low);
    }
}
