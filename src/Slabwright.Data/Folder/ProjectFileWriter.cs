using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Slabwright.Core.Evidence;
using Slabwright.Core.Job;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;

namespace Slabwright.Data.Folder;

/// <summary>Writes project.json.</summary>
internal static class ProjectFileWriter
{
    private static readonly JsonWriterOptions Options = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static string Write(Project project, FolderUnits units)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Options))
        {
            json.WriteStartObject();
            json.WriteString("name", project.Name);
            if (project.Owner.Length > 0) json.WriteString("owner", project.Owner);
            json.WriteString("units", units.System == UnitSystem.Si ? "si" : "us");
            json.WriteString("currency", project.Prices.Currency);
            WriteRoad(json, project.Road, units);
            WriteRuleSets(json, project);
            WriteSettings(json, project.Settings, units);
            JointSettingsFile.Write(json, project.Settings.Joints, units);
            SealingSettingsFile.Write(json, project.Settings.Sealing, units);
            LiftingSettingsFile.Write(json, project.Settings.Lifting, units);
            PressureSettingsFile.Write(json, project.Settings.Pressure, units);
            ConcreteWriter.Settings(json, project.Settings.Concrete, units.System);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }

    private static void WriteRoad(Utf8JsonWriter json, Road road, FolderUnits units)
    {
        json.WriteStartObject("road");
        json.WriteString("name", road.Name);
        Number(json, $"length_{units.Long}", units.LongText(road.Length));
        WriteStationing(json, road.Stationing, units);
        json.WriteStartObject("climate");
        json.WriteBoolean("freeze_thaw", road.Climate.FreezeThaw);
        if (road.Climate.FreezingIndex is { } index) Number(json, "freezing_index_c_days", ExactNumber.Write(index, Units.One));
        if (road.Climate.AnnualPrecipitation is { } rain) Number(json, $"annual_precipitation_{units.Small}", units.SmallText(rain));
        json.WriteEndObject();
        if (road.Traffic is { } traffic)
        {
            json.WriteStartObject("traffic");
            Number(json, "aadt_veh_per_day", ExactNumber.Write(traffic.Aadt, Units.One));
            Number(json, "truck_share", ExactNumber.Write(traffic.TruckShare, Units.One));
            Number(json, "growth_share_per_year", ExactNumber.Write(traffic.GrowthPerYear, Units.One));
            json.WriteEndObject();
        }

        if (road.Alignment is { } alignment)
        {
            json.WriteStartObject("alignment");
            json.WriteString("file", FolderFormat.Pieces.Name);
            json.WriteString("name", alignment.Name);
            json.WriteString("coordinate_system", alignment.CoordinateSystem);
            Number(json, $"start_offset_{units.Long}", units.LongText(alignment.StartOffset));
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private static void WriteStationing(Utf8JsonWriter json, Stationing stationing, FolderUnits units)
    {
        json.WriteStartObject("stationing");
        json.WriteString("style", TradeWords.Of(stationing.Style));
        json.WriteString("start", StationText(stationing.Start));
        json.WriteNumber("direction", stationing.Direction);
        if (!stationing.Equations.IsEmpty)
        {
            json.WriteStartArray("equations");
            foreach (var equation in stationing.Equations)
            {
                json.WriteStartObject();
                Number(json, $"at_{units.Long}", units.LongText(equation.At));
                json.WriteString("ahead", StationText(equation.Ahead));
                json.WriteEndObject();
            }

            json.WriteEndArray();
        }

        json.WriteEndObject();
    }

    /// <summary>A station value in metres, which every style reads and which loses nothing.</summary>
    private static string StationText(double value)
    {
        var text = value.ToString("R", CultureInfo.InvariantCulture);
        return (text.Contains('E', StringComparison.Ordinal) ? value.ToString("F20", CultureInfo.InvariantCulture) : text) + " m";
    }

    private static void WriteRuleSets(Utf8JsonWriter json, Project project)
    {
        json.WriteStartObject("rule_sets");
        json.WriteString("in_force", project.RuleSet.Id);
        json.WriteStartArray("compare");
        foreach (var set in project.OtherRuleSets) json.WriteStringValue(set.Id);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteSettings(Utf8JsonWriter json, ProjectSettings settings, FolderUnits units)
    {
        json.WriteStartObject("settings");
        Number(json, $"cut_step_{units.Small}", units.SmallText(settings.CutStep));
        if (settings.WorkDay is { } day) json.WriteString("work_day", day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        Number(json, $"station_range_{units.Long}", units.LongText(settings.StationRange));
        json.WriteNumber("trials", settings.Trials);
        json.WriteNumber("seed", settings.Seed);
        if (settings.Nights is { } nights) json.WriteNumber("nights", nights);
        Number(json, "loose_base_share", ExactNumber.Write(settings.LooseBaseShare, Units.One));
        Number(json, $"loose_base_depth_{units.Small}", units.SmallText(settings.LooseBaseDepth));
        json.WriteStartArray("growth");
        foreach (var rate in settings.Growth.Rates)
        {
            json.WriteStartObject();
            if (rate.Type is { } type) json.WriteString("type", TradeWords.Of(type));
            Number(json, $"low_per_year_{units.Small}", units.SmallText(rate.LengthPerYearLow));
            Number(json, $"likely_per_year_{units.Small}", units.SmallText(rate.LengthPerYearLikely));
            Number(json, $"high_per_year_{units.Small}", units.SmallText(rate.LengthPerYearHigh));
            Number(json, "new_share_per_year", ExactNumber.Write(rate.NewPerYear, Units.One));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    internal static void Number(Utf8JsonWriter json, string name, string text)
    {
        json.WritePropertyName(name);
        json.WriteRawValue(text);
    }
}
