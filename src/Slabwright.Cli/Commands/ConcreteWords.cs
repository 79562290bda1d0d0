using System.Globalization;
using Slabwright.Core.Concrete.Opening;
using Slabwright.Core.Evidence;
using Slabwright.Core.Handbook;
using Slabwright.Core.Measures;

namespace Slabwright.Cli.Commands;

/// <summary>How the verb on concrete writes times, temperatures, strengths and costs: in the units and currency of a job.</summary>
/// <param name="System">Units.</param> <param name="Currency">Currency; empty where none is known.</param>
internal sealed record ConcreteWords(UnitSystem System, string Currency)
{
    private const double Yard3 = 0.9144 * 0.9144 * 0.9144;

    private static readonly UnitPair Warmth = new(Units.Fahrenheit, Units.Celsius);
    private static readonly UnitPair Depth = new(Units.Inch, Units.Millimetre);

    /// <summary>Unit of a cost, e.g. <c>USD/yd3</c>.</summary>
    public string CostUnit => (Currency.Length > 0 ? Currency : "cost") + (System == UnitSystem.Si ? "/m3" : "/yd3");

    /// <summary>A temperature, e.g. <c>96 °F</c>.</summary>
    public string Temperature(double celsius) => Warmth.In(System).Format(celsius, System == UnitSystem.Si ? 1 : 0);

    /// <summary>A difference of temperatures with its sign.</summary>
    public string Difference(double kelvin) => System == UnitSystem.Si
        ? kelvin.ToString("+0.0 K;−0.0 K;0.0 K", CultureInfo.InvariantCulture)
        : (kelvin * 1.8).ToString("+0.0 °F;−0.0 °F;0.0 °F", CultureInfo.InvariantCulture);

    /// <summary>A strength, e.g. <c>2,000 psi</c>.</summary>
    public string Strength(double pascal) => System == UnitSystem.Si ? Units.Megapascal.Format(pascal, 1) : Units.Psi.Format(Math.Round(pascal / Units.Psi.Factor / 10) * 10 * Units.Psi.Factor, 0);

    /// <summary>A thickness.</summary>
    public string Thickness(double metres) => Depth.In(System).Format(metres, System == UnitSystem.Si ? 0 : 1);

    /// <summary>A cost of a cubic metre, for each cubic yard where units are customary, without its unit; a dash where none is known.</summary>
    public string Cost(decimal? cubicMetre) => cubicMetre is { } cost ? (System == UnitSystem.Si ? cost : cost * (decimal)Yard3).ToString("N2", CultureInfo.InvariantCulture) : "-";

    /// <summary>Evaporation with its unit.</summary>
    public string Evaporation(double rate) => System == UnitSystem.Si
        ? string.Create(CultureInfo.InvariantCulture, $"{rate:0.00} kg/(m²·h)")
        : string.Create(CultureInfo.InvariantCulture, $"{rate * 0.3048 * 0.3048 / 0.45359237:0.00} lb/(ft²·h)");

    /// <summary>A clock time of a night; with its weekday from noon after on, when it could be taken for the evening's; <paramref name="none"/> where there is none.</summary>
    public static string At(DateTime? time, WorkNight night, string none = "-") => time is not { } at ? none
        : at < night.Day.AddDays(1).ToDateTime(new TimeOnly(12, 0)) ? ClockText.Of(at) : at.ToString("ddd ", CultureInfo.InvariantCulture) + ClockText.Of(at);

    /// <summary>An opening time, on the safe side to the minute.</summary>
    public static string Opens(DateTime? time, WorkNight night, string none = "-") => At(time is { } at ? ClockText.NextMinute(at) : null, night, none);

    /// <summary>A last placing, on the safe side to the minute.</summary>
    public static string Last(DateTime? time, WorkNight night, string none = "-") => At(time is { } at ? ClockText.MinuteBefore(at) : null, night, none);

    /// <summary>How many mixes on how many nights.</summary>
    public static string Scope(ConcreteStudy study)
    {
        var (mixes, nights) = (study.Job.Settings.Mixes.Length, study.Job.Settings.Nights.Length);
        return string.Create(CultureInfo.InvariantCulture, $"{mixes} {(mixes == 1 ? "mix" : "mixes")} on {nights} {(nights == 1 ? "night" : "nights")}");
    }

    /// <summary>A chance in percent with one decimal.</summary>
    public static string Chance(double? share) => share is { } value ? (100 * value).ToString("0.0", CultureInfo.InvariantCulture) + " %" : "-";

    /// <summary>A confidence in percent.</summary>
    public static string Confidence(double share) => (100 * share).ToString("0.#", CultureInfo.InvariantCulture) + " %";

    /// <summary>Hours later or earlier, e.g. <c>0:22 h later</c>.</summary>
    public static string Later(double? hours) => hours is not { } value ? "-" : Math.Abs(value) < 1 / 120.0 ? "no change" : ClockText.OfSpan(Math.Abs(value)) + (value > 0 ? " later" : " earlier");

    /// <summary>The place that lags behind, in words.</summary>
    public static string Place(SlabPlace place) => place == SlabPlace.MidDepth ? "mid-depth" : TradeWords.Of(place);

    /// <summary>The night in one line: day, placing and deadline.</summary>
    public static string Night(WorkNight night, DateTime placed) => $"{ClockText.Of(night.Day)}, placed {ClockText.Of(placed)}, open by {ClockText.Of(night.Deadline)}";
}
