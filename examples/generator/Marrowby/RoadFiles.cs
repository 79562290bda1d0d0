using Slabwright.Core.Pavement;

namespace Slabwright.Examples.Marrowby;

/// <summary>The files that describe the road itself.</summary>
internal static class RoadFiles
{
    /// <summary>Length of the road, ft: five miles.</summary>
    public const double LengthFt = 26_400;

    public const string Readme = """
        # Marrowby Parkway

        The demo project: five miles of an invented parkway on an invented island, eastbound, two lanes. Nobody built it, nobody drives on it;
        names, measurements, prices, traffic and weather are made up. `dotnet run --project examples/generator -- examples` writes every file
        here again, byte for byte; change the generator, not the files.

        `survey_with_mistakes.csv` is a practice file and not part of the project: it holds the kinds of slips surveys come with.
        """;

    private const string Project = """
        {
          "name": "Marrowby Parkway eastbound, full-depth repairs, Tolling Brook to Saltern Cross",
          "owner": "Roads Office of the Isle of Marrowby (invented)",
          "units": "us",
          "currency": "USD",
          "road": {
            "name": "Marrowby Parkway, eastbound",
            "length_ft": 26400,
            "stationing": {
              "style": "feet",
              "start": "412+00.0",
              "direction": 1,
              "equations": [ { "at_ft": 19400, "ahead": "607+20.0" } ]
            },
            "climate": { "freeze_thaw": true, "freezing_index_c_days": 310, "annual_precipitation_in": 38.5 },
            "traffic": { "aadt_veh_per_day": 21400, "truck_share": 0.14, "growth_share_per_year": 0.012 },
            "alignment": { "file": "alignment.xml", "name": "Marrowby Parkway EB", "start_offset_ft": 0 }
          },
          "joint_layouts": [
            { "from_ft": 0, "to_ft": 5280, "spacing_ft": [13, 19, 18, 12], "kind": "undowelled", "skew": "1:6" },
            { "lanes": [1, 2], "from_ft": 5280, "to_ft": 10560, "spacing_ft": 60, "kind": "dowelled" },
            { "lanes": [1, 2], "from_ft": 10560, "to_ft": 14520, "spacing_ft": 40, "kind": "dowelled" },
            { "from_ft": 14520, "to_ft": 26400, "spacing_ft": 20, "kind": "dowelled" }
          ],
          "rule_sets": { "in_force": "common-practice" },
          "settings": {
            "cut_step_in": 6,
            "work_day": "2026-05-04",
            "station_range_ft": 2640,
            "trials": 1000,
            "seed": 20260504,
            "nights": 24,
            "loose_base_share": 0.15,
            "loose_base_depth_in": 4,
            "growth": [
              { "low_per_year_in": 1, "likely_per_year_in": 3, "high_per_year_in": 6, "new_share_per_year": 0.03 },
              { "type": "durability cracking", "low_per_year_in": 3, "likely_per_year_in": 7, "high_per_year_in": 14, "new_share_per_year": 0.06 },
              { "type": "joint deterioration", "low_per_year_in": 2, "likely_per_year_in": 5, "high_per_year_in": 10, "new_share_per_year": 0.05 },
              { "type": "polished aggregate", "low_per_year_in": 0, "likely_per_year_in": 0, "high_per_year_in": 0, "new_share_per_year": 0 }
            ]
          },
          "joints": {
            "strength_psi": 4200,
            "rupture_psi": 640,
            "coldest_f": 4,
            "hottest_f": 118,
            "design_years": 20,
            "anchor": "epoxy",
            "gang_drills": 4,
            "gang_spacing_in": 12,
            "diameters_in": [1, 1.25, 1.5, 1.75],
            "lengths_in": [14, 16, 18]
          },
          "sealing": { "sealant": "silicone", "seal_from_f": 45, "seal_to_f": 90 },
          "lifting": {
            "heaviest_piece_lb": 14000,
            "legs": 4,
            "sling_angle_deg": 60,
            "pin_strength_lbf": 48000,
            "gear_strength_lbf": 66000,
            "crane": {
              "name": "40-ton truck crane, invented chart",
              "share": 0.75,
              "rigging_mass_lb": 900,
              "along_reach_ft": 8,
              "chart": [
                { "radius_ft": 10, "capacity_lb": 42000 }, { "radius_ft": 12, "capacity_lb": 36500 }, { "radius_ft": 15, "capacity_lb": 29000 },
                { "radius_ft": 20, "capacity_lb": 20500 }, { "radius_ft": 25, "capacity_lb": 14800 }, { "radius_ft": 30, "capacity_lb": 11200 }
              ]
            }
          },
          "pressure": {
            "closed_at_f": 72,
            "saw_from_hour": 23,
            "saw_to_hour": 7
          },
          "concrete": {
            "confidence": 0.95,
            "placing_temperature_f": 77,
            "clock_ahead_h": 1,
            "blanket": { "from_h": 1, "resistance_m2k_per_w": 0.35 },
            "nights": [
              { "day": "2026-05-04", "placing_from": "20:30", "placed_at": "22:00", "open_by": "05:00" },
              { "day": "2026-05-05", "placing_from": "20:30", "placed_at": "22:00", "open_by": "05:00" },
              { "day": "2026-05-08", "placing_from": "20:30", "placed_at": "23:00", "open_by": "09:00" }
            ]
          }
        }
        """;

