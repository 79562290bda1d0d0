using System.Collections.Immutable;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;
using Slabwright.Core.RuleSets;
using Slabwright.Core.Survey;
using Slabwright.Core.Treatments;

namespace Slabwright.Tests.Treatments;

/// <summary>A straight lane of plain slabs 15 ft long and 9 in thick, and distresses to put on it.</summary>
internal static class Sample
{
    public const double Foot = 0.3048;
    public const double Inch = 0.0254;
    public const double SlabLength = 15 * Foot;

    public static RuleSet Common => PublishedRuleSets.CommonPractice;

    public static Road Road(
        double slabLength = SlabLength, PavementKind kind = PavementKind.JointedPlain, double overlay = 0, bool freezeThaw = true, int slabs = 40)
    {
        var length = slabs * slabLength;
        var joints = Enumerable.Range(0, slabs + 1).Select(i => new TransverseJoint(
            i * slabLength, i == 0 || i == slabs ? JointKind.PavementEnd : JointKind.Dowelled));
        var lane = new Lane
        {
            Number = 1, Width = 12 * Foot, From = 0, To = length, LeftEdge = LaneEdge.TiedConcreteShoulder,
            RightEdge = LaneEdge.AsphaltShoulder, Joints = [.. joints],
            Sections = [new PavementSection(0, length, kind, 9 * Inch, BaseKind.Granular, overlay)],
        };
        return new Road
        {
            Name = "Test road", Length = length, Stationing = new Stationing { Style = StationStyle.Feet }, Lanes = [lane],
            Climate = new Climate(freezeThaw),
        };
    }

    /// <summary>A distress in the middle of a slab.</summary>
    public static Distress Distress(DistressType type, Severity severity = Severity.None, int slab = 5, string? id = null) => new()
    {
        Id = id ?? $"D{slab}", Lane = 1, Type = type, Severity = severity, Slab = slab, From = (slab - 0.5) * SlabLength,
        To = (slab - 0.5) * SlabLength, SurveyedOn = new DateOnly(2025, 4, 1),
    };

    public static SurveyRecord Survey(params Distress[] distresses) => new([.. distresses], [], []);

    public static TreatmentResult Decide(RuleSet set, Road road, params Distress[] distresses) =>
        TreatmentRules.Decide(road, Survey(distresses), set, [], UnitSystem.UsCustomary);

    /// <summary>The decision for one distress alone on the sample road.</summary>
    public static TreatmentDecision DecideOne(RuleSet set, Distress distress, Road? road = null) =>
        Decide(set, road ?? Road(), distress).Decisions.Single();

    public static RuleSet Set(string id) => PublishedRuleSets.Find(id)!;
}
