using Slabwright.Core.Survey;

namespace Slabwright.Tests.Reference;

/// <summary>
/// The list of distress types for jointed concrete. Source of items 1 to 7: FHWA-HRT-13-092 (May 2014), chapter 2, Table 2. Names of items
/// 8 to 12: contents of the May 1993 edition of the manual, the same list. Severities and units: columns of the LTPP table
/// MON_DIS_JPCC_REV, which has one column per severity for rated types only.
/// </summary>
public class LtppDistressListTests
{
    private static readonly string[] Columns =
        File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "data", "survey", "ltpp_mon_dis_jpcc_rev_columns.csv")).Trim().Split(',');

    [Theory]
    [InlineData("1", "Corner breaks", "number", true)]
    [InlineData("2", "Durability (\"D\") cracking", "number of slabs, m2", true)]
    [InlineData("3", "Longitudinal cracking", "m", true)]
    [InlineData("4", "Transverse cracking", "number, m", true)]
    [InlineData("5a", "Transverse joint seal damage", "number", true)]
    [InlineData("5b", "Longitudinal joint seal damage", "number, m", false)]
    [InlineData("6", "Spalling of longitudinal joints", "m", true)]
    [InlineData("7", "Spalling of transverse joints", "number, m", true)]
    public void Table_2_of_the_manual_items_1_to_7(string code, string name, string units, bool severities)
    {
        var found = DistressCatalog.All.Single(n => n.Code == code);
        Assert.Equal((name, units, severities), (found.Name, found.Units, found.HasSeverities));
    }

    [Theory]
    [InlineData("8a", "Map Cracking")]
    [InlineData("8b", "Scaling")]
    [InlineData("9", "Polished Aggregate")]
    [InlineData("10", "Popouts")]
    [InlineData("11", "Blowups")]
    [InlineData("12", "Faulting of Transverse Joints and Cracks")]
    public void Contents_of_the_1993_edition_items_8_to_12(string code, string name)
    {
        Assert.True(DistressCatalog.TryFind(name, out var found));
        Assert.Equal(code, found.Code);
        Assert.Equal(name, found.Name, ignoreCase: true);
    }

    [Theory]
    [InlineData("CORNER_BREAKS", DistressType.CornerBreak)]
    [InlineData("DURAB_CRACK", DistressType.DurabilityCracking)]
    [InlineData("LONG_CRACK", DistressType.LongitudinalCracking)]
    [InlineData("TRANS_CRACK", DistressType.TransverseCracking)]
    [InlineData("JOINT_SEAL_TRANS", DistressType.TransverseJointSealDamage)]
    [InlineData("LONG_JT_SEAL", DistressType.LongitudinalJointSealDamage)]
    [InlineData("LONG_SPALLING", DistressType.LongitudinalJointSpalling)]
    [InlineData("TRANS_SPALLING", DistressType.TransverseJointSpalling)]
    [InlineData("MAP_CRACK", DistressType.MapCracking)]
    [InlineData("SCALING", DistressType.Scaling)]
    [InlineData("POLISH_AGG", DistressType.PolishedAggregate)]
    [InlineData("BLOWUPS", DistressType.Blowup)]
    [InlineData("PATCH_RIGID", DistressType.PatchDeterioration)]
    [InlineData("PUMPING", DistressType.WaterBleedingAndPumping)]
    public void Columns_of_the_monitoring_table(string stem, DistressType type)
    {
        var measures = Columns.Where(c => c.StartsWith(stem + "_", StringComparison.Ordinal)).Select(c => c[(stem.Length + 1)..]).ToList();
        var name = DistressCatalog.Of(type);
        var rated = measures.Any(m => m.EndsWith("_M", StringComparison.Ordinal)) && measures.Any(m => m.EndsWith("_H", StringComparison.Ordinal));
        Assert.Equal(rated, name.HasSeverities);
        var units = name.Units.Split(", ");
        Assert.Equal(measures.Any(m => m.StartsWith("NO", StringComparison.Ordinal)), units.Any(u => u.StartsWith("number", StringComparison.Ordinal)));
        Assert.Equal(measures.Any(m => m == "A" || m.StartsWith("A_", StringComparison.Ordinal)), units.Contains("m2"));
    }
}
