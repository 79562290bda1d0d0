using Slabwright.Core.Job;

namespace Slabwright.Sheets.Tables;

/// <summary>The CSV files of a plan.</summary>
public static class CsvFiles
{
    private const string MediaType = "text/csv; charset=utf-8";

    /// <summary>Repairs, surface works, take-off, bid schedule, decisions, joints with their alternatives, seals and lift pieces, and findings, one file each.</summary>
    public static IReadOnlyList<SheetFile> Write(Project project, RepairPlan plan, SheetOptions options)
    {
        var tables = new JobTables(project, plan);
        var joints = new JointTables(project, plan);
        return
        [
            File("repairs", "Repairs as CSV", CsvTable.Write(plan.Boundaries.Repairs, tables.Repairs())),
            File("surface-works", "Partial-depth repairs and seals as CSV", CsvTable.Write(plan.SurfaceWorks, tables.SurfaceWorks())),
            File("take-off", "Take-off as CSV", CsvTable.Write(plan.Quantities.TakeOff, tables.TakeOff())),
            File("bid-schedule", "Bid schedule as CSV", CsvTable.Write(plan.Quantities.Schedule.Lines, tables.Bid())),
            File("decisions", "Treatment decisions as CSV", CsvTable.Write(plan.Decisions, tables.Decisions())),
            File("joints", "Repair joints as CSV", CsvTable.Write(plan.Joints.Joints, joints.Joints())),
            File("joint-alternatives", "Alternatives of load transfer as CSV", CsvTable.Write(joints.AlternativeRows, joints.Alternatives())),
            File("joint-seals", "Joint seals as CSV", CsvTable.Write(plan.Seals.Joints, joints.Seals())),
            File("lift-pieces", "Lift pieces as CSV", CsvTable.Write(joints.PieceRows, joints.Pieces())),
            File("findings", "Findings as CSV", CsvTable.Write(plan.Findings, tables.Findings())),
        ];

        SheetFile File(string name, string title, byte[] content) => new($"{options.BaseName}-{name}.csv", MediaType, title, content);
    }
}
