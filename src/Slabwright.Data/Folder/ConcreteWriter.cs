using System.Globalization;
using System.Text.Json;
using Slabwright.Core.Concrete.Mixes;
using Slabwright.Core.Concrete.Opening;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;

namespace Slabwright.Data.Folder;

/// <summary>Writes mixes.csv, breaks.csv and the part <c>concrete</c> of project.json.</summary>
internal static class ConcreteWriter
{
    public static string Mixes(ConcreteSettings settings, UnitSystem units)
    {
        var (content, warm) = (FolderMeasures.Of(FieldKind.Content, units), FolderMeasures.Of(FieldKind.Temperature, units));
        var table = new CsvText();
        string[] contents = ["cement", "fly_ash", "slag", "silica_fume", "water", "coarse", "fine"];
        table.Add(["id", "name", "class", "cement_kind", .. contents.Select(c => $"{c}_{content.Suffix}"), "air_share", "accelerator", "accelerator_dose_share",
            "price_per_m3", $"datum_{warm.Suffix}", "activation_energy_j_per_mol"]);
        foreach (var mix in settings.Mixes)
        {
            double[] masses = [mix.Cement, mix.FlyAsh, mix.Slag, mix.SilicaFume, mix.Water, mix.Coarse, mix.Fine];
            table.Add([mix.Id, mix.Name, mix.Class is { } c ? TradeWords.Of(c) : "", TradeWords.Of(mix.CementKind), .. masses.Select(m => m == 0 ? "" : content.Write(m)),
                Plain(mix.Air), mix.Accelerator == Accelerator.None ? "" : TradeWords.Of(mix.Accelerator), mix.AcceleratorDose == 0 ? "" : Plain(mix.AcceleratorDose),
                mix.Price?.ToString(CultureInfo.InvariantCulture) ?? "", mix.Datum is { } d ? warm.Write(d) : "", mix.ActivationEnergy is { } e ? Plain(e) : ""]);
        }

        return table.ToString();
    }

    public static string Breaks(ConcreteSettings settings, UnitSystem units)
    {
        var (strength, warm, speed) = (FolderMeasures.Of(FieldKind.Strength, units), FolderMeasures.Of(FieldKind.Temperature, units), FolderMeasures.Of(FieldKind.Speed, units));
        var table = new CsvText();
        table.Add("mix", "kind", "age_h", $"strength_{strength.Suffix}", $"curing_temp_{warm.Suffix}", "factor_c_h", "use", $"pulse_velocity_{speed.Suffix}");
        foreach (var b in settings.Breaks)
        {
            table.Add(b.Mix, TradeWords.Of(b.Kind), Plain(b.Hours), strength.Write(b.Strength), warm.Write(b.Curing), b.Factor is { } f ? Plain(f) : "",
                b.IsCheck ? "check" : "", b.PulseVelocity is { } v ? speed.Write(v) : "");
        }

        return table.ToString();
    }

    public static void Settings(Utf8JsonWriter json, ConcreteSettings settings, UnitSystem units)
    {
        if (settings with { Mixes = [], Breaks = [], HeatCurves = [], IngredientPrices = [], Worked = [] } == ConcreteSettings.Default) return;
        json.WriteStartObject("concrete");
        if (settings.CriterionKind is { } kind) json.WriteString("criterion", TradeWords.Of(kind));
        Measure(json, "opening_strength", FieldKind.Strength, settings.CriterionStrength, units);
        if (settings.LeastAge is { } age) json.WriteNumber("least_age_h", age);
        json.WriteNumber("confidence", settings.Confidence);
        Measure(json, "placing_temperature", FieldKind.Temperature, settings.PlacingTemperature, units);
        if (settings.ClockAhead != 0) json.WriteNumber("clock_ahead_h", settings.ClockAhead);
        Blanket(json, settings.Blanket);
        Form(json, settings.Form, units);
        json.WriteStartObject("spread");
        json.WriteNumber("air_k", settings.Spread.Air);
        json.WriteNumber("placing_k", settings.Spread.Placing);
        json.WriteNumber("strength_share", settings.Spread.Strength);
        json.WriteEndObject();
        json.WriteString("maturity", TradeWords.Of(settings.Maturity));
        json.WriteNumber("trials", settings.Trials);
        json.WriteNumber("seed", settings.Seed);
        Nights(json, settings);
        Loggers(json, settings);
        json.WriteEndObject();
    }

    private static void Blanket(Utf8JsonWriter json, BlanketCover? blanket)
    {
        if (blanket is null) return;
        json.WriteStartObject("blanket");
        json.WriteNumber("from_h", blanket.FromHours);
        if (double.IsFinite(blanket.ToHours)) json.WriteNumber("to_h", blanket.ToHours);
        json.WriteNumber("resistance_m2k_per_w", blanket.Resistance);
        json.WriteEndObject();
    }

    private static void Form(Utf8JsonWriter json, EdgeFormCover? form, UnitSystem units)
    {
        if (form is null) return;
        json.WriteStartObject("form");
        if (double.IsFinite(form.StripHours)) json.WriteNumber("strip_h", form.StripHours);
        json.WriteNumber("resistance_m2k_per_w", form.Resistance);
        var unit = new FolderUnits(units).LongUnit;
        json.WritePropertyName($"width_{unit.Symbol}");
        json.WriteRawValue(ExactNumber.Write(form.Width, unit));
        json.WriteEndObject();
    }

    private static void Nights(Utf8JsonWriter json, ConcreteSettings settings)
    {
        json.WriteStartArray("nights");
        foreach (var night in settings.Nights)
        {
            json.WriteStartObject();
            json.WriteString("day", night.Day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
            json.WriteString("placing_from", night.PlacingFrom.ToString("HH:mm", CultureInfo.InvariantCulture));
            if (night.PlacedAt is { } at) json.WriteString("placed_at", at.ToString("HH:mm", CultureInfo.InvariantCulture));
            json.WriteString("open_by", night.OpenBy.ToString("HH:mm", CultureInfo.InvariantCulture));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Loggers(Utf8JsonWriter json, ConcreteSettings settings)
    {
        if (settings.LoggerColumns.IsEmpty) return;
        json.WriteStartArray("logger_columns");
        foreach (var logger in settings.LoggerColumns)
        {
            json.WriteStartObject();
            json.WriteString("headers", logger.Headers);
            json.WriteString("time", logger.Time);
            if (logger.Date is not null) json.WriteString("date", logger.Date);
            if (logger.TimeForm is not null) json.WriteString("time_form", logger.TimeForm);
            json.WriteBoolean("fahrenheit", logger.Fahrenheit);
            json.WriteStartArray("channels");
            foreach (var channel in logger.Channels)
            {
                json.WriteStartObject();
                json.WriteString("header", channel.Header);
                json.WriteString("place", TradeWords.Of(channel.Place));
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Measure(Utf8JsonWriter json, string name, FieldKind kind, double? value, UnitSystem units)
    {
        if (value is not { } known) return;
        var measure = FolderMeasures.Of(kind, units);
        json.WritePropertyName($"{name}_{measure.Suffix}");
        json.WriteRawValue(measure.Write(known));
    }

    private static string Plain(double value) => ExactNumber.Write(value, Units.One);
}
