using System.Collections.Immutable;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Evidence;
using Slabwright.Core.Prices;
using Slabwright.Core.RuleSets;
using Slabwright.Core.Treatments;

namespace Slabwright.Core.Quantities;

/// <summary>What the reader of a take-off should know: work nobody is paid for, nights not planned, spacings assumed.</summary>
public static class QuantityFindings
{
    private const string Mend = "Add a pay item with this role, or state in the contract which item includes the work.";

    /// <summary>Findings for a measured plan.</summary>
    public static ImmutableArray<Finding> For(
        IReadOnlyList<Repair> repairs,
        IReadOnlyList<SurfaceWork> surfaceWorks,
        PriceList prices,
        JointLimits joints,
        MeasurementSettings settings)
    {
        var findings = ImmutableArray.CreateBuilder<Finding>();
        foreach (var role in Needed(repairs, surfaceWorks, settings).Where(r => prices.Find(r) is null))
        {
            findings.Add(new Finding(
                "QTY-008", FindingLevel.Warning, $"The plan needs {role}, which no pay item covers; its cost is not in the total.",
                new FindingPlace(Field: "role"), role.ToString(), Mend));
        }

        AddNights(findings, prices, settings);
        AddTieSpacing(findings, repairs, joints);
        return findings.ToImmutable();
    }

    /// <summary>Roles the plan's geometry calls for, in the order of <see cref="PayRole"/>.</summary>
    public static ImmutableArray<PayRole> Needed(
        IReadOnlyList<Repair> repairs, IReadOnlyList<SurfaceWork> surfaceWorks, MeasurementSettings settings)
    {
        var faces = repairs.SelectMany(r => r.LeftFace.Concat(r.RightFace)).Select(f => f.Face).ToHashSet();
        var ends = repairs.SelectMany(r => new[] { r.Start.Design, r.End.Design }).ToHashSet();
        var concrete = faces.Any(FaceMeasure.FacesConcrete);
        var needs = new (PayRole Role, bool Needed)[]
        {
            (PayRole.FullDepthArea, repairs.Count > 0),
            (PayRole.TransverseSawCut, repairs.Count > 0),
            (PayRole.LongitudinalSawCut, concrete),
            (PayRole.DrilledDowel, ends.Contains(JointDesign.Dowelled)),
            (PayRole.BasketDowel, repairs.Any(r => r.Intermediate.Any(j => j.Design == JointDesign.Dowelled))),
            (PayRole.TieBar, ends.Contains(JointDesign.Tied) || faces.Contains(LongitudinalFace.Tied)),
            (PayRole.IsolationBoard, faces.Contains(LongitudinalFace.Isolated)),
            (PayRole.TransverseSeal, repairs.Count > 0),
            (PayRole.LongitudinalSeal, concrete),
            (PayRole.ShoulderStrip, faces.Contains(LongitudinalFace.FormedAgainstShoulder)),
            (PayRole.EdgeForm, faces.Any(FaceMeasure.Formed)),
            (PayRole.BaseConcrete, repairs.Count > 0 && settings is { LooseBaseShare: > 0, LooseBaseDepth: > 0 }),
            (PayRole.PartialDepthArea, surfaceWorks.Any(w => w.Treatment == Treatment.PartialDepthRepair)),
            (PayRole.SealLength, surfaceWorks.Any(w => w.Treatment == Treatment.Seal)),
        };
        return [.. needs.Where(n => n.Needed).Select(n => n.Role)];
    }

    private static void AddNights(ImmutableArray<Finding>.Builder findings, PriceList prices, MeasurementSettings settings)
    {
        if (settings.Nights is not null || prices.Find(PayRole.TrafficControlNight) is not { } item) return;
        findings.Add(new Finding(
            "QTY-009", FindingLevel.Note, $"Nights are not planned yet, so item {item.Code} ({item.Name}) is not in the total.",
            new FindingPlace(Field: "nights"), Mend: "Give the number of nights in the project's settings."));
    }

    private static void AddTieSpacing(ImmutableArray<Finding>.Builder findings, IReadOnlyList<Repair> repairs, JointLimits joints)
    {
        var tied = repairs.Any(r => r.LeftFace.Concat(r.RightFace).Any(f => f.Face == LongitudinalFace.Tied));
        if (!tied || joints.TieBarSpacing is not null) return;
        findings.Add(new Finding(
            "QTY-010", FindingLevel.Warning, "The rule set ties lane joints but names no bar spacing; 30 in (0.762 m) was taken.",
            new FindingPlace(Field: "tie_bar_spacing"), Mend: "Give the spacing in the rule set.", Limit: "30 in",
            Source: "FHWA Concrete Pavement Preservation Guide (from memory)"));
    }
}
