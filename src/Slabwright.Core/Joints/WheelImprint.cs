namespace Slabwright.Core.Joints;

/// <summary>The print of a tyre on the road, and one circle for dual tyres. N, Pa, m.</summary>
/// <remarks>Source: Huang 2004 ch. 4 (from memory).</remarks>
public static class WheelImprint
{
    /// <summary>Radius of a circle of the load and pressure, m: √(P/(π q)).</summary>
    public static double Radius(double load, double pressure) => Math.Sqrt(load / (Math.PI * pressure));

    /// <summary>Length of one tyre's print of an area, m: √(A/0.5227); a rectangle with half-round ends.</summary>
    public static double Length(double area) => Math.Sqrt(area / 0.5227);

    /// <summary>Width of one tyre's print, m: 0.6 of its length.</summary>
    public static double Width(double area) => 0.6 * Length(area);

    /// <summary>The print as a rectangle of the same area, m: 0.8712 of its length along, 0.6 across.</summary>
    /// <remarks>Source: PCA 1984; Huang 2004 ch. 1 (from memory).</remarks>
    public static (double Along, double Across) Rectangle(double area) => (0.8712 * Length(area), Width(area));

    /// <summary>Radius of the circle that stands for two tyres and the ground between them, m: √(0.8521 P/(q π) + S/π √(P/(0.5227 q))).</summary>
    /// <param name="tyreLoad">Load on one of the two tyres, N.</param> <param name="pressure">Contact pressure, Pa.</param>
    /// <param name="spacing">Distance between the tyres' centres, m.</param>
    public static double DualRadius(double tyreLoad, double pressure, double spacing) => Math.Sqrt(
        0.8521 * tyreLoad / (pressure * Math.PI) + spacing / Math.PI * Math.Sqrt(tyreLoad / (0.5227 * pressure)));
}
