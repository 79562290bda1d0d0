using System.Collections.Immutable;
using Slabwright.Core.Evidence;
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
/// <param name="folder">The project folder.</param>
/// <param name="road">The road they lie on.</param>
/// <param name="scene">Units and stations.</param>
public delegate SurveyRecord SurveyReader(string folder, Road road, FolderScene scene);

/// <summary>The parts of reading a folder that belong to other steps.</summary>
/// <param name="RuleSets">Rule sets that come with Slabwright, the default first.</param>
/// <param name="ReadRuleSet">Reader of the project's own rule sets.</param>
/// <param name="ReadSurvey">Reader of the survey.</param>
public sealed record FolderDoors(ImmutableArray<RuleSet> RuleSets, RuleSetReader ReadRuleSet, SurveyReader ReadSurvey)
{
    /// <summary>The published rule sets and the readers of this solution; survey days are held against today's date.</summary>
    public static FolderDoors Standard { get; } = new(
        PublishedRuleSets.All, (json, file, others) => RuleSetFile.Parse(json, file, others),
        (folder, road, scene) => FolderSurvey.Read(folder, road, scene, DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime)));

    /// <summary>The same with survey days held against a day of one's own.</summary>
    /// <param name="today">The day.</param>
    public static FolderDoors On(DateOnly today) => Standard with { ReadSurvey = FolderSurvey.Reader(today) };
}
