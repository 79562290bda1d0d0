using System.Diagnostics;
using System.Globalization;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;
using Slabwright.Core.Survey;
using Slabwright.Data.Import;

// Writes a survey of so many rows, imports it once and prints a row of the README's table. One size a process, so that the peak is its own.
const double Foot = 0.3048;
var rows = args.Length > 0 && int.TryParse(args[0], NumberStyles.None, CultureInfo.InvariantCulture, out var given) ? given : 100_000;
string[] types = ["TC", "Longitudinal cracking", "Corner breaks", "7", "Joint deterioration"];
var path = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName() + ".csv");
using (var writer = new StreamWriter(path))
{
    writer.WriteLine("lane,type,severity,from_ft,extent_ft,width_in,depth_in,date,note");
    for (var i = 0; i < rows; i++)
    {
        writer.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{1 + i % 2},{types[i % 5]},{"LMH"[i / 5 % 3]},{i * 2.9:0.0},{i % 4},0.{1 + i % 8},{1 + i % 9},2026-03-{1 + i % 28:00},row {i}"));
    }
}

var road = RoadOf((int)(rows * 2.9 / 15) * 15 + 30);
var options = new SurveyImportOptions { UnitSystem = UnitSystem.UsCustomary, Today = new DateOnly(2026, 4, 1) };
using var process = Process.GetCurrentProcess();
var start = process.WorkingSet64;
var (clock, worked) = (Stopwatch.StartNew(), process.TotalProcessorTime);
var record = SurveyImporter.Import(path, road, options);
clock.Stop();
process.Refresh();
var seconds = (process.TotalProcessorTime - worked).TotalSeconds;
var megabytes = new FileInfo(path).Length / 1e6;
File.Delete(path);
if (record.Distresses.Length != rows || !record.Findings.IsEmpty) throw new InvalidOperationException("The import lost rows or found fault.");
Console.WriteLine(string.Create(
    CultureInfo.InvariantCulture,
    $"| {rows:N0} | {megabytes:0.0} | {clock.Elapsed.TotalSeconds:0.00} | {seconds:0.00} | {rows / seconds:N0} | {start / 1e6:0} | {process.PeakWorkingSet64 / 1e6:0} | {(process.PeakWorkingSet64 - start) / rows} |"));

static Road RoadOf(int feet) => new()
{
    Name = "Bench road",
    Length = feet * Foot,
    Stationing = new Stationing { Style = StationStyle.Feet },
    Lanes = [LaneOf(1, feet), LaneOf(2, feet)],
    Climate = new Climate(false),
};

static Lane LaneOf(int number, int feet) => new()
{
    Number = number,
    Width = 12 * Foot,
    From = 0,
    To = feet * Foot,
    LeftEdge = number == 1 ? LaneEdge.AsphaltShoulder : LaneEdge.TiedLane,
    RightEdge = number == 1 ? LaneEdge.TiedLane : LaneEdge.AsphaltShoulder,
    Joints = [.. Enumerable.Range(0, feet / 15 + 1).Select(i =>
        new TransverseJoint(15 * i * Foot, i == 0 || i == feet / 15 ? JointKind.PavementEnd : JointKind.Undowelled))],
    Sections = [new PavementSection(0, feet * Foot, PavementKind.JointedPlain, 10 / 12.0 * Foot, BaseKind.Granular)],
};
