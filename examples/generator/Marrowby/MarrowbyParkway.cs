using System.Collections.Immutable;
using Slabwright.Core.Pavement;
using Slabwright.Core.Survey;
using Slabwright.Data.Folder;

namespace Slabwright.Examples.Marrowby;

/// <summary>
/// The demo project: five miles of an invented parkway on an invented island, two lanes eastbound. Every name, number and price is
/// made up; what is real is the way such a road is built and wears.
/// </summary>
public static class MarrowbyParkway
{
    /// <summary>Name of the folder below <c>examples</c>.</summary>
    public const string FolderName = "marrowby-parkway";

    /// <summary>Writes the whole folder; the same files every time.</summary>
    public static void Write(string folder)
    {
        RoadFiles.Write(folder);
        Files.Write(folder, "prices.csv", PriceTable.Text());
        MixTables.Write(folder);
        NightTables.Write(folder);
        Files.Write(folder, "traffic_hourly.csv", HourlyFiles.Traffic());
        Files.Write(folder, "weather_hourly.csv", HourlyFiles.Weather());
        var road = ReadRoad(folder);
        var rows = new SurveyWalk(road).Walk();
        Files.Write(folder, "survey.csv", SurveyTable.Text(rows, road.Stationing));
        Files.Write(folder, "survey_with_mistakes.csv", Mistakes.Text());
        Files.Write(folder, "cores.csv", CoreTable.Text(road));
        Files.Write(folder, "overrides.csv", OverrideTable.Text(rows));
        Files.Write(folder, "README.md", RoadFiles.Readme);
    }

    /// <summary>The road as the product itself reads it, so that distresses can be set on real joints and slabs.</summary>
    private static Road ReadRoad(string folder)
    {
        var read = ProjectFolder.Read(folder, FolderDoors.On(new DateOnly(2025, 8, 1)) with { ReadSurvey = (_, _, _) => SurveyRecord.Empty });
        return read.Project?.Road ?? throw new InvalidOperationException("The road's files cannot be read: " + string.Join(" ", read.Findings));
    }
}
