using System.Globalization;
using Slabwright.Cli.Output;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Concrete.Opening;
using Slabwright.Core.Evidence;
using Slabwright.Core.Handbook;

namespace Slabwright.Cli.Commands;

/// <summary>Prints the mixes on the nights: the answer first, then a table for each night, curves, criterion, curing, cautions.</summary>
internal static class ConcretePlanText
{
    private const int Wide = 100;

    /// <summary>The text for people; what is written between stands after the nights.</summary>
    public static void Write(Report report, ConcretePlan plan, IReadOnlyList<NightDetail> details, ConcreteWords words, Action between)
    {
        foreach (var night in plan.MixNights.GroupBy(r => r.Night))
        {
            Answer(report, night.Key, [.. night], words);
            Table(report, night.Key, [.. night], words);
            Beside(report, night.Key, [.. details.Where(d => d.Row.Night == night.Key && d.Row.Forecast is not null)], words);
        }

        between();
        Curves(report, plan.Curves, words);
        Criterion(report, plan);
    }

    /// <summary>The cautions that go with every opening time.</summary>
    public static void Cautions(Report report)
    {
        report.Line("Cautions:");
        foreach (var caution in ConcretePlan.Cautions) Wrapped(report, caution, "  ");
    }

    /// <summary>A sentence in lines of a terminal.</summary>
    public static void Wrapped(Report report, string sentence, string indent)
    {
        var line = indent;
        foreach (var word in sentence.Split(' '))
        {
            if (line.Length + word.Length > Wide && line.Trim().Length > 0)
            {
                report.Line(line.TrimEnd());
                line = indent + "  ";
            }

            line += word + " ";
        }

        report.Line(line.TrimEnd());
    }

    private static void Answer(Report report, WorkNight night, MixNight[] rows, ConcreteWords words)
    {
        report.Line(ConcreteWords.Night(night, night.Placed));
        var by = ClockText.Of(night.Deadline);
        var opening = rows.Where(r => r.OpensAt <= night.Deadline).OrderBy(r => r.CostPerCubicMetre ?? decimal.MaxValue).ToArray();
        var sure = rows.Select(r => r.Forecast?.Case.Criterion.Confidence).FirstOrDefault(c => c is not null) is { } c ? ConcreteWords.Confidence(c) : "";
        foreach (var row in opening)
        {
            var last = row.LastPlacing is { } truck ? $"last truck {ConcreteWords.Last(truck, night)}" : "no later truck";
            report.Line($"  {row.Mix.Id} opens at {ConcreteWords.Opens(row.OpensAt, night)} with {sure}; chance by {by} {ConcreteWords.Chance(row.ChanceByDeadline)}; {last}.");
        }

        if (opening is [{ CostPerCubicMetre: not null } first, ..]) report.Line($"  Cheapest that opens: {first.Mix.Id}, {words.Cost(first.CostPerCubicMetre)} {words.CostUnit}.");
        if (opening.Length == 0 && rows.Any(r => r.Forecast is not null))
        {
            var nearest = rows.Where(r => r.Forecast is not null).MaxBy(r => r.ChanceByDeadline)!;
            report.Line($"  No mix opens by {by} with {sure} when placed at {ClockText.Of(night.Placed)}. Nearest: {nearest.Mix.Id}, chance {ConcreteWords.Chance(nearest.ChanceByDeadline)}"
                + (nearest.LastPlacing is { } truck ? $"; it opens when placed by {ConcreteWords.Last(truck, night)}." : "."));
        }

        var unknown = rows.Where(r => r.Forecast is null).Select(r => r.Mix.Id).ToArray();
        if (unknown.Length > 0) report.Line($"  No forecast: {string.Join(", ", unknown)}; the findings say why.");
        report.Line();
    }

    private static void Table(Report report, WorkNight night, MixNight[] rows, ConcreteWords words)
    {
        if (rows.FirstOrDefault(r => r.Forecast is not null)?.Forecast?.Case is not { } asked) return;
        var other = asked.Curve.Scale.Kind == MaturityKind.EquivalentAge ? "by T-t factor" : "by equiv. age";
        var table = new TextTable("mix", $"{words.CostUnit}>", $"opens {ConcreteWords.Confidence(asked.Criterion.Confidence)}>", $"by {ClockText.Of(night.Deadline)}>", "median>", $"{other}>", "last truck>", "governs", "strength from");
        foreach (var row in rows.OrderBy(r => r.CostPerCubicMetre ?? decimal.MaxValue))
        {
            table.Add(row.Mix.Id, words.Cost(row.CostPerCubicMetre), ConcreteWords.Opens(row.OpensAt, night, row.Forecast is null ? "-" : "not yet"), ConcreteWords.Chance(row.ChanceByDeadline),
                ConcreteWords.At(Median(row), night), ConcreteWords.At(row.MedianByOtherLaw is { } hours ? night.Placed.AddHours(hours) : null, night),
                row.LastPlacing is null && row.Forecast is not null ? "none" : ConcreteWords.Last(row.LastPlacing, night), Governs(row), row.Forecast is { } f ? Origin(f) : "no curve");
        }

        report.Table(table);
        report.Line();
    }

