using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;

namespace Slabwright.Core.Joints.Design;

/// <summary>On which side of its limit a value must stay.</summary>
public enum LimitSense
{
    /// <summary>The value must not exceed the limit.</summary>
    AtMost,

    /// <summary>The value must reach the limit.</summary>
    AtLeast,
}

/// <summary>One value held against one limit.</summary>
/// <param name="Name">What is checked, in the trade's words.</param>
/// <param name="Value">The value, base unit.</param>
/// <param name="Limit">The limit, base unit; above 0.</param>
/// <param name="Sense">Which side is safe.</param>
/// <param name="Units">Units both are printed in.</param>
/// <param name="Source">Where the limit comes from.</param>
public sealed record LimitCheck(string Name, double Value, double Limit, LimitSense Sense, UnitPair Units, SourceRef Source)
{
    /// <summary>Share of the limit used: 1 at the limit, above 1 where it does not hold.</summary>
    public double Use => Sense == LimitSense.AtMost ? Value / Limit : Value > 0 ? Limit / Value : double.PositiveInfinity;

    /// <summary>True when the limit holds; a millionth is forgiven.</summary>
    public bool Holds => Use <= 1 + 1e-6;
}
