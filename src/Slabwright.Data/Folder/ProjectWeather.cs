using Slabwright.Core.Concrete.Weather;
using Slabwright.Core.Evidence;
using Slabwright.Data.Weather;

namespace Slabwright.Data.Folder;

/// <summary>The weather of a project folder. Bad values, order and missing hours of the file are named by the check of the hourly files.</summary>
internal static class ProjectWeather
{
    public static WeatherSeries? Read(string folder, List<Finding> findings)
    {
        var path = Path.Combine(folder, FolderFormat.WeatherHourly.Name);
        if (!File.Exists(path)) return null;
        var read = WeatherFile.Read(path, new() { Mapping = Mapping(path), Checked = true });
        findings.AddRange(read.Findings.Where(f => f.Code is "CON-101" or "CON-107"));
        return read.Series;
    }

    /// <summary>The folder's own columns, those that the file has.</summary>
    private static WeatherMapping? Mapping(string path)
    {
        using var reader = new StreamReader(path);
        return WeatherMapping.Guess((reader.ReadLine() ?? "").Split(',', ';', '\t').Select(h => h.Trim().Trim('"')).ToArray());
    }
}
