using Slabwright.Core.Pavement;

namespace Slabwright.Core.Survey;

/// <summary>Reads where a distress lies across its lane, by offsets or by words.</summary>
internal static class AcrossReader
{
    /// <summary>How far an offset may overshoot the lane's edge before it is a finding, m; set by what a tape reads. Common practice.</summary>
    private const double EdgeTolerance = 0.05;

    private const double HalfWheelPath = WheelPaths.Width / 2;
    private const double HalfTrack = WheelPaths.Apart / 2;
    private const double EdgeStrip = 0.6;

    /// <summary>Left and right side from the lane's left edge, m; null where not told.</summary>
    public static (double? Left, double? Right) Read(RowReader row, Lane lane)
    {
        var left = Within(row, SurveyField.OffsetFrom, lane);
        var right = Within(row, SurveyField.OffsetTo, lane);
        if (left > right)
        {
            row.Report(SurveyFaults.OffsetsReversed, SurveyField.OffsetFrom, lane: lane.Number);
            (left, right) = (right, left);
        }

        if (left is not null || right is not null) return (left ?? right, right ?? left);
        if (!row.Has(SurveyField.Across)) return (null, null);
        if (Strip(Words.Key(row.Text(SurveyField.Across)), lane.Width) is { } strip) return strip;
        row.Report(SurveyFaults.WordUnknown, SurveyField.Across, $"\"{row.Text(SurveyField.Across)}\" is no place across a lane.",
            "Write left, right or both wheel paths, centre, left or right edge, or full width; or give offsets.");
        return (null, null);
    }

    /// <summary>The strip a word means in a lane of a width.</summary>
    internal static (double Left, double Right)? Strip(string key, double width)
    {
        var middle = width / 2;
        return key switch
        {
            "lwp" or "iwp" or "leftwheelpath" or "innerwheelpath" or "insidewheelpath" or "lw" or "iw" or "inner" or "inside" =>
                (middle - HalfTrack - HalfWheelPath, middle - HalfTrack + HalfWheelPath),
            "rwp" or "owp" or "rightwheelpath" or "outerwheelpath" or "outsidewheelpath" or "rw" or "ow" or "outer" or "outside" =>
                (middle + HalfTrack - HalfWheelPath, middle + HalfTrack + HalfWheelPath),
            "both" or "bwp" or "bothwheelpaths" or "wheelpaths" or "wp" or "wheelpath" =>
                (middle - HalfTrack - HalfWheelPath, middle + HalfTrack + HalfWheelPath),
            "center" or "centre" or "middle" or "c" or "cl" or "betweenwheelpaths" or "between" or "nwp" or "midlane" or "centrelane" or "centerlane" =>
                (middle - HalfTrack + HalfWheelPath, middle + HalfTrack - HalfWheelPath),
            "left" or "leftedge" or "l" or "leftcorner" or "leftside" => (0, EdgeStrip),
            "right" or "rightedge" or "r" or "rightcorner" or "rightside" => (width - EdgeStrip, width),
            "full" or "fullwidth" or "fulllane" or "wholelane" or "all" or "lane" or "entirelane" => (0, width),
            _ => null,
        };
    }

    private static double? Within(RowReader row, SurveyField field, Lane lane)
    {
        if (row.Size(field, signed: true) is not { } offset) return null;
        if (offset >= -EdgeTolerance && offset <= lane.Width + EdgeTolerance) return Math.Min(Math.Max(offset, 0), lane.Width);
        row.Report(SurveyFaults.OffsetOutsideLane, field,
            $"The offset of {row.Length(offset)} lies outside lane {lane.Number}, which is {row.Length(lane.Width)} wide.", lane: lane.Number,
            limit: $"{row.Length(0)} to {row.Length(lane.Width)}");
        return null;
    }
}
