using System.Collections.Immutable;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Concrete.Mixes;
using Slabwright.Core.Concrete.Opening;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;

namespace Slabwright.Core.Handbook;

/// <summary>
/// Works concrete out from text: which of some mixes opens by a deadline on some nights, when the last truck must come, what if it is colder,
/// with the same models as a project.
/// </summary>
public static class ConcreteByHand
{
    /// <summary>Numbers in order, with units and ranges.</summary>
    public static ImmutableArray<HandbookInput> Numbers => HandInputs.Numbers;

    /// <summary>Words, clock times and lists in order.</summary>
    public static ImmutableArray<HandText> Texts => HandInputs.Texts;

    /// <summary>True for numbers that may be left out altogether.</summary>
    public static bool IsOptional(HandbookInput input) => HandInputs.Optional.Contains(input.Key);

    /// <summary>Works concrete out.</summary>
    /// <param name="texts">Inputs by key as text with units.</param> <param name="system">Units of bare numbers.</param>
    /// <param name="files">Weather and mixes from files; what they give is not asked for.</param> <param name="cancel">Stops the run.</param>
    public static HandConcrete Evaluate(
        IReadOnlyDictionary<string, string> texts, UnitSystem system = UnitSystem.UsCustomary, ConcreteFiles? files = null, CancellationToken cancel = default)
    {
        files ??= ConcreteFiles.None;
        var reading = new HandReading(texts, system, Needless(texts, files));
        var days = HandNights.Days(reading);
        CheckWords(reading, files);
        if (reading.IsWrong) return Wrong(reading);
        var made = files.Mixes.IsEmpty ? HandMixes.Of(reading) : [.. files.Mixes.Select(m => (m, ImmutableArray<Reason>.Empty))];
        ImmutableArray<ConcreteMix> mixes = [.. made.Select(m => m.Mix)];
        ImmutableArray<WorkNight> nights = [.. days.Select(d => HandNights.Night(d, reading))];
        var weather = files.Weather ?? HandNights.Weather(reading, days);
        var settings = Settings(reading, mixes, nights, files);
        if (reading.IsWrong || mixes.IsEmpty) return Wrong(reading);
        var job = new ConcreteJob
        {
            Settings = settings, Rows = files.Rows, Thickness = reading["thickness"], Length = reading["repair-length"], Weather = weather,
        };
        var study = ConcreteStudy.Of(job);
        var plan = ConcretePlanner.Plan(study, cancel);
        return new HandConcrete
        {
            Inputs = reading.Inputs,
            Mixes = [.. made.Select(m => new HandMix(m.Mix, HandMixes.Volumes(m.Mix), AbsoluteVolume.Yield(m.Mix), study.CostOf(m.Mix), m.Reasons))],
            Study = study,
            Plan = plan,
            Details = [.. plan.MixNights.Select(row => NightDetail.Of(study, row))],
            Findings = [.. reading.Findings, .. mixes.SelectMany(m => MixChecks.Of(m, new(Field: m.Id))), .. plan.Findings.Select(ByOption)],
        };
    }

    /// <summary>Reads every word and clock time once, so that all mistakes are told at once.</summary>
    private static void CheckWords(HandReading reading, ConcreteFiles files)
    {
        string[] clocks = ["placed-at", "open-by", .. reading.Has("placing-from") ? ["placing-from"] : Array.Empty<string>(), .. files.Weather is null ? ["low-at", "high-at"] : Array.Empty<string>()];
        foreach (var key in clocks) reading.Clock(key);
        if (reading.Has("kind")) reading.Word<StrengthKind>("kind");
        reading.Word<StrengthKind>("breaks-kind");
        reading.Word<MaturityKind>("maturity");
        reading.Yes("blanket");
        if (reading.Has("cement-kind")) reading.Word<CementKind>("cement-kind");
        if (reading.Has("accelerator")) reading.Word<Accelerator>("accelerator");
        if (reading.Text("placed-at") is { } placed && reading.Text("open-by") is { } open && ClockText.TryRead(placed, out var from) && ClockText.TryRead(open, out var to) && from == to)
            reading.Add("CON-072", "Concrete is placed when the lane opens.", "placed-at", placed, "Place before open-by.");
    }

    private static ConcreteSettings Settings(HandReading reading, ImmutableArray<ConcreteMix> mixes, ImmutableArray<WorkNight> nights, ConcreteFiles files) => new()
    {
        Mixes = mixes,
        Breaks = files.Mixes.IsEmpty ? HandMixes.Breaks(reading, mixes) : files.Breaks,
        HeatCurves = files.Mixes.IsEmpty ? [] : files.HeatCurves,
        Stated = HandMixes.Curve(reading, mixes) is { } curve ? [curve] : [],
        CriterionKind = reading.Has("kind") ? reading.Word<StrengthKind>("kind") : null,
        CriterionStrength = reading.Number("strength"),
        LeastAge = reading.Number("least-age") / HandInputs.Hour,
        IngredientPrices = HandMixes.Prices(reading),
        Confidence = reading["confidence"],
        Nights = nights,
        ClockAhead = reading.Hours("clock-ahead"),
        PlacingTemperature = reading["placing-temperature"],
        Blanket = reading.Yes("blanket") ? new BlanketCover(reading.Hours("blanket-from"), double.PositiveInfinity, reading["blanket-resistance"]) : null,
        Spread = new OpeningSpread { Air = reading["air-spread"], Placing = reading["placing-spread"], Strength = reading["strength-spread"] },
        Maturity = reading.Word<MaturityKind>("maturity"),
        Trials = (int)reading["trials"],
    };

    /// <summary>What files or a forecast answer.</summary>
    private static ImmutableHashSet<string> Needless(IReadOnlyDictionary<string, string> texts, ConcreteFiles files)
    {
        ImmutableHashSet<string> needless = [];
        if (files.Weather is not null) needless = needless.Union(HandInputs.Weather);
        else if (texts.ContainsKey("forecast")) needless = needless.Union(["low", "high", "low-at", "high-at"]);
        if (!files.Mixes.IsEmpty)
            needless = needless.Union(["mix", "cement-kind", "accelerator", "breaks", "breaks-kind", "curve", "first-tested", "curve-error", "cement", "fly-ash", "slag", "silica-fume", "water", "coarse", "fine", "air", "dose", "price", "curing", "activation-energy", "datum"]);
        return needless;
    }

    private static HandConcrete Wrong(HandReading reading) => new() { Inputs = reading.Inputs, Findings = [.. reading.Findings] };

    /// <summary>A finding of the plan in the words of the options: there is no file of specimens or weather here.</summary>
    private static Finding ByOption(Finding finding) => finding.Place.File switch
    {
        "breaks.csv" when finding.Place.Row is null => finding with { Place = new(Field: "breaks") },
        "weather_hourly.csv" => finding with { Place = new(Field: "weather") },
        "project.json" => finding with { Place = new(Field: finding.Place.Field) },
        _ => finding,
    };
}
