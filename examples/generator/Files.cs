using System.Globalization;
using System.Text;
using Slabwright.Data.Folder;

namespace Slabwright.Examples;

/// <summary>Small helpers for writing the examples: line feeds, UTF-8 without a mark, numbers with a point.</summary>
internal static class Files
{
    public static void Write(string folder, string name, string text)
    {
        Directory.CreateDirectory(folder);
        File.WriteAllText(Path.Combine(folder, name), text.ReplaceLineEndings("\n"), new UTF8Encoding(false));
    }

    public static void Write(string folder, string name, CsvText table) => Write(folder, name, table.ToString());

    /// <summary>A table from lines of cells parted by bars, as they read best in code.</summary>
    public static CsvText Table(string lines, char delimiter = ',')
    {
        var table = new CsvText(delimiter);
        foreach (var line in lines.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
            table.Add([.. line.Split('|').Select(c => c.Trim())]);
        return table;
    }

    public static string Text(double value, int decimals) => value.ToString("0." + new string('0', decimals), CultureInfo.InvariantCulture);

    public static string Moment(DateTime time) => time.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);

    /// <summary>A number with as few decimals as it needs, at most the given; empty for none.</summary>
    public static string Short(double? value, int decimals) => value is null ? "" : value.Value.ToString("0." + new string('#', decimals), CultureInfo.InvariantCulture);
}
