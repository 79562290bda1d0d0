namespace Slabwright.Core.Closures;

/// <summary>A queue from one drop of capacity with steady arrivals.</summary>
/// <param name="Greatest">Vehicles in the longest queue, when the capacity returns.</param>
/// <param name="ClearsAfter">Seconds from the return of the capacity until the queue is gone.</param>
/// <param name="Delay">Delay of all vehicles, vehicle-seconds.</param>
/// <param name="Vehicles">Vehicles that met the queue.</param>
public readonly record struct BottleneckQueue(double Greatest, double ClearsAfter, double Delay, double Vehicles)
{
    /// <summary>Mean delay, seconds per vehicle.</summary>
    public double MeanDelay => Vehicles > 0 ? Delay / Vehicles : 0;
}

/// <summary>Deterministic queues and their length on the road.</summary>
public static class Queues
{
    /// <summary>
    /// Queue behind a bottleneck of a given duration: Q = (λ − µ1) t; clears in Q/(µ2 − λ); delay is the area under the queue.
    /// </summary>
    /// <remarks>Source: elementary input–output queue (D/D/1).</remarks>
    /// <param name="arrivals">λ, vehicles per second.</param> <param name="reduced">µ1, capacity while reduced, vehicles per second.</param>
    /// <param name="restored">µ2, capacity afterwards, above λ.</param> <param name="duration">Seconds of reduced capacity.</param>
    public static BottleneckQueue Bottleneck(double arrivals, double reduced, double restored, double duration)
    {
        var greatest = Math.Max(0, (arrivals - reduced) * duration);
        if (greatest == 0) return default;
        var clears = greatest / (restored - arrivals);
        return new BottleneckQueue(greatest, clears, greatest * (duration + clears) / 2, arrivals * (duration + clears));
    }

    /// <summary>Length of a queue on the road, m: vehicles × room for each / lanes.</summary>
    /// <remarks>
    /// Source: California practice, 25 ft a vehicle standing (Work Zone Safety Clearinghouse); the page multiplies by lanes where the
    /// dimensions ask for division. Moving queues take 40 to 50 ft.
    /// </remarks>
    public static double Length(double vehicles, double spacing, int lanes) => vehicles * spacing / lanes;
}
