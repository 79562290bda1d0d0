using System.Collections.Immutable;

namespace Slabwright.Data.Folder;

/// <summary>What a column or property holds, and so how its name may end.</summary>
public enum FieldKind
{
    /// <summary>Free text.</summary>
    Text,

    /// <summary>One of the words listed.</summary>
    Words,

    /// <summary>A whole number.</summary>
    Whole,

    /// <summary>A plain number.</summary>
    Number,

    /// <summary>A day as 2026-04-01.</summary>
    Day,

    /// <summary>An hour as 2026-04-01T22:00.</summary>
    Hour,

    /// <summary>A time of a clock as 2026-04-01 22:05, seconds where they matter.</summary>
    Moment,

    /// <summary>A length; the name ends in its unit.</summary>
    Length,

    /// <summary>A place along the road: a station, or a length from the road's start with its unit.</summary>
    Place,

    /// <summary>Mass in a volume of concrete; the name ends in its unit.</summary>
    Content,

    /// <summary>A strength; the name ends in its unit.</summary>
    Strength,

    /// <summary>A temperature; the name ends in its unit.</summary>
    Temperature,

    /// <summary>A speed; the name ends in its unit.</summary>
    Speed,

    /// <summary>Heat of a mass of cementitious material; the name ends in its unit.</summary>
    Heat,
}

/// <summary>One column of a folder file.</summary>
/// <param name="Name">Name without its unit.</param>
/// <param name="Kind">What it holds.</param>
/// <param name="Required">True when every row needs it.</param>
/// <param name="Meaning">What it means.</param>
public sealed record FolderColumn(string Name, FieldKind Kind, bool Required, string Meaning)
{
    private static readonly string[] LengthUnits = ["ft", "in", "m", "mm"];
    private static readonly string[] PlaceUnits = ["station", "ft", "m", "mi", "km"];

    /// <summary>Headers under which the column is read.</summary>
    public ImmutableArray<string> Headers => Kind switch
    {
        FieldKind.Length => [.. LengthUnits.Select(u => $"{Name}_{u}")],
        FieldKind.Place => [.. PlaceUnits.Select(u => $"{Name}_{u}")],
        FieldKind.Content or FieldKind.Strength or FieldKind.Temperature or FieldKind.Speed or FieldKind.Heat => [.. FolderMeasures.Of(Kind).Select(m => $"{Name}_{m.Suffix}")],
        _ => [Name],
    };
}

/// <summary>A CSV file of the project folder.</summary>
/// <param name="Name">File name.</param>
/// <param name="Required">True when the folder must have it.</param>
/// <param name="Purpose">What it is for.</param>
/// <param name="Columns">Its columns.</param>
public sealed record FolderFile(string Name, bool Required, string Purpose, ImmutableArray<FolderColumn> Columns);

/// <summary>The CSV files of the project folder, column by column. docs/steps/project-folder.md prints the same tables and a test compares them.</summary>
public static class FolderFormat
{
    /// <summary>The project file.</summary>
    public const string ProjectFile = "project.json";

    /// <summary>Folder with rule sets of the project's own.</summary>
    public const string RulesFolder = "rules";

    private static readonly FolderColumn LaneColumn = new("lane", FieldKind.Whole, true, "Lane number from the left, starting at 1.");
    private static readonly FolderColumn FromColumn = new("from", FieldKind.Place, true, "Where it starts.");
    private static readonly FolderColumn ToColumn = new("to", FieldKind.Place, true, "Where it ends.");

    /// <summary>Lanes.</summary>
    public static FolderFile Lanes { get; } = new("lanes.csv", true, "The lanes, one row each.",
    [
        LaneColumn,
        new("width", FieldKind.Length, true, "Lane width."),
        new("from", FieldKind.Place, false, "Where the lane's concrete begins; empty: the start of the road."),
        new("to", FieldKind.Place, false, "Where it ends; empty: the end of the road."),
        new("left_edge", FieldKind.Words, true, "What lies to the left where no other lane does."),
        new("right_edge", FieldKind.Words, true, "What lies to the right where no other lane does."),
    ]);

    /// <summary>Joints one by one.</summary>
    public static FolderFile Joints { get; } = new("joints.csv", false, "Transverse joints and working cracks one by one, besides the layouts in project.json.",
    [
        LaneColumn,
        new("at", FieldKind.Place, true, "Where the joint crosses the middle of the lane."),
        new("kind", FieldKind.Words, true, "What the line is."),
        new("skew_run", FieldKind.Length, false, "Along the road from its left end to its right end; negative when the left end is further along; empty: square."),
    ]);

