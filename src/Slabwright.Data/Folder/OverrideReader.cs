using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Survey;
using Slabwright.Core.Treatments;

namespace Slabwright.Data.Folder;

/// <summary>Reads overrides.csv.</summary>
internal static class OverrideReader
{
    /// <summary>Overrides that speak of a distress in the survey; a second one for the same distress is left out.</summary>
    public static ImmutableArray<TreatmentOverride> Read(string folder, FolderScene scene, SurveyRecord survey, List<Finding> findings)
    {
        var known = survey.Distresses.Select(d => d.Id).ToHashSet(StringComparer.Ordinal);
        var overrides = new Dictionary<string, TreatmentOverride>(StringComparer.Ordinal);
        foreach (var row in FolderTable.Read(folder, FolderFormat.Overrides, scene, findings))
        {
            var choice = new TreatmentOverride(
                row.Text("distress"), row.Words<Treatment>("treatment") ?? default, row.Text("because"), row.Text("by"), row.Day("on"));
            if (row.Good && !known.Contains(choice.DistressId))
                row.Bad("ROAD-085", "The survey has no distress with this identifier.", "distress", choice.DistressId, "Give an identifier from survey.csv, or remove the row.");
            if (row.Good && !overrides.TryAdd(choice.DistressId, choice))
                row.Bad("ROAD-018", "The distress is overridden twice; the first row holds.", "distress", choice.DistressId, "Keep one row for each distress.");
        }

        return [.. overrides.Values];
    }
}
