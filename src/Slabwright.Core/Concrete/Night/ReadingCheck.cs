using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Concrete.Night;

/// <summary>Limits by which readings are judged. Common practice; the sensor's own data sheet is better.</summary>
public sealed record ReadingLimits
{
    /// <summary>Limits used where the project sets none.</summary>
    public static ReadingLimits Usual { get; } = new();

    /// <summary>Longest time between readings, h: half an hour is the published interval of the first two days; more is a gap.</summary>
    public double LongestGap { get; init; } = 0.75;

    /// <summary>Longest gap that is bridged, h; beyond it the probe is not trusted.</summary>
    public double LongestBridge { get; init; } = 2;

    /// <summary>Coldest believable reading, °C.</summary>
    public double Coldest { get; init; } = -20;

    /// <summary>Hottest believable reading, °C.</summary>
    public double Hottest { get; init; } = 100;

    /// <summary>Fastest believable change, K/h.</summary>
    public double FastestChange { get; init; } = 40;

    /// <summary>Readings exactly alike in a row that mean a dead sensor, h.</summary>
    public double StuckFor { get; init; } = 3;

    /// <summary>Probes at one kind of place that differ by more than this disagree, K.</summary>
    public double Disagreement { get; init; } = 5;
}

/// <summary>Puts the readings of a night in order and tells what is wrong with them. Nothing is changed in silence.</summary>
public static class ReadingCheck
{
    private const int ListedAtMost = 5;

    /// <summary>Checks every probe alone, then against the others.</summary>
    /// <param name="readings">The readings.</param> <param name="limits">Limits; the usual ones when null.</param>
    public static CheckedReadings Of(NightReadings readings, ReadingLimits? limits = null)
    {
        limits ??= ReadingLimits.Usual;
        var findings = new List<Finding>();
        var probes = readings.Probes.Select(p => One(readings, p, limits, findings)).ToArray();
        Compare(readings, probes, limits, findings);
        if (probes.Length > 0 && probes.All(p => !p.Trusted))
            findings.Add(Make("CON-048", FindingLevel.Error, readings, null, "No probe can be trusted.", null, "Open on specimens, or wait."));
        return new CheckedReadings([.. probes], [.. findings]);
    }

    private static ProbeHistory One(NightReadings readings, Probe probe, ReadingLimits limits, List<Finding> findings)
    {
        var trusted = true;
        var history = ImmutableArray.CreateBuilder<ConcreteTemperature>();
        ProbeReading? before = null;
        var (listed, bad, early) = (0, 0, 0);
        foreach (var reading in InOrder(readings, probe, findings))
        {
            var hours = (reading.At - readings.PlacedAt).TotalHours;
            if (hours < 0)
            {
                early++;
                continue;
            }

            if (Fault(reading, before, limits) is { } fault)
            {
                bad++;
                if (listed++ < ListedAtMost)
                    findings.Add(Make(fault.Code, FindingLevel.Warning, readings, reading, fault.Sentence, Value(reading, probe), "The reading is left out; check sensor and lead.", fault.Limit));
                continue;
            }

            trusted &= Gap(readings, probe, before, reading, limits, findings);
            history.Add(new ConcreteTemperature(hours, reading.Temperature!.Value));
            before = reading;
        }

        if (early > 0)
            findings.Add(Make("CON-047", FindingLevel.Note, readings, null, "Readings from before placing are left out.", $"{probe.Name}: {early}", "Check the time of placing and the clock of the logger."));
        if (bad > 0.2 * probe.Readings.Length || history.Count < 2)
        {
            trusted = false;
            findings.Add(Make("CON-043", FindingLevel.Warning, readings, null, "The sensor gave too few good readings; the probe is not trusted.",
                string.Create(CultureInfo.InvariantCulture, $"{probe.Name}: {bad} of {probe.Readings.Length}"), "Use another probe.", "20 %"));
        }

        if (Stuck(history, limits) is { } stuck)
        {
            trusted = false;
            findings.Add(Make("CON-044", FindingLevel.Warning, readings, null, "The sensor gave the same value for hours; it is not trusted.",
                string.Create(CultureInfo.InvariantCulture, $"{probe.Name}: {stuck:0.0} °C"), "Check sensor and lead.", string.Create(CultureInfo.InvariantCulture, $"{limits.StuckFor:0.#} h")));
        }

        return new ProbeHistory(probe.Name, probe.Place, FromPlacing(history), trusted);
    }

    /// <summary>
    /// Readings by time. A clock set back or forward shows as rows out of order or as a jump of a whole or half hour between neighbours that
    /// stand a steady interval apart: named, and the times left as they are.
    /// </summary>
    private static IEnumerable<ProbeReading> InOrder(NightReadings readings, Probe probe, List<Finding> findings)
    {
        var rows = probe.Readings;
        var steps = rows.Zip(rows.Skip(1), (a, b) => (b.At - a.At).TotalMinutes).ToArray();
        var usual = steps.Length == 0 ? 0 : steps.Order().ElementAt(steps.Length / 2);
        for (var i = 0; i < steps.Length; i++)
        {
            if (steps[i] < 0)
            {
                findings.Add(Make("CON-041", FindingLevel.Warning, readings, rows[i + 1], "The clock goes back here; the rows are put in order of time.",
                    string.Create(CultureInfo.InvariantCulture, $"{probe.Name}: {steps[i]:0} min"), "Check whether the logger's clock was set or the file was joined from two."));
            }
            else if (steps[i] - usual is var jump && Math.Abs(jump) > 10 && usual < 40 && Math.Abs(Math.Abs(jump) - 60) < 1)
            {
                findings.Add(Make("CON-042", FindingLevel.Warning, readings, rows[i + 1], "The clock seems to jump by an hour here, as with daylight saving.",
                    string.Create(CultureInfo.InvariantCulture, $"{probe.Name}: {steps[i]:0} min, else {usual:0} min"), "Check the logger's clock; an hour too many or too few moves the maturity."));
            }
        }

        return rows.OrderBy(r => r.At).DistinctBy(r => r.At);
    }

