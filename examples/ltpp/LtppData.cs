using System.Globalization;

namespace Slabwright.Examples.Ltpp;

/// <summary>Maintenance or rehabilitation recorded for a section on one day, by LTPP improvement codes.</summary>
public sealed record WorkEvent(DateOnly Day, IReadOnlySet<int> Codes)
{
    /// <summary>4 and 5: full-depth patching at and away from joints. 7: slab replacement.</summary>
    public bool IsFullDepth => Codes.Overlaps([4, 5, 7]);

    public bool HasSlabReplacement => Codes.Contains(7);

    /// <summary>19 and 43: asphalt overlay, new or recycled; 51 and 55: milled first.</summary>
    public bool IsOverlay => Codes.Overlaps([19, 43, 51, 55]);
}

/// <summary>One distress survey of a section: counts and lengths by column name of the LTPP table.</summary>
public sealed record SectionSurvey(SectionKey Section, DateOnly Day, int ConstructionNumber, double? Slabs, IReadOnlyDictionary<string, double> Values)
{
    /// <summary>The recorded value; what is blank in the table was not recorded and counts as none.</summary>
    public double Value(string column) => Values.GetValueOrDefault(column);
}

/// <summary>Concrete layer of a section under one construction number.</summary>
/// <param name="ConstructionNumber">Construction number.</param>
/// <param name="Number">Layer number, growing upward.</param>
/// <param name="Thickness">Thickness, m.</param>
/// <param name="Material">LTPP material code: 4 plain jointed, 5 reinforced jointed.</param>
public sealed record ConcreteLayer(int ConstructionNumber, int Number, double Thickness, int Material);

/// <summary>Everything known of one section.</summary>
public sealed record SectionHistory(
    SectionKey Key,
    string State,
    string Family,
    IReadOnlyList<SectionSurvey> Surveys,
    IReadOnlyList<WorkEvent> Events,
    IReadOnlyList<ConcreteLayer> Layers,
    IReadOnlyList<(DateOnly Day, double Faulting)> CrackFaulting,
    IReadOnlyList<(DateOnly Day, double Faulting)> JointFaulting,
    DateOnly ObservedUntil)
{
    public IEnumerable<WorkEvent> FullDepthEvents => Events.Where(e => e.IsFullDepth);
}

/// <summary>The trimmed LTPP tables, section by section.</summary>
public static class LtppData
{
    /// <summary>Sections with at least one distress survey, in order of state and number.</summary>
    public static IReadOnlyList<SectionHistory> Load(string folder)
    {
        var surveys = Surveys(Table.Read(folder, "mon_dis_jpcc_rev"), out var states).ToLookup(s => s.Section);
        var experiments = Table.Read(folder, "experiment_section");
        var sections = experiments.Rows.ToLookup(experiments.Section);
        var faulting = Table.Read(folder, "mon_dis_jpcc_fault_sect");
        var faults = faulting.Rows.ToLookup(faulting.Section);
        var layers = Table.Read(folder, "tst_l05b_pc_layers");
        var byLayer = layers.Rows.ToLookup(layers.Section);
        return [.. surveys.OrderBy(g => g.Key).Select(group =>
        {
            var key = group.Key;
            var own = group.OrderBy(s => s.Day).ToList();
            return new SectionHistory(
                key, states[key.State], Family(experiments, sections[key]), own, Events(experiments, sections[key]),
                Layers(layers, byLayer[key]), Faulting(faulting, faults[key], "C"), Faulting(faulting, faults[key], "J"),
                ObservedUntil(experiments, sections[key], own[^1].Day));
        })];
    }

    private static List<SectionSurvey> Surveys(Table table, out Dictionary<int, string> states)
    {
        states = [];
        var measured = table.Columns.Skip(5).ToList();
        var surveys = new List<SectionSurvey>();
        foreach (var row in table.Rows)
        {
            var key = table.Section(row);
            states[key.State] = table.Text(row, "STATE_CODE_EXP");
            var values = measured.Where(c => table.Number(row, c) is not null).ToDictionary(c => c, c => table.Number(row, c)!.Value);
            surveys.Add(new SectionSurvey(
                key, table.Day(row, "SURVEY_DATE")!.Value, table.Whole(row, "CONSTRUCTION_NO"), table.Number(row, "SLAB_COUNT"), values));
        }

        return surveys;
    }

    /// <summary>Events of one day in one record; a section that moved between experiments lists the same event more than once.</summary>
    private static List<WorkEvent> Events(Table table, IEnumerable<string[]> rows) =>
        [.. rows
            .Where(r => table.Text(r, "CN_CHANGE_REASON").Length > 0 && table.Day(r, "CN_ASSIGN_DATE") is not null)
            .GroupBy(r => table.Day(r, "CN_ASSIGN_DATE")!.Value)
            .Select(g => new WorkEvent(g.Key, g.SelectMany(r => Codes(table.Text(r, "CN_CHANGE_REASON"))).ToHashSet()))
            .OrderBy(e => e.Day)];

    private static IEnumerable<int> Codes(string list) =>
        list.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
            .Select(c => int.Parse(c, CultureInfo.InvariantCulture));

    /// <summary>The experiment a section belongs to: SPS-6 if ever, since its repairs followed the experiment's design; else the first.</summary>
    private static string Family(Table table, IEnumerable<string[]> rows)
    {
        var names = rows.OrderBy(r => table.Whole(r, "CONSTRUCTION_NO"))
            .Select(r => $"{(table.Text(r, "GPS_SPS") == "S" ? "SPS" : "GPS")}-{table.Text(r, "EXPERIMENT_NO")}").ToList();
        return names.Find(n => n == "SPS-6") ?? names.FirstOrDefault() ?? "not listed";
    }

    /// <summary>A section counts as observed to its last survey or its last day in the study, whichever is later.</summary>
    private static DateOnly ObservedUntil(Table table, IEnumerable<string[]> rows, DateOnly lastSurvey) =>
        rows.Select(r => table.Day(r, "DEASSIGN_DATE")).OfType<DateOnly>().Append(lastSurvey).Max();

    private static List<ConcreteLayer> Layers(Table table, IEnumerable<string[]> rows) =>
        [.. rows
            .Where(r => table.Number(r, "REPR_THICKNESS") is not null && table.Text(r, "MATL_CODE").Length > 0)
            .Select(r => new ConcreteLayer(
                table.Whole(r, "CONSTRUCTION_NO"), table.Whole(r, "LAYER_NO"), table.Number(r, "REPR_THICKNESS")!.Value * 0.0254,
                table.Whole(r, "MATL_CODE")))];

    /// <summary>Average wheel-path faulting in m; the table gives mm.</summary>
    private static List<(DateOnly, double)> Faulting(Table table, IEnumerable<string[]> rows, string place) =>
        [.. rows
            .Where(r => table.Text(r, "CRACK_OR_JOINT") == place && table.Number(r, "AVG_WHEELPATH_FAULT") is not null)
            .Select(r => (table.Day(r, "SURVEY_DATE")!.Value, table.Number(r, "AVG_WHEELPATH_FAULT")!.Value / 1000))
            .OrderBy(f => f.Item1)];
}
