using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Measures;

namespace Slabwright.Data.Folder;

/// <summary>A unit as names in files end in it.</summary>
/// <param name="Suffix">End of the name, e.g. <c>lb_per_yd3</c>.</param> <param name="Unit">The unit.</param>
public sealed record FolderMeasure(string Suffix, Unit Unit)
{
    /// <summary>Reads a number in the unit as its base value, offsets of temperatures included.</summary>
    public bool TryRead(string text, out double value)
    {
        if (Unit.Offset == 0) return ExactNumber.TryRead(text, Unit, out value);
        if (!double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out value) || !double.IsFinite(value)) return false;
        value = Unit.ToBase(value);
        return true;
    }

    /// <summary>Writes a base value in the unit, with as few decimals as bring it back.</summary>
    public string Write(double value)
    {
        if (Unit.Offset == 0) return ExactNumber.Write(value, Unit);
        var number = Unit.FromBase(value);
        for (var decimals = 0; decimals <= 10; decimals++)
        {
            var rounded = Math.Round(number, decimals);
            if (Unit.ToBase(rounded).Equals(value)) return rounded.ToString("R", CultureInfo.InvariantCulture);
        }

        return number.ToString("R", CultureInfo.InvariantCulture);
    }
}

/// <summary>Units of the measures that mixes and breaks have; the first of a kind is SI, the second US customary.</summary>
public static class FolderMeasures
{
    private static readonly ImmutableArray<FolderMeasure> Contents = [new("kg_per_m3", Units.KilogramPerCubicMetre), new("lb_per_yd3", Units.PoundPerCubicYard)];
    private static readonly ImmutableArray<FolderMeasure> Strengths = [new("mpa", Units.Megapascal), new("psi", Units.Psi)];
    private static readonly ImmutableArray<FolderMeasure> Temperatures = [new("c", Units.Celsius), new("f", Units.Fahrenheit)];
    private static readonly ImmutableArray<FolderMeasure> Speeds = [new("m_per_s", Units.MetrePerSecond), new("ft_per_s", new Unit("ft/s", Dimension.Speed, 0.3048))];

    private static readonly ImmutableArray<FolderMeasure> Heats = [new("kj_per_kg", new Unit("kJ/kg", Dimension.None, 1000)), new("btu_per_lb", new Unit("Btu/lb", Dimension.None, 2326))];

    /// <summary>Units of a kind of field; empty for kinds without such units.</summary>
    public static ImmutableArray<FolderMeasure> Of(FieldKind kind) => kind switch
    {
        FieldKind.Content => Contents,
        FieldKind.Strength => Strengths,
        FieldKind.Temperature => Temperatures,
        FieldKind.Speed => Speeds,
        FieldKind.Heat => Heats,
        _ => [],
    };

    /// <summary>The unit of a kind in a system of units.</summary>
    public static FolderMeasure Of(FieldKind kind, UnitSystem system) => Of(kind)[system == UnitSystem.Si ? 0 : 1];
}
