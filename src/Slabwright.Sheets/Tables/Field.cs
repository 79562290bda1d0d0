using Slabwright.Core.Measures;

namespace Slabwright.Sheets.Tables;

/// <summary>What a field holds.</summary>
internal enum FieldType
{
    Text,
    Whole,
    Number,
}

/// <summary>
/// One column of a table that leaves Slabwright: the same in CSV, workbook, GeoJSON and GeoPackage. The unit is part of the name
/// (<c>length_ft</c>); a missing value is null, never zero.
/// </summary>
/// <param name="Name">Column name.</param>
/// <param name="Type">What it holds.</param>
/// <param name="Decimals">Decimals written at most.</param>
/// <param name="Read">Value of a row: string, long, double, or null.</param>
internal sealed record Field<T>(string Name, FieldType Type, int Decimals, Func<T, object?> Read)
{
    public static Field<T> Text(string name, Func<T, string?> read) => new(name, FieldType.Text, 0, row => read(row) is { Length: > 0 } text ? text : null);

    public static Field<T> Whole(string name, Func<T, long?> read) => new(name, FieldType.Whole, 0, row => read(row));

    public static Field<T> Number(string name, int decimals, Func<T, double?> read) => new(name, FieldType.Number, decimals, row => Round(read(row), decimals));

    /// <summary>A measure given in its base unit and written in the unit, whose symbol ends the name.</summary>
    public static Field<T> Measure(string name, Unit unit, int decimals, Func<T, double?> read) =>
        Number($"{name}_{unit.Symbol}", decimals, row => read(row) is { } value ? unit.FromBase(value) : null);

    private static double? Round(double? value, int decimals)
    {
        if (value is not { } number) return null;
        var rounded = Math.Round(number, decimals, MidpointRounding.AwayFromZero);
        return rounded == 0 ? 0 : rounded;
    }
}
