using System.Globalization;
using System.Text;
using Slabwright.Core.Evidence;
using Slabwright.Core.Survey;

namespace Slabwright.Examples.Ltpp;

/// <summary>Writes docs/ltpp-comparison.md. Every figure in it is computed here.</summary>
public static class Report
{
    private static readonly double[] Thresholds = [0, 2, 5, 10, 20, 50];

    public static string Write(ComparisonResult result)
    {
        var text = new StringBuilder();
        Introduction(text, result);
        Headline(text, result);
        Families(text, result);
        Sweep(text, result);
        Precision(text, result);
        Causes(text, result.Sets[0]);
        Windows(text, result);
        Amounts(text, result);
        Missed(text, result.Sets[0]);
        text.Append(Caveats);
        return text.ToString().ReplaceLineEndings("\n");
    }

    private static void Introduction(StringBuilder text, ComparisonResult result) => text.Append(CultureInfo.InvariantCulture, $"""
        # Treatment rules against what agencies did

        Written by `dotnet run --project examples/ltpp`; a test fails when this page and the program differ. Data: FHWA, Long-Term Pavement
        Performance (LTPP) database, jointed concrete sections ([what was taken](../examples/ltpp/README.md)).

        **Question.** Do the treatment rules call for full-depth work on sections whose agency then did such work, and stay silent on sections
        where none followed?

        **Material.** {result.Sections} sections with {result.Surveys:N0} distress surveys and {result.Events} recorded events with full-depth
        patching (LTPP improvement codes 4 and 5) or slab replacement (code 7).

        - *Worked*: for each event the last survey in the {Comparison.WindowMonths} months before it, not older than the event before that one.
        - *Quiet*: for each section with no such event on record, the last survey after which it stayed in view for {Sampling.QuietMonths / 12}
          years without being overlaid. The last is the worst for the rules: the section is oldest.
        - A survey gives totals for a 500 ft section. Each counted thing became one distress; longitudinal cracks and spalls became one distress
          for each slab length begun; average crack faulting within {SurveyMapping.FaultingWithinDays} days went to every transverse crack.
          LTPP measures no depth, so spalls are decided by the rules for depth not measured. {result.WithoutSlabCount} survey(s) without a
          slab count were left out.
        - A section is *called* when at least one distress calls for full-depth repair, slab replacement or a slab run. Rules that look at
          neighbouring slabs change the size of the removal, not whether there is one, so they do not matter here.

        The rules stood before these figures were first computed, and neither a rule nor a definition was changed because of them.


        """);

    private static void Headline(StringBuilder text, ComparisonResult result)
    {
        text.Append("## Hits and false calls\n\nShares with Wilson 95 % intervals. The last column is the chance that a worked section, drawn\n");
        text.Append("at random, shows more calls per slab than a quiet one (0.5 is no better than a coin), with an interval from drawing\n");
        text.Append("sections anew. Sets in one row make the same calls on these surveys: they differ in what LTPP totals cannot show.\n\n");
        text.Append("| rule sets | worked sections called (hits) | quiet sections called (false calls) | worked shows more |\n| --- | --- | --- | --- |\n");
        foreach (var set in result.Sets) Row(text, set.Name, set.Worked, set.Quiet);
        foreach (var set in result.Sets) Row(text, set.RuleSets[0] + ", without SPS-6", Outside(set.Worked), Outside(set.Quiet));
        text.Append("\nSPS-6 sections were repaired by the design of that experiment, not by need alone, so the rows without them say more.\n\n");

        static void Row(StringBuilder text, string name, IReadOnlyList<Called> worked, IReadOnlyList<Called> quiet)
        {
            var more = Statistics.Bootstrap(BySection([.. worked, .. quiet]), MoreCalls, seed: 1);
            text.Append(CultureInfo.InvariantCulture,
                $"| {name} | {Words(Hits(worked))} | {Words(Hits(quiet))} | {more.Value:0.00} ({more.Low:0.00} to {more.High:0.00}) |\n");
        }
    }

    private static void Families(StringBuilder text, ComparisonResult result)
    {
        text.Append("## By experiment\n\nGPS-3 are plain and GPS-4 reinforced pavements in service, GPS-9 unbonded overlays, SPS-2 new plain\n");
        text.Append("pavements, SPS-4 preventive maintenance, SPS-6 rehabilitation. Called of all, worked and quiet.\n\n| experiment |");
        foreach (var set in result.Sets) text.Append(CultureInfo.InvariantCulture, $" {set.RuleSets[0]}: worked | quiet |");
        text.Append("\n| --- |").Append(string.Concat(Enumerable.Repeat(" --- | --- |", result.Sets.Count))).Append('\n');
        var families = result.Sets[0].Worked.Concat(result.Sets[0].Quiet).Select(c => c.Observation.Section.Family).Distinct();
        foreach (var family in families.Order(StringComparer.Ordinal))
        {
            text.Append(CultureInfo.InvariantCulture, $"| {family} |");
            foreach (var set in result.Sets)
            {
                var (worked, quiet) = (Of(set.Worked, family), Of(set.Quiet, family));
                text.Append(CultureInfo.InvariantCulture, $" {worked.Of} of {worked.Total} | {quiet.Of} of {quiet.Total} |");
            }

            text.Append('\n');
        }

        text.Append('\n');

        static Share Of(IReadOnlyList<Called> calls, string family) =>
            Hits([.. calls.Where(c => c.Observation.Section.Family == family)]);
    }

