using Slabwright.Tests.Rules;

namespace Slabwright.Tests.Reference;

public class CheckTests
{
    private static readonly Lazy<CheckRow[]> All = new(() =>
        [.. typeof(ICheckRows).Assembly.GetTypes().Where(t => t.IsClass && t.IsAssignableTo(typeof(ICheckRows)))
            .OrderBy(t => t.Name, StringComparer.Ordinal)
            .SelectMany(t => ((ICheckRows)Activator.CreateInstance(t)!).Rows())]);

    public static TheoryData<int, string> Rows() => [.. All.Value.Select((r, i) => (i, $"{r.Item} {r.What}"))];

    [Theory]
    [MemberData(nameof(Rows))]
    public void A_published_value_comes_out(int index, string title)
    {
        var row = All.Value[index];
        Assert.StartsWith(row.Item, title);
        Assert.True(double.IsFinite(row.Ours) || row.Ours == row.Published, row.ToString());
        if (row.NotReproduced) Assert.False(row.Agrees, "The value comes out after all; print it as reproduced. " + row);
        else Assert.True(row.Agrees || row.Ours == row.Published, row.ToString());
    }

    public static TheoryData<string> Pages() => [.. CheckPage.All.Select(p => p.File)];

    /// <summary>Run the tests with SLABWRIGHT_WRITE_DOCS=1 to write the pages anew.</summary>
    [Theory]
    [MemberData(nameof(Pages))]
    public void The_page_in_docs_is_the_one_the_rows_give(string file)
    {
        var path = Repository.PathOf("docs", file);
        var written = CheckPage.All.Single(p => p.File == file).Markdown(All.Value);
        if (Environment.GetEnvironmentVariable("SLABWRIGHT_WRITE_DOCS") == "1") File.WriteAllText(path, written);
        var stored = File.ReadAllText(path).ReplaceLineEndings("\n");
        Assert.True(stored == written, $"docs/{file} is not what the rows give; run the tests with SLABWRIGHT_WRITE_DOCS=1.");
    }

    [Fact]
    public void Every_row_stands_on_one_page() => Assert.All(All.Value, row => Assert.Single(CheckPage.All, p => p.Holds(row)));
}
