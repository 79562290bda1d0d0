using System.Globalization;
using Slabwright.Core.Pavement;
using Slabwright.Data.Folder;

namespace Slabwright.Examples.Marrowby;

/// <summary>The cores: at joints that looked sound from above and were not, and beside them.</summary>
internal static class CoreTable
{
    private const string Cores = """
        C01 | 2 | 412 | 9.5 | 9.1 | | | Sound. Base bound, core came out in one piece with it.
        C02 | 2 | 3187 | 3 | 8.9 | 8.9 | 5 | At joint. Lower half in rubble, void of about 1/2 in under the slab.
        C03 | 2 | 3402 | 9 | 8.8 | 8.8 | 7 | Mid-slab. Cracked full depth, water stood in the hole after ten minutes.
        C04 | 1 | 3395 | 6 | 9.2 | | | Sound beside the bad stretch of lane 2.
        C05 | 2 | 7861 | 9.5 | 10.1 | 10.1 | 9 | At joint. D-cracking from the bottom up, coarse aggregate split.
        C06 | 2 | 8460 | 2.5 | 10 | 10 | 11 | At joint. Bottom four inches lost, dowel rusted through.
        C07 | 1 | 8461 | 9.5 | 9.9 | 6.2 | 4 | At joint. D-cracking starts at the bottom, top sound.
        C08 | 2 | 9273 | 6 | 10.2 | | | Mid-slab between D-cracked joints: sound.
        C09 | 2 | 12241 | 9.5 | 9.8 | 9.8 | 6 | At joint. Mesh rusted through, granular base washed out two inches.
        C10 | 1 | 16840 | 3 | 10 | 3.1 | 0 | At a spall. Damage ends above mid-depth.
        C11 | 2 | 20118 | 9.5 | 10.1 | 10.1 | 3 | At corner break. Base stripped.
        C12 | 2 | 24103 | 6 | 9.9 | 9.9 | 8 | At joint under the overlay. Joint broken down over its depth.
        """;

    public static CsvText Text(Road road)
    {
        var table = new CsvText();
        table.Add("id", "lane", "station", "offset_ft", "thickness_in", "depth_in", "widening_below_in", "date", "note");
        foreach (var line in Cores.Split('\n', StringSplitOptions.TrimEntries))
        {
            var cells = line.Split('|', StringSplitOptions.TrimEntries);
            var at = double.Parse(cells[2], CultureInfo.InvariantCulture) * 0.3048;
            if (cells[7].Contains("At joint", StringComparison.Ordinal))
                at = road.LaneByNumber(int.Parse(cells[1], CultureInfo.InvariantCulture)).Joints.MinBy(j => Math.Abs(j.At - at)).At;
            table.Add(cells[0], cells[1], road.Stationing.Format(at), cells[3], cells[4], cells[5], cells[6], "2025-05-06", cells[7]);
        }

        return table;
    }
}
