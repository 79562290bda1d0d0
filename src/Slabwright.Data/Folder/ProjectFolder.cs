using System.Collections.Immutable;
using System.Text.Json;
using Slabwright.Core.Evidence;
using Slabwright.Core.Job;
using Slabwright.Core.Pavement;
using Slabwright.Core.RuleSets;

namespace Slabwright.Data.Folder;

/// <summary>
/// The open project folder: one JSON file and a handful of CSV files with units in the column names, described in
/// docs/steps/project-folder.md. Bad input becomes findings; no reading method throws for it.
/// </summary>
public static class ProjectFolder
{
    /// <summary>Reads a folder with the published rule sets and this solution's readers.</summary>
    /// <param name="path">The folder.</param>
    /// <param name="today">Today; a survey day after it is a finding.</param>
    public static ProjectReadResult Read(string path, DateOnly today) => Read(path, FolderDoors.On(today));

    /// <summary>Writes a project into a folder, which need not exist; files of the same names are replaced and no others touched.</summary>
    /// <remarks>
    /// Joints are written one by one and the centre line piece by piece, so that reading the folder again gives the same project. Traffic,
    /// weather and files the project does not know stay where they are; <see cref="CopyKept"/> takes them along.
    /// </remarks>
    /// <param name="project">The project.</param>
    /// <param name="path">The folder.</param>
    public static void Write(Project project, string path) => ProjectWriter.Write(project, path);

    /// <summary>Copies the files that are kept for later steps and not part of the project record: hourly traffic and weather.</summary>
    /// <param name="from">Folder to copy from.</param>
    /// <param name="to">Folder to copy to.</param>
    public static void CopyKept(string from, string to)
    {
        foreach (var file in FolderFormat.Kept.Select(k => k.Name).Where(n => File.Exists(Path.Combine(from, n))))
            File.Copy(Path.Combine(from, file), Path.Combine(to, file), overwrite: true);
    }

    /// <summary>Reads a folder.</summary>
    /// <param name="path">The folder.</param>
    /// <param name="doors">Rule sets and the readers that belong to other steps.</param>
    public static ProjectReadResult Read(string path, FolderDoors doors)
    {
        var findings = new List<Finding>();
        try
        {
            var project = Read(path, doors, findings);
            return new(project is null ? null : project with { Findings = [.. findings] }, [.. findings]);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            findings.Add(new("ROAD-003", FindingLevel.Error, "A file of the folder cannot be read.", new(), exception.Message,
                "Check that the folder is at hand and that no other program holds its files."));
            return new(null, [.. findings]);
        }
    }

    private static Project? Read(string path, FolderDoors doors, List<Finding> findings)
    {
        if (!Directory.Exists(path))
        {
            findings.Add(new("ROAD-001", FindingLevel.Error, "There is no such project folder.", new(path), null, "Check the path."));
            return null;
        }

        using var document = Open(path, findings);
        if (document is null) return null;
        var file = new JsonFields(document.RootElement, "", FolderFormat.ProjectFile, findings);
        var head = ProjectFileReader.Read(file, path);
        var rules = RuleSetChoice.Read(file, path, doors, findings);
        var road = head is null ? null : RoadReader.Read(path, head, findings);
        var prices = PriceReader.Read(path, head, findings);
        var files = SurveyChoice.Read(file, path);
        var mixes = MixReader.Read(path, head, findings);
        var heats = HeatCurveReader.Heats(path, mixes.Mixes, findings);
        var ingredients = HeatCurveReader.Prices(path, findings);
        var worked = NightReader.Read(path, findings);
        HourlyReader.Check(path, findings);
        var weather = ProjectWeather.Read(path, findings);
        file.Unread();
        if (head is null || road is null || rules is null || prices is null) return null;

        var survey = doors.ReadSurvey(files, road, head.Scene.Units);
        findings.AddRange(survey.Findings);
        return new Project
        {
            Name = head.Name,
            Owner = head.Owner,
            UnitSystem = head.Scene.Units,
            Road = road,
            Survey = survey,
            RuleSet = rules.InForce,
            OtherRuleSets = rules.Compare,
            Prices = prices,
            Overrides = OverrideReader.Read(path, head.Scene, survey, findings),
            Weather = weather,
            Settings = head.Settings with
            {
                Concrete = head.Settings.Concrete with { Mixes = mixes.Mixes, Breaks = mixes.Breaks, HeatCurves = heats, IngredientPrices = ingredients, Worked = worked },
            },
        };
    }

    private static JsonDocument? Open(string path, List<Finding> findings)
    {
        var place = new FindingPlace(FolderFormat.ProjectFile);
        var file = Path.Combine(path, FolderFormat.ProjectFile);
        if (!File.Exists(file))
        {
            findings.Add(new("ROAD-002", FindingLevel.Error, "The folder has no project.json.", place, null,
                "Add project.json as docs/steps/project-folder.md describes, or give the folder that has one."));
            return null;
        }

        try
        {
            var options = new JsonDocumentOptions { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true };
            var document = JsonDocument.Parse(File.ReadAllText(file), options);
            if (document.RootElement.ValueKind == JsonValueKind.Object) return document;
            document.Dispose();
            findings.Add(new("ROAD-003", FindingLevel.Error, "project.json is not an object in braces.", place, null, "Let the file begin with { and end with }."));
        }
        catch (JsonException exception)
        {
            findings.Add(new("ROAD-003", FindingLevel.Error, "project.json is not valid JSON.", place with { Row = exception.LineNumber + 1 },
                exception.Message, "Mend the text at this line: a comma, quote or bracket is missing or too many."));
        }

        return null;
    }
}
