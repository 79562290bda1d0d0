using System.Collections.Immutable;
using Slabwright.Core.Measures;

namespace Slabwright.Core.Survey;

/// <summary>What a column of a survey or core file tells.</summary>
public enum SurveyField
{
    /// <summary>The surveyor's own identifier.</summary>
    Id,

    /// <summary>Lane number or word.</summary>
    Lane,

    /// <summary>Distress type.</summary>
    Type,

    /// <summary>Severity.</summary>
    Severity,

    /// <summary>Slab number.</summary>
    Slab,

    /// <summary>Place in the slab: start, middle, end, or the distance from the joint it starts at.</summary>
    InSlab,

    /// <summary>Joint number.</summary>
    Joint,

    /// <summary>Where it is.</summary>
    At,

    /// <summary>Where it starts.</summary>
    From,

    /// <summary>Where it ends.</summary>
    To,

    /// <summary>Length along the road.</summary>
    Extent,

    /// <summary>Length of the crack or spall.</summary>
    Length,

    /// <summary>Coordinate east.</summary>
    East,

    /// <summary>Coordinate north.</summary>
    North,

    /// <summary>Left side across the lane.</summary>
    OffsetFrom,

    /// <summary>Right side across the lane.</summary>
    OffsetTo,

    /// <summary>Wheel path or other place across the lane, in words.</summary>
    Across,

    /// <summary>Depth of damage.</summary>
    Depth,

    /// <summary>Width of crack or spall.</summary>
    Width,

    /// <summary>Faulting.</summary>
    Faulting,

    /// <summary>Area.</summary>
    Area,

    /// <summary>Bottom damage beyond what shows.</summary>
    WideningBelow,

    /// <summary>Number of like things in the row.</summary>
    Count,

    /// <summary>What made it.</summary>
    Cause,

    /// <summary>In or beside an earlier repair.</summary>
    BesideEarlierRepair,

    /// <summary>Come through an asphalt overlay.</summary>
    ThroughOverlay,

    /// <summary>Day of the survey.</summary>
    Date,

    /// <summary>Words.</summary>
    Note,

    /// <summary>Photo name, kept in the note.</summary>
    Photo,

    /// <summary>Thickness of a core.</summary>
    Thickness,
}

/// <summary>What a column's cells hold.</summary>
public enum ColumnKind
{
    /// <summary>Words.</summary>
    Text,

    /// <summary>A whole number.</summary>
    Whole,

    /// <summary>A plain number.</summary>
    Number,

    /// <summary>A place along the road: a station as the project writes it, or with a unit the distance from the road's start.</summary>
    Place,

    /// <summary>A length along or across the road; feet or metres unless told.</summary>
    LongLength,

    /// <summary>A small length; inches or millimetres unless told.</summary>
    SmallLength,

    /// <summary>A small length, or a share of the slab's thickness.</summary>
    Depth,

    /// <summary>An area; square feet or square metres unless told.</summary>
    Area,

    /// <summary>A day.</summary>
    Day,

    /// <summary>Yes or no.</summary>
    YesNo,
}

/// <summary>A column a file may have.</summary>
/// <param name="Field">What it tells.</param>
/// <param name="Name">The name Slabwright writes.</param>
/// <param name="Kind">What its cells hold.</param>
/// <param name="InSurvey">True in survey files.</param>
/// <param name="InCores">True in core files.</param>
/// <param name="Aliases">Other headings, apart from case, spaces, punctuation and units.</param>
/// <param name="Meaning">One line for the documentation.</param>
public sealed record SurveyColumn(
    SurveyField Field, string Name, ColumnKind Kind, bool InSurvey, bool InCores, ImmutableArray<string> Aliases, string Meaning);

