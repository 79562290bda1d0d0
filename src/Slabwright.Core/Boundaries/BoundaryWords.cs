using System.Globalization;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;

namespace Slabwright.Core.Boundaries;

/// <summary>Words shared by the reasons and findings of this step; lengths are written in both systems.</summary>
internal static class BoundaryWords
{
    /// <summary>A length, e.g. <c>6.0 ft (1.83 m)</c>.</summary>
    public static string Length(double metres) => $"{Units.Foot.Format(metres)} ({Units.Metre.Format(metres, 2)})";

    /// <summary>A length in ticks, written the same way.</summary>
    public static string Length(long ticks) => Length(Ticks.ToMetres(ticks));

    /// <summary>An area, e.g. <c>8.0 yd2 (6.69 m2)</c>.</summary>
    public static string Area(double squareMetres) =>
        $"{Units.SquareYard.Format(squareMetres)} ({Units.SquareMetre.Format(squareMetres, 2)})";

    /// <summary>An amount, e.g. <c>12,345.60 USD</c>.</summary>
    public static string Money(decimal amount, string currency) => amount.ToString("N2", CultureInfo.InvariantCulture) + " " + currency;

    /// <summary>A place along the road as its written station.</summary>
    public static string Station(Road road, double at) => road.Stationing.Format(at);

    /// <summary>What a joint is called.</summary>
    public static string Name(JointKind kind) => kind switch
    {
        JointKind.Dowelled => "dowelled joint",
        JointKind.Undowelled => "undowelled joint",
        JointKind.WorkingCrack => "working crack",
        JointKind.Expansion => "expansion joint",
        JointKind.EarlierRepairEdge => "edge of an earlier repair",
        _ => "pavement end",
    };
}
