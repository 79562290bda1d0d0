using System.Collections.Immutable;
using Slabwright.Core.RuleSets;
using Slabwright.Core.Survey;

namespace Slabwright.Core.Treatments;

/// <summary>Whether a rule holds for a distress, as far as what was measured can tell.</summary>
internal enum TrialOutcome
{
    /// <summary>A condition fails.</summary>
    Fails,

    /// <summary>Every condition holds.</summary>
    Holds,

    /// <summary>No condition fails, but an input it needs was not measured.</summary>
    NotMeasured,
}

/// <summary>Tries one rule on one distress.</summary>
internal static class RuleTrial
{
    /// <summary>Relative slack of comparisons, so that 3 in of a 9 in slab is a third whatever the unit it was written in.</summary>
    private const double Slack = 1e-9;

    public static TrialOutcome Try(TreatmentRule rule, DistressFacts facts)
    {
        if (!Speaks(rule, facts)) return TrialOutcome.Fails;
        var missing = false;
        foreach (var condition in Measured(rule, facts))
        {
            if (condition is false) return TrialOutcome.Fails;
            missing |= condition is null;
        }

        return missing ? TrialOutcome.NotMeasured : TrialOutcome.Holds;
    }

    /// <summary>The inputs for want of which the rule could not be tried.</summary>
    public static ImmutableArray<string> Missing(TreatmentRule rule, DistressFacts facts)
    {
        var d = facts.Distress;
        var missing = ImmutableArray.CreateBuilder<string>();
        if (d.Severity == Severity.None && (rule.AtLeast ?? rule.AtMost) is not null) missing.Add("severity");
        if (facts.Depth is null && (rule.DepthShareOver ?? rule.DepthShareFrom ?? rule.DepthShareUpTo ?? rule.DepthUpTo) is not null)
            missing.Add("depth");
        if (d.Width is null && (rule.WidthOver ?? rule.WidthUpTo) is not null) missing.Add("width");
        if (d.Faulting is null && rule.FaultingFrom is not null) missing.Add("faulting");
        return missing.ToImmutable();
    }

    /// <summary>Conditions on what is always known.</summary>
    private static bool Speaks(TreatmentRule rule, DistressFacts facts) =>
        (rule.Types.IsEmpty || rule.Types.Contains(facts.Distress.Type))
        && (rule.Causes.IsEmpty || rule.Causes.Contains(facts.Cause))
        && Agrees(rule.PlainPavement, facts.Plain)
        && Agrees(rule.BesideEarlierRepair, facts.BesideEarlierRepair)
        && Agrees(rule.ThroughOverlay, facts.ThroughOverlay)
        && Agrees(rule.FreezeThaw, facts.FreezeThaw)
        && Agrees(rule.DepthKnown, facts.Depth is not null)
        && Agrees(rule.WidthKnown, facts.Distress.Width is not null)
        && Agrees(rule.FaultingKnown, facts.Distress.Faulting is not null)
        && From(facts.Slab.Length, rule.SlabFrom) is true
        && UpTo(facts.Slab.Length, rule.SlabUpTo) is true
        && (rule.OtherCallsInSlabFrom is not { } calls || facts.OtherCallsInSlab >= calls)
        && (rule.DamagedSlabsInRowFrom is not { } row || facts.DamagedSlabsInRow >= row);

    /// <summary>Conditions on what the survey may not have measured; null where it did not.</summary>
    private static IEnumerable<bool?> Measured(TreatmentRule rule, DistressFacts facts)
    {
        var d = facts.Distress;
        double? severity = d.Severity == Severity.None ? null : (int)d.Severity;
        yield return From(severity, (int?)rule.AtLeast);
        yield return UpTo(severity, (int?)rule.AtMost);
        yield return Over(facts.DepthShare, rule.DepthShareOver);
        yield return From(facts.DepthShare, rule.DepthShareFrom);
        yield return UpTo(facts.DepthShare, rule.DepthShareUpTo);
        yield return UpTo(facts.Depth, rule.DepthUpTo);
        yield return Over(d.Width, rule.WidthOver);
        yield return UpTo(d.Width, rule.WidthUpTo);
        yield return From(d.Faulting is { } faulting ? Math.Abs(faulting) : null, rule.FaultingFrom);
    }

    private static bool Agrees(bool? wanted, bool value) => wanted is null || wanted == value;

    private static bool? From(double? value, double? limit) => limit is null ? true : value is null ? null : value >= limit * (1 - Slack);

    private static bool? UpTo(double? value, double? limit) => limit is null ? true : value is null ? null : value <= limit * (1 + Slack);

    private static bool? Over(double? value, double? limit) => limit is null ? true : value is null ? null : value > limit * (1 + Slack);
}
