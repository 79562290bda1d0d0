using Slabwright.Core.Concrete.Opening;
using Slabwright.Core.Handbook;
using Slabwright.Core.Measures;

namespace Slabwright.Tests.Handbook;

public class NightQuestionTests
{
    private static AskedQuestions Of(params string[] pairs) => NightQuestions.Read(pairs.Chunk(2).ToDictionary(p => p[0], p => p[1]), UnitSystem.UsCustomary);

    [Fact]
    public void Questions_are_read_with_their_units_and_named_as_typed()
    {
        var asked = Of("colder", "10 °F", "weaker", "5%", "wind-factor", "2", "placed-at", "22:30", "blanket", "");
        Assert.Empty(asked.Findings);
        Assert.Equal(6, asked.Changes.Length);
        Assert.Equal("10 °F colder", asked.Changes[0].Name);
        Assert.Equal(-10 / 1.8, asked.Changes[0].Change.Air, 1e-12);
        var all = asked.Changes[^1].Change;
        Assert.Equal((0.95, 2.0, new TimeOnly(22, 30)), (Math.Round(all.Strength, 12), all.Wind, all.PlacedAt));
        Assert.Equal(0.35, all.Blanket!.Cover!.Resistance);
        Assert.Equal(NightChange.None, Of("no-blanket", "").Changes[0].Change with { Blanket = null });
        Assert.Null(Of("no-blanket", "").Changes[0].Change.Blanket!.Cover);
    }

    [Fact]
    public void One_question_stands_alone_and_kelvin_are_read_too()
    {
        var asked = Of("warmer", "3 K");
        Assert.Equal(("3 K warmer", 3.0), (Assert.Single(asked.Changes).Name, asked.Changes[0].Change.Air));
    }

    [Theory]
    [InlineData("HBK-003", "colder", "lots")]
    [InlineData("HBK-004", "colder", "10 psi")]
    [InlineData("HBK-005", "weaker", "80%")]
    [InlineData("CON-132", "placed-at", "late")]
    public void Bad_questions_are_named(string code, string key, string text)
    {
        var finding = Assert.Single(Of(key, text).Findings);
        Assert.Equal((code, key), (finding.Code, finding.Place.Field));
        Assert.NotEmpty(finding.Mend!);
    }
}
