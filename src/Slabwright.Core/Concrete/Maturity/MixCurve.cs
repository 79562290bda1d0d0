using System.Collections.Immutable;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Concrete.Maturity;

/// <summary>A mix's strength curve and what was looked at to find it.</summary>
/// <param name="MixId">The mix.</param>
/// <param name="Curve">The curve in force; null where none can be had.</param>
/// <param name="Points">The results it was fitted to.</param>
/// <param name="Findings">What speaks against relying on it.</param>
public sealed record MixCurve(string MixId, StrengthCurve? Curve, ImmutableArray<MaturityStrength> Points, ImmutableArray<Finding> Findings);