    /// <summary>Build-up.</summary>
    public static FolderFile Sections { get; } = new("sections.csv", true, "Build-up along each lane, without gaps.",
    [
        LaneColumn,
        FromColumn,
        ToColumn,
        new("kind", FieldKind.Words, true, "Whether the slabs carry mesh."),
        new("thickness", FieldKind.Length, true, "Slab thickness."),
        new("base", FieldKind.Words, true, "What the slab rests on."),
        new("overlay", FieldKind.Length, false, "Asphalt on top of the concrete; empty: bare."),
    ]);

    /// <summary>Earlier repairs.</summary>
    public static FolderFile EarlierRepairs { get; } = new("earlier_repairs.csv", false, "Full-depth repairs made in the past; their edges become joints.",
    [
        LaneColumn,
        FromColumn,
        ToColumn,
        new("year", FieldKind.Whole, false, "Year it was built; empty: unknown."),
    ]);

    /// <summary>Features.</summary>
    public static FolderFile Features { get; } = new("features.csv", false, "Bridges, ramps and marks to draw.",
    [
        new("kind", FieldKind.Words, true, "What it is."),
        new("name", FieldKind.Text, true, "Printed name."),
        FromColumn,
        ToColumn,
        new("approach_slab", FieldKind.Length, false, "For a bridge: length of the approach slab at each end (0: none). When given, the pavement ends at the deck and an expansion joint stands at the far end of each approach slab. Empty: the bridge is only drawn."),
    ]);

    /// <summary>No-cut zones.</summary>
    public static FolderFile NoCutZones { get; } = new("no_cut_zones.csv", false, "Stretches in which no transverse cut may fall.",
    [
        new("name", FieldKind.Text, true, "What is there."),
        new("lane", FieldKind.Whole, false, "Lane it holds for; empty: all lanes."),
        FromColumn,
        ToColumn,
    ]);

    /// <summary>Prices.</summary>
    public static FolderFile Prices { get; } = new("prices.csv", true, "The pay items in bid order.",
    [
        new("code", FieldKind.Text, true, "Item code as bid."),
        new("name", FieldKind.Text, true, "Item name as bid."),
        new("role", FieldKind.Words, true, "What the item pays for; fixes the measurement rule."),
        new("unit", FieldKind.Text, true, "Pay unit: ft, m, ft2, yd2, m2, yd3, m3, each or lump sum."),
        new("unit_price", FieldKind.Number, true, "Price per pay unit in the currency of project.json."),
        new("size_classes", FieldKind.Text, false, "Prices by size of one repair in pay units, ascending: `0=210; 12=185` is 210 below 12 and 185 from 12 on. Empty: one price."),
        new("round_to", FieldKind.Number, false, "Totals are rounded up to a multiple of this, in pay units; empty: 1."),
        new("least_pay", FieldKind.Number, false, "Least pay quantity of one repair, in pay units; empty: none."),
        new("low_share", FieldKind.Number, false, "Low price as a share of the price; empty: 1."),
        new("high_share", FieldKind.Number, false, "High price as a share of the price; empty: 1."),
        new("source", FieldKind.Text, false, "Where the price comes from."),
    ]);

    /// <summary>Overrides.</summary>
    public static FolderFile Overrides { get; } = new("overrides.csv", false, "The engineer's own decisions in place of the rules.",
    [
        new("distress", FieldKind.Text, true, "Identifier of the distress in survey.csv."),
        new("treatment", FieldKind.Words, true, "The choice."),
        new("because", FieldKind.Text, true, "The reason, printed on the sheets."),
        new("by", FieldKind.Text, false, "Who decided."),
        new("on", FieldKind.Day, false, "When."),
    ]);

    /// <summary>Concrete mixes.</summary>
    public static FolderFile Mixes { get; } = new("mixes.csv", false, "Concrete mixes, one row each: what is in a volume of compacted concrete, aggregates saturated and surface-dry.",
    [
        new("id", FieldKind.Text, true, "Identifier, unique."),
        new("name", FieldKind.Text, true, "Printed name."),
        new("class", FieldKind.Words, false, "Hours after which it is meant to open."),
        new("cement_kind", FieldKind.Words, true, "Cement."),
        new("cement", FieldKind.Content, true, "Cement."),
        new("fly_ash", FieldKind.Content, false, "Fly ash."),
        new("slag", FieldKind.Content, false, "Slag."),
        new("silica_fume", FieldKind.Content, false, "Silica fume."),
        new("water", FieldKind.Content, true, "Mixing water beyond what the aggregates hold."),
        new("coarse", FieldKind.Content, true, "Coarse aggregate."),
        new("fine", FieldKind.Content, true, "Fine aggregate."),
        new("air_share", FieldKind.Number, true, "Air, share of the volume."),
        new("accelerator", FieldKind.Words, false, "What speeds the setting; empty: none."),
        new("accelerator_dose_share", FieldKind.Number, false, "Its solids as a share of the cementitious mass."),
        new("price_per_m3", FieldKind.Number, false, "Price of a cubic metre delivered, currency of project.json; or price_per_yd3."),
        new("price_per_yd3", FieldKind.Number, false, "Price of a cubic yard delivered."),
        new("datum", FieldKind.Temperature, false, "Datum temperature of the temperature–time factor; empty: −10 °C (14 °F)."),
        new("activation_energy_j_per_mol", FieldKind.Number, false, "Activation energy measured on mortar of the mix; empty: 41,570 J/mol."),
    ]);

