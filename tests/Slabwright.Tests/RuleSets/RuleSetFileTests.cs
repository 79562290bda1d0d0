using Slabwright.Core.Evidence;
using Slabwright.Core.RuleSets;

namespace Slabwright.Tests.RuleSets;

public class RuleSetFileTests
{
    private const string Source = """ "source": { "tag": "contract", "place": "p. 3", "status": "project" } """;

    private static string Mine(string body) => $$"""
        {
          "id": "mine", "name": "Mine", "summary": "For one road.", "fills_from": "fhwa",
        {{body}}
        }
        """;

    private static Finding OnlyFinding(string json)
    {
        var finding = Assert.Single(RuleSetFile.Parse(json, "mine.json").Findings);
        Assert.Equal("mine.json", finding.Place.File);
        Assert.False(string.IsNullOrEmpty(finding.Mend));
        return finding;
    }

    [Fact]
    public void A_project_set_extends_a_published_one_and_switches_rules_and_limits()
    {
        var (set, findings) = RuleSetFile.Parse(Mine($$"""
              "switch_on": ["FHWA-TRANSVERSE-TEXT"],
              "switch_off": ["FHWA-TRANSVERSE"],
              "boundaries": {
                "least_length": { "value": 8, "unit": "ft", "sentence": "As the contract says.", {{Source}} },
                "least_gap": { "value": "none", "sentence": "The contract does not bind here.", {{Source}} }
              }
            """), "mine.json");
        Assert.Empty(findings);
        Assert.True(set!.Treatments.Single(r => r.Id == "FHWA-TRANSVERSE-TEXT").On);
        Assert.False(set.Treatments.Single(r => r.Id == "FHWA-TRANSVERSE").On);
        Assert.Equal((8 * 0.3048, SourceStatus.Project), (set.Boundaries.LeastLength.Value, set.Boundaries.LeastLength.Source.Status));
        Assert.Null(set.Boundaries.LeastGap);
        Assert.Equal("FHWA-FDR-5", set.Boundaries.LeastRemnant!.Source.Tag);
    }

    [Fact]
    public void A_limit_from_memory_is_offered_and_warns_when_switched_on()
    {
        var fhwa = PublishedRuleSets.Find("fhwa")!;
        Assert.Contains(fhwa.Offered, o => o.Key == "boundaries.hidden_margin_freeze_thaw" && o.Value == "3 ft");
        Assert.Equal(0.3048, fhwa.Boundaries.HiddenMarginFreezeThaw.Value);
        var (set, findings) = RuleSetFile.Parse(Mine("""  "switch_on": ["boundaries.hidden_margin_freeze_thaw"]"""), "mine.json");
        Assert.Equal(3 * 0.3048, set!.Boundaries.HiddenMarginFreezeThaw.Value);
        Assert.Equal("TRT-009", Assert.Single(findings).Code);
    }

    [Fact]
    public void A_rule_of_the_same_id_takes_the_place_of_the_one_that_fills_in()
    {
        var (set, findings) = RuleSetFile.Parse(Mine($$"""
              "treatments": [{
                "id": "FHWA-CORNER", "sentence": "Low corner breaks are left.", "when": { "types": ["corner break"], "severity_to": "low" },
                "treatment": "leave", {{Source}}
              }]
            """), "mine.json");
        Assert.Empty(findings);
        Assert.Equal("contract", set!.Treatments.Single(r => r.Id == "FHWA-CORNER").Source.Tag);
        Assert.Equal("FHWA-CORNER", set.Treatments[0].Id);
    }

    [Fact]
    public void Broken_text_names_its_line()
    {
        var (set, findings) = RuleSetFile.Parse("{\n  \"id\": \"mine\",\n  \"name\" \"Mine\"\n}", "mine.json");
        Assert.Null(set);
        Assert.Equal(("TRT-001", 3L), (Assert.Single(findings).Code, findings[0].Place.Row));
    }

    [Theory]
    [InlineData("""  "boundries": {}""", "TRT-003", "boundries")]
    [InlineData("""  "switch_on": ["NOBODY"]""", "TRT-007", "switch_on[0]")]
    [InlineData("""  "treatments": {}""", "TRT-004", "treatments")]
    public void What_the_format_does_not_know_is_a_finding_at_its_line(string body, string code, string field)
    {
        var finding = OnlyFinding(Mine(body));
        Assert.Equal((code, field, 3L), (finding.Code, finding.Place.Field, finding.Place.Row));
    }

    [Theory]
    [InlineData(""" "when": { "types": ["corner brake"] }""", "TRT-004", "treatments[0].when.types[0]")]
    [InlineData(""" "when": { "width_over": { "value": 3, "unit": "psi" } }""", "TRT-005", "treatments[0].when.width_over.unit")]
    [InlineData(""" "when": { "width_over": { "value": -3, "unit": "in" } }""", "TRT-004", "treatments[0].when.width_over.value")]
    [InlineData(""" "when": { "depth_share_over": "1/0" }""", "TRT-004", "treatments[0].when.depth_share_over")]
    [InlineData(""" "when": { "sevrity_from": "low" }""", "TRT-003", "treatments[0].when.sevrity_from")]
    public void A_rule_that_cannot_be_read_is_left_out_and_the_others_are_kept(string when, string code, string field)
    {
        var json = Mine($$"""
              "treatments": [
                { "id": "BAD", "sentence": "Bad.", {{when}}, "treatment": "leave", {{Source}} },
                { "id": "GOOD", "sentence": "Good.", "when": { "types": ["popouts"] }, "treatment": "leave", {{Source}} }
              ]
            """);
        var finding = OnlyFinding(json);
        Assert.Equal((code, field, 4L), (finding.Code, finding.Place.Field, finding.Place.Row));
        var set = RuleSetFile.Parse(json, "mine.json").RuleSet!;
        Assert.DoesNotContain(set.Treatments, r => r.Id == "BAD");
        Assert.Contains(set.Treatments, r => r.Id == "GOOD");
    }

    [Fact]
    public void A_rule_without_a_source_is_left_out()
    {
        var finding = OnlyFinding(Mine("""
              "treatments": [{ "id": "X", "sentence": "X.", "when": { "types": ["popouts"] }, "treatment": "leave" }]
            """));
        Assert.Equal(("TRT-002", "treatments[0].source"), (finding.Code, finding.Place.Field));
    }

    [Fact]
    public void Two_rules_of_one_id_are_a_finding()
    {
        var rule = $$"""{ "id": "X", "sentence": "X.", "when": { "types": ["popouts"] }, "treatment": "leave", {{Source}} }""";
        Assert.Equal("TRT-008", OnlyFinding(Mine($"  \"treatments\": [{rule}, {rule}]")).Code);
    }

    [Fact]
    public void A_set_that_fills_from_nobody_lacks_what_every_set_needs()
    {
        var (set, findings) = RuleSetFile.Parse("""{ "id": "x", "name": "X", "summary": "X.", "fills_from": "nobody" }""", "x.json");
        Assert.Null(set);
        Assert.Contains(findings, f => f.Code == "TRT-006");
        Assert.Contains(findings, f => f.Code == "TRT-002" && f.Place.Field == "boundaries.least_length");
    }

    [Fact]
    public void A_rule_from_memory_that_is_on_warns()
    {
        var finding = OnlyFinding(Mine("""  "switch_on": ["FHWA-DURABILITY"]"""));
        Assert.Equal(("TRT-009", FindingLevel.Warning), (finding.Code, finding.Level));
    }
}
