using System.Text;

namespace Slabwright.Examples.Ltpp;

/// <summary>Cuts the LTPP tables down to the columns the comparison reads; the recipe of the files in data/.</summary>
public static class Trimming
{
    private static readonly string[] Severities = ["L", "M", "H"];

    /// <summary>Tables and the columns kept. <c>*</c> stands for the three severities.</summary>
    private static readonly (string Table, string[] Columns)[] Kept =
    [
        ("mon_dis_jpcc_rev",
        [
            "STATE_CODE", "STATE_CODE_EXP", "SECTION_ID", "SURVEY_DATE", "CONSTRUCTION_NO", "CORNER_BREAKS_NO_*", "DURAB_CRACK_NO_*",
            "LONG_CRACK_L_*", "TRANS_CRACK_NO_*", "JOINT_SEAL_TRANS_NO_*", "LONG_SPALLING_L_*", "TRANS_SPALLING_NO_*", "SCALING_NO",
            "POLISH_AGG_A", "BLOWUPS_NO", "PATCH_FLEX_NO_*", "PATCH_RIGID_NO_*", "PUMPING_NO", "MAP_CRACK_NO", "SLAB_COUNT",
        ]),
        ("experiment_section",
            ["STATE_CODE", "SECTION_ID", "CONSTRUCTION_NO", "CN_ASSIGN_DATE", "CN_CHANGE_REASON", "GPS_SPS", "EXPERIMENT_NO", "DEASSIGN_DATE"]),
        ("mon_dis_jpcc_fault_sect", ["STATE_CODE", "SECTION_ID", "SURVEY_DATE", "CRACK_OR_JOINT", "AVG_WHEELPATH_FAULT"]),
        ("tst_l05b_pc_layers",
            ["STATE_CODE", "SECTION_ID", "CONSTRUCTION_NO", "LAYER_NO", "DESCRIPTION", "LAYER_TYPE", "REPR_THICKNESS", "MATL_CODE"]),
    ];

    /// <summary>Writes the trimmed tables, sorted as in the source.</summary>
    public static void Trim(string source, string target)
    {
        foreach (var (name, kept) in Kept)
        {
            var table = Table.Read(source, name);
            var columns = kept.SelectMany(c => c.EndsWith('*') ? Severities.Select(s => c[..^1] + s) : [c]).ToArray();
            var text = new StringBuilder().Append(string.Join(',', columns)).Append('\n');
            foreach (var row in table.Rows) text.Append(string.Join(',', columns.Select(c => Quoted(table.Text(row, c))))).Append('\n');
            File.WriteAllText(Path.Combine(target, name + ".csv"), text.ToString());
        }
    }

    private static string Quoted(string value) => value.Contains(',', StringComparison.Ordinal) ? $"\"{value}\"" : value;
}
