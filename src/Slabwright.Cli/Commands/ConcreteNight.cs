using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using Slabwright.Cli.Output;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Concrete.Mixes;
using Slabwright.Core.Concrete.Night;
using Slabwright.Core.Concrete.Opening;
using Slabwright.Core.Evidence;
using Slabwright.Core.Handbook;
using Slabwright.Data.Night;

namespace Slabwright.Cli.Commands;

/// <summary>What is known of a night: readings, specimens, the forecast before and after, the evidence and the decision.</summary>
/// <param name="Night">The night.</param> <param name="Mix">The mix placed.</param> <param name="Repair">Repair or placement.</param> <param name="Placed">Clock time of placing.</param>
/// <param name="Checked">Readings, checked.</param> <param name="Forecast">Forecast before and after.</param> <param name="Evidence">What shows the strength.</param>
/// <param name="At">Clock time of the decision, or of the last reading.</param> <param name="Record">The decision; null where none is asked for.</param>
internal sealed record KnownNight(
    WorkNight Night, ConcreteMix Mix, string Repair, DateTime Placed, CheckedReadings Checked, NightForecast Forecast, ImmutableArray<StrengthEvidence> Evidence, DateTime At, OpeningRecord? Record);

/// <summary>The night: readings checked, the forecast moved by them, the strength now, the decision.</summary>
internal static class ConcreteNight
{
    private const string Verb = "concrete";

    /// <summary>Follows a night.</summary>
    public static int Run(Report report, ConcreteOptions options, ParseResult parsed, ConcreteStudy study, ConcreteWords words, ImmutableArray<Finding> findings)
    {
        var own = ImmutableArray.CreateBuilder<Finding>();
        var known = Know(options, parsed, study, words, own);
        ImmutableArray<Finding> all = [.. findings, .. own];
        if (known is null)
        {
            var wrong = own.Where(f => f.Level == FindingLevel.Error).ToImmutableArray();
            return report.End(Verb, wrong.Any(f => f.Code is "CON-101" or "ROAD-003") ? ExitCode.InputUnusable : ExitCode.Usage, null, wrong.IsEmpty ? all : wrong);
        }

        all = [.. all, .. known.Forecast.Findings.Where(f => !all.Contains(f))];
        ConcreteNightText.Write(report, study, known, words);
        return report.End(Verb, Endings.Of(all), ConcreteNightText.Document(study, known), all);
    }

    private static KnownNight? Know(ConcreteOptions options, ParseResult parsed, ConcreteStudy study, ConcreteWords words, ImmutableArray<Finding>.Builder findings)
    {
        var settings = study.Job.Settings;
        if (settings.Nights is not [var night] || settings.Mixes is not [var mix])
        {
            findings.Add(Wrong("CON-144", "The readings are of one night and one mix.", "night", $"{settings.Nights.Length} nights, {settings.Mixes.Length} mixes", "Name one of each by --night and --mix."));
            return null;
        }

        if (!ClockText.TryRead(options.Text(parsed, NightQuestions.PlacedKey), out var clock))
        {
            findings.Add(Wrong("CON-132", "placed-at is not a clock time.", NightQuestions.PlacedKey, options.Text(parsed, NightQuestions.PlacedKey), "Write it as --placed-at 22:10."));
            return null;
        }

        var placed = new[] { night.Day, night.Day.AddDays(1) }.Select(d => d.ToDateTime(clock)).MinBy(t => Math.Abs((t - night.Placed).Ticks));
        var repair = options.Text(parsed, "repair") ?? mix.Id;
        var until = Until(options, parsed, placed, findings);
        if (ReadProbes(options, parsed, settings, words, findings) is not { } read || findings.Any(f => f.Place.Field == "at")) return null;
        ImmutableArray<Probe> probes = [.. read.Probes.Select(p => p with { Readings = [.. p.Readings.Where(r => until is null || r.At <= until)] })];
        var readings = new NightReadings { Repair = repair, Mix = mix.Id, PlacedAt = placed, Probes = probes, File = read.File };
        var typed = options.Text(parsed, "specimens") is { } list ? BreakText.Read(list, words.System, "specimens", findings) : [];
        if (findings.Any(f => f.Level == FindingLevel.Error && f.Code is "CON-131")) return null;
        var change = NightChange.None with { PlacedAt = clock };
        if (study.CaseOf(night, mix, change) is not { } question)
        {
            findings.Add(Wrong("CON-145", "The mix has no strength curve, or no strength is asked for: the night cannot be followed.", "mix", mix.Id, "Break specimens of the mix; see the other findings."));
            return null;
        }

        var checkedReadings = ReadingCheck.Of(readings);
        var specimens = typed.Where(t => until is null || placed.AddHours(t.Hours) <= until).Select(t => Specimen(t, question.Curve, checkedReadings)).ToArray();
        if (study.Update(night, readings, specimens, change, checkedReadings) is not { } forecast)
        {
            findings.Add(Wrong("CON-145", "The weather does not reach over the night: it cannot be followed.", "night", night.Day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), "Give its hours by --weather."));
            return null;
        }

