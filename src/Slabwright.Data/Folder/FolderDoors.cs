using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;
using Slabwright.Core.RuleSets;
using Slabwright.Core.Survey;
using Slabwright.Data.Import;

namespace Slabwright.Data.Folder;

/// <summary>Reads a rule set of the project's own from JSON text.</summary>
/// <param name="json">Text of the file.</param>
/// <param name="fileName">Name for findings.</param>
/// <param name="others">Sets that it may refer to.</param>
public delegate (RuleSet? RuleSet, ImmutableArray<Finding> Findings) RuleSetReader(string json, string fileName, ImmutableArray<RuleSet> others);

/// <summary>Reads the survey and the cores of a folder.</summary>
/// <param name="files">Files to read.</param>
/// <param name="road">The road they lie on.</param>
/// <param name="units">Units of the project.</param>
public delegate SurveyRecord SurveyReader(SurveyFiles files, Road road, UnitSystem units);

/// <summary>The survey and core files of a folder.</summary>
/// <param name="Survey">Path of the survey file, or null when there is none.</param>
/// <param name="Cores">Path of the core file, or null when there is none.</param>
/// <param name="SurveyedOn">Day of the survey for rows that give none, or null.</param>
public sealed record SurveyFiles(string? Survey, string? Cores, DateOnly? SurveyedOn);

/// <summary>The parts of reading a folder that belong to other steps.</summary>
/// <param name="RuleSets">Rule sets that come with Slabwright, the default first.</param>
/// <param name="ReadRuleSet">Reader of the project's own rule sets.</param>
/// <param name="ReadSurvey">Reader of the survey.</param>
public sealed record FolderDoors(ImmutableArray<RuleSet> RuleSets, RuleSetReader ReadRuleSet, SurveyReader ReadSurvey)
{
    /// <summary>The published rule sets and the readers of this solution.</summary>
    /// <param name="today">Today; a survey day after it is a finding.</param>
    public static FolderDoors On(DateOnly today) => new(
        PublishedRuleSets.All, (json, file, others) => RuleSetFile.Parse(json, file, others), FolderSurvey.Reader(today));
}
