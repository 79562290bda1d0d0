using System.Collections.Immutable;
using System.Reflection;
using System.Text;

namespace Slabwright.Core.RuleSets;

/// <summary>The rule sets that come with Slabwright, read from its embedded files.</summary>
public static class PublishedRuleSets
{
    private const string Folder = "RuleSets/";

    /// <summary>Identifier of the default set, which fills in where the others are silent.</summary>
    public const string Default = "common-practice";

    private static readonly Lazy<ImmutableArray<RuleSet>> Sets = new(ReadAll);

    /// <summary>All published sets: common practice first, then by identifier.</summary>
    public static ImmutableArray<RuleSet> All => Sets.Value;

    /// <summary>The common practice set.</summary>
    public static RuleSet CommonPractice => All[0];

    /// <summary>The set with an identifier, or null.</summary>
    public static RuleSet? Find(string id) => All.FirstOrDefault(s => s.Id == id);

    /// <summary>Names of the embedded files, common practice first.</summary>
    internal static ImmutableArray<string> FileNames { get; } =
    [
        .. typeof(PublishedRuleSets).Assembly.GetManifestResourceNames()
            .Where(n => n.StartsWith(Folder, StringComparison.Ordinal))
            .Select(n => n[Folder.Length..])
            .OrderBy(n => n != Default + ".json")
            .ThenBy(n => n, StringComparer.Ordinal),
    ];

    /// <summary>Text of an embedded file.</summary>
    internal static string Text(string fileName)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(Folder + fileName)
            ?? throw new InvalidOperationException($"The rule set file {fileName} is not embedded.");
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd();
    }

    /// <summary>A set may fill in only from those read before it, so that no circle can arise.</summary>
    private static ImmutableArray<RuleSet> ReadAll()
    {
        var sets = new List<RuleSet>();
        foreach (var file in FileNames)
        {
            var (set, findings) = RuleSetFile.Parse(Text(file), file, id => sets.Find(s => s.Id == id));
            if (set is null || !findings.IsEmpty)
                throw new InvalidOperationException($"The published rule set {file} cannot be read: {findings.FirstOrDefault()}");
            sets.Add(set);
        }

        return [.. sets];
    }
}
