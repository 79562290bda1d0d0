using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Survey;

/// <summary>A value between a low and a high one.</summary>
/// <param name="Low">Low.</param>
/// <param name="Likely">Likely.</param>
/// <param name="High">High.</param>
public readonly record struct GrowthRange(double Low, double Likely, double High);

/// <summary>How a distress has grown by the day of work.</summary>
/// <param name="DistressId">Which distress.</param>
/// <param name="Years">Years between survey and work.</param>
/// <param name="EachEnd">Added at each end along the road, m.</param>
/// <param name="Extent">Length along the road by then, m.</param>
/// <param name="Reason">How it came about.</param>
public sealed record DistressGrowth(string DistressId, double Years, GrowthRange EachEnd, GrowthRange Extent, Reason Reason);

/// <summary>New distresses of a type to expect by the day of work.</summary>
/// <param name="Type">Type.</param>
/// <param name="Surveyed">How many were surveyed.</param>
/// <param name="Expected">How many more to expect, a mean and so rarely a whole number.</param>
/// <param name="Reason">How it came about.</param>
public sealed record NewDistresses(DistressType Type, int Surveyed, double Expected, Reason Reason);

/// <summary>
/// Growth of damage between the survey and the work, from a rate per year and distress type. Lengths grow in proportion to time at each
/// end; new distresses appear in proportion to those surveyed, compounded. Damage never shrinks, and a survey made on or after the day of
/// work does not grow.
/// </summary>
public static class SurveyGrowth
{
    private const double DaysPerYear = 365.2425;

    private static readonly SourceRef Assumed = new("assumption", "to be confirmed by the project", SourceStatus.Project);

    /// <summary>
    /// Rates to start from. No published rate of growth along the road for single distresses was found: these are assumptions for the
    /// project to confirm or replace, chosen so that a survey two years old adds about a cut step at each end.
    /// </summary>
    public static GrowthModel Assumption { get; } = new(
    [
        new GrowthRate(DistressType.DurabilityCracking, 0.03, 0.08, 0.20, 0.05),
        new GrowthRate(DistressType.ReactiveAggregate, 0.03, 0.08, 0.20, 0.05),
        new GrowthRate(DistressType.JointDeterioration, 0.02, 0.06, 0.15, 0.04),
        new GrowthRate(DistressType.Blowup, 0.00, 0.10, 0.30, 0.02),
        new GrowthRate(DistressType.ShatteredSlab, 0.00, 0.00, 0.00, 0.03),
        new GrowthRate(null, 0.00, 0.03, 0.10, 0.03),
    ]);

    /// <summary>Years from one day to another; 0 when the second is not later.</summary>
    /// <param name="survey">Day of the survey.</param>
    /// <param name="work">Day of the work.</param>
    public static double YearsBetween(DateOnly survey, DateOnly work) => Math.Max(0, work.DayNumber - survey.DayNumber) / DaysPerYear;

    /// <summary>Growth of one distress by the day of work; null where its type does not grow or no day is set.</summary>
    /// <param name="distress">Distress.</param>
    /// <param name="work">Day of the work; null: no growth.</param>
    /// <param name="model">Rates.</param>
    public static DistressGrowth? Of(Distress distress, DateOnly? work, GrowthModel model)
    {
        ArgumentNullException.ThrowIfNull(distress);
        ArgumentNullException.ThrowIfNull(model);
        if (work is not { } day || model.RateOf(distress.Type) is not { } rate) return null;
        var years = YearsBetween(distress.SurveyedOn, day);
        var ends = new GrowthRange(years * rate.LengthPerYearLow, years * rate.LengthPerYearLikely, years * rate.LengthPerYearHigh);
        var extent = new GrowthRange(distress.Extent + 2 * ends.Low, distress.Extent + 2 * ends.Likely, distress.Extent + 2 * ends.High);
        return new DistressGrowth(distress.Id, years, ends, extent, Why(distress, day, years, rate, ends));
    }

    /// <summary>New distresses to expect by the day of work, by type.</summary>
    /// <param name="survey">Survey.</param>
    /// <param name="work">Day of the work; null: none.</param>
    /// <param name="model">Rates.</param>
    public static ImmutableArray<NewDistresses> NewBy(SurveyRecord survey, DateOnly? work, GrowthModel model)
    {
        ArgumentNullException.ThrowIfNull(survey);
        ArgumentNullException.ThrowIfNull(model);
        if (work is not { } day) return [];
        var news = ImmutableArray.CreateBuilder<NewDistresses>();
        foreach (var group in survey.Distresses.GroupBy(d => d.Type).OrderBy(g => g.Key))
        {
            if (model.RateOf(group.Key) is not { NewPerYear: > 0 } rate) continue;
            var expected = group.Sum(d => d.Count * (Math.Pow(1 + rate.NewPerYear, YearsBetween(d.SurveyedOn, day)) - 1));
            var surveyed = group.Sum(d => d.Count);
            var reason = new Reason("growth-new",
                $"{Text(expected, "0.0")} new {DistressCatalog.Of(group.Key).Name.ToLowerInvariant()} are to be expected by {day:yyyy-MM-dd}.", SourceOf(rate),
                [new("surveyed", surveyed.ToString(CultureInfo.InvariantCulture)), new("new per year", Text(100 * rate.NewPerYear, "0.#") + " %")]);
            news.Add(new NewDistresses(group.Key, surveyed, expected, reason));
        }

        return news.ToImmutable();
    }

    private static Reason Why(Distress distress, DateOnly day, double years, GrowthRate rate, GrowthRange ends) => new(
        "growth-length",
        years == 0
            ? "The survey is not older than the work; nothing was added for growth."
            : $"The survey is {Text(years, "0.0")} years older than the work; {Text(ends.Low, "0.00")} to {Text(ends.High, "0.00")} m, "
                + $"likely {Text(ends.Likely, "0.00")} m, grow at each end.",
        SourceOf(rate),
        [
            new("surveyed", distress.SurveyedOn.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)),
            new("work", day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)),
            new("rate low", Text(rate.LengthPerYearLow, "0.###") + " m a year"),
            new("rate likely", Text(rate.LengthPerYearLikely, "0.###") + " m a year"),
            new("rate high", Text(rate.LengthPerYearHigh, "0.###") + " m a year"),
        ]);

    /// <summary>The shipped rates say that they are assumptions; rates of the project's own are the project's.</summary>
    private static SourceRef SourceOf(GrowthRate rate) => Assumption.Rates.Contains(rate) ? Assumed : SourceRef.Project;

    private static string Text(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
