namespace Slabwright.Core.Measures;

/// <summary>The system a project is written and printed in. Kernels always compute in SI.</summary>
public enum UnitSystem
{
    /// <summary>US customary: feet, inches, square yards, pounds, °F.</summary>
    UsCustomary,

    /// <summary>SI: metres, millimetres, square metres, kilograms, °C.</summary>
    Si,
}
