using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Concrete.Opening;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Concrete.Night;

/// <summary>What is laid before the decision.</summary>
public sealed record OpeningQuestion
{
    /// <summary>Repair or placement.</summary>
    public required string Repair { get; init; }

    /// <summary>What is asked for.</summary>
    public required OpeningCriterion Criterion { get; init; }

    /// <summary>When the last concrete of the repair was placed, local time.</summary>
    public required DateTime PlacedAt { get; init; }

    /// <summary>Evidence.</summary>
    public required ImmutableArray<StrengthEvidence> Evidence { get; init; }

    /// <summary>Who decides.</summary>
    public required string By { get; init; }

    /// <summary>When, local time.</summary>
    public required DateTime At { get; init; }

    /// <summary>Curve the maturity evidence was read off; null when none.</summary>
    public StrengthCurve? Curve { get; init; }

    /// <summary>Reason to open although something is missing; empty: no override.</summary>
    public string OverrideReason { get; init; } = "";
}

/// <summary>Decides whether traffic may return, and keeps why. Never opens on a forecast: only on evidence.</summary>
public static class OpeningDecision
{
    private const double Psi = 6894.757293168361;
    private static readonly SourceRef Standard = new("ASTM-C1074", "limits of the method", SourceStatus.Verified);

    /// <summary>Decides.</summary>
    public static OpeningRecord Decide(OpeningQuestion question)
    {
        var age = (question.At - question.PlacedAt).TotalHours;
        var missing = Missing(question, age).ToImmutableArray();
        var byName = question.By.Trim().Length > 0;
        var overridden = !missing.IsEmpty && byName && question.OverrideReason.Trim().Length > 0;
        var verdict = missing.IsEmpty ? OpeningVerdict.Open : overridden ? OpeningVerdict.OpenByOverride : OpeningVerdict.StayClosed;
        return new OpeningRecord
        {
            Repair = question.Repair,
            Verdict = verdict,
            Criterion = question.Criterion,
            Evidence = question.Evidence,
            By = question.By.Trim(),
            At = question.At,
            Age = age,
            Missing = missing,
            OverrideReason = overridden ? question.OverrideReason.Trim() : null,
            Reasons = [.. question.Criterion.Reasons, .. Cautions(question, age)],
        };
    }

    /// <summary>Evidence from a probe: strength of the curve at its maturity, with the lower end at the confidence asked for.</summary>
    /// <param name="probe">The probe.</param> <param name="curve">Curve of the mix.</param> <param name="at">When read, local time.</param>
    /// <param name="confidence">Chance that the strength is at least <see cref="StrengthEvidence.Low"/>.</param> <param name="governing">True when no computed place lags behind the probe's.</param>
    public static StrengthEvidence FromProbe(ProbeHistory probe, StrengthCurve curve, DateTime at, double confidence, bool governing)
    {
        var maturity = curve.Scale.Of(probe.History);
        var band = curve.ResultBand(maturity, Math.Clamp(2 * confidence - 1, 0, 0.9999));
        return new StrengthEvidence(EvidenceKind.Maturity, at, curve.Kind, band.Middle, string.Create(CultureInfo.InvariantCulture,
            $"Probe {probe.Name}: {maturity:0.0} {curve.Scale.Unit} after {probe.History[^1].Hours:0.0} h, {band.Middle / Psi:#,0} psi on the curve, at least {band.Low / Psi:#,0} psi with {100 * confidence:0} %."))
        {
            Low = band.Low, BeforeFirstTested = curve.IsBeforeFirstTested(maturity), AtGoverningPlace = governing,
        };
    }

    private static IEnumerable<string> Missing(OpeningQuestion question, double age)
    {
        var asked = question.Criterion;
        if (question.By.Trim().Length == 0) yield return "The name of the person who decides.";
        if (age < asked.LeastAge - 1e-9)
            yield return string.Create(CultureInfo.InvariantCulture, $"Age: {age:0.0} h after placing, at least {asked.LeastAge:0.#} h are asked for.");
        if (question.Evidence.IsEmpty)
        {
            yield return $"Evidence of strength: {Text(asked.Strength)} {OpeningCriteria.Words(asked.Kind)} must be shown.";
            yield break;
        }

        var faults = question.Evidence.Select(e => (Evidence: e, Fault: Fault(e, question))).ToArray();
        if (faults.Any(f => f.Fault is null)) yield break;
        foreach (var fault in faults.Select(f => f.Fault!).Distinct()) yield return fault;
    }

    /// <summary>Why a piece of evidence does not show the strength; null when it does.</summary>
    private static string? Fault(StrengthEvidence evidence, OpeningQuestion question)
    {
        var asked = question.Criterion;
        if (evidence.At > question.At) return "The evidence is later than the decision.";
        if (evidence.At < question.PlacedAt) return "The evidence is older than the concrete.";
        var needed = StrengthConversions.Needed(asked.Strength, asked.Kind, evidence.Test).Strength;
        var shown = evidence.Low ?? evidence.Strength;
        if (shown < needed)
        {
            return string.Create(CultureInfo.InvariantCulture,
                $"Strength by {TradeWords.Of(evidence.Kind)}: {Text(shown)} {OpeningCriteria.Words(evidence.Test)}{(evidence.Low is null ? "" : $" with {100 * asked.Confidence:0} %")}, {Text(needed)} are needed.");
        }

        if (evidence.Kind == EvidenceKind.PulseVelocity) return "Pulse velocity alone: it is second evidence; add maturity or specimens.";
        if (evidence.Kind != EvidenceKind.Maturity) return null;
        if (question.Curve is null or { Origin: CurveOrigin.Composition }) return "A strength curve measured on the mix: maturity says nothing without one.";
        if (evidence.BeforeFirstTested) return "The maturity lies before the youngest specimens of the curve: break specimens now.";
        return evidence.AtGoverningPlace ? null : "A reading at the place that lags behind, or its computed lag taken off.";
    }

    private static IEnumerable<Reason> Cautions(OpeningQuestion question, double age)
    {
        if (question.Evidence.Any(e => e.Carried) && !question.Evidence.Any(e => e.AtGoverningPlace && !e.Carried))
        {
            yield return new("carried evidence", "No probe sits at the place that lags behind: readings of warmer places are carried to it by computation. Put a probe there, or break specimens.",
                new SourceRef("SECTION-LAG", "docs/steps/concrete-heat.md", SourceStatus.Computed));
        }

        if (question.Evidence.Any(e => e.Test != question.Criterion.Kind))
            yield return new("strength conversion", "Evidence of another kind is held against a converted strength.", new("ACI-318", "", SourceStatus.FromMemory));
        if (age < 24 && question.Evidence.All(e => e.Kind == EvidenceKind.Maturity) && !question.Evidence.IsEmpty)
            yield return new("young concrete", "Maturity has been found reliable for opening above one day; break specimens as well.", Standard);
    }

    private static string Text(double strength) => string.Create(CultureInfo.InvariantCulture, $"{strength / Psi:#,0} psi");
}