        var at = until ?? placed.AddHours(Math.Max(forecast.LastReading, specimens.Select(s => s.Hours).DefaultIfEmpty(0).Max()));
        var evidence = NightResults.Evidence(forecast, placed, specimens).ToImmutableArray();
        var record = options.Decides(parsed) ? OpeningDecision.Decide(new OpeningQuestion
        {
            Repair = repair, Criterion = forecast.Prior.Case.Criterion, PlacedAt = placed, Evidence = evidence, By = options.Text(parsed, "by") ?? "", At = at, Curve = forecast.Prior.Case.Curve,
            OverrideReason = options.Text(parsed, "override") ?? "",
        }) : null;
        return new KnownNight(night, mix, repair, placed, checkedReadings, forecast, evidence, at, record);
    }

    private static (ImmutableArray<Probe> Probes, string? File)? ReadProbes(ConcreteOptions options, ParseResult parsed, ConcreteSettings settings, ConcreteWords words, ImmutableArray<Finding>.Builder findings)
    {
        if (options.Text(parsed, "readings") is not { } path) return ([], null);
        string text;
        try
        {
            text = File.ReadAllText(path);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            findings.Add(new("ROAD-003", FindingLevel.Error, "The file of readings cannot be read.", new(Path.GetFileName(path), Field: "readings"), exception.Message, "Check the path given by --readings."));
            return null;
        }

        var name = Path.GetFileName(path);
        var read = LoggerReader.Read(text, name, settings.LoggerColumns, words.System);
        if (options.Text(parsed, "columns") is { } columns)
        {
            if (ConcreteColumns.Read(columns, read.Headers, read.Columns, findings) is not { } mapping) return null;
            read = LoggerReader.Read(text, name, settings.LoggerColumns, words.System, mapping);
        }

        findings.AddRange(read.Findings.Select(f => f.Code == "CON-085" ? f with { Mend = "Say where each probe sits: --columns \"Time=Stamp; T1=mid depth; T2=edge; unit=°F\"." } : f));
        return read.Probes.IsEmpty ? null : (read.Probes, name);
    }

    /// <summary>Maturity of a specimen: by the temperature typed, else as the coldest trusted probe, beside which it is kept; else at the reference temperature.</summary>
    private static NightSpecimen Specimen(TypedBreak typed, StrengthCurve curve, CheckedReadings readings)
    {
        if (typed.Temperature is { } warm) return new(typed.Hours, curve.Scale.Rate(warm) * typed.Hours, typed.Strength, curve.Kind);
        var probes = readings.Probes.Where(p => p.Trusted && p.History[^1].Hours >= typed.Hours - 0.75).ToArray();
        var maturity = probes.Length == 0
            ? curve.Scale.Rate(curve.Scale.Reference) * typed.Hours
            : probes.Min(p => curve.Scale.Of([.. p.History.Where(t => t.Hours < typed.Hours), new ConcreteTemperature(typed.Hours, ReadingMath.At(p.History, typed.Hours) ?? p.History[^1].Temperature)]));
        return new(typed.Hours, maturity, typed.Strength, curve.Kind);
    }

    /// <summary>Clock time of the decision: later readings and specimens are not looked at; null where none is typed, or where it cannot be read.</summary>
    private static DateTime? Until(ConcreteOptions options, ParseResult parsed, DateTime placed, ImmutableArray<Finding>.Builder findings)
    {
        if (options.Text(parsed, "at") is not { } text) return null;
        if (ClockText.TryRead(text, out var clock)) return (clock >= TimeOnly.FromDateTime(placed) ? placed.Date : placed.Date.AddDays(1)).Add(clock.ToTimeSpan());
        findings.Add(Wrong("CON-132", "at is not a clock time.", "at", text, "Write it as --at 3:40."));
        return null;
    }

    private static Finding Wrong(string code, string sentence, string field, string? value, string mend) => new(code, FindingLevel.Error, sentence, new FindingPlace(Field: field), value, mend);
}