    /// <summary>Breaks of specimens.</summary>
    public static FolderFile Breaks { get; } = new("breaks.csv", false, "Specimens of the mixes, one row each.",
    [
        new("mix", FieldKind.Text, true, "Mix it was made of."),
        new("kind", FieldKind.Words, true, "How it was tested."),
        new("age_h", FieldKind.Number, true, "Age, h."),
        new("strength", FieldKind.Strength, true, "Strength."),
        new("curing_temp", FieldKind.Temperature, false, "Mean temperature it was cured at; empty: 23 °C (73.4 °F)."),
        new("factor_c_h", FieldKind.Number, false, "Temperature–time factor its logger showed, °C·h; empty: from age and curing temperature."),
        new("use", FieldKind.Words, false, "curve: the strength curve is fitted to it; check: it is held against the curve. Empty: curve."),
        new("pulse_velocity", FieldKind.Speed, false, "Pulse velocity before it was broken."),
    ]);

    /// <summary>Heat measured on mixes.</summary>
    public static FolderFile HeatCurves { get; } = new("heat_curves.csv", false, "Heat of mixes measured in a calorimeter at a steady temperature, one row a reading. A curve is fitted to it and goes before what composition tells; special rapid cements and non-chloride accelerators need it.",
    [
        new("mix", FieldKind.Text, true, "Mix it was measured on."),
        new("age_h", FieldKind.Number, true, "Time since mixing, h."),
        new("heat", FieldKind.Heat, true, "Heat freed since mixing, for each mass of cementitious material."),
        new("bath_temp", FieldKind.Temperature, true, "Temperature of the calorimeter; two of them 8 K (15 °F) apart also give the activation energy."),
    ]);

    /// <summary>Prices of ingredients.</summary>
    public static FolderFile IngredientPrices { get; } = new("ingredient_prices.csv", false, "Prices of ingredients, for mixes without a delivered price. One of the prices in each row; water without a row costs nothing.",
    [
        new("ingredient", FieldKind.Words, true, "Ingredient."),
        new("cement_kind", FieldKind.Words, false, "Cement the price holds for; empty: every cement without its own."),
        new("price_per_kg", FieldKind.Number, false, "Price of a kilogram, currency of project.json."),
        new("price_per_t", FieldKind.Number, false, "Price of 1,000 kg."),
        new("price_per_lb", FieldKind.Number, false, "Price of a pound."),
        new("price_per_ton", FieldKind.Number, false, "Price of 2,000 lb."),
    ]);

    /// <summary>Readings of the nights worked.</summary>
    public static FolderFile NightReadings { get; } = new("night_readings.csv", false, "Concrete temperatures of the nights worked, one row a reading, clock times of the project. Any logger's file can be brought into this form.",
    [
        new("night", FieldKind.Day, true, "Day on which the night began, as in project.json."),
        new("repair", FieldKind.Text, true, "Repair, or a name of the placement."),
        new("mix", FieldKind.Text, true, "Mix placed."),
        new("placed_at", FieldKind.Moment, true, "When it was placed, as 2026-05-04 22:10."),
        new("probe", FieldKind.Text, true, "Name of the probe."),
        new("place", FieldKind.Words, true, "Where it sits."),
        new("at", FieldKind.Moment, true, "When it was read."),
        new("temperature", FieldKind.Temperature, false, "Concrete temperature; empty where the sensor gave none."),
        new("factor_c_h", FieldKind.Number, false, "Temperature–time factor the logger showed, °C·h."),
    ]);

