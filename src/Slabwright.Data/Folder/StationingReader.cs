using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Pavement;

namespace Slabwright.Data.Folder;

/// <summary>Reads how a road's stations are written.</summary>
internal static class StationingReader
{
    /// <summary>The stationing, or null with findings.</summary>
    public static Stationing? Read(JsonFields road)
    {
        if (road.Object("stationing", required: true) is not { } fields) return null;
        var style = fields.Word<StationStyle>("style", required: true);
        var direction = fields.Whole("direction", -1, 1) ?? 1;
        if (direction == 0)
            fields.Bad("ROAD-009", "Stations grow or fall along the road.", "direction", "0", "Write 1 where stations grow in the direction of travel, -1 where they fall.");
        if (style is null || direction == 0) return null;
        var plain = new Stationing { Style = style.Value, Direction = direction };
        var start = fields.Has("start") ? Value(fields, "start", plain) : 0;
        var equations = Equations(fields, plain);
        return start is null || equations is null ? null : plain with { Start = start.Value, Equations = equations.Value };
    }

    private static ImmutableArray<StationEquation>? Equations(JsonFields fields, Stationing plain)
    {
        var equations = ImmutableArray.CreateBuilder<StationEquation>();
        var whole = true;
        foreach (var row in fields.Objects("equations"))
        {
            var at = row.Length("at", 0, double.MaxValue, required: true);
            var ahead = Value(row, "ahead", plain);
            var later = at is not null && (equations.Count == 0 || at > equations[^1].At);
            if (at is not null && !later)
                row.Bad("ROAD-030", "Station equations must stand in order along the road.", "at", at.Value.ToString("0.###", CultureInfo.InvariantCulture) + " m", "Sort the equations by place.");
            whole &= later && ahead is not null;
            if (later && ahead is not null) equations.Add(new(at!.Value, ahead.Value));
        }

        return whole ? equations.ToImmutable() : null;
    }

    private static double? Value(JsonFields fields, string name, Stationing plain)
    {
        if (fields.Text(name, required: true) is not { } text) return null;
        if (plain.TryParseValue(text, out var value)) return value;
        fields.Bad("ROAD-010", "The station cannot be read.", name, text, $"Write it as {plain.Format(12_345.6)}.");
        return null;
    }
}
