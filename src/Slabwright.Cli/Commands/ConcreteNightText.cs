using System.Globalization;
using Slabwright.Cli.Output;
using Slabwright.Core.Concrete.Night;
using Slabwright.Core.Concrete.Opening;
using Slabwright.Core.Evidence;
using Slabwright.Core.Handbook;

namespace Slabwright.Cli.Commands;

/// <summary>Prints a night: probes, forecast before and after, strength now, evidence, decision.</summary>
internal static class ConcreteNightText
{
    /// <summary>The text for people.</summary>
    public static void Write(Report report, ConcreteStudy study, KnownNight known, ConcreteWords words)
    {
        var (asked, at) = (known.Forecast.Prior.Case.Criterion, ClockText.Of(known.At));
        report.Line($"{known.Repair}: {known.Mix.Id}, {ConcreteWords.Night(known.Night, known.Placed)}");
        report.Line($"Asked for: {words.Strength(asked.Strength)} {OpeningCriteria.Words(asked.Kind)}"
            + (asked.LeastAge > 0 ? string.Create(CultureInfo.InvariantCulture, $", at least {asked.LeastAge:0.#} h") : "") + $", with {ConcreteWords.Confidence(asked.Confidence)}");
        if (known.Record is { } record) Decision(report, record, at);
        report.Line();
        Now(report, known, words, at);
        Forecasts(report, study, known);
        Probes(report, known, words);
        Evidence(report, known, words);
        foreach (var reason in known.Forecast.Reasons.Concat(known.Record?.Reasons ?? []).DistinctBy(r => r.Sentence)) ConcretePlanText.Wrapped(report, $"{reason.Rule}: {reason.Sentence} [{reason.Source}]", "");
        report.Line();
        ConcretePlanText.Cautions(report);
    }

    /// <summary>The result for scripts.</summary>
    public static object Document(ConcreteStudy study, KnownNight known)
    {
        var (prior, posterior) = (known.Forecast.Prior, known.Forecast.Posterior);
        return new
        {
            known.Repair, mix = known.Mix.Id, day = known.Night.Day, placed = known.Placed, openBy = known.Night.Deadline, at = ConcreteDocument.Time(known.At),
            criterion = ConcreteDocument.Criterion(prior.Case.Criterion),
            curve = ConcreteDocument.Curve(known.Mix.Id, prior.Case.Curve),
            prior = One(study, known, prior),
            posterior = One(study, known, posterior),
            believed = new { before = known.Forecast.Before, now = known.Forecast.Now, lot = new { known.Forecast.Lot.Mean, known.Forecast.Lot.Deviation } },
            probes = known.Checked.Probes.Select(p => new { p.Name, p.Place, p.Trusted, p.History }),
            evidence = known.Evidence,
            decision = known.Record is { } r ? new { r.Verdict, r.By, at = ConcreteDocument.Time(r.At), r.Age, r.Missing, r.OverrideReason, r.Reasons } : null,
            cautions = ConcretePlan.Cautions,
        };
    }

    private static object One(ConcreteStudy study, KnownNight known, OpeningForecastResult forecast) => new
    {
        opensAt = ConcreteDocument.Time(Clock(study, forecast, forecast.Earliest)), medianAt = ConcreteDocument.Time(Clock(study, forecast, forecast.HoursAt(0.5))), chanceByDeadline = Chance(known, forecast),
        hours = ConcreteDocument.Hours(forecast),
    };

    private static void Decision(Report report, OpeningRecord record, string at)
    {
        report.Line();
        report.Line(record.Verdict switch
        {
            OpeningVerdict.Open => $"OPEN at {at}, decided by {record.By}.",
            OpeningVerdict.OpenByOverride => $"OPEN AGAINST THE RULE at {at}, decided by {record.By}: {record.OverrideReason}",
            _ => $"STAY CLOSED at {at}" + (record.By.Length > 0 ? $", decided by {record.By}." : "."),
        });
        foreach (var missing in record.Missing) ConcretePlanText.Wrapped(report, "missing: " + missing, "  ");
    }

