using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Slabwright.Tests.Rules;

/// <summary>References point one way: between projects, and between the folders of Core.</summary>
public sealed partial class DirectionTests
{
    private static readonly Dictionary<string, string[]> AllowedProjects = new(StringComparer.Ordinal)
    {
        ["Slabwright.Core"] = [],
        ["Slabwright.Data"] = ["Slabwright.Core"],
        ["Slabwright.Sheets"] = ["Slabwright.Core"],
        ["Slabwright.Cli"] = ["Slabwright.Core", "Slabwright.Data", "Slabwright.Sheets"],
        ["Slabwright.Desk"] = ["Slabwright.Core", "Slabwright.Data", "Slabwright.Sheets"],
    };

    /// <summary>Folders of Core from the ground up. A folder may use those of a lower or the same line, never a higher one.</summary>
    private static readonly string[][] CoreOrder =
    [
        ["Evidence", "Measures"],
        ["Numerics"],
        ["Pavement"],
        ["Survey"],
        ["RuleSets", "Treatments", "Prices"],
        ["Boundaries"],
        ["Joints"],
        ["Concrete"],
        ["Closures"],
        ["Quantities"],
        ["Field", "Records"],
        ["Job", "Handbook"],
    ];

    [Fact]
    public void Projects_refer_only_inward()
    {
        foreach (var (project, allowed) in AllowedProjects)
        {
            var file = Repository.PathOf("src", project, project + ".csproj");
            var references = XDocument.Load(file).Descendants("ProjectReference")
                .Select(r => Path.GetFileNameWithoutExtension(r.Attribute("Include")!.Value.Replace('\\', '/')));
            var wrong = references.Except(allowed, StringComparer.Ordinal).ToArray();
            Assert.True(wrong.Length == 0, $"{project} may refer only to [{string.Join(", ", allowed)}]; take out {string.Join(", ", wrong)}.");
        }
    }

    [Fact]
    public void Every_source_project_is_in_the_list_of_directions()
    {
        var found = Directory.GetDirectories(Repository.PathOf("src")).Select(d => Path.GetFileName(d)!).Order(StringComparer.Ordinal);
        Assert.Equal(AllowedProjects.Keys.Order(StringComparer.Ordinal), found);
    }

    [Fact]
    public void Core_folders_use_only_what_lies_below_them()
    {
        var rank = CoreOrder.SelectMany((folders, i) => folders.Select(f => (f, i))).ToDictionary(p => p.f, p => p.i, StringComparer.Ordinal);
        var wrong = new List<string>();
        foreach (var file in Repository.Sources("src/Slabwright.Core"))
        {
            var folder = Repository.Relative(file).Split('/')[2];
            Assert.True(rank.ContainsKey(folder), $"Folder {folder} of Core has no place in the order of steps: add it to DirectionTests.");
            foreach (Match match in CoreNamespace().Matches(File.ReadAllText(file)))
            {
                var used = match.Groups[1].Value;
                if (rank.TryGetValue(used, out var theirs) && theirs > rank[folder])
                    wrong.Add($"{Repository.Relative(file)} uses {used}, which comes after {folder}: hand the result forward as a record instead.");
            }
        }

        Assert.True(wrong.Count == 0, string.Join(Environment.NewLine, wrong.Distinct(StringComparer.Ordinal)));
    }

    [GeneratedRegex(@"Slabwright\.Core\.(\w+)")]
    private static partial Regex CoreNamespace();
}
