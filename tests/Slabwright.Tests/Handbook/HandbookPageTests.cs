using Slabwright.Core.Handbook;
using Slabwright.Tests.Rules;

namespace Slabwright.Tests.Handbook;

public class HandbookPageTests
{
    /// <summary>Run the tests with SLABWRIGHT_WRITE_DOCS=1 to write docs/handbook.md anew after changing an entry.</summary>
    [Fact]
    public void The_page_in_docs_is_the_one_the_program_writes()
    {
        var path = Repository.PathOf("docs", "handbook.md");
        var written = HandbookPage.Markdown();
        if (Environment.GetEnvironmentVariable("SLABWRIGHT_WRITE_DOCS") == "1") File.WriteAllText(path, written);
        var stored = File.ReadAllText(path).ReplaceLineEndings("\n");
        Assert.True(stored == written, "docs/handbook.md is not what the program writes; run the tests with SLABWRIGHT_WRITE_DOCS=1.");
    }

    [Fact]
    public void Every_entry_stands_in_the_page_with_its_expression_and_source()
    {
        var page = HandbookPage.Markdown();
        Assert.All(FormulaBook.All, e => Assert.Contains($"`{e.Id}`\n\n    {e.Expression}\n\nSource: {e.Source}.", page));
    }

    [Fact]
    public void Every_source_tag_of_the_handbook_is_in_sources_md()
    {
        var sources = File.ReadAllText(Repository.PathOf("docs", "sources.md"));
        var tags = FormulaBook.All.SelectMany(e => e.Examples.Select(x => x.Source).Append(e.Source)).Select(s => s.Tag)
            .Where(t => t is not ("common practice" or "worked by hand")).Distinct();
        Assert.All(tags, tag => Assert.True(sources.Contains($"| {tag} |"), $"docs/sources.md has no row for {tag}."));
    }
}
