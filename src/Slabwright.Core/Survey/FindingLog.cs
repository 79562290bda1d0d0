using System.Collections.Immutable;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Survey;

/// <summary>Collects the findings of one file; of each code so many are listed and the rest counted, so that a bad million rows stay readable.</summary>
/// <param name="file">File name without its folder.</param>
/// <param name="mostPerCode">Findings listed per code.</param>
public sealed class FindingLog(string file, int mostPerCode = 1000)
{
    private readonly List<Finding> findings = [];
    private readonly Dictionary<string, long> counts = new(StringComparer.Ordinal);

    /// <summary>File name without its folder.</summary>
    public string File => file;

    /// <summary>Adds a finding.</summary>
    /// <param name="fault">What is wrong.</param>
    /// <param name="sentence">What is wrong here; null for the fault's own words.</param>
    /// <param name="row">Row of the file.</param>
    /// <param name="field">Heading as the file spells it.</param>
    /// <param name="value">Value as found.</param>
    /// <param name="mend">What to do about it here; null for the fault's own words.</param>
    /// <param name="lane">Lane.</param>
    /// <param name="at">Metres along the road.</param>
    /// <param name="limit">Limit crossed, with unit.</param>
    /// <param name="source">Source of the limit.</param>
    public void Add(
        SurveyFault fault, string? sentence = null, long? row = null, string? field = null, string? value = null, string? mend = null,
        int? lane = null, double? at = null, string? limit = null, string? source = null)
    {
        ArgumentNullException.ThrowIfNull(fault);
        var count = counts.GetValueOrDefault(fault.Code) + 1;
        counts[fault.Code] = count;
        if (count > mostPerCode) return;
        var place = new FindingPlace(file, row, field, lane, at);
        findings.Add(new Finding(fault.Code, fault.Level, sentence ?? fault.Meaning, place, value, mend ?? fault.Mend, limit, source));
    }

    /// <summary>The findings so far, in order of row, with a closing note for each code that has more than are listed.</summary>
    public ImmutableArray<Finding> ToFindings()
    {
        var all = findings.OrderBy(f => f.Place.Row ?? 0).ToList();
        foreach (var (code, count) in counts.Where(c => c.Value > mostPerCode).OrderBy(c => c.Key, StringComparer.Ordinal))
        {
            var sentence = $"{count - mostPerCode} more findings {code} are not listed one by one.";
            all.Add(new Finding(SurveyFaults.MoreOfTheSame.Code, SurveyFaults.MoreOfTheSame.Level, sentence, new FindingPlace(file),
                code, SurveyFaults.MoreOfTheSame.Mend));
        }

        return [.. all];
    }
}