    private static void Beside(Report report, WorkNight night, NightDetail[] details, ConcreteWords words)
    {
        if (details.Length == 0) return;
        var table = new TextTable("mix", "hottest>", "at>", "where", "saw, soft rock>", "hard rock>", "until>", "evaporation>", "limit>");
        foreach (var d in details)
        {
            table.Add(d.Row.Mix.Id, d.Peak is { } p ? words.Temperature(p.Temperature) : "-", d.Peak is { } peak ? ClockText.Of(night.Placed.AddHours(peak.Hours)) : "-",
                d.Peak is { } where ? ConcreteWords.Place(where.Place) : "-", Saw(d.Row.SawWindow?.From), Saw(d.Row.SawWindow?.FromHard), Saw(d.Row.SawWindow?.To),
                d.Row.Evaporation is { } e ? words.Evaporation(e.Rate) : "-", d.Row.Evaporation is { } limit ? words.Evaporation(limit.Limit) : "-");
        }

        report.Table(table);
        foreach (var same in details.Where(d => d.Row.Evaporation is not null).SelectMany(d => d.Row.Evaporation!.Measures.Select(m => (d.Row.Mix.Id, Measure: m))).GroupBy(m => m.Measure.Measure))
            Wrapped(report, $"Curing, {(same.Count() == details.Length ? "every mix" : string.Join(", ", same.Select(s => s.Id)))}: {same.Key} [{same.First().Measure.Because.Source}]", "  ");
        report.Line();

        string Saw(double? hours) => hours is { } h ? ClockText.Of(night.Placed.AddHours(h)) : "-";
    }

    private static void Curves(Report report, IEnumerable<MixCurve> curves, ConcreteWords words)
    {
        var table = new TextTable("strength curve", "from", "form", "results>", "youngest tested>", "end strength>", "scatter>");
        foreach (var (id, curve) in curves.Where(c => c.Curve is not null).Select(c => (c.MixId, c.Curve!)))
        {
            table.Add(id, Origin(curve), StrengthCurveFit.Words(curve.Form).Replace(", from set on,", " from set", StringComparison.Ordinal), curve.Count.ToString(CultureInfo.InvariantCulture),
                curve.Origin == CurveOrigin.Composition ? "none" : string.Create(CultureInfo.InvariantCulture, $"{curve.FirstTested:0.#} {curve.Scale.Unit}"),
                double.IsFinite(curve.EndStrength) ? words.Strength(curve.EndStrength) : "-", curve.Residual > 0 ? words.Strength(curve.Residual) : curve.LogSpread > 0 ? $"± {100 * curve.LogSpread:0} %" : "-");
        }

        report.Table(table);
        report.Line();
    }

    private static void Criterion(Report report, ConcretePlan plan)
    {
        var reasons = plan.MixNights.Where(r => r.Forecast is not null).SelectMany(r => r.Forecast!.Case.Criterion.Reasons.Select(x => (r.Mix.Id, Reason: x))).GroupBy(x => x.Reason.Sentence).ToArray();
        var mixes = plan.MixNights.Select(r => r.Mix.Id).Distinct().Count();
        foreach (var same in reasons)
        {
            var ids = same.Select(s => s.Id).Distinct().ToArray();
            Wrapped(report, $"{Capital(same.First().Reason.Rule)}{(ids.Length < mixes ? " for " + string.Join(", ", ids) : "")}: {same.Key} [{same.First().Reason.Source}]", "");
        }

        foreach (var varies in plan.MixNights.Select(r => r.Forecast?.Reasons.FirstOrDefault(x => x.Rule == "what varies")).OfType<Reason>().DistinctBy(r => r.Sentence))
            Wrapped(report, $"What varies: {varies.Sentence}", "");
        report.Line();
    }

    private static DateTime? Median(MixNight row) => row.Forecast?.HoursAt(0.5) is { } hours ? row.Night.Placed.AddHours(hours) : null;

    private static string Governs(MixNight row) =>
        row.Forecast is { } forecast ? ConcreteWords.Place(GoverningPlace.At(forecast, forecast.HoursAt(0.5) ?? double.PositiveInfinity)) : "-";

    private static string Origin(OpeningForecastResult forecast) => Origin(forecast.Case.Curve) + (forecast.BeforeFirstTested ? ", before tested" : "");

    /// <summary>Where a curve comes from, in words.</summary>
    public static string Origin(StrengthCurve curve) => curve.Origin switch
    {
        CurveOrigin.Measured when curve.Count == 0 => "constants",
        CurveOrigin.Measured => "specimens",
        CurveOrigin.Converted => "converted",
        _ => "composition",
    };

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