/// <summary>The columns survey and core files may have, with their other headings; docs/steps/survey.md prints this table.</summary>
public static class SurveyColumns
{
    /// <summary>Every column.</summary>
    public static ImmutableArray<SurveyColumn> All { get; } =
    [
        new(SurveyField.Id, "id", ColumnKind.Text, true, true,
            ["distress id", "defect id", "core id", "core no", "core number", "core", "item", "ref", "reference", "uid", "tag", "record id"],
            "Your own identifier; keeps a row the same row when the file is read again."),
        new(SurveyField.Lane, "lane", ColumnKind.Text, true, true, ["lane no", "lane number", "ln", "lane id", "lane #", "traffic lane"],
            "Lane number from the left in the direction of travel, or left, right, middle, inside, outside, passing, driving."),
        new(SurveyField.Type, "type", ColumnKind.Text, true, false,
            ["distress", "distress type", "distress name", "distress code", "type code", "defect", "defect type", "code", "ltpp code",
             "ltpp", "damage", "damage type", "kind"],
            "Distress by LTPP name, number (4, 5a) or abbreviation."),
        new(SurveyField.Severity, "severity", ColumnKind.Text, true, false,
            ["sev", "severity level", "sev level", "level", "severity code", "rating", "severity rating"],
            "L, M or H; low, moderate or medium, high; 1, 2, 3. Empty for types without severities."),
        new(SurveyField.Slab, "slab", ColumnKind.Whole, true, true,
            ["slab no", "slab number", "slab id", "slab #", "panel", "panel no", "panel number", "panel id"], "Slab number in the lane."),
        new(SurveyField.InSlab, "in_slab", ColumnKind.Text, true, true,
            ["position", "position in slab", "slab position", "distance in slab", "distance from joint", "dist from joint", "dist in slab",
             "offset in slab", "place in slab", "from joint"],
            "Place in the slab: start, middle, end, or the distance from the joint the slab starts at."),
        new(SurveyField.Joint, "joint", ColumnKind.Whole, true, true, ["joint no", "joint number", "joint id", "joint #", "jt", "jt no"],
            "Joint number in the lane; joint n is where slab n starts."),
        new(SurveyField.At, "at", ColumnKind.Place, true, true,
            ["station", "sta", "stationing", "stn", "milepost", "mile post", "mile point", "milepoint", "mp", "mile marker", "kilometre post",
             "location", "chainage", "station at", "at station", "log mile"],
            "Where it is; where it starts when a length along the road is given."),
        new(SurveyField.From, "from", ColumnKind.Place, true, false,
            ["from station", "station from", "start", "begin", "begin station", "start station", "sta from", "from sta", "begin sta", "start sta",
             "from mp", "begin mp", "start mp", "from milepost", "begin milepost", "start milepost", "begin point", "start point", "sta 1", "bmp"],
            "Where it starts."),
        new(SurveyField.To, "to", ColumnKind.Place, true, false,
            ["to station", "station to", "end", "end station", "stop", "stop station", "sta to", "to sta", "end sta", "to mp", "end mp",
             "to milepost", "end milepost", "finish", "end point", "sta 2", "emp"],
            "Where it ends."),
        new(SurveyField.Extent, "extent", ColumnKind.LongLength, true, false,
            ["length along", "length along road", "extent along road", "longitudinal length", "distress length along"],
            "Length along the road."),
        new(SurveyField.Length, "length", ColumnKind.LongLength, true, false,
            ["len", "crack length", "spall length", "distress length", "lgth"],
            "Length of the crack or spall. Along the road for distresses that run along or cover an area, across it for the others."),
        new(SurveyField.East, "east", ColumnKind.Number, true, true, ["easting", "x", "x coord", "coord x", "pos x", "longitude", "lon", "long"],
            "Coordinate east, in the alignment's coordinate system."),
        new(SurveyField.North, "north", ColumnKind.Number, true, true, ["northing", "y", "y coord", "coord y", "pos y", "latitude", "lat"],
            "Coordinate north, in the alignment's coordinate system."),
        new(SurveyField.OffsetFrom, "offset_from", ColumnKind.LongLength, true, true,
            ["offset", "offset left", "left offset", "offset start", "lateral offset", "transverse offset", "lateral position", "offset 1"],
            "Left side of the damage from the lane's left edge."),
        new(SurveyField.OffsetTo, "offset_to", ColumnKind.LongLength, true, false, ["offset right", "right offset", "offset end", "offset 2"],
            "Right side of the damage from the lane's left edge."),
        new(SurveyField.Across, "across", ColumnKind.Text, true, false,
            ["wheel path", "wheelpath", "wp", "lane position", "position across", "lateral", "transverse position"],
            "Place across the lane: left or inner wheel path, right or outer wheel path, both, centre, left or right edge, full width."),
        new(SurveyField.Depth, "depth", ColumnKind.Depth, true, true,
            ["depth of damage", "damage depth", "spall depth", "distress depth", "deterioration depth", "depth below surface"],
            "Depth of the damage from the surface, as a length or a share of the slab."),
        new(SurveyField.Width, "width", ColumnKind.SmallLength, true, false,
            ["crack width", "spall width", "opening", "crack opening", "max width", "maximum width", "distress width"],
            "Width of the crack or spall."),
        new(SurveyField.Faulting, "faulting", ColumnKind.SmallLength, true, false,
            ["fault", "fault height", "faulting height", "step height", "faulted"], "Faulting; positive when the approach side is higher."),
        new(SurveyField.Area, "area", ColumnKind.Area, true, false, ["distress area", "damaged area", "affected area"], "Area."),
        new(SurveyField.WideningBelow, "widening_below", ColumnKind.SmallLength, true, true,
            ["widening", "bottom widening", "hidden widening", "below surface widening", "widening at bottom", "bottom extent",
             "sounding margin", "widening below surface"],
            "Bottom damage beyond what shows, to each side, from coring or sounding."),
        new(SurveyField.Count, "count", ColumnKind.Whole, true, false, ["occurrences", "number of", "distress count", "how many"],
            "Number of like things recorded in the row; 1 when empty."),
        new(SurveyField.Cause, "cause", ColumnKind.Text, true, false, ["reason", "mechanism", "probable cause", "likely cause"],
            "load, durability cracking (D), reactive aggregate (ASR), joint."),
        new(SurveyField.BesideEarlierRepair, "beside_earlier_repair", ColumnKind.YesNo, true, false,
            ["at repair", "beside repair", "earlier repair", "at earlier repair", "next to repair", "existing repair", "at existing repair",
             "adjacent to repair", "at old repair", "beside old repair", "at patch"],
            "Yes when it sits in or beside an earlier repair."),
        new(SurveyField.ThroughOverlay, "through_overlay", ColumnKind.YesNo, true, false,
            ["overlay", "reflected", "reflected through overlay", "reflective", "in overlay", "thru overlay"],
            "Yes when it has come through an asphalt overlay."),
        new(SurveyField.Date, "date", ColumnKind.Day, true, true,
            ["survey date", "surveyed", "surveyed on", "date surveyed", "inspection date", "date of survey", "inspected on", "day", "time",
             "timestamp", "datetime", "core date", "cored on", "date cored"],
            "Day it was seen."),
        new(SurveyField.Note, "note", ColumnKind.Text, true, true, ["notes", "comment", "comments", "remark", "remarks", "description", "memo"],
            "Your words."),
        new(SurveyField.Photo, "photo", ColumnKind.Text, true, true, ["photos", "picture", "image", "photo no", "photo id", "photo file"],
            "Photo name; kept with the note."),
        new(SurveyField.Thickness, "thickness", ColumnKind.SmallLength, false, true,
            ["core thickness", "slab thickness", "core length", "concrete thickness", "pcc thickness", "length"],
            "Thickness of the slab in the core."),
    ];

