using System.Text;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Concrete.Mixes;
using Slabwright.Core.Concrete.Opening;
using Slabwright.Core.Evidence;
using Slabwright.Core.Pavement;
using Slabwright.Core.Prices;
using Slabwright.Core.Treatments;
using Slabwright.Data.Folder;

namespace Slabwright.SystemTests.Folder;

/// <summary>The page on the project folder says what the code reads, column by column.</summary>
public sealed class FolderFormatTests
{
    private static readonly string Page = File.ReadAllText(Path.Combine(Examples.PathOf(".."), "docs", "steps", "project-folder.md"));

    [Fact]
    public void The_page_holds_every_table_as_the_code_has_it()
    {
        foreach (var file in FolderFormat.Files)
            Assert.True(Page.Contains(Section(file), StringComparison.Ordinal), $"Put this into docs/steps/project-folder.md:{Environment.NewLine}{Section(file)}");
    }

    [Fact]
    public void The_page_lists_every_word_the_code_reads()
    {
        foreach (var words in new[]
        {
            TradeWords.All<LaneEdge>(), TradeWords.All<JointKind>(), TradeWords.All<PavementKind>(), TradeWords.All<BaseKind>(),
            TradeWords.All<FeatureKind>(), TradeWords.All<PayRole>(), TradeWords.All<Treatment>(),
            TradeWords.All<MixClassId>(), TradeWords.All<CementKind>(), TradeWords.All<Accelerator>(), TradeWords.All<StrengthKind>(), TradeWords.All<BreakUse>(),
            TradeWords.All<Ingredient>(), TradeWords.All<SlabPlace>(),
        }) Assert.Contains(words, Page, StringComparison.Ordinal);
    }

    private static string Section(FolderFile file)
    {
        var text = new StringBuilder($"## {file.Name}\n\n{file.Purpose}{(file.Required ? " Required." : "")}\n\n| column | required | meaning |\n| --- | --- | --- |\n");
        foreach (var column in file.Columns)
            text.Append($"| {string.Join(", ", column.Headers.Select(h => $"`{h}`"))} | {(column.Required ? "yes" : "")} | {column.Meaning} |\n");
        return text.ToString();
    }
}
