using Slabwright.Core.Evidence;
using Slabwright.Data.Import;
using Sylvan.Data.Csv;

namespace Slabwright.Data.Folder;

/// <summary>A CSV file of the folder: header, rows and what is wrong with them.</summary>
internal sealed class FolderTable
{
    private readonly Dictionary<string, int> _columns = new(StringComparer.OrdinalIgnoreCase);
    private bool _decimalComma;

    private FolderTable(FolderFile file, List<Finding> findings) => (File, Findings) = (file, findings);

    public FolderFile File { get; }

    public List<Finding> Findings { get; }

    /// <summary>Rows that are not blank; none when the file is missing or has no usable header.</summary>
    public static List<FolderRow> Read(string folder, FolderFile file, FolderScene scene, List<Finding> findings)
    {
        var rows = new List<FolderRow>();
        Scan(folder, file, findings, (table, reader, line) =>
        {
            if (table.RowOf(reader, line, scene) is { } row) rows.Add(row);
        });
        return rows;
    }

    /// <summary>Goes through the rows below the header without keeping them.</summary>
    public static void Scan(string folder, FolderFile file, List<Finding> findings, Action<FolderTable, CsvDataReader, int> each)
    {
        var path = Path.Combine(folder, file.Name);
        if (!System.IO.File.Exists(path))
        {
            if (file.Required) findings.Add(Absent(file));
            return;
        }

        try
        {
            var table = new FolderTable(file, findings);
            table.Scan(table.ReadText(path), each);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or CsvFormatException or CsvRecordTooLargeException)
        {
            findings.Add(new("ROAD-003", FindingLevel.Error, "The file cannot be read.", new(file.Name), exception.Message,
                "Close other programs that hold the file, and save it as CSV in UTF-8."));
        }
    }

    /// <summary>The row the reader stands on, or null when it is blank.</summary>
    public FolderRow? RowOf(CsvDataReader reader, int line, FolderScene scene)
    {
        var cells = Cells(reader);
        return cells.Any(c => c.Trim().Length > 0) ? new FolderRow(this, line, cells, scene) : null;
    }

    /// <summary>Column of a header, or -1.</summary>
    public int IndexOf(string header) => _columns.GetValueOrDefault(header, -1);

    /// <summary>A number's text with a decimal point: files parted by semicolons may have decimal commas.</summary>
    public string Plain(string number) => _decimalComma ? number.Replace(',', '.') : number;

    private void Scan(string text, Action<FolderTable, CsvDataReader, int> each)
    {
        var header = text.AsSpan()[..Math.Max(0, text.AsSpan().IndexOfAny('\r', '\n'))];
        var delimiter = header.Contains(';') ? ';' : header.Contains('\t') ? '\t' : ',';
        _decimalComma = delimiter != ',';
        using var reader = CsvDataReader.Create(new StringReader(text), new CsvDataReaderOptions { HasHeaders = false, Delimiter = delimiter });
        for (var line = 1; reader.Read(); line++)
        {
            if (line == 1) Header(Cells(reader));
            else each(this, reader, line);
        }

        if (_columns.Count == 0) Header([]);
    }

    private static string[] Cells(CsvDataReader reader)
    {
        var cells = new string[reader.RowFieldCount];
        for (var i = 0; i < cells.Length; i++) cells[i] = reader.GetString(i);
        return cells;
    }

    private void Header(string[] cells)
    {
        var known = File.Columns.SelectMany(c => c.Headers).ToHashSet(StringComparer.OrdinalIgnoreCase);
        for (var i = 0; i < cells.Length; i++)
        {
            var header = cells[i].Trim();
            if (header.Length == 0) continue;
            if (!known.Contains(header)) Findings.Add(Unknown(header));
            else if (!_columns.TryAdd(header, i)) Findings.Add(Repeated(header));
        }

        foreach (var column in File.Columns.Where(c => c.Required && !c.Headers.Any(_columns.ContainsKey))) Findings.Add(NoColumn(column));
    }

    private string ReadText(string path)
    {
        using var stream = System.IO.File.OpenRead(path);
        var decoding = TextDecoding.Tell(stream);
        if (decoding.Doubtful)
        {
            Findings.Add(new("ROAD-095", FindingLevel.Warning, "Some characters of the file could not be decoded.", new(File.Name), null,
                "Save the file as UTF-8."));
        }

        using var reader = new StreamReader(stream, decoding.Encoding, detectEncodingFromByteOrderMarks: true);
        return reader.ReadToEnd();
    }

    private static Finding Absent(FolderFile file) => new(
        "ROAD-002", FindingLevel.Error, "A file every project needs is missing.", new(file.Name), null,
        $"Add {file.Name} to the folder: {file.Purpose}");

    private Finding Unknown(string header) => new(
        "ROAD-004", FindingLevel.Warning, "The column is not one this file has; it is not read.", new(File.Name, 1, header), header,
        "Known columns: " + string.Join(", ", File.Columns.SelectMany(c => c.Headers)) + ".");

    private Finding Repeated(string header) => new(
        "ROAD-018", FindingLevel.Warning, "The column stands twice; the first is read.", new(File.Name, 1, header), header,
        "Remove or rename one of the two columns.");

    private Finding NoColumn(FolderColumn column) => new(
        "ROAD-005", FindingLevel.Error, "A column the file needs is missing.", new(File.Name, 1, column.Name), null,
        $"Add a column {string.Join(" or ", column.Headers)}: {column.Meaning}");
}
