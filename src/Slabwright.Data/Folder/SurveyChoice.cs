using Slabwright.Core.Evidence;

namespace Slabwright.Data.Folder;

/// <summary>Finds the survey and core files of a folder.</summary>
internal static class SurveyChoice
{
    private static readonly string[] Endings = [".csv", ".xlsx", ".gpkg", ".geojson", ".tsv", ".txt", ".xls", ".json"];

    /// <summary>The files project.json names, else <c>survey.*</c> and <c>cores.*</c> in an ending that can be read.</summary>
    public static SurveyFiles Read(JsonFields file, string folder)
    {
        var fields = file.Has("survey") ? file.Object("survey") : null;
        var survey = Find(fields, "file", folder, "survey");
        var cores = Find(fields, "cores", folder, "cores");
        if (survey is null && fields?.Has("file") != true)
        {
            file.Findings.Add(new("ROAD-002", FindingLevel.Error, "The folder has no survey.", new("survey.csv"), null,
                "Add survey.csv (or .xlsx, .geojson, .gpkg), or name the file in project.json."));
        }

        return new(survey, cores, fields?.Day("date"));
    }

    private static string? Find(JsonFields? fields, string property, string folder, string name)
    {
        if (fields?.Text(property) is not { } named)
            return Endings.Select(e => Path.Combine(folder, name + e)).FirstOrDefault(File.Exists);
        var path = Path.Combine(folder, Path.GetFileName(named));
        if (File.Exists(path)) return path;
        fields.Bad("ROAD-002", "The file project.json names is missing.", property, named, "Put the file into the project folder and give its name here.");
        return null;
    }
}