    private static void Sweep(StringBuilder text, ComparisonResult result)
    {
        text.Append("## How much is called\n\nA single corner break calls a section. Asking for more than a number of calls per 100 slabs trades\n");
        text.Append("hits for false calls:\n\n| more than |");
        foreach (var set in result.Sets) text.Append(CultureInfo.InvariantCulture, $" {set.RuleSets[0]}: hits | false calls |");
        text.Append("\n| --- |").Append(string.Concat(Enumerable.Repeat(" --- | --- |", result.Sets.Count))).Append('\n');
        foreach (var threshold in Thresholds)
        {
            text.Append(CultureInfo.InvariantCulture, $"| {threshold} per 100 slabs |");
            foreach (var set in result.Sets)
                text.Append(CultureInfo.InvariantCulture, $" {Hits(set.Worked, threshold).Value:P0} | {Hits(set.Quiet, threshold).Value:P0} |");
            text.Append('\n');
        }

        text.Append('\n');
    }

    private static void Precision(StringBuilder text, ComparisonResult result)
    {
        var first = result.AllSurveys[0].Calls;
        var followed = Statistics.Wilson(first.Count(c => c.Worked), first.Count);
        text.Append(CultureInfo.InvariantCulture, $"""
            ## Precision among all surveys

            Above, worked and quiet sections were chosen by what happened, so their numbers say nothing about how often a call comes true. Here
            every survey counts whose next {Comparison.WindowMonths} months are known: {followed.Total:N0} surveys, of which {followed.Of}
            ({followed.Value:P1}) were followed by full-depth work. Intervals from drawing sections anew.


            """);
        text.Append("| rule sets | more than | surveys called | hits | precision: called surveys followed by work |\n| --- | --- | --- | --- | --- |\n");
        foreach (var (sets, calls) in result.AllSurveys)
        {
            var groups = BySection(calls);
            foreach (var threshold in Thresholds)
            {
                var called = calls.Count(c => c.PerHundredSlabs > threshold);
                var hits = Statistics.Bootstrap(groups, c => Ratio(c, x => x.Worked, x => x.PerHundredSlabs > threshold), seed: 2);
                var precision = Statistics.Bootstrap(groups, c => Ratio(c, x => x.PerHundredSlabs > threshold, x => x.Worked), seed: 3);
                text.Append(CultureInfo.InvariantCulture,
                    $"| {sets.Split(',')[0]} | {threshold} per 100 slabs | {called:N0} | {Words(hits)} | {Words(precision)} |\n");
            }
        }

        text.Append('\n');
    }

    private static void Causes(StringBuilder text, SetCalls set)
    {
        text.Append(CultureInfo.InvariantCulture, $"## What made the calls\n\nSections with at least one full-depth call from a type ({set.RuleSets[0]}).\n\n");
        text.Append("| distress | worked | quiet |\n| --- | --- | --- |\n");
        var types = set.Worked.Concat(set.Quiet).SelectMany(c => c.Types).Distinct().Order();
        foreach (var type in types)
            text.Append(CultureInfo.InvariantCulture, $"| {TradeWords.Of(type)} | {Part(set.Worked, type)} | {Part(set.Quiet, type)} |\n");
        text.Append('\n');

        static string Part(IReadOnlyList<Called> calls, DistressType type)
        {
            var with = calls.Count(c => c.Types.Contains(type));
            return string.Create(CultureInfo.InvariantCulture, $"{with} ({with / (double)calls.Count:P0})");
        }
    }

    private static void Windows(StringBuilder text, ComparisonResult result)
    {
        text.Append("## Does the window matter\n\nHits of common practice by the longest time allowed between survey and work.\n\n");
        text.Append("| months | hits |\n| --- | --- |\n");
        foreach (var window in result.Windows)
            text.Append(CultureInfo.InvariantCulture, $"| {window.Months} | {Words(window.Hits)} |\n");
        text.Append('\n');
    }

