using Slabwright.Core.Boundaries;
using Slabwright.Core.Joints.Removal;

namespace Slabwright.Core.Quantities;

/// <summary>How many pieces a repair is lifted out in and what they weigh: the same count for the saw cuts paid and for the crane.</summary>
public static class Lifting
{
    /// <summary>Number of pieces when all are equally long and none longer than about 6 ft (MoDOT EPG 613.1.1).</summary>
    /// <param name="repair">The repair.</param>
    public static int Pieces(Repair repair) => LiftCount.Pieces(repair.Length, LiftCount.LongestPiece);

    /// <summary>Mass of one piece, kg, by volume alone: bond to the base, friction and bars not cut through add to it.</summary>
    /// <param name="repair">The repair.</param>
    public static double PieceMass(Repair repair) => repair.Area * repair.Thickness * LiftCount.Density / Pieces(repair);
}
