using System.Collections.Immutable;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Concrete.Opening;

/// <summary>When a joint inside a repair can be sawn. Hours after placing; null when not within the hours computed.</summary>
/// <param name="From">Earliest for soft aggregate: the concrete does not ravel from here on.</param>
/// <param name="FromHard">Earliest for hard aggregate.</param>
/// <param name="To">Latest: the surface has begun to cool from its peak and pulls against its base.</param>
/// <param name="Reasons">The limits.</param>
public sealed record SawWindow(double? From, double? FromHard, double? To, ImmutableArray<Reason> Reasons)
{
    private const double Psi = 6894.757293168361;

    /// <summary>Least compressive strength for sawing with soft aggregate, Pa: 310 psi.</summary>
    public const double SoftStrength = 310 * Psi;

    /// <summary>The same with hard aggregate, Pa: 1,015 psi.</summary>
    public const double HardStrength = 1015 * Psi;

    private static readonly SourceRef Study = new("FHWA-RD-91-079", "310 to 1,015 psi by aggregate hardness", SourceStatus.FromMemory);

    /// <summary>The window by strength at the surface and by its temperature.</summary>
    /// <remarks>
    /// The boundary of a full-depth repair is sawn before removal and is a joint already: only long repairs are sawn inside. Early limit by
    /// strength, late limit by the surface's peak (from memory); try the edge of a cut for ravelling first.
    /// </remarks>
    /// <param name="surface">Temperatures of the surface from placing on.</param> <param name="curve">Strength of the mix; limits are converted where it is not compressive.</param>
    public static SawWindow Of(IReadOnlyList<ConcreteTemperature> surface, StrengthCurve curve)
    {
        var soft = StrengthConversions.Needed(SoftStrength, StrengthKind.Compressive, curve.Kind);
        var from = curve.Scale.HoursTo(curve.MaturityFor(soft.Strength), surface);
        var hard = curve.Scale.HoursTo(curve.MaturityFor(StrengthConversions.Needed(HardStrength, StrengthKind.Compressive, curve.Kind).Strength), surface);
        var peak = surface.Where(t => t.Hours >= (from ?? double.PositiveInfinity)).Select(t => ((double Hours, double Temperature)?)(t.Hours, t.Temperature)).MaxBy(t => t!.Value.Temperature);
        double? to = peak is { } p && p.Hours < surface[^1].Hours ? p.Hours : null;
        return new(from, hard, to,
        [
            .. curve.Kind == StrengthKind.Compressive ? Enumerable.Empty<Reason>() : [soft.Because],
            new("earliest sawing", "Compressive strength from which a cut does not ravel, by the hardness of the aggregate; scratch or saw a trial first.", Study),
            new("latest sawing", "Saw before the surface cools from its peak: the slab then shortens against its base.", Study),
        ]);
    }
}
