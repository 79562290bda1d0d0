using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;
using Slabwright.Core.Survey;
using Slabwright.Data.Folder;

namespace Slabwright.Data.Import;

/// <summary>Reads the survey and the cores of a project folder, in any form that can be read.</summary>
public static class FolderSurvey
{
    /// <summary>A reader that holds survey days against a given day.</summary>
    /// <param name="today">The day.</param>
    public static SurveyReader Reader(DateOnly today) => (files, road, units) => Read(files, road, units, today);

    /// <summary>Reads the survey and, where the folder has them, the cores. A folder without a survey gives an empty one.</summary>
    /// <param name="files">The files.</param>
    /// <param name="road">The road they lie on.</param>
    /// <param name="units">Units of the project.</param>
    /// <param name="today">Survey days after it are findings.</param>
    public static SurveyRecord Read(SurveyFiles files, Road road, UnitSystem units, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(files);
        var options = new SurveyImportOptions { UnitSystem = units, Today = today, SurveyDate = files.SurveyedOn };
        var survey = files.Survey is { } file ? SurveyImporter.Import(file, road, options) : SurveyRecord.Empty;
        if (files.Cores is not { } coreFile) return survey;
        var cores = SurveyImporter.ImportCores(coreFile, road, options);
        return survey with { Cores = cores.Cores, Findings = survey.Findings.AddRange(cores.Findings) };
    }
}
