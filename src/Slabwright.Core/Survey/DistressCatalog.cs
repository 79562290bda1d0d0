using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Survey;

/// <summary>How a distress lies on the lane; decides what a length in the survey means.</summary>
public enum DistressSpread
{
    /// <summary>A line across the lane: its length is measured across, and it has one place along the road.</summary>
    Across,

    /// <summary>Across the lane at a transverse joint; a survey that names only the slab means the joint it starts at.</summary>
    AtJoint,

    /// <summary>A line or band along the road: its length is measured along.</summary>
    Along,

    /// <summary>An area; its length is measured along the road.</summary>
    Area,
}

/// <summary>A distress type with its names.</summary>
/// <param name="Type">The type.</param>
/// <param name="Code">Number in the LTPP list, or a letter code for types beyond it.</param>
/// <param name="Mark">Two letters used in identifiers; the same as on the strip.</param>
/// <param name="Name">Name in the LTPP list.</param>
/// <param name="Units">Units of measure in the LTPP list.</param>
/// <param name="HasSeverities">True when the type is rated low, moderate or high.</param>
/// <param name="Spread">How it lies on the lane.</param>
/// <param name="Aliases">Other ways it is written, apart from case, spaces and punctuation.</param>
/// <param name="Source">Where name, units and severities come from.</param>
public sealed record DistressName(
    DistressType Type, string Code, string Mark, string Name, string Units, bool HasSeverities, DistressSpread Spread,
    ImmutableArray<string> Aliases, SourceRef Source);

/// <summary>The names, codes and abbreviations surveys use for distress types.</summary>
/// <remarks>
/// Source: FHWA-HRT-13-092, chapter 2, Table 2 (names, units, severities). Aliases and abbreviations are common practice.
/// A crack that slants counts as transverse where it crosses the lane. Aliases are compared without case, spaces and punctuation.
/// </remarks>
public static class DistressCatalog
{
    private static readonly SourceRef Read = new("FHWA-HRT-13-092", "ch. 2, Table 2", SourceStatus.Verified);
    private static readonly SourceRef Recalled = new("FHWA-HRT-13-092", "ch. 2, Table 2", SourceStatus.FromMemory);
    private static readonly SourceRef Practice = SourceRef.CommonPractice;