    private static void Amounts(StringBuilder text, ComparisonResult result)
    {
        var without = result.Amounts.Where(a => !a.Call.Observation.Event!.HasSlabReplacement).ToList();
        var all = Rank(result.Amounts);
        var patched = Rank(without);
        text.Append(CultureInfo.InvariantCulture, $"""
            ## Calls against patches found afterwards

            {result.Amounts.Count} worked sections were seen again, bare, within {Comparison.WindowMonths} months of the work. Rank correlation of
            the calls of common practice with the concrete patches newly counted: {all.Value:0.00} ({all.Low:0.00} to {all.High:0.00}); without
            slab replacements, which leave no patch to count, {patched.Value:0.00} ({patched.Low:0.00} to {patched.High:0.00}) on
            {without.Count}. {result.Amounts.Count(a => a.NewPatches <= 0)} of the {result.Amounts.Count} show no new patch at all after an event recorded
            as full-depth work. An interval that holds 0 means that the number of calls did not tell how many patches were placed.


            """);

        static Figure Rank(IReadOnlyList<(Called Call, double NewPatches)> amounts) => Statistics.Bootstrap(
            [.. amounts.GroupBy(a => a.Call.Observation.Section.Key).Select(g => (IReadOnlyList<(Called Call, double NewPatches)>)[.. g])],
            a => Statistics.RankCorrelation([.. a.Select(x => (double)x.Call.FullDepthCalls)], [.. a.Select(x => x.NewPatches)]), seed: 4);
    }

    private static void Missed(StringBuilder text, SetCalls set)
    {
        text.Append(CultureInfo.InvariantCulture, $"## Misses, one by one\n\nFull-depth work that followed a survey without a call ({set.RuleSets[0]}).\n\n");
        text.Append("| section | state | experiment | survey | work | codes |\n| --- | --- | --- | --- | --- | --- |\n");
        foreach (var call in set.Worked.Where(c => c.FullDepthCalls == 0))
        {
            var (section, survey, work) = call.Observation;
            text.Append(CultureInfo.InvariantCulture,
                $"| {section.Key} | {section.State} | {section.Family} | {survey.Day:yyyy-MM-dd} | {work!.Day:yyyy-MM-dd} | {string.Join(", ", work.Codes.Order())} |\n");
        }

        text.Append('\n');
    }

    private const string Caveats = """
        ## What this can and cannot show

        - LTPP sections are summed over 500 ft and not drawn at random from the network. Where a distress lay, how deep it went and what a core
          would have shown is not in the tables.
        - Agencies repair for other reasons than the surveyed distress, leave needed work undone for want of money, and work on a section because
          the miles around it need it. A *false call* may be a repair that was due and not done; a *hit* may be a repair done for another cause.
        - Quiet sections are younger on the whole (many SPS-2), which flatters the false-call rate; compare within an experiment.
        - Faulting is the average of a section. A rule that asks for the faulting of one crack, as the FHWA table does, cannot be judged fairly
          by it.
        - Codes 4, 5 and 7 were taken as recorded. Patch counts of LTPP mix full- and partial-depth patches.
        - A section with several events counts several times; intervals from drawing sections anew allow for it, Wilson's do not.

        """;

    private static Share Hits(IReadOnlyList<Called> calls, double threshold = 0) =>
        Statistics.Wilson(calls.Count(c => c.PerHundredSlabs > threshold), calls.Count);

    private static List<Called> Outside(IReadOnlyList<Called> calls) => [.. calls.Where(c => c.Observation.Section.Family != "SPS-6")];

    private static IReadOnlyList<IReadOnlyList<Called>> BySection(IReadOnlyList<Called> calls) =>
        [.. calls.GroupBy(c => c.Observation.Section.Key).OrderBy(g => g.Key).Select(g => (IReadOnlyList<Called>)[.. g])];

    private static double MoreCalls(IReadOnlyList<Called> calls) => Statistics.ChanceLarger(
        [.. calls.Where(c => c.Worked).Select(c => c.PerHundredSlabs)], [.. calls.Where(c => !c.Worked).Select(c => c.PerHundredSlabs)]);

    private static double Ratio(IReadOnlyList<Called> calls, Func<Called, bool> among, Func<Called, bool> which)
    {
        var (all, some) = (0, 0);
        foreach (var call in calls)
        {
            if (!among(call)) continue;
            all++;
            if (which(call)) some++;
        }

        return all == 0 ? double.NaN : some / (double)all;
    }

    private static string Words(Share share) => string.Create(CultureInfo.InvariantCulture,
        $"{share.Value:P0}, {share.Of} of {share.Total} ({share.Low:P0} to {share.High:P0})");

    private static string Words(Figure figure) => string.Create(CultureInfo.InvariantCulture,
        $"{figure.Value:P0} ({figure.Low:P0} to {figure.High:P0})");
}
