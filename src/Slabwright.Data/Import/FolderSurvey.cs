using Slabwright.Core.Pavement;
using Slabwright.Core.Survey;
using Slabwright.Data.Folder;

namespace Slabwright.Data.Import;

/// <summary>Reads the survey and the cores of a project folder: <c>survey</c> and <c>cores</c> in any form that can be read.</summary>
public static class FolderSurvey
{
    private static readonly string[] Endings = [".csv", ".xlsx", ".gpkg", ".geojson", ".tsv", ".txt", ".xls", ".json"];

    /// <summary>A reader that holds survey days against a given day.</summary>
    /// <param name="today">The day.</param>
    public static SurveyReader Reader(DateOnly today) => (folder, road, scene) => Read(folder, road, scene, today);

    /// <summary>Reads the survey and, where the folder has them, the cores.</summary>
    /// <param name="folder">The project folder.</param>
    /// <param name="road">The road they lie on.</param>
    /// <param name="scene">Units and stations.</param>
    /// <param name="today">Survey days after it are findings.</param>
    public static SurveyRecord Read(string folder, Road road, FolderScene scene, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(scene);
        var options = new SurveyImportOptions { UnitSystem = scene.Units, Today = today };
        var survey = Find(folder, "survey") is { } file ? SurveyImporter.Import(file, road, options) : Absent();
        if (Find(folder, "cores") is not { } coreFile) return survey;
        var cores = SurveyImporter.ImportCores(coreFile, road, options);
        return survey with { Cores = cores.Cores, Findings = survey.Findings.AddRange(cores.Findings) };
    }

    /// <summary>The file of a name with the first ending that is there.</summary>
    private static string? Find(string folder, string name) =>
        Endings.Select(ending => Path.Combine(folder, name + ending)).FirstOrDefault(File.Exists);

    private static SurveyRecord Absent()
    {
        var log = new FindingLog("survey.csv");
        log.Add(SurveyFaults.Unreadable, "The folder has no survey.", mend: $"Add survey.csv, or survey with another of the endings {string.Join(", ", Endings)}.");
        return new SurveyRecord([], [], log.ToFindings());
    }
}