    /// <summary>Every type in the order of the published list, then those beyond it.</summary>
    public static ImmutableArray<DistressName> All { get; } =
    [
        new(DistressType.CornerBreak, "1", "CB", "Corner breaks", "number", true, DistressSpread.AtJoint,
            ["corner break", "corner crack", "corner cracks", "corner cracking", "corner breaking", "broken corner", "cb", "cnr break", "cbrk"], Read),
        new(DistressType.DurabilityCracking, "2", "DC", "Durability (\"D\") cracking", "number of slabs, m2", true, DistressSpread.Area,
            ["durability cracking", "durability crack", "durability cracks", "d cracking", "d crack", "d cracks", "dc", "dcr",
             "durability cracking (\"D\" cracking)"], Read),
        new(DistressType.LongitudinalCracking, "3", "LC", "Longitudinal cracking", "m", true, DistressSpread.Along,
            ["longitudinal crack", "longitudinal cracks", "long crack", "long cracking", "long cracks", "longit crack", "longl crack", "lc", "lcr",
             "l crack", "longitudinal slab crack"], Read),
        new(DistressType.TransverseCracking, "4", "TC", "Transverse cracking", "number, m", true, DistressSpread.Across,
            ["transverse crack", "transverse cracks", "trans crack", "trans cracking", "trans cracks", "tc", "tcr", "t crack", "mid slab crack",
             "midslab crack", "mid panel crack", "diagonal crack", "diagonal cracking", "transverse slab crack", "working crack"], Read),
        new(DistressType.TransverseJointSealDamage, "5a", "TL", "Transverse joint seal damage", "number", true, DistressSpread.AtJoint,
            ["joint seal damage transverse", "transverse seal damage", "trans joint seal damage", "transverse joint sealant damage", "tjsd", "tsd",
             "joint seal damage of transverse joints", "transverse sealant damage", "transverse joint seal"], Read),
        new(DistressType.LongitudinalJointSealDamage, "5b", "LL", "Longitudinal joint seal damage", "number, m", false, DistressSpread.Along,
            ["joint seal damage longitudinal", "longitudinal seal damage", "long joint seal damage", "longitudinal joint sealant damage", "ljsd",
             "lsd", "joint seal damage of longitudinal joints", "longitudinal sealant damage", "longitudinal joint seal"], Read),
        new(DistressType.LongitudinalJointSpalling, "6", "LS", "Spalling of longitudinal joints", "m", true, DistressSpread.Along,
            ["longitudinal joint spalling", "longitudinal joint spall", "long joint spall", "long joint spalling", "longitudinal spalling",
             "longitudinal spall", "long spall", "long spalling", "spalling longitudinal", "spall longitudinal joint", "ljs", "ls",
             "spalling longitudinal joint", "spalling of longitudinal joint"], Read),
        new(DistressType.TransverseJointSpalling, "7", "TS", "Spalling of transverse joints", "number, m", true, DistressSpread.AtJoint,
            ["transverse joint spalling", "transverse joint spall", "trans joint spall", "trans joint spalling", "transverse spalling",
             "transverse spall", "trans spall", "trans spalling", "spalling transverse", "spall transverse joint", "tjs", "ts", "joint spall",
             "joint spalling", "spalling transverse joint", "spalling of transverse joint", "spalling of transvers joints"], Read),
        new(DistressType.MapCracking, "8a", "MC", "Map cracking", "number, m2", false, DistressSpread.Area,
            ["map crack", "map cracks", "mapcracking", "pattern cracking", "crazing", "mc"], Recalled),
        new(DistressType.Scaling, "8b", "SC", "Scaling", "number, m2", false, DistressSpread.Area,
            ["scale", "surface scaling", "scaled surface", "sc"], Recalled),
        new(DistressType.PolishedAggregate, "9", "PA", "Polished aggregate", "m2", false, DistressSpread.Area,
            ["polished aggregates", "polishing", "polished surface", "polished", "pa"], Recalled),
        new(DistressType.Popouts, "10", "PO", "Popouts", "not measured", false, DistressSpread.Area,
            ["popout", "pop out", "pop outs", "po"], Recalled),
        new(DistressType.Blowup, "11", "BU", "Blowups", "number", false, DistressSpread.AtJoint,
            ["blowup", "blow up", "blow ups", "buckling", "blowup buckling", "bu"], Recalled),
        new(DistressType.Faulting, "12", "FT", "Faulting of transverse joints and cracks", "mm", false, DistressSpread.AtJoint,
            ["faulting", "fault", "faulted joint", "faulted crack", "joint faulting", "transverse joint faulting", "step", "stepping", "ft", "flt",
             "faulting of transverse joint", "faulting of crack"], Recalled),
        new(DistressType.LaneToShoulderDropoff, "13", "SD", "Lane-to-shoulder dropoff", "mm", false, DistressSpread.Along,
            ["lane shoulder dropoff", "shoulder dropoff", "shoulder drop off", "lane to shoulder drop off", "lane shoulder drop off", "drop off",
             "dropoff", "edge drop", "lso"], Recalled),
        new(DistressType.LaneToShoulderSeparation, "14", "SS", "Lane-to-shoulder separation", "mm", false, DistressSpread.Along,
            ["lane shoulder separation", "shoulder separation", "lss"], Recalled),
        new(DistressType.PatchDeterioration, "15", "PT", "Patch/patch deterioration", "number, m2", true, DistressSpread.Area,
            ["patch", "patches", "patching", "patch deterioration", "deteriorated patch", "patch failure", "failed patch", "pd",
             "flexible patch", "asphalt patch", "rigid patch", "concrete patch", "repair deterioration", "deteriorated repair"], Recalled),
        new(DistressType.WaterBleedingAndPumping, "16", "WP", "Water bleeding and pumping", "number, m", false, DistressSpread.Along,
            ["water bleeding", "pumping", "bleeding and pumping", "water bleeding pumping", "pump", "pumping and water bleeding", "wp", "wbp"],
            Recalled),
        new(DistressType.JointDeterioration, "JD", "JD", "Joint deterioration", "number", true, DistressSpread.AtJoint,
            ["deteriorated joint", "joint breakdown", "joint disintegration", "deteriorated transverse joint", "joint failure", "failed joint",
             "broken joint"], Practice),
        new(DistressType.ShatteredSlab, "SH", "SH", "Shattered slab", "number of slabs", true, DistressSpread.Area,
            ["shattered", "divided slab", "broken slab", "shattered panel", "fractured slab", "intersecting cracks"], Practice),
        new(DistressType.ReactiveAggregate, "RA", "RA", "Reactive aggregate distress", "number of slabs, m2", true, DistressSpread.Area,
            ["reactive aggregate", "asr", "alkali silica reaction", "alkali silica", "alkali aggregate reaction", "aar", "acr",
             "alkali carbonate reaction"], Practice),
        new(DistressType.ReflectionCracking, "RC", "RC", "Reflection cracking", "number, m", true, DistressSpread.Across,
            ["reflection crack", "reflection cracks", "reflective crack", "reflective cracks", "reflective cracking", "reflected crack",
             "reflected joint", "joint reflection cracking", "joint reflection"], Practice),
    ];

