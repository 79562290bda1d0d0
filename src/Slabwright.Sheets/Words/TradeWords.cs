using Slabwright.Core.Boundaries;
using Slabwright.Core.Evidence;
using Slabwright.Core.Pavement;
using Slabwright.Core.Survey;
using Slabwright.Core.Treatments;

namespace Slabwright.Sheets.Words;

/// <summary>The printed word for every value of the model, the same on every sheet, table, map and drawing.</summary>
public static class TradeWords
{
    /// <summary>Treatment as printed.</summary>
    public static string Of(Treatment treatment) => treatment switch
    {
        Treatment.Leave => "Leave",
        Treatment.Seal => "Seal",
        Treatment.PartialDepthRepair => "Partial-depth repair",
        Treatment.FullDepthRepair => "Full-depth repair",
        Treatment.SlabReplacement => "Slab replacement",
        _ => "Slab run",
    };

    /// <summary>Treatment in two or three letters for labels in the drawing.</summary>
    public static string CodeOf(Treatment treatment) => treatment switch
    {
        Treatment.Leave => "–",
        Treatment.Seal => "SEAL",
        Treatment.PartialDepthRepair => "PD",
        Treatment.FullDepthRepair => "FD",
        Treatment.SlabReplacement => "SLAB",
        _ => "RUN",
    };

    /// <summary>Severity as printed; empty for the types that have none.</summary>
    public static string Of(Severity severity) => severity switch
    {
        Severity.None => "",
        Severity.Low => "low",
        Severity.Moderate => "moderate",
        _ => "high",
    };

    /// <summary>Distress name of the LTPP manual, or of the guidance that adds it.</summary>
    public static string Of(DistressType type) => DistressKey.Of(type).Name;

    /// <summary>Two-letter code of a distress type, as printed beside it in the strip.</summary>
    public static string CodeOf(DistressType type) => DistressKey.Of(type).Code;

    /// <summary>How a new joint carries load.</summary>
    public static string Of(JointDesign design) => design switch
    {
        JointDesign.Dowelled => "Dowelled",
        JointDesign.Tied => "Tied",
        JointDesign.Undowelled => "Interlock",
        _ => "Isolated",
    };

    /// <summary>How a long side meets its neighbour.</summary>
    public static string Of(LongitudinalFace face) => face switch
    {
        LongitudinalFace.Isolated => "isolated",
        LongitudinalFace.Tied => "tied",
        LongitudinalFace.SharedWithRepair => "shared",
        LongitudinalFace.FormedAgainstShoulder => "form + shoulder",
        _ => "formed",
    };

    /// <summary>What a transverse line is.</summary>
    public static string Of(JointKind kind) => kind switch
    {
        JointKind.Dowelled => "joint",
        JointKind.Undowelled => "joint",
        JointKind.WorkingCrack => "working crack",
        JointKind.Expansion => "expansion joint",
        JointKind.EarlierRepairEdge => "earlier repair edge",
        _ => "pavement end",
    };

    /// <summary>How far a source was checked.</summary>
    public static string Of(SourceStatus status) => status switch
    {
        SourceStatus.Verified => "read in the source",
        SourceStatus.CommonPractice => "common practice",
        SourceStatus.FromMemory => "from memory",
        _ => "set by the project",
    };

    /// <summary>Weight of a finding.</summary>
    public static string Of(FindingLevel level) => level switch
    {
        FindingLevel.Note => "Note",
        FindingLevel.Warning => "Warning",
        _ => "Error",
    };

    /// <summary>What lies beyond a lane's edge.</summary>
    public static string Of(LaneEdge edge) => edge switch
    {
        LaneEdge.TiedLane => "tied lane",
        LaneEdge.UntiedLane => "untied lane",
        LaneEdge.TiedConcreteShoulder => "tied concrete shoulder",
        LaneEdge.AsphaltShoulder => "asphalt shoulder",
        LaneEdge.Curb => "curb and gutter",
        _ => "unpaved",
    };

    /// <summary>Plural of a counted thing: <c>1 repair</c>, <c>2 repairs</c>.</summary>
    public static string Count(int count, string one, string? many = null) =>
        $"{count.ToString("N0", System.Globalization.CultureInfo.InvariantCulture)} {(count == 1 ? one : many ?? one + "s")}";
}
