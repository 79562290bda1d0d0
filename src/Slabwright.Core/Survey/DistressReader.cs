using Slabwright.Core.Pavement;

namespace Slabwright.Core.Survey;

/// <summary>A distress as read from its row, before it has its identifier.</summary>
/// <param name="Distress">The distress; its identifier is the file's own or empty.</param>
/// <param name="PlaceAssumed">True when only the slab was given.</param>
internal readonly record struct ReadDistress(Distress Distress, bool PlaceAssumed);

/// <summary>Makes a distress of a row.</summary>
internal sealed class DistressReader(RowReader row, PlaceReader places, string file)
{
    private readonly Dictionary<string, DistressName?> types = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Severity?> severities = new(StringComparer.Ordinal);

    /// <summary>The distress of the current row; null when the row cannot be used, with the findings told.</summary>
    public ReadDistress? Read()
    {
        if (FindType() is not { } type) return null;
        if (FindSeverity(type) is not { } severity) return null;
        if (places.Read(type.Spread) is not { } place) return null;
        var sizes = new SizeReader(row, type, place);
        return new(
            new Distress
            {
                Id = row.Text(SurveyField.Id),
                Lane = place.Lane.Number,
                Type = type.Type,
                Severity = severity,
                From = place.From,
                To = place.To,
                Slab = place.Slab,
                OffsetFrom = place.Left,
                OffsetTo = place.Right,
                Depth = sizes.Depth(),
                Width = sizes.Width(),
                Length = sizes.Length(),
                Area = sizes.Area(),
                Faulting = sizes.Faulting(),
                WideningBelow = sizes.WideningBelow(),
                Count = sizes.Count(),
                Cause = Cause(),
                BesideEarlierRepair = row.YesNo(SurveyField.BesideEarlierRepair),
                ThroughOverlay = row.YesNo(SurveyField.ThroughOverlay),
                SurveyedOn = row.Day(),
                Note = row.Note(),
                Origin = $"{file} row {row.Row.Number}",
            },
            place.Assumed);
    }

    private DistressName? FindType()
    {
        var text = row.Text(SurveyField.Type);
        if (Words.MeansNothing(text))
        {
            row.Report(SurveyFaults.ValueMissing, SurveyField.Type, "The row names no distress type.");
            return null;
        }

        if (!types.TryGetValue(text, out var name))
        {
            DistressCatalog.TryFind(text, out name);
            if (types.Count < 10_000) types[text] = name;
        }

        if (name is not null) return name;
        var mend = text is "5" or "8" ? $"Write {text}a or {text}b." : DistressCatalog.Nearest(text) is { } near ? $"Write \"{near}\" if that is meant." : null;
        row.Report(SurveyFaults.TypeUnknown, SurveyField.Type, $"\"{text}\" is no distress of the list.", mend);
        return null;
    }

    private Severity? FindSeverity(DistressName type)
    {
        var text = row.Text(SurveyField.Severity);
        if (!severities.TryGetValue(text, out var severity))
        {
            severity = SeverityOf(text);
            if (severities.Count < 1000) severities[text] = severity;
        }

        if (severity is null)
        {
            if (type.HasSeverities)
            {
                row.Report(SurveyFaults.SeverityUnknown, SurveyField.Severity, $"\"{text}\" is no severity.");
                return null;
            }

            severity = Severity.None;
        }

        if (type.HasSeverities && severity == Severity.None)
        {
            row.Report(SurveyFaults.ValueMissing, SurveyField.Severity, $"{type.Name} need a severity.", "Write low, moderate or high.");
            return null;
        }

        if (!type.HasSeverities && !Words.MeansNothing(text) && text != "0")
        {
            row.Report(SurveyFaults.SeverityNeedless, SurveyField.Severity, $"{type.Name} have no severities; \"{text}\" was not used.");
            return Severity.None;
        }

        return severity;
    }

    private static Severity? SeverityOf(string text) => Words.MeansNothing(text) ? Severity.None : Words.Key(text) switch
    {
        "l" or "low" or "1" or "lo" or "slight" or "lowseverity" => Severity.Low,
        "m" or "moderate" or "medium" or "mod" or "med" or "2" or "moderateseverity" or "mediumseverity" => Severity.Moderate,
        "h" or "high" or "3" or "hi" or "severe" or "highseverity" => Severity.High,
        "0" or "nosev" or "noseverity" or "notrated" or "notapplicable" => Severity.None,
        _ => null,
    };

    private DistressCause Cause()
    {
        var text = row.Text(SurveyField.Cause);
        if (Words.MeansNothing(text)) return DistressCause.Unknown;
        switch (Words.Key(text))
        {
            case "load" or "traffic" or "trafficload" or "support" or "lossofsupport" or "fatigue" or "pumping" or "loading":
                return DistressCause.Load;
            case "durabilitycracking" or "dcracking" or "d" or "dcrack" or "durability" or "freezethaw":
                return DistressCause.DurabilityCracking;
            case "reactiveaggregate" or "asr" or "aar" or "acr" or "alkalisilicareaction" or "alkalisilica" or "alkaliaggregate":
                return DistressCause.ReactiveAggregate;
            case "joint" or "joints" or "dowel" or "dowels" or "lockeddowels" or "misaligneddowels" or "lockedjoint" or "latesawing"
                or "incompressibles" or "dowelmisalignment":
                return DistressCause.Joint;
            case "other" or "nk":
                return DistressCause.Unknown;
            default:
                row.Report(SurveyFaults.WordUnknown, SurveyField.Cause, $"\"{text}\" is no cause of the list.",
                    "Write load, durability cracking, reactive aggregate or joint; or leave it empty.");
                return DistressCause.Unknown;
        }
    }
}
