using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Slabwright.Core.Evidence;
using Slabwright.Core.Job;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;
using Slabwright.Core.Prices;
using Slabwright.Core.RuleSets;

namespace Slabwright.Data.Folder;

/// <summary>Writes a project as a folder that reads back the same.</summary>
internal static class ProjectWriter
{
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    public static void Write(Project project, string folder)
    {
        Directory.CreateDirectory(folder);
        var units = new FolderUnits(project.UnitSystem);
        Text(folder, FolderFormat.ProjectFile, ProjectFileWriter.Write(project, units));
        Text(folder, FolderFormat.Lanes.Name, Lanes(project.Road, units));
        Text(folder, FolderFormat.Joints.Name, Joints(project.Road, units));
        Text(folder, FolderFormat.Sections.Name, Sections(project.Road, units));
        Text(folder, FolderFormat.EarlierRepairs.Name, EarlierRepairs(project.Road, units));
        Text(folder, FolderFormat.Features.Name, Features(project.Road, units));
        Text(folder, FolderFormat.NoCutZones.Name, NoCutZones(project.Road, units));
        Text(folder, FolderFormat.Prices.Name, Prices(project.Prices));
        Text(folder, FolderFormat.Overrides.Name, Overrides(project));
        var concrete = project.Settings.Concrete;
        if (!concrete.Mixes.IsEmpty) Text(folder, FolderFormat.Mixes.Name, ConcreteWriter.Mixes(concrete, project.UnitSystem));
        if (!concrete.Breaks.IsEmpty) Text(folder, FolderFormat.Breaks.Name, ConcreteWriter.Breaks(concrete, project.UnitSystem));
        if (!concrete.HeatCurves.IsEmpty) Text(folder, FolderFormat.HeatCurves.Name, NightWriter.Heats(concrete, project.UnitSystem));
        if (!concrete.IngredientPrices.IsEmpty) Text(folder, FolderFormat.IngredientPrices.Name, NightWriter.Prices(concrete));
        if (concrete.Worked.Any(w => w.Readings.Probes.Any(p => !p.Readings.IsEmpty))) Text(folder, FolderFormat.NightReadings.Name, NightWriter.Readings(concrete, project.UnitSystem));
        if (concrete.Worked.Any(w => !w.Specimens.IsEmpty)) Text(folder, FolderFormat.NightSpecimens.Name, NightWriter.Specimens(concrete, project.UnitSystem));
        Text(folder, "survey.csv", SurveyWriter.Survey(project.Survey, units));
        Text(folder, "cores.csv", SurveyWriter.Cores(project.Survey, units));
        if (project.Road.Alignment is { } alignment) Text(folder, FolderFormat.Pieces.Name, PieceTable.Write(alignment));
        foreach (var set in project.OtherRuleSets.Prepend(project.RuleSet).Where(s => !IsPublished(s)))
        {
            Directory.CreateDirectory(Path.Combine(folder, FolderFormat.RulesFolder));
            Text(folder, Path.Combine(FolderFormat.RulesFolder, set.Id + ".json"), RuleSetFile.Write(set));
        }
    }

    private static bool IsPublished(RuleSet set) => PublishedRuleSets.Find(set.Id) is { } found && (ReferenceEquals(found, set) || RuleSetFile.Write(found) == RuleSetFile.Write(set));

    private static void Text(string folder, string name, string text) => File.WriteAllText(Path.Combine(folder, name), text, Utf8);

    private static string Lanes(Road road, FolderUnits units)
    {
        var table = new CsvText();
        table.Add("lane", $"width_{units.Long}", $"from_{units.Long}", $"to_{units.Long}", "left_edge", "right_edge");
        foreach (var lane in road.Lanes)
            table.Add(Whole(lane.Number), units.LongText(lane.Width), units.LongText(lane.From), units.LongText(lane.To), TradeWords.Of(lane.LeftEdge), TradeWords.Of(lane.RightEdge));
        return table.ToString();
    }

    private static string Joints(Road road, FolderUnits units)
    {
        var table = new CsvText();
        table.Add("lane", $"at_{units.Long}", "kind", $"skew_run_{units.Long}");
        foreach (var lane in road.Lanes)
        {
            foreach (var joint in lane.Joints[1..^1])
                table.Add(Whole(lane.Number), units.LongText(joint.At), TradeWords.Of(joint.Kind), joint.SkewRun == 0 ? "" : units.LongText(joint.SkewRun));
        }

        return table.ToString();
    }

