using Slabwright.Core.Evidence;
using Slabwright.Core.Handbook;
using Slabwright.Core.Measures;

namespace Slabwright.Tests.Handbook;

public class FormulaBookTests
{
    public static TheoryData<string, int> Examples() =>
        [.. FormulaBook.All.SelectMany(e => Enumerable.Range(0, e.Examples.Length).Select(i => (e.Id, i)))];

    public static TheoryData<string> Ids() => [.. FormulaBook.All.Select(e => e.Id)];

    private static Dictionary<string, string> Given(params string[] pairs) => pairs.Chunk(2).ToDictionary(p => p[0], p => p[1]);

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_worked_example_comes_out_within_its_tolerance(string id, int index)
    {
        var entry = FormulaBook.Find(id)!;
        var example = entry.Examples[index];
        var comparisons = ExampleCheck.Compare(entry, example);
        Assert.Equal(example.Expected.Length, comparisons.Length);
        Assert.All(comparisons, c => Assert.True(
            c.Agrees, $"{id}, {example.Title}: {c.Expected.Symbol} = {c.Given} against {c.Expected.Text} ± {c.Expected.Tolerance}"));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_entry_is_whole_and_has_an_example(string id)
    {
        var entry = FormulaBook.Find(id)!;
        Assert.NotEmpty(entry.Examples);
        Assert.NotEmpty(entry.Expression);
        Assert.NotEmpty(entry.Source.Tag);
        Assert.True(entry.Notes.Length > 10);
        Assert.Equal(entry.Inputs.Length, entry.Inputs.Select(i => i.Key).Distinct().Count());
        Assert.All(entry.Inputs, i => Assert.Equal(i.Units.Customary.Dimension, i.Units.Si.Dimension));
        Assert.All(entry.Inputs, i => Assert.True(i.Least < i.Most));
        Assert.All(entry.Outputs, o => Assert.Equal(o.Units.Customary.Dimension, o.Units.Si.Dimension));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Both_unit_systems_give_the_same_base_values(string id)
    {
        var entry = FormulaBook.Find(id)!;
        var given = entry.Examples[0].Inputs.ToDictionary(i => i.Key, i => WithUnit(entry, i.Key, i.Text));
        var customary = FormulaBook.Evaluate(entry, given, UnitSystem.UsCustomary);
        var si = FormulaBook.Evaluate(entry, given, UnitSystem.Si);
        Assert.True(customary.Succeeded);
        Assert.Equal(customary.Values.Select(v => v.Base), si.Values.Select(v => v.Base));
    }

    [Fact]
    public void Ids_are_unique() => Assert.Equal(FormulaBook.All.Length, FormulaBook.All.Select(e => e.Id).Distinct().Count());

    [Fact]
    public void A_result_tells_its_steps_and_inputs()
    {
        var result = FormulaBook.Evaluate("pay-area", Given("length", "4 ft", "width", "4"));
        Assert.Equal("2.000 yd2", Assert.Single(result.Values).Text);
        Assert.Equal("Area = 1.778 yd2", result.Reasons[0].Sentence);
        Assert.Equal("A_pay = max(L W, A_min): A_pay = 2.000 yd2", result.Reasons[1].Sentence);
        Assert.Equal(["4.000 ft", "4.000 ft", "2.000 yd2"], result.Inputs.Select(i => i.Value));
    }

    [Theory]
    [InlineData("6 ft")]
    [InlineData("6ft")]
    [InlineData("72 in")]
    [InlineData("5 ft 12 in")]
    [InlineData("2 ft 48 in")]
    [InlineData("1.8288 m")]
    [InlineData("1,828.8 mm")]
    [InlineData("6")]
    [InlineData("6e0 ft")]
    [InlineData("6 '")]
    public void Lengths_are_read_in_any_unit(string text)
    {
        var result = FormulaBook.Evaluate("repair-area", Given("L", text, "width", "12 ft"));
        Assert.Empty(result.Findings);
        Assert.Equal(8.0, result.Values[0].Value, 9);
    }

    [Fact]
    public void A_bare_number_takes_the_unit_of_the_system()
    {
        var result = FormulaBook.Evaluate("repair-area", Given("length", "2", "width", "3.5"), UnitSystem.Si);
        Assert.Equal("7.000 m2", result.Values[0].Text);
    }

    [Theory]
    [InlineData("HBK-003", "six feet")]
    [InlineData("HBK-003", "")]
    [InlineData("HBK-003", "1,5 ft")]
    [InlineData("HBK-003", "6 ft 1/2 in")]
    [InlineData("HBK-004", "6 furlong")]
    [InlineData("HBK-004", "6 lb")]
    [InlineData("HBK-005", "-6 ft")]
    [InlineData("HBK-005", "6000 ft")]
    public void Bad_inputs_become_findings_that_name_field_value_and_mend(string code, string text)
    {
        var result = FormulaBook.Evaluate("repair-area", Given("length", text, "width", "12 ft"));
        var finding = Assert.Single(result.Findings);
        Assert.Equal((code, "length", text), (finding.Code, finding.Place.Field, finding.Value));
        Assert.NotEmpty(finding.Mend!);
        Assert.False(result.Succeeded);
    }

    [Fact]
    public void Missing_unknown_and_fractional_inputs_are_told()
    {
        Assert.Equal("HBK-002", Assert.Single(FormulaBook.Evaluate("repair-area", Given("length", "6")).Findings).Code);
        Assert.Equal("HBK-006", Assert.Single(
            FormulaBook.Evaluate("repair-area", Given("length", "6", "width", "12", "depth", "9 in")).Findings).Code);
        Assert.Equal("HBK-007", Assert.Single(FormulaBook.Evaluate("dowels-wheel-path", Given("each", "4.5")).Findings).Code);
        var unknown = Assert.Single(FormulaBook.Evaluate("dowel", Given()).Findings);
        Assert.Equal("HBK-001", unknown.Code);
        Assert.Contains("dowel-group", unknown.Mend);
    }

    [Fact]
    public void Flat_slings_and_many_legs_are_doubted_but_worked_out()
    {
        var result = FormulaBook.Evaluate("sling-tension", Given("weight", "9000 lb", "legs", "4", "angle", "20 deg"));
        Assert.Equal(["HBK-008", "HBK-008"], result.Findings.Select(f => f.Code));
        Assert.All(result.Findings, f => Assert.Equal(FindingLevel.Warning, f.Level));
        Assert.True(result.Succeeded);
    }

    [Fact]
    public void A_formula_without_an_answer_refuses()
    {
        var result = FormulaBook.Evaluate("triangular-quantile", Given("low", "2", "likely", "1", "high", "3", "probability", "50 %"));
        Assert.Equal("HBK-009", Assert.Single(result.Findings).Code);
        Assert.False(result.Succeeded);
    }

    [Fact]
    public void Fahrenheit_stands_for_a_difference_where_a_difference_is_asked()
    {
        var given = Given("expansion", "5.5e-6 1/°F", "length", "50 ft", "rise", "60 °F");
        Assert.Equal(0.198, FormulaBook.Evaluate("kerf-closure", given).Values[0].Value, 6);
    }

    private static string WithUnit(HandbookEntry entry, string key, string text)
    {
        var unit = entry.Inputs.First(i => i.Key == key).Units.Customary.Symbol;
        return text.Any(char.IsLetter) || text.Contains('%') || text.Contains('/') ? text : $"{text} {unit}".Trim();
    }
}
