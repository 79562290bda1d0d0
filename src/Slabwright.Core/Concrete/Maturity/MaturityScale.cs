using System.Collections.Immutable;
using Slabwright.Core.Concrete.Hydration;

namespace Slabwright.Core.Concrete.Maturity;

/// <summary>The two maturity functions.</summary>
public enum MaturityKind
{
    /// <summary>Temperature–time factor above a datum temperature, °C·h (Nurse and Saul).</summary>
    TemperatureTimeFactor,

    /// <summary>Equivalent age at a reference temperature, h (Arrhenius).</summary>
    EquivalentAge,
}

/// <summary>A temperature measured or computed in the concrete.</summary>
/// <param name="Hours">Hours after placing.</param>
/// <param name="Temperature">Temperature, °C.</param>
public readonly record struct ConcreteTemperature(double Hours, double Temperature);

/// <summary>A maturity function with its constants.</summary>
public sealed record MaturityScale
{
    /// <summary>Which function.</summary>
    public required MaturityKind Kind { get; init; }

    /// <summary>Datum temperature, °C.</summary>
    public double Datum { get; init; } = -10;

    /// <summary>Activation energy, J/mol.</summary>
    public double ActivationEnergy { get; init; } = 5000 * EquivalentAge.GasConstant;

    /// <summary>Reference temperature of the equivalent age, °C.</summary>
    public double Reference { get; init; } = 23;

    /// <summary>Temperature–time factor from −10 °C, the usual choice of agencies.</summary>
    /// <remarks>Source: Iowa DOT Materials I.M. 383, equations 1 and 2.</remarks>
    public static MaturityScale Factor { get; } = new() { Kind = MaturityKind.TemperatureTimeFactor };

    /// <summary>Equivalent age at 23 °C with Q = 5,000 K.</summary>
    /// <remarks>Source: ASTM C1074 (from memory).</remarks>
    public static MaturityScale Age { get; } = new() { Kind = MaturityKind.EquivalentAge };

    /// <summary>Unit the maturity is printed in.</summary>
    public string Unit => Kind == MaturityKind.TemperatureTimeFactor ? "°C·h" : "h";

    /// <summary>Maturity gained in an hour at a steady temperature: °C·h per hour, or equivalent hours per hour.</summary>
    /// <param name="temperature">Concrete temperature, °C.</param>
    public double Rate(double temperature) => Kind == MaturityKind.TemperatureTimeFactor
        ? Math.Max(0, temperature - Datum)
        : EquivalentAge.Factor(ActivationEnergy, temperature, Reference);

    /// <summary>Maturity at each reading, the first at 0 or at what is brought along; the mean temperature of two readings holds between them.</summary>
    /// <param name="history">Readings, hours rising.</param>
    /// <param name="before">Maturity already gained at the first reading.</param>
    public ImmutableArray<double> Along(IReadOnlyList<ConcreteTemperature> history, double before = 0)
    {
        var sums = ImmutableArray.CreateBuilder<double>(history.Count);
        var sum = before;
        for (var i = 0; i < history.Count; i++)
        {
            if (i > 0) sum += Rate((history[i].Temperature + history[i - 1].Temperature) / 2) * (history[i].Hours - history[i - 1].Hours);
            sums.Add(sum);
        }

        return sums.MoveToImmutable();
    }

    /// <summary>Maturity at the last reading.</summary>
    public double Of(IReadOnlyList<ConcreteTemperature> history) => history.Count == 0 ? 0 : Along(history)[^1];

    /// <summary>Hours after placing at which a maturity is reached, straight between readings; null when it never is.</summary>
    public double? HoursTo(double maturity, IReadOnlyList<ConcreteTemperature> history)
    {
        var sums = Along(history);
        for (var i = 0; i < sums.Length; i++)
        {
            if (sums[i] < maturity) continue;
            if (i == 0) return history[0].Hours;
            var share = (maturity - sums[i - 1]) / (sums[i] - sums[i - 1]);
            return history[i - 1].Hours + share * (history[i].Hours - history[i - 1].Hours);
        }

        return null;
    }
}