    private static readonly Dictionary<string, SurveyColumn> Survey = Index(c => c.InSurvey);
    private static readonly Dictionary<string, SurveyColumn> Cores = Index(c => c.InCores);

    /// <summary>The column of a field.</summary>
    public static SurveyColumn Of(SurveyField field) => All.First(c => c.Field == field);

    /// <summary>Finds a column by a heading without unit.</summary>
    /// <param name="heading">Heading.</param>
    /// <param name="cores">True for a core file.</param>
    internal static SurveyColumn? Find(string heading, bool cores) => (cores ? Cores : Survey).GetValueOrDefault(Words.Key(heading));

    /// <summary>The heading most like one that is not known, for the mend of a finding.</summary>
    internal static string? Nearest(string heading, bool cores)
    {
        var index = cores ? Cores : Survey;
        return Words.Nearest(Words.Key(heading), index.Keys) is { } near ? index[near].Name : null;
    }

    /// <summary>The unit a column's plain numbers are in when neither heading nor cell says otherwise.</summary>
    public static Unit? DefaultUnit(ColumnKind kind, UnitSystem system) => (kind, system) switch
    {
        (ColumnKind.LongLength, UnitSystem.UsCustomary) => Units.Foot,
        (ColumnKind.LongLength, _) => Units.Metre,
        (ColumnKind.SmallLength or ColumnKind.Depth, UnitSystem.UsCustomary) => Units.Inch,
        (ColumnKind.SmallLength or ColumnKind.Depth, _) => Units.Millimetre,
        (ColumnKind.Area, UnitSystem.UsCustomary) => Units.SquareFoot,
        (ColumnKind.Area, _) => Units.SquareMetre,
        _ => null,
    };

    private static Dictionary<string, SurveyColumn> Index(Func<SurveyColumn, bool> holds)
    {
        var index = new Dictionary<string, SurveyColumn>(StringComparer.Ordinal);
        foreach (var column in All.Where(holds))
        {
            foreach (var heading in column.Aliases.Prepend(column.Name)) index.TryAdd(Words.Key(heading), column);
        }

        index.Remove("");
        return index;
    }
}
