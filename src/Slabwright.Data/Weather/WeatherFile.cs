using Slabwright.Core.Concrete.Weather;
using Slabwright.Core.Evidence;
using Slabwright.Data.Import;

namespace Slabwright.Data.Weather;

/// <summary>A weather file read.</summary>
/// <param name="Series">The series; null where nothing could be used.</param>
/// <param name="Findings">What was wrong.</param>
/// <param name="Mapping">How the table was read; null for formats with fixed columns.</param>
public sealed record WeatherFileResult(WeatherSeries? Series, IReadOnlyList<Finding> Findings, WeatherMapping? Mapping);

/// <summary>
/// Reads hourly weather: plain tables by header or stated mapping, forecasts with columns of spread, typical years in TMY3 form, EPW.
/// Bad input becomes findings; nothing throws for what a file holds.
/// </summary>
public static class WeatherFile
{
    /// <summary>Reads a file.</summary>
    /// <param name="path">The file.</param> <param name="options">What the file does not say itself.</param>
    public static WeatherFileResult Read(string path, WeatherFileOptions? options = null)
    {
        var name = Path.GetFileName(path);
        try
        {
            using var stream = File.OpenRead(path);
            using var reader = new StreamReader(stream, TextDecoding.Tell(stream).Encoding, detectEncodingFromByteOrderMarks: true);
            return ReadText(reader.ReadToEnd(), name, options);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            return new(null, [new("CON-101", FindingLevel.Error, "The weather file cannot be read.", new(name), exception.Message, "Check the path, and that no other program holds the file.")], null);
        }
    }

    /// <summary>Reads a text.</summary>
    /// <param name="text">The text.</param> <param name="name">File name for findings.</param> <param name="options">What the file does not say itself.</param>
    public static WeatherFileResult ReadText(string text, string name, WeatherFileOptions? options = null)
    {
        options ??= new();
        var findings = new List<Finding>();
        var head = text.AsSpan()[..Math.Min(text.Length, 4096)].ToString();
        if (head.StartsWith("LOCATION,", StringComparison.OrdinalIgnoreCase)) return new(EpwReader.Read(text, name, options, findings), findings, null);
        if (head.Contains("Date (MM/DD/YYYY)", StringComparison.OrdinalIgnoreCase)) return new(Tmy3Reader.ReadOriginal(text, name, options, findings), findings, null);
        if (head.Contains("hour_ending_lst", StringComparison.OrdinalIgnoreCase)) return new(Tmy3Reader.ReadTable(text, name, options, findings), findings, null);
        var series = PlainReader.Read(text, name, options, findings, out var mapping);
        return new(series, findings, mapping);
    }
}

/// <summary>What a weather file does not say itself.</summary>
public sealed record WeatherFileOptions
{
    /// <summary>Columns; null: guessed from the header.</summary>
    public WeatherMapping? Mapping { get; init; }

    /// <summary>Where it was taken; null: as the file says, if it does.</summary>
    public WeatherSite? Site { get; init; }

    /// <summary>Year a typical year is dated in.</summary>
    public int TypicalYear { get; init; } = 2026;

    /// <summary>True when a plain table marks hours at their end.</summary>
    public bool MarkedAtEnd { get; init; }

    /// <summary>True where another check has named bad values, order and missing hours already.</summary>
    internal bool Checked { get; init; }
}
