namespace Slabwright.Core.Joints.Slabs;

/// <summary>
/// A wheel as a uniform load on a rectangle. Along is the direction of travel, across runs to the right of it; both are those of the
/// <see cref="SlabSystem"/> it stands on.
/// </summary>
/// <param name="Along">Centre, m.</param> <param name="Across">Centre, m.</param>
/// <param name="Length">Along, m.</param> <param name="Width">Across, m.</param> <param name="Load">N.</param>
public readonly record struct WheelPatch(double Along, double Across, double Length, double Width, double Load)
{
    /// <summary>Pressure, Pa.</summary>
    public double Pressure => Load / (Length * Width);
}
