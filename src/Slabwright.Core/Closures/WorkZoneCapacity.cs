namespace Slabwright.Core.Closures;

/// <summary>Capacity of the lanes left open beside a closure, by published methods. Flows in vehicles or passenger cars per hour.</summary>
public static class WorkZoneCapacity
{
    /// <summary>Lane closure severity index: 1/(OR · open lanes), OR = open/total; at most 2.0.</summary>
    /// <remarks>Source: Highway Capacity Manual 7th ed., Ch. 10 Eq. 10-7, Exhibit 10-15 caps the index at 2.0.</remarks>
    /// <param name="total">Lanes without the closure.</param> <param name="open">Lanes left open, 1 to <paramref name="total"/>.</param>
    public static double ClosureSeverity(int total, int open) => Math.Min(2.0, 1 / ((double)open / total * open));

    /// <summary>Mean queue discharge rate, passenger cars per hour and lane.</summary>
    /// <remarks>Source: HCM 7th ed., Ch. 10 Eq. 10-8 (coefficients second-hand, confirmed by Ch. 25 Example Problem 4).</remarks>
    /// <param name="severity">Lane closure severity index.</param> <param name="cones">True for cones or drums, false for a hard barrier.</param>
    /// <param name="rural">True in rural areas.</param> <param name="lateral">Distance from lane edge to devices, m; 0 to 3.66.</param>
    /// <param name="night">True at night.</param>
    public static double QueueDischarge(double severity, bool cones, bool rural, double lateral, bool night) =>
        2093 - 154 * severity - (cones ? 194 : 0) - (rural ? 179 : 0) + 9 * lateral / 0.3048 - (night ? 59 : 0);

    /// <summary>Capacity before breakdown from queue discharge: QDR/(1 − α).</summary>
    /// <remarks>Source: HCM 7th ed., Eq. 10-9; α 0.134 by default in work zones, 0.131 in its Example Problem 4.</remarks>
    public static double FromDischarge(double discharge, double drop) => discharge / (1 - drop);

    /// <summary>Factor for heavy vehicles: 1/(1 + P (E − 1)).</summary>
    /// <remarks>Source: Highway Capacity Manual; E 2.0 level and 3.0 rolling (6th and 7th ed., from memory).</remarks>
    public static double HeavyVehicleFactor(double share, double equivalents) => 1 / (1 + share * (equivalents - 1));

    /// <summary>Short-term closure capacity, vehicles per hour: (1,600 + I − R) f N.</summary>
    /// <remarks>Source: HCM 2000 Eq. 22-2 (equation from memory; base of 1,600 read).</remarks>
    /// <param name="intensity">Work intensity adjustment I, −160 to 160.</param> <param name="ramp">Ramp adjustment R, 0 to 800.</param>
    /// <param name="heavyVehicleFactor">f.</param> <param name="open">Lanes open.</param>
    public static double ShortTerm(double intensity, double ramp, double heavyVehicleFactor, int open) =>
        (1600 + intensity - ramp) * heavyVehicleFactor * open;
}
