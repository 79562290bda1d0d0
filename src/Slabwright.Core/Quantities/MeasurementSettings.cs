using Slabwright.Core.Joints.Removal;

namespace Slabwright.Core.Quantities;

/// <summary>Choices of the project the take-off needs.</summary>
/// <param name="Nights">Nights of closure, or null while they are not planned.</param>
/// <param name="LooseBaseShare">Share of the repair area whose base is loose, 0 to 1.</param>
/// <param name="LooseBaseDepth">Depth of loose base taken out, m.</param>
/// <param name="StationRange">Length of a station range for totals, m.</param>
public sealed record MeasurementSettings(
    int? Nights = null, double LooseBaseShare = 0, double LooseBaseDepth = 0, double StationRange = 1000 * 0.3048)
{
    /// <summary>Limits of the pieces old concrete is lifted out in: they fix the cuts between pieces.</summary>
    public LiftingSettings Lifting { get; init; } = LiftingSettings.Default;
}
