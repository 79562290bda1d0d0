using System.Globalization;
using System.Text;
using Slabwright.Core.Evidence;

namespace Slabwright.Cli.Output;

/// <summary>A finding as one line: level, place, sentence, value and mend.</summary>
internal static class FindingText
{
    /// <summary>The line, e.g. <c>error SRV-004 survey.csv row 12 [severity]: "extreme" is no severity. Mend: write low, moderate or high.</c></summary>
    public static string Of(Finding finding)
    {
        var text = new StringBuilder(finding.Level.ToString().ToLowerInvariant()).Append(' ').Append(finding.Code);
        var place = finding.Place;
        if (place.File is not null) text.Append(' ').Append(place.File);
        if (place.Row is { } row) text.Append(CultureInfo.InvariantCulture, $" row {row}");
        if (place.Field is not null) text.Append(CultureInfo.InvariantCulture, $" [{place.Field}]");
        if (place.Lane is { } lane) text.Append(CultureInfo.InvariantCulture, $" lane {lane}");
        text.Append(": ").Append(finding.Sentence);
        if (finding.Value is not null) text.Append(CultureInfo.InvariantCulture, $" Found: {finding.Value}.");
        if (finding.Limit is not null) text.Append(CultureInfo.InvariantCulture, $" Limit: {finding.Limit}.");
        if (finding.Mend is not null) text.Append(" Mend: ").Append(finding.Mend);
        return text.ToString();
    }
}