    private static void Now(Report report, KnownNight known, ConcreteWords words, string at)
    {
        var hours = (known.At - known.Placed).TotalHours;
        var row = known.Forecast.Posterior.Hours.LastOrDefault(h => h.Hours <= hours + 1e-6);
        if (row is null || row.Hours <= 0) return;
        ConcretePlanText.Wrapped(report, string.Create(CultureInfo.InvariantCulture,
            $"Now, {at}, {hours:0.0} h after placing: {words.Strength(row.Strength.Middle)} at the {ConcreteWords.Place(row.Governs)}, which lags behind (5 to 95 %: {words.Strength(row.Strength.Low)} to {words.Strength(row.Strength.High)}), {words.Temperature(row.Temperature)} there; chance that it is enough {ConcreteWords.Chance(row.Chance)}."), "");
        report.Line();
    }

    private static void Forecasts(Report report, ConcreteStudy study, KnownNight known)
    {
        var (prior, posterior) = (known.Forecast.Prior, known.Forecast.Posterior);
        var table = new TextTable("forecast", $"opens {ConcreteWords.Confidence(prior.Case.Criterion.Confidence)}>", "median>", $"by {ClockText.Of(known.Night.Deadline)}>", "air>", "placing>", "lot>");
        foreach (var (name, forecast, belief, lot) in new[]
        {
            ("before the readings", prior, known.Forecast.Before, (prior.Case.StrengthFactor, prior.Case.Spread.Strength)), ("with them", posterior, known.Forecast.Now, known.Forecast.Lot),
        })
        {
            table.Add(name, ConcreteWords.Opens(Clock(study, forecast, forecast.Earliest), known.Night, "not yet"), ConcreteWords.At(Clock(study, forecast, forecast.HoursAt(0.5)), known.Night, "not yet"),
                ConcreteWords.Chance(Chance(known, forecast)), Spread(belief.Air, belief.AirDeviation), Spread(belief.Placing, belief.PlacingSpread),
                string.Create(CultureInfo.InvariantCulture, $"{100 * lot.Item1:0} ± {100 * lot.Item2:0} %"));
        }

        report.Table(table);
        report.Line("Air and placing temperature against the plan; lot: strength over the curve.");
        report.Line();

        static string Spread(double mean, double deviation) => string.Create(CultureInfo.InvariantCulture, $"{mean:+0.0;−0.0;0.0} ± {deviation:0.0} K");
    }

    private static void Probes(Report report, KnownNight known, ConcreteWords words)
    {
        if (known.Checked.Probes.IsEmpty) return;
        var table = new TextTable("probe", "sits at", "readings>", "last>", "temperature>", "hottest>", "maturity>", "trusted");
        var scale = known.Forecast.Prior.Case.Curve.Scale;
        foreach (var p in known.Checked.Probes)
        {
            table.Add(p.Name, ConcreteWords.Place(p.Place), p.History.Length.ToString(CultureInfo.InvariantCulture), p.History.IsEmpty ? "-" : ClockText.Of(known.Placed.AddHours(p.History[^1].Hours)),
                p.History.IsEmpty ? "-" : words.Temperature(p.History[^1].Temperature), p.History.IsEmpty ? "-" : words.Temperature(p.History.Max(t => t.Temperature)),
                string.Create(CultureInfo.InvariantCulture, $"{scale.Of(p.History):0.0} {scale.Unit}"), p.Trusted ? "yes" : "NO");
        }

        report.Table(table);
        report.Line();
    }

    private static void Evidence(Report report, KnownNight known, ConcreteWords words)
    {
        if (known.Evidence.IsEmpty) return;
        var confidence = ConcreteWords.Confidence(known.Forecast.Prior.Case.Criterion.Confidence);
        var table = new TextTable("evidence", "at>", "shows>", $"at least, {confidence}>", "where it lags behind", "remark");
        foreach (var e in known.Evidence)
        {
            table.Add(TradeWords.Of(e.Kind), ClockText.Of(e.At), words.Strength(e.Strength), e.Low is { } low ? words.Strength(low) : "-", e.Kind != EvidenceKind.Maturity ? "-" : e.AtGoverningPlace ? "yes" : "no",
                string.Join(", ", Remarks(e)));
        }

        report.Table(table);
        report.Line();
    }

    private static IEnumerable<string> Remarks(StrengthEvidence evidence)
    {
        if (evidence.Carried) yield return "carried there by computation";
        if (evidence.BeforeFirstTested) yield return "before the youngest specimens";
    }

    private static DateTime? Clock(ConcreteStudy study, OpeningForecastResult forecast, double? hours) => hours is { } h ? study.ClockOf(forecast, h) : null;

    private static double Chance(KnownNight known, OpeningForecastResult forecast) => forecast.ChanceBy((known.Night.Deadline - known.Placed).TotalHours);
}
