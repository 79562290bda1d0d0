using System.Globalization;
using Slabwright.Core.Pavement;
using Slabwright.Data.Folder;

namespace Slabwright.Examples.Ostrevad;

/// <summary>
/// A small SI example: a kilometre of an invented bypass with metres, decimal commas in the tables, falling stations and a centre line
/// in GeoJSON.
/// </summary>
public static class OstrevadBypass
{
    /// <summary>Name of the folder below <c>examples</c>.</summary>
    public const string FolderName = "ostrevad-bypass";

    private const string Readme = """
        # Ostrevad bypass

        A small example in SI units: one kilometre of an invented bypass, stations in metres falling in the direction of travel, tables
        parted by semicolons with decimal commas as many offices write them, a centre line in GeoJSON. Names, measurements and prices are
        made up. `dotnet run --project examples/generator -- examples` writes the files here again.
        """;

    private const string Project = """
        {
          "name": "Ostrevad bypass, southbound",
          "owner": "District of Ostrevad (invented)",
          "units": "si",
          "currency": "EUR",
          "road": {
            "name": "Ostrevad bypass",
            "length_m": 1040,
            "stationing": { "style": "metres", "start": "8+640.00", "direction": -1 },
            "climate": { "freeze_thaw": true, "annual_precipitation_mm": 720 },
            "traffic": { "aadt_veh_per_day": 9800, "truck_share": 0.18 },
            "alignment": { "file": "alignment.geojson", "name": "Ostrevad bypass" }
          },
          "joint_layouts": [
            { "from_station": "8+640.00", "to_station": "7+600.00", "spacing_m": 5, "kind": "dowelled" }
          ],
          "rule_sets": { "in_force": "common-practice", "compare": [] },
          "settings": { "cut_step_m": 0.1, "work_day": "2026-06-01", "station_range_m": 250, "trials": 500, "seed": 7, "nights": 3 },
          "joints": {
            "strength_mpa": 30,
            "rupture_mpa": 4.6,
            "coldest_c": -14,
            "hottest_c": 44,
            "anchor": "cement grout",
            "gang_drills": 5,
            "diameters_mm": [25, 28, 32, 38],
            "lengths_mm": [400, 450, 500]
          },
          "sealing": { "sealant": "hot pour", "seal_from_c": 8, "seal_to_c": 28, "surrounding_width_mm": 12, "allowable_strain": 0.25 },
          "lifting": {
            "equalised": true,
            "anchor_practice": "australian precast",
            "longest_piece_m": 2.5,
            "crane": {
              "name": "30 t mobile crane, invented chart",
              "share": 0.75,
              "rigging_mass_kg": 350,
              "chart": [
                { "radius_m": 3, "capacity_kg": 16000 }, { "radius_m": 4, "capacity_kg": 12500 }, { "radius_m": 6, "capacity_kg": 7800 }, { "radius_m": 8, "capacity_kg": 5200 }
              ]
            }
          },
          "pressure": {
            "closed_at_c": 22,
            "saw_from_hour": 9,
            "saw_to_hour": 16,
            "hours": [
              { "hour": 0, "slab_c": 22 }, { "hour": 1, "slab_c": 20 }, { "hour": 2, "slab_c": 18 }, { "hour": 3, "slab_c": 17 }, { "hour": 4, "slab_c": 17 }, { "hour": 5, "slab_c": 17 },
              { "hour": 6, "slab_c": 18 }, { "hour": 7, "slab_c": 20 }, { "hour": 8, "slab_c": 22 }, { "hour": 9, "slab_c": 25 }, { "hour": 10, "slab_c": 28 }, { "hour": 11, "slab_c": 31 },
              { "hour": 12, "slab_c": 34 }, { "hour": 13, "slab_c": 36 }, { "hour": 14, "slab_c": 38 }, { "hour": 15, "slab_c": 39 }, { "hour": 16, "slab_c": 39 }, { "hour": 17, "slab_c": 39 },
              { "hour": 18, "slab_c": 38 }, { "hour": 19, "slab_c": 36 }, { "hour": 20, "slab_c": 34 }, { "hour": 21, "slab_c": 31 }, { "hour": 22, "slab_c": 28 }, { "hour": 23, "slab_c": 25 }
            ]
          }
        }

        """;

    private const string Lanes = """
        lane | width_m | left_edge | right_edge
        1 | 3,50 | tied concrete shoulder | tied lane
        2 | 3,75 | tied lane | asphalt shoulder
        """;

    private const string Sections = """
        lane | from_m | to_m | kind | thickness_mm | base
        1 | 0 | 1040 | jointed plain | 240 | cement treated
        2 | 0 | 1040 | jointed plain | 260 | cement treated
        """;

    private const string Joints = """
        lane | at_m | kind
        2 | 312,4 | working crack
        2 | 707,6 | working crack
        """;

    private const string EarlierRepairs = """
        lane | from_m | to_m | year
        2 | 548,8 | 551,2 | 2012
        """;

    private const string Features = """
        kind | name | from_m | to_m
        exit ramp | Exit to the harbour | 860 | 1000
        """;

