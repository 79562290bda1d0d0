using System.Collections.Immutable;
using Slabwright.Core.Concrete.Hydration;
using Slabwright.Core.Concrete.Mixes;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;

namespace Slabwright.Data.Folder;

/// <summary>Reads heat_curves.csv and ingredient_prices.csv.</summary>
internal static class HeatCurveReader
{
    private const decimal Pound = 0.45359237m;

    private static readonly FolderScene Nowhere = new(0, new Stationing { Style = StationStyle.Metres }, UnitSystem.Si);

    /// <summary>Measured heat; rows of unknown mixes are named and left out.</summary>
    public static ImmutableArray<MeasuredHeat> Heats(string folder, ImmutableArray<ConcreteMix> mixes, List<Finding> findings)
    {
        var heats = ImmutableArray.CreateBuilder<MeasuredHeat>();
        foreach (var row in FolderTable.Read(folder, FolderFormat.HeatCurves, Nowhere, findings))
        {
            var (mix, age, heat, bath) = (row.Text("mix"), row.Number("age_h"), row.Measure("heat"), row.Measure("bath_temp"));
            row.Within("age_h", age, 0.05, 2000, Units.One);
            if (heat is { } freed && freed is < 0 or > 800_000)
                row.Bad("ROAD-009", "The value is out of range.", "heat", FormattableString.Invariant($"{heat / 1000:0} kJ/kg"), "Check the value and the unit in the column's name.", "0 to 800 kJ/kg");
            row.Within("bath_temp", bath, 0, 80, Units.Celsius);
            if (row.Good && mixes.All(m => m.Id != mix))
                row.Bad("CON-073", "mixes.csv has no mix with this identifier.", "mix", mix, "Give an identifier from mixes.csv, or remove the row.");
            if (row.Good) heats.Add(new MeasuredHeat(mix, age!.Value, heat!.Value, bath!.Value) { Row = row.Place.Row ?? 0 });
        }

        return heats.ToImmutable();
    }

    /// <summary>Prices of ingredients; a second price of the same ingredient is named and left out.</summary>
    public static ImmutableArray<IngredientPrice> Prices(string folder, List<Finding> findings)
    {
        var prices = ImmutableArray.CreateBuilder<IngredientPrice>();
        foreach (var row in FolderTable.Read(folder, FolderFormat.IngredientPrices, Nowhere, findings))
        {
            var (ingredient, cement) = (row.Words<Ingredient>("ingredient"), row.Words<CementKind>("cement_kind"));
            var price = Price(row);
            if (row.Good && cement is not null && ingredient != Ingredient.Cement)
                row.Bad("CON-079", "Only cement has a kind of cement.", "cement_kind", TradeWords.Of(cement.Value), "Leave the cell empty.");
            if (row.Good && prices.Any(p => p.Ingredient == ingredient && p.Cement == cement))
                row.Bad("ROAD-018", "The ingredient stands twice; the first row holds.", "ingredient", TradeWords.Of(ingredient!.Value), "Remove one of the two rows.");
            if (row.Good) prices.Add(new IngredientPrice(ingredient!.Value, cement, price!.Value));
        }

        return prices.ToImmutable();
    }

    /// <summary>Price of a kilogram from the one column that is filled, kept to a millionth.</summary>
    private static decimal? Price(FolderRow row)
    {
        var given = new[] { ("price_per_kg", 1m), ("price_per_t", 1000m), ("price_per_lb", Pound), ("price_per_ton", 2000 * Pound) }
            .Select(c => (Column: c.Item1, Mass: c.Item2, Price: row.Number(c.Item1))).Where(c => c.Price is not null).ToArray();
        foreach (var (column, _, price) in given) row.Within(column, price, 0, 100_000, Units.One);
        if (given.Length == 0) row.Bad("ROAD-006", "A value that every row needs is missing.", "price_per_kg", null, "Fill in price_per_kg, price_per_t, price_per_lb or price_per_ton.");
        if (given.Length > 1) row.Bad("ROAD-017", "The same value is given in two columns.", given[1].Column, null, $"Leave {given[0].Column} or {given[1].Column} empty.");
        return row.Good ? decimal.Round((decimal)given[0].Price!.Value / given[0].Mass, 6) : null;
    }
}
