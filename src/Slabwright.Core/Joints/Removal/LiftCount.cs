using Slabwright.Core.Measures;

namespace Slabwright.Core.Joints.Removal;

/// <summary>How many pieces a length is lifted out in: the one count for the saw cuts paid and for the crane.</summary>
public static class LiftCount
{
    /// <summary>Longest lift piece, m: 6 ft.</summary>
    /// <remarks>Source: MoDOT EPG 613.1.1.</remarks>
    public const double LongestPiece = 6 * 0.3048;

    /// <summary>Density of hardened concrete used for lifting, kg/m³: 150 lb/ft³ (common practice).</summary>
    public const double Density = 2402.8;

    /// <summary>Number of equally long pieces of a length, none longer than a limit.</summary>
    /// <param name="length">Length of the removal, m.</param> <param name="longest">Longest piece, m.</param>
    public static int Pieces(double length, double longest) => Ticks.CountUp(length, longest);
}
