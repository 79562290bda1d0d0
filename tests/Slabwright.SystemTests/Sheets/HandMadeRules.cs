using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.RuleSets;
using Slabwright.Core.Survey;
using Slabwright.Core.Treatments;

namespace Slabwright.SystemTests.Sheets;

/// <summary>A small rule set for the hand-made job.</summary>
internal static class HandMadeRules
{
    public static RuleSet Build() => new()
    {
        Id = "hand-made",
        Name = "Hand-made rules for tests",
        Summary = "Two rules and the limits of common practice.",
        Treatments =
        [
            Rule("HM-1", "Damage through the slab is repaired full depth.", Treatment.FullDepthRepair, SourceRef.CommonPractice, true),
            Rule("HM-2", "Faulting of half an inch or more is repaired full depth.", Treatment.FullDepthRepair,
                new SourceRef("M-LT", "table 2", SourceStatus.FromMemory), false),
        ],
        Boundaries = new BoundaryLimits
        {
            LeastLength = Practice(1.8288),
            LeastRemnant = Practice(1.8288),
            LeastGap = Practice(2.4384),
            LongestUnjointed = Practice(4.572),
            HiddenMarginFreezeThaw = Practice(0.3048),
            HiddenMargin = Practice(0.1524),
        },
        Joints = new JointLimits
        {
            DowelSpacing = Practice(0.3048),
            LeastDowelDiameter = Practice(0.03175),
            DowelIntermediateJoints = new Sourced<bool>(true, SourceRef.CommonPractice),
        },
    };

    private static Sourced<double> Practice(double value) => new(value, SourceRef.CommonPractice);

    private static TreatmentRule Rule(string id, string sentence, Treatment treatment, SourceRef source, bool on) => new()
    {
        Id = id, Sentence = sentence, Treatment = treatment, Source = source, On = on, AtLeast = Severity.Low,
    };
}