    /// <summary>Specimens of the nights worked.</summary>
    public static FolderFile NightSpecimens { get; } = new("night_specimens.csv", false, "Specimens kept with the slab and broken on the nights worked.",
    [
        new("night", FieldKind.Day, true, "Day on which the night began."),
        new("repair", FieldKind.Text, true, "Repair, as in night_readings.csv."),
        new("kind", FieldKind.Words, true, "How it was tested."),
        new("age_h", FieldKind.Number, true, "Age, h."),
        new("strength", FieldKind.Strength, true, "Strength."),
        new("curing_temp", FieldKind.Temperature, false, "Mean temperature it was kept at; this or the factor."),
        new("factor_c_h", FieldKind.Number, false, "Temperature–time factor its logger showed, °C·h."),
    ]);

    /// <summary>The centre line piece by piece.</summary>
    public static FolderFile Pieces { get; } = new("alignment.csv", false, "The centre line piece by piece, for a project without a LandXML or GeoJSON file; project.json names it.",
    [
        new("kind", FieldKind.Words, true, "line, arc or spiral; or chords for the first point of a run of chords and chord for each further one."),
        new("east", FieldKind.Length, true, "Start of the piece, east; only in metres."),
        new("north", FieldKind.Length, true, "Start of the piece, north; only in metres."),
        new("end_east", FieldKind.Length, false, "End of a line, east."),
        new("end_north", FieldKind.Length, false, "End of a line, north."),
        new("heading_rad", FieldKind.Number, false, "Direction at the start of an arc or spiral, radians anticlockwise from east."),
        new("curvature_per_m", FieldKind.Number, false, "One over the radius at the start of an arc or spiral; positive to the left; 0 for straight."),
        new("end_curvature_per_m", FieldKind.Number, false, "The same at the end of a spiral."),
        new("length", FieldKind.Length, false, "Length of an arc or spiral."),
    ]);

    /// <summary>Hourly traffic.</summary>
    public static FolderFile TrafficHourly { get; } = new("traffic_hourly.csv", false, "Traffic hour by hour, for closures. Checked and kept; not yet used.",
    [
        new("hour_lst", FieldKind.Hour, true, "Start of the hour in local standard time, without daylight saving."),
        new("volume_veh_per_h", FieldKind.Number, true, "Vehicles in the direction of the project, all lanes."),
        new("truck_share", FieldKind.Number, false, "Share of trucks, 0 to 1."),
    ]);

    /// <summary>Hourly weather.</summary>
    public static FolderFile WeatherHourly { get; } = new("weather_hourly.csv", false, "Weather hour by hour, for temperatures and opening of new concrete. Writing a project leaves it as it is.",
    [
        new("hour_lst", FieldKind.Hour, true, "Start of the hour in local standard time, without daylight saving."),
        new("air_temp_f", FieldKind.Number, false, "Air temperature, °F; or air_temp_c."),
        new("air_temp_c", FieldKind.Number, false, "Air temperature, °C."),
        new("humidity_share", FieldKind.Number, false, "Relative humidity, 0 to 1."),
        new("wind_mph", FieldKind.Number, false, "Wind speed, mph; or wind_m_per_s."),
        new("wind_m_per_s", FieldKind.Number, false, "Wind speed, m/s."),
        new("sun_w_per_m2", FieldKind.Number, false, "Sun on a level surface, W/m²."),
        new("cloud_share", FieldKind.Number, false, "Cloud cover, 0 to 1."),
        new("rain_in", FieldKind.Number, false, "Rain in the hour, in; or rain_mm."),
        new("rain_mm", FieldKind.Number, false, "Rain in the hour, mm."),
        new("air_temp_sd_f", FieldKind.Number, false, "How far a forecast of the air may be off, standard deviation, °F; or air_temp_sd_c. Where given it goes before the spread of project.json."),
        new("air_temp_sd_c", FieldKind.Number, false, "The same, K."),
        new("humidity_sd_share", FieldKind.Number, false, "The same of the humidity, 0 to 1."),
        new("wind_sd_mph", FieldKind.Number, false, "The same of the wind, mph; or wind_sd_m_per_s."),
        new("wind_sd_m_per_s", FieldKind.Number, false, "The same, m/s."),
        new("sun_sd_share", FieldKind.Number, false, "The same of the sun, share of its forecast."),
        new("cloud_sd_share", FieldKind.Number, false, "The same of the cloud, 0 to 1."),
    ]);

    /// <summary>Files that are checked and kept for later steps.</summary>
    public static ImmutableArray<FolderFile> Kept { get; } = [TrafficHourly, WeatherHourly];

    /// <summary>All files read as plain tables, in reading order.</summary>
    public static ImmutableArray<FolderFile> Files { get; } = [Lanes, Joints, Sections, EarlierRepairs, Features, NoCutZones, Prices, Overrides, Mixes, Breaks, HeatCurves, IngredientPrices, NightReadings, NightSpecimens, Pieces, TrafficHourly, WeatherHourly];
}
