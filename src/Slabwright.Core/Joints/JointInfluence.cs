using System.Collections.Immutable;

namespace Slabwright.Core.Joints;

/// <summary>A wheel as a uniform load on a rectangle. Along is the road's direction, across to the right.</summary>
/// <param name="Along">Centre, m.</param> <param name="Across">Centre from the left edge of the leftmost lane modelled, m.</param>
/// <param name="Length">Along, m.</param> <param name="Width">Across, m.</param> <param name="Load">N.</param>
public readonly record struct WheelPatch(double Along, double Across, double Length, double Width, double Load);

/// <summary>What one bar does.</summary>
/// <param name="Shear">Shear across the gap, N; positive when the bar lifts the first slab and presses the second.</param>
/// <param name="FirstMoment">Bending moment at the first slab's face, N·m.</param>
/// <param name="SecondMoment">Bending moment at the second slab's face, N·m.</param>
/// <param name="Bearing">Greatest bearing stress on the concrete, Pa.</param>
public readonly record struct BarForce(double Shear, double FirstMoment, double SecondMoment, double Bearing);