    private static string Sections(Road road, FolderUnits units)
    {
        var table = new CsvText();
        table.Add("lane", $"from_{units.Long}", $"to_{units.Long}", "kind", $"thickness_{units.Small}", "base", $"overlay_{units.Small}");
        foreach (var lane in road.Lanes)
        {
            foreach (var s in lane.Sections)
            {
                table.Add(Whole(lane.Number), units.LongText(s.From), units.LongText(s.To), TradeWords.Of(s.Kind), units.SmallText(s.Thickness), TradeWords.Of(s.Base),
                    s.OverlayThickness == 0 ? "" : units.SmallText(s.OverlayThickness));
            }
        }

        return table.ToString();
    }

    private static string EarlierRepairs(Road road, FolderUnits units)
    {
        var table = new CsvText();
        table.Add("lane", $"from_{units.Long}", $"to_{units.Long}", "year");
        foreach (var lane in road.Lanes)
        {
            foreach (var repair in lane.EarlierRepairs)
                table.Add(Whole(lane.Number), units.LongText(repair.From), units.LongText(repair.To), repair.Year is { } year ? Whole(year) : "");
        }

        return table.ToString();
    }

    private static string Features(Road road, FolderUnits units)
    {
        var table = new CsvText();
        table.Add("kind", "name", $"from_{units.Long}", $"to_{units.Long}");
        foreach (var f in road.Features) table.Add(TradeWords.Of(f.Kind), f.Name, units.LongText(f.From), units.LongText(f.To));
        return table.ToString();
    }

    private static string NoCutZones(Road road, FolderUnits units)
    {
        var table = new CsvText();
        table.Add("name", "lane", $"from_{units.Long}", $"to_{units.Long}");
        foreach (var z in road.NoCutZones) table.Add(z.Name, z.Lane is { } lane ? Whole(lane) : "", units.LongText(z.From), units.LongText(z.To));
        return table.ToString();
    }

    private static string Prices(PriceList prices)
    {
        var table = new CsvText();
        table.Add("code", "name", "role", "unit", "unit_price", "size_classes", "round_to", "least_pay", "low_share", "high_share", "source");
        foreach (var item in prices.Items)
        {
            var classes = item.SizeClasses.Select(c => $"{ExactNumber.Write(c.FromArea, item.Unit)}={Money(c.UnitPrice)}");
            table.Add(item.Code, item.Name, TradeWords.Of(item.Role), item.Unit.Symbol, Money(item.UnitPrice), string.Join("; ", classes),
                Number(item.RoundTo), Number(item.LeastPay), Number(item.LowShare), Number(item.HighShare), Source(item.Source));
        }

        return table.ToString();
    }

    private static string Overrides(Project project)
    {
        var table = new CsvText();
        table.Add("distress", "treatment", "because", "by", "on");
        foreach (var o in project.Overrides)
            table.Add(o.DistressId, TradeWords.Of(o.Treatment), o.Because, o.By, o.On?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "");
        return table.ToString();
    }

    private static string Source(SourceRef source) =>
        source == SourceRef.Project ? "" : source.Place.Length == 0 ? source.Tag : $"{source.Tag}, {source.Place}";

    private static string Whole(int value) => value.ToString(CultureInfo.InvariantCulture);

    private static string Number(double value) => ExactNumber.Write(value, Units.One);

    private static string Money(decimal value) => value.ToString(CultureInfo.InvariantCulture);
}

/// <summary>Units a folder is written in.</summary>
/// <param name="System">Units of the project.</param>
internal sealed record FolderUnits(UnitSystem System)
{
    /// <summary>Unit of lengths along and across the road.</summary>
    public Unit LongUnit => System == UnitSystem.Si ? Units.Metre : Units.Foot;

    /// <summary>Unit of thicknesses, widths and the like.</summary>
    public Unit SmallUnit => System == UnitSystem.Si ? Units.Millimetre : Units.Inch;

    public string Long => LongUnit.Symbol;

    public string Small => SmallUnit.Symbol;

    public string LongText(double metres) => ExactNumber.Write(metres, LongUnit);

    public string SmallText(double metres) => ExactNumber.Write(metres, SmallUnit);
}