    private static (string Code, string Sentence, string Limit)? Fault(ProbeReading reading, ProbeReading? before, ReadingLimits limits)
    {
        if (reading.Temperature is not { } value || !double.IsFinite(value)) return ("CON-045", "The sensor gave no temperature.", "");
        if (value < limits.Coldest || value > limits.Hottest)
            return ("CON-045", "The temperature is not one of fresh concrete.", string.Create(CultureInfo.InvariantCulture, $"{limits.Coldest:0} to {limits.Hottest:0} °C"));
        if (before?.Temperature is not { } last) return null;
        var hours = Math.Max((reading.At - before.At).TotalHours, 0.05);
        return Math.Abs(value - last) / hours > limits.FastestChange && Math.Abs(value - last) > 5
            ? ("CON-045", "The temperature jumps faster than concrete can.", string.Create(CultureInfo.InvariantCulture, $"{limits.FastestChange:0} K/h"))
            : null;
    }

    private static bool Gap(NightReadings readings, Probe probe, ProbeReading? before, ProbeReading reading, ReadingLimits limits, List<Finding> findings)
    {
        var gap = (reading.At - (before?.At ?? readings.PlacedAt)).TotalHours;
        if (gap <= limits.LongestGap) return true;
        var bridged = gap <= limits.LongestBridge;
        findings.Add(Make("CON-040", FindingLevel.Warning, readings, reading,
            bridged ? "Readings are missing before this one; the gap is bridged straight." : "Readings are missing for so long that the probe is not trusted.",
            string.Create(CultureInfo.InvariantCulture, $"{probe.Name}: {gap:0.0} h"), "Read the logger's own memory if it has one.",
            string.Create(CultureInfo.InvariantCulture, $"{(bridged ? limits.LongestGap : limits.LongestBridge):0.##} h"), "ASTM-C1074"));
        return bridged;
    }

    private static double? Stuck(IReadOnlyList<ConcreteTemperature> history, ReadingLimits limits)
    {
        for (var (from, i) = (0, 1); i < history.Count; i++)
        {
            if (history[i].Temperature != history[from].Temperature) from = i;
            else if (history[i].Hours - history[from].Hours >= limits.StuckFor) return history[i].Temperature;
        }

        return null;
    }

    /// <summary>The first reading holds back to placing.</summary>
    private static ImmutableArray<ConcreteTemperature> FromPlacing(ImmutableArray<ConcreteTemperature>.Builder history)
    {
        if (history.Count > 0 && history[0].Hours > 0) history.Insert(0, new ConcreteTemperature(0, history[0].Temperature));
        return history.ToImmutable();
    }

    private static void Compare(NightReadings readings, ProbeHistory[] probes, ReadingLimits limits, List<Finding> findings)
    {
        var trusted = probes.Where(p => p.Trusted).ToArray();
        foreach (var pair in trusted.SelectMany((a, i) => trusted.Skip(i + 1).Where(b => b.Place == a.Place).Select(b => (A: a, B: b))))
        {
            var greatest = pair.A.History.Select(t => (t.Hours, Difference: Math.Abs(t.Temperature - (ReadingMath.At(pair.B.History, t.Hours) ?? t.Temperature)))).MaxBy(d => d.Difference);
            if (greatest.Difference <= limits.Disagreement) continue;
            findings.Add(Make("CON-046", FindingLevel.Warning, readings, null, "Two probes at the same kind of place disagree; the colder one governs.",
                string.Create(CultureInfo.InvariantCulture, $"{pair.A.Name} and {pair.B.Name}: {greatest.Difference:0.0} K at {greatest.Hours:0.0} h"),
                "Check where they sit and which lead is which.", string.Create(CultureInfo.InvariantCulture, $"{limits.Disagreement:0} K")));
        }
    }

    private static string Value(ProbeReading reading, Probe probe) =>
        string.Create(CultureInfo.InvariantCulture, $"{probe.Name}: {(reading.Temperature is { } t ? t.ToString("0.0", CultureInfo.InvariantCulture) + " °C" : "none")}");

    private static Finding Make(string code, FindingLevel level, NightReadings readings, ProbeReading? at, string sentence, string? value, string mend, string? limit = null, string? source = null) =>
        new(code, level, sentence, new FindingPlace(readings.File, at is { Row: > 0 } ? at.Row : null, "temperature"), value, mend, limit is { Length: 0 } ? null : limit, source);
}

/// <summary>Reads a history between its readings.</summary>
public static class ReadingMath
{
    /// <summary>Temperature at a time, straight between readings; null outside them.</summary>
    /// <param name="history">Readings, hours rising.</param> <param name="hours">Hours after placing.</param>
    public static double? At(IReadOnlyList<ConcreteTemperature> history, double hours)
    {
        if (history.Count == 0 || hours < history[0].Hours || hours > history[^1].Hours) return null;
        var (low, high) = (0, history.Count - 1);
        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            if (history[middle].Hours <= hours) low = middle;
            else high = middle;
        }

        var (a, b) = (history[low], history[high]);
        return b.Hours <= a.Hours ? a.Temperature : a.Temperature + (hours - a.Hours) / (b.Hours - a.Hours) * (b.Temperature - a.Temperature);
    }
}