    private const string Lanes = """
        lane | width_ft | from_ft | to_ft | left_edge | right_edge
        1 | 12 | | | tied concrete shoulder | tied lane
        2 | 12 | | | tied lane | asphalt shoulder
        3 | 12 | 16200 | 17420 | tied lane | asphalt shoulder
        """;

    private const string Sections = """
        lane | from_ft | to_ft | kind | thickness_in | base | overlay_in
        1 | 0 | 5280 | jointed plain | 9 | cement treated |
        1 | 5280 | 14520 | jointed reinforced | 10 | granular |
        1 | 14520 | 23800 | jointed plain | 10 | asphalt treated |
        1 | 23800 | 24640 | jointed plain | 10 | asphalt treated | 2.5
        1 | 24640 | 26400 | jointed plain | 10 | asphalt treated |
        2 | 0 | 5280 | jointed plain | 9 | cement treated |
        2 | 5280 | 14520 | jointed reinforced | 10 | granular |
        2 | 14520 | 23800 | jointed plain | 10 | asphalt treated |
        2 | 23800 | 24640 | jointed plain | 10 | asphalt treated | 2.5
        2 | 24640 | 26400 | jointed plain | 10 | asphalt treated |
        3 | 16200 | 17420 | jointed plain | 9 | asphalt treated |
        """;

    /// <summary>Mid-slab cracks of the reinforced stretch whose mesh has rusted through: they work like joints.</summary>
    private const string Joints = """
        lane | at_station | kind | skew_run_ft
        1 | 471+71.5 | working crack |
        1 | 480+66.0 | working crack |
        1 | 499+29.0 | working crack |
        1 | 522+61.5 | working crack |
        1 | 538+19.0 | working crack |
        2 | 437+23.0 | working crack | 1
        2 | 466+30.0 | working crack |
        2 | 472+28.5 | working crack |
        2 | 478+31.0 | working crack |
        2 | 482+50.0 | working crack | -1.5
        2 | 489+07.5 | working crack |
        2 | 491+46.0 | working crack |
        2 | 501+68.0 | working crack |
        2 | 508+33.0 | working crack |
        2 | 514+21.5 | working crack |
        2 | 521+78.0 | working crack |
        2 | 529+42.0 | working crack |
        2 | 533+79.0 | working crack |
        2 | 546+17.5 | working crack |
        2 | 551+82.0 | working crack |
        """;

    private const string EarlierRepairs = """
        lane | from_station | to_station | year
        1 | 428+12.0 | 428+20.0 | 2004
        1 | 476+97.0 | 477+05.0 | 2004
        1 | 503+96.0 | 504+06.0 | 2011
        1 | 574+17.0 | 574+43.0 | 2011
        2 | 424+90.0 | 424+98.0 | 2004
        2 | 445+99.0 | 446+15.0 | 2004
        2 | 458+40.0 | 458+50.0 |
        2 | 475+76.0 | 475+86.0 | 2004
        2 | 495+55.0 | 495+65.0 | 2011
        2 | 510+57.0 | 510+66.0 | 2011
        2 | 535+15.0 | 535+25.0 | 2011
        2 | 562+37.0 | 562+63.0 | 2016
        2 | 601+57.0 | 601+83.0 | 2016
        2 | 659+57.0 | 659+63.0 | 2016
        """;

    private const string Features = """
        kind | name | from_ft | to_ft | approach_slab_ft
        entrance ramp | Tolling Brook entrance | 420 | 1180 |
        exit ramp | Exit 8, Quillon Quarry Road | 16200 | 17420 |
        mark | Weather mast | 9040 | 9041 |
        bridge | Cobble Run bridge | 21340 | 21520 | 25
        mark | Start of asphalt overlay | 23800 | 23801 |
        """;

    private const string NoCutZones = """
        name | lane | from_ft | to_ft
        Detector loops at the weather mast | | 9015 | 9045
        Gore nose of Exit 8 | 2 | 17380 | 17440
        Cobble Run bridge and approach slabs | | 21315 | 21545
        """;

    /// <summary>Writes the files.</summary>
    public static void Write(string folder)
    {
        Files.Write(folder, "project.json", Project);
        Files.Write(folder, "lanes.csv", Files.Table(Lanes));
        Files.Write(folder, "sections.csv", Files.Table(Sections));
        Files.Write(folder, "joints.csv", Files.Table(Joints));
        Files.Write(folder, "earlier_repairs.csv", Files.Table(EarlierRepairs));
        Files.Write(folder, "features.csv", Files.Table(Features));
        Files.Write(folder, "no_cut_zones.csv", Files.Table(NoCutZones));
        Files.Write(folder, "alignment.xml", CentreLine().LandXml("Marrowby Parkway EB", "32624", "Marrowby Parkway"));
    }

    /// <summary>The centre line: on a grid in mid-ocean, where no road can be.</summary>
    private static PlanPieces CentreLine() =>
        new PlanPieces(new PlanPose(new PlanPoint(548_200, 4_866_350), 0.42))
            .Line(940)
            .Spiral(0, -900, 120).Arc(-900, 610).Spiral(-900, 0, 120)
            .Line(1_180)
            .Spiral(0, 1_250, 110).Arc(1_250, 720).Spiral(1_250, 760, 90).Arc(760, 430).Spiral(760, 0, 140)
            .Line(860)
            .Spiral(0, -1_600, 100).Arc(-1_600, 980).Spiral(-1_600, 0, 100)
            .Line(1_560);
}
