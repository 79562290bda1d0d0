using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Concrete.Opening;
using Slabwright.Core.Evidence;
using Slabwright.Core.Handbook;

namespace Slabwright.Cli.Commands;

/// <summary>The results on concrete for scripts: SI units, clock times of the project, null where there is no answer.</summary>
internal static class ConcreteDocument
{
    /// <summary>Nights with their mixes, curves, what-ifs and cautions.</summary>
    public static object Of(ConcretePlan plan, IReadOnlyList<NightDetail> details, IReadOnlyList<ChangedNight> changed, HandConcrete? hand = null) => new
    {
        plan.Thickness,
        nights = plan.MixNights.GroupBy(r => r.Night).Select(n => new
        {
            n.Key.Day,
            placed = n.Key.Placed,
            openBy = n.Key.Deadline,
            opens = n.Where(r => r.OpensAt <= n.Key.Deadline).Select(r => r.Mix.Id),
            cheapestThatOpens = n.Where(r => r.OpensAt <= n.Key.Deadline && r.CostPerCubicMetre is not null).MinBy(r => r.CostPerCubicMetre)?.Mix.Id,
            mixes = n.Select(r => Row(r, details.FirstOrDefault(d => d.Row == r))),
        }),
        curves = plan.Curves.Where(c => c.Curve is not null).Select(c => Curve(c.MixId, c.Curve!)),
        whatIfs = changed.Select(c => new
        {
            day = c.Night.Day, mix = c.Mix.Id, c.Change, opensAt = Time(c.Changed.OpensAt), opensAtAsPlanned = Time(c.Plain.OpensAt), laterHours = c.Later, c.Changed.ChanceByDeadline,
            chanceAsPlanned = c.Plain.ChanceByDeadline, lastPlacing = Time(c.LastPlacing),
        }),
        handMixes = hand?.Mixes.Select(m => new { m.Mix.Id, m.Mix.CementKind, m.Mix.WaterCement, m.Mix.Density, m.Yield, m.CostPerCubicMetre, m.Volumes, m.Reasons }),
        inputs = hand?.Inputs,
        cautions = ConcretePlan.Cautions,
    };

    /// <summary>A strength curve.</summary>
    public static object Curve(string mix, StrengthCurve curve) => new
    {
        mix, curve.Kind, curve.Form, curve.Origin, maturity = curve.Scale.Kind, curve.Parameters, results = curve.Count, firstTested = Finite(curve.FirstTested), curve.Residual, curve.LogSpread, curve.Sentence,
    };

    /// <summary>What is asked for.</summary>
    public static object Criterion(OpeningCriterion criterion) => new { criterion.Kind, criterion.Strength, criterion.LeastAge, criterion.Confidence, criterion.Reasons };

    /// <summary>Strength over time.</summary>
    public static IEnumerable<object> Hours(OpeningForecastResult forecast) => forecast.Hours.Select(h => new
    {
        h.Hours, h.Temperature, h.Maturity, low = h.Strength.Low, median = h.Strength.Middle, high = h.Strength.High, h.Chance, h.Governs,
    });

    /// <summary>A time to the second.</summary>
    public static DateTime? Time(DateTime? time) => time is { } at ? new DateTime(at.Ticks / TimeSpan.TicksPerSecond * TimeSpan.TicksPerSecond, DateTimeKind.Unspecified) : null;

    private static object Row(MixNight row, NightDetail? detail) => new
    {
        mix = row.Mix.Id,
        row.CostPerCubicMetre,
        opensAt = Time(row.OpensAt),
        row.ChanceByDeadline,
        medianAt = Time(row.Forecast?.HoursAt(0.5) is { } median ? row.Night.Placed.AddHours(median) : null),
        medianByOtherFunctionAt = Time(row.MedianByOtherLaw is { } other ? row.Night.Placed.AddHours(other) : null),
        lastPlacing = Time(row.LastPlacing),
        governs = row.Forecast is { } f ? TradeWords.Of(GoverningPlace.At(f, f.HoursAt(0.5) ?? double.PositiveInfinity)) : null,
        criterion = row.Forecast is { } asked ? Criterion(asked.Case.Criterion) : null,
        strengthFrom = row.Forecast is { } source ? ConcretePlanText.Origin(source.Case.Curve) : null,
        row.Forecast?.BeforeFirstTested,
        hottest = detail?.Peak,
        saw = row.SawWindow is { } saw ? new { saw.From, saw.FromHard, saw.To } : null,
        row.Evaporation,
        reasons = row.Forecast?.Reasons,
        hours = row.Forecast is { } forecast ? Hours(forecast) : null,
    };

    private static double? Finite(double value) => double.IsFinite(value) ? value : null;
}
