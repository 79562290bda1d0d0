using System.Collections.Immutable;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Concrete.Opening;

namespace Slabwright.Data.Folder;

/// <summary>Reads the part <c>concrete</c> of project.json.</summary>
internal static class ConcreteSettingsReader
{
    private const double Mega = 1e6;

    /// <summary>The settings without mixes and breaks, with the defaults of <see cref="ConcreteSettings"/> where the file is silent.</summary>
    public static ConcreteSettings Read(JsonFields fields)
    {
        var plain = ConcreteSettings.Default;
        return plain with
        {
            CriterionKind = fields.Has("criterion") ? fields.Word<StrengthKind>("criterion") : null,
            CriterionStrength = fields.Measure("opening_strength", FieldKind.Strength, 0.1 * Mega, 80 * Mega),
            LeastAge = fields.Number("least_age_h", 0, 1000),
            Confidence = fields.Number("confidence", 0.5, 0.999) ?? plain.Confidence,
            PlacingTemperature = fields.Measure("placing_temperature", FieldKind.Temperature, 0, 45),
            ClockAhead = fields.Number("clock_ahead_h", -2, 2) ?? 0,
            Blanket = Blanket(fields),
            Form = Form(fields),
            Spread = Spread(fields, plain.Spread),
            Maturity = (fields.Has("maturity") ? fields.Word<MaturityKind>("maturity") : null) ?? plain.Maturity,
            Trials = fields.Whole("trials", 100, 1_000_000) ?? plain.Trials,
            Seed = fields.Whole("seed", 0, int.MaxValue) ?? plain.Seed,
            Nights = [.. Nights(fields)],
            LoggerColumns = [.. Loggers(fields)],
        };
    }

    private static BlanketCover? Blanket(JsonFields fields)
    {
        if (!fields.Has("blanket") || fields.Object("blanket") is not { } blanket) return null;
        var from = blanket.Number("from_h", 0, 1000) ?? 1;
        var to = blanket.Number("to_h", 0, 1000) ?? double.PositiveInfinity;
        var resistance = blanket.Number("resistance_m2k_per_w", 0.01, 5, required: true);
        if (to <= from) blanket.Bad("CON-071", "The blanket is taken off before it is laid.", "to_h", null, "Give hours after placing, the laying first.");
        return resistance is null || to <= from ? null : new BlanketCover(from, to, resistance.Value);
    }

    private static EdgeFormCover? Form(JsonFields fields)
    {
        if (!fields.Has("form") || fields.Object("form") is not { } form) return null;
        var plain = new EdgeFormCover(double.PositiveInfinity, 0.15);
        return new EdgeFormCover(form.Number("strip_h", 0, 1000) ?? plain.StripHours, form.Number("resistance_m2k_per_w", 0.001, 5) ?? plain.Resistance, form.Length("width", 0.5, 10) ?? plain.Width);
    }

    private static OpeningSpread Spread(JsonFields fields, OpeningSpread plain) =>
        !fields.Has("spread") || fields.Object("spread") is not { } spread
            ? plain
            : new OpeningSpread
            {
                Air = spread.Number("air_k", 0, 15) ?? plain.Air,
                Placing = spread.Number("placing_k", 0, 15) ?? plain.Placing,
                Strength = spread.Number("strength_share", 0, 0.5) ?? plain.Strength,
            };

    private static IEnumerable<WorkNight> Nights(JsonFields fields)
    {
        foreach (var night in fields.Objects("nights"))
        {
            var (day, from, by) = (night.Day("day"), night.Clock("placing_from", required: true), night.Clock("open_by", required: true));
            if (!night.Has("day")) night.Bad("ROAD-006", "A property every night needs is missing.", "day", null, "Add day, e.g. 2026-09-14.");
            var placed = night.Has("placed_at") ? night.Clock("placed_at") : null;
            if (day is null || from is null || by is null) continue;
            var made = new WorkNight(day.Value, from.Value, by.Value) { PlacedAt = placed };
            if (made.Placed >= made.Deadline)
            {
                night.Bad("CON-072", "Concrete is placed after the lane opens.", "placed_at", placed?.ToString("HH:mm", System.Globalization.CultureInfo.InvariantCulture), "Place between placing_from and open_by.");
                continue;
            }

            yield return made;
        }
    }

    private static IEnumerable<RememberedColumns> Loggers(JsonFields fields)
    {
        foreach (var logger in fields.Objects("logger_columns"))
        {
            var (headers, time) = (logger.Text("headers", required: true), logger.Text("time", required: true));
            var (date, form, fahrenheit) = (logger.Text("date"), logger.Text("time_form"), logger.YesNo("fahrenheit") ?? false);
            var channels = logger.Objects("channels").Select(c => (Header: c.Text("header", required: true), Place: c.Word<SlabPlace>("place", required: true)))
                .Where(c => c.Header is not null && c.Place is not null).Select(c => new RememberedChannel(c.Header!, c.Place!.Value)).ToImmutableArray();
            if (headers is not null && time is not null) yield return new RememberedColumns(headers, time, date, form, fahrenheit, channels);
        }
    }
}
