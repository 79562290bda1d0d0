using Slabwright.Core.Boundaries;

namespace Slabwright.Sheets.Words;

/// <summary>How many pieces a repair is lifted out in and what they weigh.</summary>
public static class LiftPieces
{
    /// <summary>Longest piece along the road, m: 6 ft. Source: MO-EPG 613.1.1 (pieces about 6 ft long).</summary>
    public const double Longest = 6 * 0.3048;

    /// <summary>Density of hardened concrete used for lifting, kg/m³: 150 lb/ft³ (common practice).</summary>
    public const double Density = 2402.8;

    /// <summary>Number of pieces when all are equally long.</summary>
    public static int Count(Repair repair) => Math.Max(1, (int)Math.Ceiling(repair.Length / Longest - 1e-6));

    /// <summary>Mass of one piece, kg, without suction or friction.</summary>
    public static double HeaviestMass(Repair repair) => repair.Area * repair.Thickness * Density / Count(repair);
}
