using System.Collections.Immutable;

namespace Slabwright.Core.Concrete.Mixes;

/// <summary>Ingredients of concrete that have a price.</summary>
public enum Ingredient
{
    /// <summary>Cement.</summary>
    Cement,

    /// <summary>Fly ash.</summary>
    FlyAsh,

    /// <summary>Slag.</summary>
    Slag,

    /// <summary>Silica fume.</summary>
    SilicaFume,

    /// <summary>Mixing water.</summary>
    Water,

    /// <summary>Coarse aggregate.</summary>
    Coarse,

    /// <summary>Fine aggregate.</summary>
    Fine,

    /// <summary>Accelerator, solids.</summary>
    Accelerator,
}

/// <summary>Price of an ingredient.</summary>
/// <param name="Ingredient">The ingredient.</param>
/// <param name="Cement">Cement it holds for; null for every cement, and for other ingredients.</param>
/// <param name="PerKilogram">Price of a kilogram, currency of the project.</param>
public sealed record IngredientPrice(Ingredient Ingredient, CementKind? Cement, decimal PerKilogram);

/// <summary>Cost of concrete.</summary>
public static class MixCost
{
    /// <summary>Cost of a cubic metre: the delivered price, else the ingredients where each has a price; null when neither is known.</summary>
    /// <param name="mix">The mix.</param> <param name="prices">Prices of ingredients; empty where none is given.</param>
    public static decimal? PerCubicMetre(ConcreteMix mix, ImmutableArray<IngredientPrice> prices) => mix.Price ?? (prices.IsEmpty ? null : Of(mix, prices).Cost);

    /// <summary>Cost of a cubic metre, and the ingredients no price is given for; water without a price costs nothing.</summary>
    /// <param name="mix">The mix.</param> <param name="prices">Prices; one for the mix's own cement goes before one for every cement.</param>
    public static (decimal? Cost, ImmutableArray<Ingredient> Unpriced) Of(ConcreteMix mix, ImmutableArray<IngredientPrice> prices)
    {
        (Ingredient Ingredient, double Mass)[] parts =
        [
            (Ingredient.Cement, mix.Cement), (Ingredient.FlyAsh, mix.FlyAsh), (Ingredient.Slag, mix.Slag), (Ingredient.SilicaFume, mix.SilicaFume), (Ingredient.Water, mix.Water),
            (Ingredient.Coarse, mix.Coarse), (Ingredient.Fine, mix.Fine), (Ingredient.Accelerator, mix.AcceleratorDose * mix.Cementitious),
        ];
        var used = parts.Where(p => p.Mass > 0).Select(p => (p.Ingredient, p.Mass, Price: PriceOf(p.Ingredient, mix, prices))).ToArray();
        ImmutableArray<Ingredient> unpriced = [.. used.Where(u => u.Price is null && u.Ingredient != Ingredient.Water).Select(u => u.Ingredient)];
        return (unpriced.IsEmpty ? decimal.Round(used.Sum(u => (decimal)u.Mass * (u.Price ?? 0)), 2) : null, unpriced);
    }

    private static decimal? PriceOf(Ingredient ingredient, ConcreteMix mix, ImmutableArray<IngredientPrice> prices) => prices
        .Where(p => p.Ingredient == ingredient && (p.Cement is null || p.Cement == mix.CementKind)).OrderByDescending(p => p.Cement is not null).FirstOrDefault()?.PerKilogram;
}