    private const string Survey = """
        id | lane | type | severity | from_station | to_station | length_m | width_mm | depth_mm | area_m2 | cause | date | note
        1 | 2 | Corner breaks | H | 8+595,0 | 8+593,6 | 2,0 | 8 | | | load | 2025-09-02 | rocks
        2 | 2 | Transverse cracking | H | 8+422,5 | 8+422,3 | 3,75 | 9 | | | load | 2025-09-02 |
        3 | 2 | Spalling of transverse joints | M | 8+340,1 | 8+339,9 | 1,8 | 110 | 60 | | joint | 2025-09-02 |
        4 | 2 | Joint deterioration | H | 8+275,6 | 8+274,4 | 3,75 | | 260 | | | 2025-09-02 | two pieces loose
        5 | 2 | Shattered slab | H | 8+239,9 | 8+235,1 | | | | 18 | load | 2025-09-02 |
        6 | 2 | Shattered slab | M | 8+234,9 | 8+230,1 | | | | 18 | load | 2025-09-02 |
        7 | 2 | Patch/patch deterioration | M | 8+088,9 | 8+088,4 | | | | 1,5 | load | 2025-09-02 | beside the repair of 2012
        8 | 1 | Longitudinal cracking | L | 8+110,0 | 8+106,4 | 3,6 | 2 | | | | 2025-09-03 |
        9 | 1 | Transverse joint seal damage | M | 8+050,0 | 8+050,0 | 3,5 | | | | | 2025-09-03 |
        10 | 2 | Durability ("D") cracking | M | 7+861,2 | 7+858,8 | | | | 4,5 | durability cracking | 2025-09-03 |
        11 | 2 | Transverse cracking | M | 7+722,5 | 7+722,5 | 3,75 | 5 | | | load | 2025-09-03 |
        12 | 2 | Blowups | | 7+640,9 | 7+639,2 | 3,75 | | | | joint | 2025-09-03 | filled with cold mix
        """;

    private const string Cores = """
        id | lane | station | offset_m | thickness_mm | depth_mm | widening_below_mm | date | note
        K1 | 2 | 8+275,0 | 2,8 | 258 | 258 | 140 | 2025-09-10 | lower half in rubble
        K2 | 2 | 8+100,0 | 1,0 | 262 | | | 2025-09-10 | sound
        """;

    private const string Prices = """
        code | name | role | unit | unit_price | size_classes | low_share | high_share | source
        100 | Site set-up | lump sum | lump sum | 24000 | | 0.9 | 1.2 | invented price
        110 | Traffic control, night | traffic control night | each | 4200 | | 0.9 | 1.2 | invented price
        200 | Slab replacement | full-depth area | m2 | 236 | 0=236; 12=205; 30=182 | 0.9 | 1.25 | invented price
        210 | Saw cut, transverse | transverse saw cut | m | 22 | | 0.9 | 1.2 | invented price
        211 | Saw cut, longitudinal | longitudinal saw cut | m | 17 | | 0.9 | 1.2 | invented price
        220 | Dowel, drilled | drilled dowel | each | 19 | | 0.9 | 1.2 | invented price
        230 | Transverse joint | transverse seal | m | 14 | | 0.9 | 1.2 | invented price
        250 | Asphalt shoulder strip | shoulder strip | m | 33 | | 0.9 | 1.2 | invented price
        300 | Partial-depth repair | partial-depth area | m2 | 390 | | 0.9 | 1.3 | invented price
        400 | Crack sealing | seal length | m | 6 | | 0.9 | 1.2 | invented price
        """;

    /// <summary>Writes the whole folder; the same files every time.</summary>
    public static void Write(string folder)
    {
        Files.Write(folder, "README.md", Readme);
        Files.Write(folder, "project.json", Project);
        Files.Write(folder, "alignment.geojson", CentreLine());
        foreach (var (name, text) in new[]
        {
            ("lanes.csv", Lanes), ("sections.csv", Sections), ("joints.csv", Joints), ("earlier_repairs.csv", EarlierRepairs),
            ("features.csv", Features), ("survey.csv", Survey), ("cores.csv", Cores),
        }) Files.Write(folder, name, Files.Table(text, ';'));
        Files.Write(folder, "prices.csv", Files.Table(Prices));
    }

    /// <summary>A gentle curve in mid-ocean, a point every twenty metres, as longitude and latitude.</summary>
    private static string CentreLine()
    {
        var plane = TransverseMercator.LocalAt(new(-37.2, 44.6));
        var line = new PlanPieces(new PlanPose(new(0, 0), -1.1)).Line(260).Spiral(0, -700, 100).Arc(-700, 380).Spiral(-700, 0, 100).Line(260).Alignment;
        var positions = Enumerable.Range(0, 54).Select(i => plane.Inverse(line.PoseAt(20 * i).Point))
            .Select(p => string.Create(CultureInfo.InvariantCulture, $"        [{p.Longitude:0.0000000}, {p.Latitude:0.0000000}]"));
        return $$"""
            {
              "type": "FeatureCollection",
              "features": [ {
                "type": "Feature",
                "properties": { "name": "Ostrevad bypass" },
                "geometry": { "type": "LineString", "coordinates": [
            {{string.Join(",\n", positions)}}
                ] }
              } ]
            }

            """;
    }
}
