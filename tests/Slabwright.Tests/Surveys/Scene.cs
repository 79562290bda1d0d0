using System.Collections.Immutable;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;
using Slabwright.Core.Survey;

namespace Slabwright.Tests.Surveys;

/// <summary>A road of 3,000 ft from 100+00 with two 12 ft lanes and a joint every 15 ft, and files for it.</summary>
internal static class Scene
{
    public const double Foot = 0.3048;

    public static readonly DateOnly Today = new(2026, 4, 1);

    public static SurveyImportOptions Options { get; } =
        new() { UnitSystem = UnitSystem.UsCustomary, Today = Today, SurveyDate = new DateOnly(2026, 3, 1) };

    public static SurveyImportOptions Si { get; } = Options with { UnitSystem = UnitSystem.Si };

    public static Lane LaneOf(int number, double from = 0, double to = 3000) => new()
    {
        Number = number,
        Width = 12 * Foot,
        From = from * Foot,
        To = to * Foot,
        LeftEdge = LaneEdge.TiedLane,
        RightEdge = LaneEdge.TiedLane,
        Joints = [.. Enumerable.Range(0, (int)((to - from) / 15) + 1).Select(i =>
            new TransverseJoint((from + 15 * i) * Foot, i == 0 || from + 15 * i >= to ? JointKind.PavementEnd : JointKind.Dowelled))],
        Sections = [new PavementSection(from * Foot, to * Foot, PavementKind.JointedPlain, 10 / 12.0 * Foot, BaseKind.Granular)],
    };

    public static Road Harrow { get; } = new()
    {
        Name = "Harrow Road",
        Length = 3000 * Foot,
        Stationing = new Stationing { Style = StationStyle.Feet, Start = 10_000 * Foot },
        Lanes = [LaneOf(1), LaneOf(2)],
        Climate = new Climate(false),
    };

    /// <summary>Reads comma-separated lines without quoting; what the file readers do is tested elsewhere.</summary>
    public static SurveyRecord Read(string text, SurveyImportOptions? options = null, Road? road = null, char delimiter = ',') =>
        SurveyInterpreter.ReadDistresses(Source(text, delimiter), road ?? Harrow, options ?? Options, new FindingLog("survey.csv"));

    public static SurveyRecord ReadCores(string text, SurveyImportOptions? options = null, Road? road = null) =>
        SurveyInterpreter.ReadCores(Source(text, ','), road ?? Harrow, options ?? Options, new FindingLog("cores.csv"));

    public static RawSource Source(string text, char delimiter) => new("survey.csv", Rows(text, delimiter), "",
        delimiter == ';' ? DecimalMark.Comma : DecimalMark.Unknown);

    public static RawSource Source(params object?[][] rows) => new("survey.xlsx",
        rows.Select((cells, i) => new RawRow(i + 1, [.. cells.Select(Cell)])));

    private static IEnumerable<RawRow> Rows(string text, char delimiter)
    {
        var number = 0;
        foreach (var line in text.ReplaceLineEndings("\n").Split('\n'))
        {
            number++;
            yield return new RawRow(number, [.. line.Split(delimiter).Select(c => new RawCell(c))]);
        }
    }

    private static RawCell Cell(object? value) => value switch
    {
        null => RawCell.Empty,
        double number => new RawCell(number.ToString(System.Globalization.CultureInfo.InvariantCulture), number),
        DateOnly day => new RawCell(day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture), null, day),
        RawCell cell => cell,
        _ => new RawCell((string)value),
    };

    /// <summary>Codes of findings, for comparing.</summary>
    public static ImmutableArray<string> Codes(SurveyRecord record) => [.. record.Findings.Select(f => f.Code)];
}