    private static readonly Dictionary<DistressType, DistressName> ByType = All.ToDictionary(n => n.Type);
    private static readonly Dictionary<string, DistressName> ByKey = Index();

    /// <summary>The names of a type.</summary>
    public static DistressName Of(DistressType type) => ByType[type];

    /// <summary>Finds a type by number, name or abbreviation.</summary>
    public static bool TryFind(string text, [NotNullWhen(true)] out DistressName? name)
    {
        var key = Words.Key(text);
        if (ByKey.TryGetValue(key, out name)) return true;
        var bare = key.StartsWith("ltpp", StringComparison.Ordinal) ? key[4..] : key.StartsWith("jcp", StringComparison.Ordinal) ? key[3..] : "";
        if (ByKey.TryGetValue(bare, out name)) return true;
        return bare.Length == 0 && TryNumberedName(key, out name);
    }

    /// <summary>The name most like a text that is not one, for the mend of a finding; null when nothing comes near.</summary>
    public static string? Nearest(string text)
    {
        var key = Words.Key(text);
        return key.Length < 4 ? null : Words.Nearest(key, ByKey.Keys) is { } near ? ByKey[near].Name : null;
    }

    /// <summary>Reads "4. Transverse cracking" and "Transverse cracking (4)": a number of the list beside its own name.</summary>
    private static bool TryNumberedName(string key, [NotNullWhen(true)] out DistressName? name)
    {
        foreach (var candidate in All)
        {
            var code = Words.Key(candidate.Code);
            string? rest = null;
            if (key.StartsWith(code, StringComparison.Ordinal)) rest = key[code.Length..];
            else if (key.EndsWith(code, StringComparison.Ordinal)) rest = key[..^code.Length];
            if (rest is { Length: > 0 } && ByKey.TryGetValue(rest, out name) && name.Type == candidate.Type) return true;
        }

        name = null;
        return false;
    }

    private static Dictionary<string, DistressName> Index()
    {
        var index = new Dictionary<string, DistressName>(StringComparer.Ordinal);
        foreach (var name in All)
        {
            string[] spellings = [name.Code, name.Mark, name.Name, name.Type.ToString(), .. name.Aliases];
            foreach (var spelling in spellings) index.TryAdd(Words.Key(spelling), name);
        }

        return index;
    }
}
