using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;
using Slabwright.Core.Survey;
using Slabwright.Data.Import;

namespace Slabwright.SystemTests.Import;

/// <summary>The road of the files in tests/data/survey: 3,000 ft from 100+00, two lanes of 12 ft, a joint every 15 ft.</summary>
internal static class ImportScene
{
    public const double Foot = 0.3048;

    public static SurveyImportOptions Options { get; } =
        new() { UnitSystem = UnitSystem.UsCustomary, Today = new DateOnly(2026, 4, 1), SurveyDate = new DateOnly(2026, 2, 2) };

    public static Road Road { get; } = RoadOf(3000);

    public static string PathOf(string file) => Path.Combine(AppContext.BaseDirectory, "data", "survey", file);

    public static SurveyRecord Read(byte[] bytes, string name = "survey.csv", SurveyImportOptions? options = null)
    {
        using var stream = new MemoryStream(bytes);
        return SurveyImporter.Import(stream, name, Road, options ?? Options, TestContext.Current.CancellationToken);
    }

    public static SurveyRecord Read(string text, SurveyImportOptions? options = null) => Read(System.Text.Encoding.UTF8.GetBytes(text), options: options);

    public static SurveyRecord ReadFile(string file, SurveyImportOptions? options = null) =>
        SurveyImporter.Import(PathOf(file), Road, options ?? Options, TestContext.Current.CancellationToken);

    public static Road RoadOf(int feet) => new()
    {
        Name = "Harrow Road",
        Length = feet * Foot,
        Stationing = new Stationing { Style = StationStyle.Feet, Start = 10_000 * Foot },
        Lanes = [Lane(1, feet), Lane(2, feet)],
        Climate = new Climate(false),
        Alignment = new Alignment("Harrow", [new LineElement(
            new PlanPoint(500_000, 5_300_000),
            new PlanPoint(500_000 + feet * Foot * Math.Cos(Math.PI / 6), 5_300_000 + feet * Foot * Math.Sin(Math.PI / 6)))], "EPSG:32632"),
    };

    private static Lane Lane(int number, int feet) => new()
    {
        Number = number,
        Width = 12 * Foot,
        From = 0,
        To = feet * Foot,
        LeftEdge = number == 1 ? LaneEdge.AsphaltShoulder : LaneEdge.TiedLane,
        RightEdge = number == 1 ? LaneEdge.TiedLane : LaneEdge.AsphaltShoulder,
        Joints = [.. Enumerable.Range(0, feet / 15 + 1).Select(i =>
            new TransverseJoint(15 * i * Foot, i == 0 || i == feet / 15 ? JointKind.PavementEnd : JointKind.Dowelled))],
        Sections = [new PavementSection(0, feet * Foot, PavementKind.JointedPlain, 10 / 12.0 * Foot, BaseKind.Granular)],
    };
}
