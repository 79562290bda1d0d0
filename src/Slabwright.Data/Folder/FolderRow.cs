using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;

namespace Slabwright.Data.Folder;

/// <summary>
/// One row of a folder file. Reading a field that is missing or wrong adds a finding and marks the row as bad; the caller reads all
/// fields, so that all faults of a row are named at once, and then asks <see cref="Good"/>.
/// </summary>
internal sealed class FolderRow(FolderTable table, int line, string[] cells, FolderScene scene)
{
    /// <summary>False once any field of the row could not be used.</summary>
    public bool Good { get; private set; } = true;

    /// <summary>Where the row is.</summary>
    public FindingPlace Place { get; } = new(table.File.Name, line);

    public string Text(string name)
    {
        var text = Cell(name);
        if (text.Length == 0 && Column(name).Required) Missing(name);
        return text;
    }

    public int? Whole(string name)
    {
        var text = Text(name);
        if (text.Length == 0) return null;
        if (int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number)) return number;
        NotANumber(name, text, "a whole number");
        return null;
    }

    public double? Number(string name)
    {
        var text = Text(name);
        if (text.Length == 0) return null;
        if (ExactNumber.TryRead(table.Plain(text), Units.One, out var number)) return number;
        NotANumber(name, text, "a number");
        return null;
    }

    public T? Words<T>(string name) where T : struct, Enum
    {
        var text = Text(name);
        if (text.Length == 0) return null;
        if (TradeWords.TryRead<T>(text, out var member)) return member;
        Bad("ROAD-008", "The word is not one this column knows.", name, text, "Use one of: " + TradeWords.All<T>() + ".");
        return null;
    }

    public DateOnly? Day(string name)
    {
        var text = Text(name);
        if (text.Length == 0) return null;
        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)) return day;
        Bad("ROAD-015", "The day cannot be read.", name, text, "Write year, month and day as 2026-04-01.");
        return null;
    }

    public DateTime? Hour(string name)
    {
        var text = Text(name);
        if (text.Length == 0) return null;
        if (DateTime.TryParseExact(text, ["yyyy-MM-dd'T'HH:mm", "yyyy-MM-dd HH:mm", "yyyy-MM-dd'T'HH:mm:ss", "yyyy-MM-dd HH:mm:ss"], CultureInfo.InvariantCulture, DateTimeStyles.None, out var hour)
            && hour is { Minute: 0, Second: 0 }) return hour;
        Bad("ROAD-090", "The hour cannot be read.", name, text, "Write the start of the hour as 2026-04-01T22:00.");
        return null;
    }

    public DateTime? Moment(string name)
    {
        var text = Text(name);
        if (text.Length == 0) return null;
        if (DateTime.TryParseExact(text, ["yyyy-MM-dd HH:mm", "yyyy-MM-dd'T'HH:mm", "yyyy-MM-dd HH:mm:ss", "yyyy-MM-dd'T'HH:mm:ss"], CultureInfo.InvariantCulture, DateTimeStyles.None, out var moment)) return moment;
        Bad("ROAD-090", "The hour cannot be read.", name, text, "Write the time as 2026-04-01 22:05.");
        return null;
    }

    /// <summary>A length in metres, from the one header of the column that is filled.</summary>
    public double? Length(string name)
    {
        if (Filled(name) is not var (header, text)) return null;
        return Measured(header, text, header[(name.Length + 1)..]);
    }

    /// <summary>A content, strength, temperature or speed in its base unit, from the one header of the column that is filled.</summary>
    public double? Measure(string name)
    {
        if (Filled(name) is not var (header, text)) return null;
        var measure = FolderMeasures.Of(Column(name).Kind).First(m => header == $"{name}_{m.Suffix}");
        if (measure.TryRead(table.Plain(text), out var value)) return value;
        NotANumber(header, text, "a number");
        return null;
    }

    /// <summary>Adds an error when a value is outside limits.</summary>
    public void Within(string name, double? value, double least, double most, Unit unit)
    {
        if (value is not { } known || (known >= least && known <= most)) return;
        Bad("ROAD-009", "The value is out of range.", name, unit.Format(known, 2), "Check the value and the unit in the column's name.", $"{unit.Format(least, 0)} to {unit.Format(most, 0)}");
    }

    /// <summary>A place in metres along the road, from a station or a plain length.</summary>
    public double? At(string name)
    {
        if (Filled(name) is not var (header, text)) return null;
        var unit = header[(name.Length + 1)..];
        var at = unit == "station" ? scene.PlaceOf(text, Place with { Field = header }, table.Findings) : Measured(header, text, unit);
        if (at is null) Good = false;
        else if (!scene.OnRoad(at.Value)) Bad("ROAD-013", "The place is not on the road.", header, text, "Check the place; the road's length is in project.json.", scene.LimitText);
        else return Math.Clamp(at.Value, 0, scene.Length);
        return null;
    }

    /// <summary>The places <c>from</c> and <c>to</c>, in order.</summary>
    public (double From, double To) Stretch()
    {
        var (from, to) = (At("from"), At("to"));
        if (from >= to) Bad("ROAD-014", "The stretch ends before it starts.", "to", null, "Give the start first, in the direction of travel.");
        return (from ?? 0, to ?? 0);
    }

    /// <summary>Adds an error about the row.</summary>
    public void Bad(string code, string sentence, string field, string? value, string mend, string? limit = null)
    {
        Good = false;
        table.Findings.Add(new(code, FindingLevel.Error, sentence, Place with { Field = field }, value, mend, limit));
    }

    private FolderColumn Column(string name) => table.File.Columns.First(c => c.Name == name);

    private string Cell(string header) => table.IndexOf(header) is var index && index >= 0 && index < cells.Length ? cells[index].Trim() : "";

    private (string Header, string Text)? Filled(string name)
    {
        var column = Column(name);
        var filled = column.Headers.Select(h => (Header: h, Text: Cell(h))).Where(p => p.Text.Length > 0).ToImmutableArray();
        if (filled.Length == 1) return filled[0];
        if (filled.Length > 1) Bad("ROAD-017", "The same value is given in two columns.", filled[1].Header, filled[1].Text, $"Leave {filled[0].Header} or {filled[1].Header} empty.");
        else if (column.Required) Missing(name);
        return null;
    }

    private double? Measured(string header, string text, string unit)
    {
        Units.TryFind(unit, out var found);
        if (ExactNumber.TryRead(table.Plain(text), found!, out var value)) return value;
        NotANumber(header, text, "a number");
        return null;
    }

    private void Missing(string name) => Bad("ROAD-006", "A value that every row needs is missing.", name, null, $"Fill in {string.Join(" or ", Column(name).Headers)}.");

    private void NotANumber(string field, string text, string wanted) => Bad("ROAD-007", $"The value is not {wanted}.", field, text, $"Write {wanted}, without the unit: it stands in the column's name.");
}
