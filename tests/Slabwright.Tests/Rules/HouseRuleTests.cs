using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Slabwright.Tests.Rules;

/// <summary>House rules that run; each failure says what to do.</summary>
public sealed partial class HouseRuleTests
{
    [Fact]
    public void Package_versions_stand_only_in_Directory_Packages_props()
    {
        var wrong = Repository.Sources(".", "*.csproj")
            .SelectMany(f => XDocument.Load(f).Descendants("PackageReference")
                .Where(p => p.Attribute("Version") is not null)
                .Select(p => $"{Repository.Relative(f)}: {p.Attribute("Include")?.Value}"))
            .ToArray();
        Assert.True(wrong.Length == 0, "Move the version to Directory.Packages.props: " + string.Join(", ", wrong));
    }

    [Fact]
    public void Every_finding_code_is_documented_and_every_documented_code_is_used()
    {
        var used = Repository.Sources("src").SelectMany(f => FindingCode().Matches(File.ReadAllText(f)).Select(m => m.Groups[1].Value))
            .ToHashSet(StringComparer.Ordinal);
        var documented = DocumentedCode().Matches(File.ReadAllText(Repository.PathOf("docs", "findings.md")))
            .Select(m => m.Groups[1].Value).ToHashSet(StringComparer.Ordinal);
        var missing = used.Except(documented, StringComparer.Ordinal).Order(StringComparer.Ordinal).ToArray();
        var stale = documented.Except(used, StringComparer.Ordinal).Order(StringComparer.Ordinal).ToArray();
        Assert.True(missing.Length == 0, "Add to docs/findings.md: " + string.Join(", ", missing));
        Assert.True(stale.Length == 0, "No code uses these any more; take them out of docs/findings.md: " + string.Join(", ", stale));
    }

    [Fact]
    public void Links_between_documents_lead_somewhere()
    {
        var documents = Directory.EnumerateFiles(Repository.PathOf("docs"), "*.md", SearchOption.AllDirectories)
            .Append(Repository.PathOf("README.md"));
        var broken = documents.SelectMany(d => RelativeLink().Matches(File.ReadAllText(d))
                .Select(m => m.Groups[1].Value.Split('#')[0])
                .Where(link => link.Length > 0 && !link.Contains("://", StringComparison.Ordinal))
                .Where(link => !Path.Exists(Path.Combine(Path.GetDirectoryName(d)!, link)))
                .Select(link => $"{Repository.Relative(d)} -> {link}"))
            .ToArray();
        Assert.True(broken.Length == 0, "Mend the links: " + string.Join(", ", broken));
    }

    [Fact]
    public void No_unfinished_marks_in_the_source()
    {
        var wrong = Repository.Sources("src").Concat(Repository.Sources("tests")).Concat(Repository.Sources("bench"))
            .Where(f => Path.GetFileName(f) != "HouseRuleTests.cs" && UnfinishedMark().IsMatch(File.ReadAllText(f)))
            .Select(Repository.Relative).ToArray();
        Assert.True(wrong.Length == 0, "Finish it or take it out: " + string.Join(", ", wrong));
    }

    [GeneratedRegex("\"((?:ROAD|SRV|TRT|BND|JNT|QTY|HBK|JOB|STO|CON)-\\d{3})\"")]
    private static partial Regex FindingCode();

    [GeneratedRegex(@"\|\s*`?((?:ROAD|SRV|TRT|BND|JNT|QTY|HBK|JOB|STO|CON)-\d{3})`?\s*\|")]
    private static partial Regex DocumentedCode();

    [GeneratedRegex(@"\]\(([^)\s]+)\)")]
    private static partial Regex RelativeLink();

    [GeneratedRegex(@"NotImplementedException|\b(TODO|FIXME|HACK)\b")]
    private static partial Regex UnfinishedMark();
}
