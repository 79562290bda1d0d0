using System.Globalization;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Evidence;
using Slabwright.Core.Pavement;
using Slabwright.Core.Survey;
using Slabwright.Core.Treatments;

namespace Slabwright.Sheets.Words;

/// <summary>
/// The printed word for every value of the model, the same on every sheet, table, map and drawing. Plain names come from
/// <see cref="TradeWords"/>; here stand the ones the sheets word otherwise.
/// </summary>
public static class SheetWords
{
    /// <summary>Treatment as printed.</summary>
    public static string Of(Treatment treatment) => Capital(TradeWords.Of(treatment));

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

    /// <summary>Names in a row, or the first ten and how many more.</summary>
    public static string Some(IReadOnlyList<string> names) => names.Count <= 12
        ? string.Join(", ", names)
        : string.Create(CultureInfo.InvariantCulture, $"{string.Join(", ", names.Take(10))} and {names.Count - 10} more");

    /// <summary>Severity as printed; empty for the types that have none.</summary>
    public static string Of(Severity severity) => severity == Severity.None ? "" : TradeWords.Of(severity);

    /// <summary>Distress name of the LTPP manual, or of the guidance that adds it.</summary>
    public static string Of(DistressType type) => Capital(TradeWords.Of(type));

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
        SourceStatus.Computed => "worked out",
        _ => "set by the project",
    };

    /// <summary>Weight of a finding.</summary>
    public static string Of(FindingLevel level) => Capital(TradeWords.Of(level));

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

    /// <summary>The words with a capital in front.</summary>
    internal static string Capital(string words) => words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];

    /// <summary>Plural of a counted thing: <c>1 repair</c>, <c>2 repairs</c>.</summary>
    public static string Count(int count, string one, string? many = null) =>
        $"{count.ToString("N0", CultureInfo.InvariantCulture)} {(count == 1 ? one : many ?? one + "s")}";
}
