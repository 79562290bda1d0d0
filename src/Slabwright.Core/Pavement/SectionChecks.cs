using System.Collections.Immutable;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Pavement;

/// <summary>Checks on pavement sections and earlier repairs.</summary>
internal static class SectionChecks
{
    /// <summary>Thicknesses outside this range draw a warning, m.</summary>
    private const double ThinnestUsual = 0.1, ThickestUsual = 0.45;

    /// <summary>The sections of a lane, sorted, from its start to its end without gap or overlap; empty when there is none.</summary>
    public static ImmutableArray<PavementSection> Sections(
        RoadLayout layout, LaneLayout lane, ImmutableArray<Finding>.Builder findings)
    {
        var rows = layout.Sections.Where(s => s.Lane == lane.Number && Usable(s, lane, findings)).OrderBy(s => s.Value.From).ToList();
        if (rows.Count == 0)
        {
            findings.Add(Missing(lane));
            return [];
        }

        var sections = new List<PavementSection>();
        foreach (var row in rows)
        {
            var reached = sections.Count == 0 ? lane.From : sections[^1].To;
            if (row.Value.From < reached - Tolerance && sections.Count > 0) findings.Add(Overlap(row, reached));
            else
            {
                if (row.Value.From > reached + Tolerance) Bridge(sections, row, lane, findings);
                sections.Add(row.Value);
            }
        }

        if (sections[^1].To < lane.To - Tolerance) findings.Add(Gap(rows[^1].Place, lane.Number, sections[^1].To, lane.To, "carried on"));
        sections[0] = sections[0] with { From = lane.From };
        sections[^1] = sections[^1] with { To = lane.To };
        return [.. sections];
    }

    /// <summary>The earlier repairs of a lane, sorted, on the lane and apart from one another.</summary>
    public static ImmutableArray<EarlierRepair> EarlierRepairs(
        RoadLayout layout, LaneLayout lane, ImmutableArray<Finding>.Builder findings)
    {
        var repairs = ImmutableArray.CreateBuilder<EarlierRepair>();
        foreach (var row in layout.EarlierRepairs.Where(r => r.Lane == lane.Number).OrderBy(r => r.Value.From))
        {
            var (from, to) = (row.Value.From, row.Value.To);
            if (!(from < to && from >= lane.From - Tolerance && to <= lane.To + Tolerance)) findings.Add(RepairOff(row, lane));
            else if (repairs.Count > 0 && from < repairs[^1].To - Tolerance) findings.Add(RepairTwice(row, repairs[^1]));
            else repairs.Add(row.Value);
        }

        return repairs.ToImmutable();
    }

    private const double Tolerance = 1e-6;

    private static bool Usable(OnLane<PavementSection> row, LaneLayout lane, ImmutableArray<Finding>.Builder findings)
    {
        var section = row.Value;
        var place = row.Place with { Lane = row.Lane, At = section.From };
        if (!(section.Thickness > 0 && section.OverlayThickness >= 0 && section.From < section.To
            && section.To > lane.From + Tolerance && section.From < lane.To - Tolerance))
        {
            findings.Add(new("ROAD-042", FindingLevel.Error, "The section has no thickness or does not lie on its lane.", place,
                $"{LaneChecks.Text(section.From)} to {LaneChecks.Text(section.To)} m", "Check from, to and thickness."));
            return false;
        }

        if (section.Thickness is < ThinnestUsual or > ThickestUsual)
        {
            findings.Add(new("ROAD-043", FindingLevel.Warning, "The slab's thickness is not one a road has.", place,
                LaneChecks.Text(section.Thickness) + " m", "Check the thickness and its unit in the column name.",
                $"{LaneChecks.Text(ThinnestUsual)} to {LaneChecks.Text(ThickestUsual)} m", "common practice"));
        }

        return true;
    }

    /// <summary>Carries the section before a gap on to its end, and says so.</summary>
    private static void Bridge(
        List<PavementSection> sections, OnLane<PavementSection> row, LaneLayout lane, ImmutableArray<Finding>.Builder findings)
    {
        var reached = sections.Count == 0 ? lane.From : sections[^1].To;
        findings.Add(Gap(row.Place, lane.Number, reached, row.Value.From, sections.Count == 0 ? "carried back" : "carried on"));
        if (sections.Count > 0) sections[^1] = sections[^1] with { To = row.Value.From };
    }

    private static Finding Gap(FindingPlace place, int lane, double from, double to, string how) => new(
        "ROAD-040", FindingLevel.Warning, $"No section covers a stretch of the lane; the neighbouring section is {how} over it.",
        place with { Lane = lane, At = from }, $"{LaneChecks.Text(from)} to {LaneChecks.Text(to)} m",
        "Let each section begin where the one before ends, from the start to the end of the lane.");

    private static Finding Overlap(OnLane<PavementSection> row, double reached) => new(
        "ROAD-041", FindingLevel.Error, "Two sections of the lane overlap; the first holds and this one is not used.",
        row.Place with { Lane = row.Lane, At = row.Value.From }, LaneChecks.Text(row.Value.From) + " m",
        "Let each section begin where the one before ends.", LaneChecks.Text(reached) + " m");

    private static Finding Missing(LaneLayout lane) => new(
        "ROAD-044", FindingLevel.Error, $"Lane {LaneChecks.Text(lane.Number)} has no section, so its slabs have no thickness.",
        lane.Place with { Lane = lane.Number }, null, "Add a row for the lane to sections.csv.");

    private static Finding RepairOff(OnLane<EarlierRepair> row, LaneLayout lane) => new(
        "ROAD-050", FindingLevel.Error, "The earlier repair does not lie on its lane from a start to a later end.",
        row.Place with { Lane = row.Lane, At = row.Value.From }, $"{LaneChecks.Text(row.Value.From)} to {LaneChecks.Text(row.Value.To)} m",
        "Check from, to and lane.", $"{LaneChecks.Text(lane.From)} to {LaneChecks.Text(lane.To)} m");

    private static Finding RepairTwice(OnLane<EarlierRepair> row, EarlierRepair other) => new(
        "ROAD-051", FindingLevel.Error, "Two earlier repairs of the lane overlap; the first holds and this one is not used.",
        row.Place with { Lane = row.Lane, At = row.Value.From }, LaneChecks.Text(row.Value.From) + " m",
        "Give touching repairs as one row, or mend the places.", $"the other ends at {LaneChecks.Text(other.To)} m");
}
