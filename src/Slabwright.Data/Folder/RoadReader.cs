using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Pavement;

namespace Slabwright.Data.Folder;

/// <summary>Reads the tables that describe the road and builds its lanes.</summary>
internal static class RoadReader
{
    /// <summary>The road, or null when not one lane can be built.</summary>
    public static Road? Read(string folder, ProjectHead head, List<Finding> findings)
    {
        var scene = head.Scene;
        var features = Features(folder, scene, findings);
        var built = LaneBuilder.Build(new RoadLayout
        {
            Length = scene.Length,
            Lanes = [.. Rows(folder, FolderFormat.Lanes, scene, findings, Lane)],
            Patterns = head.Patterns,
            Joints = [.. Rows(folder, FolderFormat.Joints, scene, findings, Joint)],
            Bridges = [.. features.Select(f => f.Deck).OfType<BridgeDeck>()],
            Sections = [.. Rows(folder, FolderFormat.Sections, scene, findings, Section)],
            EarlierRepairs = [.. Rows(folder, FolderFormat.EarlierRepairs, scene, findings, Repair)],
        });
        findings.AddRange(built.Findings);
        if (built.Lanes.IsEmpty) return null;
        return new Road
        {
            Name = head.RoadName,
            Length = scene.Length,
            Stationing = scene.Stationing,
            Lanes = built.Lanes,
            Climate = head.Climate,
            Traffic = head.Traffic,
            Alignment = head.Alignment,
            NoCutZones = [.. Rows(folder, FolderFormat.NoCutZones, scene, findings, (row, _) => Zone(row, built.Lanes))],
            Features = [.. features.Select(f => f.Feature)],
        };
    }

    private static List<T> Rows<T>(
        string folder, FolderFile file, FolderScene scene, List<Finding> findings, Func<FolderRow, FolderScene, T> read)
    {
        var good = new List<T>();
        foreach (var row in FolderTable.Read(folder, file, scene, findings))
        {
            var value = read(row, scene);
            if (row.Good) good.Add(value);
        }

        return good;
    }

    private static LaneLayout Lane(FolderRow row, FolderScene scene) => new()
    {
        Number = row.Whole("lane") ?? 0,
        Width = row.Length("width") ?? 0,
        From = row.At("from") ?? 0,
        To = row.At("to") ?? scene.Length,
        LeftEdge = row.Words<LaneEdge>("left_edge") ?? default,
        RightEdge = row.Words<LaneEdge>("right_edge") ?? default,
        Place = row.Place,
    };

    private static ListedJoint Joint(FolderRow row, FolderScene scene) => new(
        row.Whole("lane") ?? 0,
        new(row.At("at") ?? 0, row.Words<JointKind>("kind") ?? default, row.Length("skew_run") ?? 0),
        row.Place);

    private static OnLane<PavementSection> Section(FolderRow row, FolderScene scene)
    {
        var (from, to) = row.Stretch();
        return new(
            row.Whole("lane") ?? 0,
            new(from, to, row.Words<PavementKind>("kind") ?? default, row.Length("thickness") ?? 0, row.Words<BaseKind>("base") ?? default,
                row.Length("overlay") ?? 0),
            row.Place);
    }

    private static OnLane<EarlierRepair> Repair(FolderRow row, FolderScene scene)
    {
        var (from, to) = row.Stretch();
        var year = row.Whole("year");
        if (year is < 1900 or > 2100) row.Bad("ROAD-009", "The year is out of range.", "year", null, "Write the year with four digits.", "1900 to 2100");
        return new(row.Whole("lane") ?? 0, new(from, to, year), row.Place);
    }

    private static NoCutZone Zone(FolderRow row, ImmutableArray<Lane> lanes)
    {
        var (from, to) = row.Stretch();
        var lane = row.Whole("lane");
        if (lane is not null && lanes.All(l => l.Number != lane))
            row.Bad("ROAD-024", "There is no such lane on this road.", "lane", null, "Give the number of a lane in lanes.csv, or leave it empty for all lanes.");
        return new(row.Text("name"), lane, from, to);
    }

    private static List<(RoadFeature Feature, BridgeDeck? Deck)> Features(string folder, FolderScene scene, List<Finding> findings) =>
        Rows(folder, FolderFormat.Features, scene, findings, (row, _) =>
        {
            var (from, to) = row.Stretch();
            var kind = row.Words<FeatureKind>("kind") ?? default;
            var approach = row.Length("approach_slab");
            if (approach is < 0 or > 60) row.Bad("ROAD-009", "The approach slab's length is out of range.", "approach_slab", null, "Check the length and its unit.", "0 to 60 m");
            if (approach is not null && kind != FeatureKind.Bridge)
                row.Bad("ROAD-009", "Only a bridge has approach slabs.", "approach_slab", null, "Leave the column empty, or let kind be bridge.");
            return (new RoadFeature(kind, row.Text("name"), from, to), approach is null ? null : new BridgeDeck(from, to, approach.Value));
        });
}
