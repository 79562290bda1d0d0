using System.Globalization;
using Slabwright.Core.Concrete.Opening;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;

namespace Slabwright.Data.Folder;

/// <summary>Writes night_readings.csv, night_specimens.csv, heat_curves.csv and ingredient_prices.csv.</summary>
internal static class NightWriter
{
    public static string Readings(ConcreteSettings settings, UnitSystem units)
    {
        var warm = FolderMeasures.Of(FieldKind.Temperature, units);
        var table = new CsvText();
        table.Add("night", "repair", "mix", "placed_at", "probe", "place", "at", $"temperature_{warm.Suffix}", "factor_c_h");
        foreach (var worked in settings.Worked)
        {
            foreach (var probe in worked.Readings.Probes)
            {
                foreach (var reading in probe.Readings)
                {
                    table.Add(Day(worked.Day), worked.Readings.Repair, worked.Readings.Mix, Moment(worked.Readings.PlacedAt), probe.Name, TradeWords.Of(probe.Place), Moment(reading.At),
                        reading.Temperature is { } t ? warm.Write(t) : "", reading.Factor is { } f ? Plain(f) : "");
                }
            }
        }

        return table.ToString();
    }

    public static string Specimens(ConcreteSettings settings, UnitSystem units)
    {
        var (strength, warm) = (FolderMeasures.Of(FieldKind.Strength, units), FolderMeasures.Of(FieldKind.Temperature, units));
        var table = new CsvText();
        table.Add("night", "repair", "kind", "age_h", $"strength_{strength.Suffix}", $"curing_temp_{warm.Suffix}", "factor_c_h");
        foreach (var worked in settings.Worked)
        {
            foreach (var s in worked.Specimens)
                table.Add(Day(worked.Day), worked.Readings.Repair, TradeWords.Of(s.Kind), Plain(s.Hours), strength.Write(s.Strength), s.Factor is null ? warm.Write(s.Curing) : "", s.Factor is { } f ? Plain(f) : "");
        }

        return table.ToString();
    }

    public static string Heats(ConcreteSettings settings, UnitSystem units)
    {
        var (heat, warm) = (FolderMeasures.Of(FieldKind.Heat, units), FolderMeasures.Of(FieldKind.Temperature, units));
        var table = new CsvText();
        table.Add("mix", "age_h", $"heat_{heat.Suffix}", $"bath_temp_{warm.Suffix}");
        foreach (var h in settings.HeatCurves) table.Add(h.Mix, Plain(h.Hours), heat.Write(h.Heat), warm.Write(h.Bath));
        return table.ToString();
    }

    public static string Prices(ConcreteSettings settings)
    {
        var table = new CsvText();
        table.Add("ingredient", "cement_kind", "price_per_kg");
        foreach (var p in settings.IngredientPrices)
            table.Add(TradeWords.Of(p.Ingredient), p.Cement is { } c ? TradeWords.Of(c) : "", p.PerKilogram.ToString(CultureInfo.InvariantCulture));
        return table.ToString();
    }

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string Moment(DateTime time) => time.ToString(time.Second == 0 ? "yyyy-MM-dd HH:mm" : "yyyy-MM-dd HH:mm:ss", CultureInfo.InvariantCulture);

    private static string Plain(double value) => ExactNumber.Write(value, Units.One);
}
