using System.Globalization;
using Sylvan.Data.Csv;

namespace Slabwright.Examples.Ltpp;

/// <summary>A CSV table of the LTPP database, read whole.</summary>
public sealed class Table
{
    private readonly Dictionary<string, int> _columns;

    private Table(string name, string[] columns, List<string[]> rows)
    {
        Name = name;
        Columns = columns;
        Rows = rows;
        _columns = columns.Select((c, i) => (c, i)).ToDictionary(p => p.c, p => p.i, StringComparer.Ordinal);
    }

    public string Name { get; }

    public IReadOnlyList<string> Columns { get; }

    public IReadOnlyList<string[]> Rows { get; }

    public static Table Read(string folder, string name)
    {
        using var reader = CsvDataReader.Create(Path.Combine(folder, name + ".csv"));
        var columns = Enumerable.Range(0, reader.FieldCount).Select(reader.GetName).ToArray();
        var rows = new List<string[]>();
        while (reader.Read()) rows.Add([.. Enumerable.Range(0, columns.Length).Select(reader.GetString)]);
        return new Table(name, columns, rows);
    }

    public string Text(string[] row, string column) => row[_columns[column]];

    public int Whole(string[] row, string column) => int.Parse(Text(row, column), CultureInfo.InvariantCulture);

    /// <summary>The number, or null where the table is blank.</summary>
    public double? Number(string[] row, string column) =>
        Text(row, column) is { Length: > 0 } text ? double.Parse(text, CultureInfo.InvariantCulture) : null;

    /// <summary>The day, or null where the table is blank. The tables write month/day/year.</summary>
    public DateOnly? Day(string[] row, string column) =>
        Text(row, column) is { Length: > 0 } text ? DateOnly.ParseExact(text, "MM/dd/yyyy", CultureInfo.InvariantCulture) : null;

    public SectionKey Section(string[] row) => new(Whole(row, "STATE_CODE"), Text(row, "SECTION_ID"));
}

/// <summary>State code and section number of an LTPP section.</summary>
public readonly record struct SectionKey(int State, string Id) : IComparable<SectionKey>
{
    public int CompareTo(SectionKey other) =>
        State != other.State ? State.CompareTo(other.State) : string.CompareOrdinal(Id, other.Id);

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{State:00}-{Id}");
}
