using System.Collections.Immutable;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Concrete.Night;
using Slabwright.Core.Concrete.Opening;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;

namespace Slabwright.Data.Folder;

/// <summary>Reads night_readings.csv and night_specimens.csv: what loggers and presses showed on the nights worked, in clock times of the project.</summary>
internal static class NightReader
{
    private static readonly FolderScene Nowhere = new(0, new Stationing { Style = StationStyle.Metres }, UnitSystem.Si);

    private sealed record Row(DateOnly Night, string Repair, string Mix, DateTime Placed, string Probe, SlabPlace Place, ProbeReading Reading);

    /// <summary>Placements in the order of their first reading, each with its specimens.</summary>
    public static ImmutableArray<WorkedNight> Read(string folder, List<Finding> findings)
    {
        var rows = FolderTable.Read(folder, FolderFormat.NightReadings, Nowhere, findings).Select(Of).OfType<Row>().ToArray();
        var placements = rows.GroupBy(r => (r.Night, r.Repair, r.Mix, r.Placed)).ToArray();
        var specimens = Specimens(folder, placements.Select(p => (p.Key.Night, p.Key.Repair, p.Key.Mix)).ToArray(), findings);
        return [.. placements.Select(p => new WorkedNight(p.Key.Night, Readings(p.Key.Repair, p.Key.Mix, p.Key.Placed, [.. p]), [.. specimens[(p.Key.Night, p.Key.Repair)]]))];
    }

    private static NightReadings Readings(string repair, string mix, DateTime placed, Row[] rows) => new()
    {
        Repair = repair, Mix = mix, PlacedAt = placed, File = FolderFormat.NightReadings.Name,
        Probes = [.. rows.GroupBy(r => (r.Probe, r.Place)).Select(p => new Probe(p.Key.Probe, p.Key.Place, [.. p.Select(r => r.Reading)]))],
    };

    private static Row? Of(FolderRow row)
    {
        var (night, placed, at) = (row.Day("night"), row.Moment("placed_at"), row.Moment("at"));
        var (repair, mix, probe) = (row.Text("repair"), row.Text("mix"), row.Text("probe"));
        var (place, warm, factor) = (row.Words<SlabPlace>("place"), row.Measure("temperature"), row.Number("factor_c_h"));
        row.Within("factor_c_h", factor, 0, 1e7, Units.One);
        if (placed is { } put && night is { } day && (put < day.ToDateTime(TimeOnly.MinValue) || put >= day.AddDays(2).ToDateTime(TimeOnly.MinValue)))
            row.Bad("CON-076", "Concrete was placed on another night than the row says.", "placed_at", put.ToString("s", System.Globalization.CultureInfo.InvariantCulture), "Give the day on which the night began.");
        return row.Good ? new Row(night!.Value, repair, mix, placed!.Value, probe, place!.Value, new ProbeReading(at!.Value, warm, row.Place.Row ?? 0) { Factor = factor }) : null;
    }

    private static ILookup<(DateOnly Night, string Repair), StrengthBreak> Specimens(
        string folder, (DateOnly Night, string Repair, string Mix)[] placements, List<Finding> findings)
    {
        var found = new List<(DateOnly Night, string Repair, StrengthBreak Break)>();
        foreach (var row in FolderTable.Read(folder, FolderFormat.NightSpecimens, Nowhere, findings))
        {
            var (night, repair, kind) = (row.Day("night"), row.Text("repair"), row.Words<StrengthKind>("kind"));
            var (age, strength, curing, factor) = (row.Number("age_h"), row.Measure("strength"), row.Measure("curing_temp"), row.Number("factor_c_h"));
            row.Within("age_h", age, 0.25, 100_000, Units.One);
            row.Within("strength", strength, 1e4, 2e8, Units.Megapascal);
            row.Within("curing_temp", curing, -5, 80, Units.Celsius);
            row.Within("factor_c_h", factor, 0.1, 1e7, Units.One);
            if (row.Good && curing is null && factor is null)
                row.Bad("CON-078", "Nothing says how warm the specimen was kept.", "curing_temp", null, "Fill in the mean temperature of the specimen, or the temperature–time factor of its logger.");
            var placement = placements.FirstOrDefault(p => p.Night == night && p.Repair == repair);
            if (row.Good && placement.Mix is null)
                row.Bad("CON-077", "night_readings.csv has no placement of this repair on this night.", "repair", repair, "Give night and repair as in night_readings.csv.");
            if (row.Good)
                found.Add((night!.Value, repair, new StrengthBreak(placement.Mix!, kind!.Value, age!.Value, strength!.Value) { Curing = curing ?? 23, Factor = factor, Row = row.Place.Row ?? 0 }));
        }

        return found.ToLookup(f => (f.Night, f.Repair), f => f.Break);
    }
}
