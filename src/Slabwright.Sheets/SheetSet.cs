using Slabwright.Core.Job;
using Slabwright.Sheets.Joints;
using Slabwright.Sheets.Maps;
using Slabwright.Sheets.PlanSet;
using Slabwright.Sheets.Tables;
using Slabwright.Sheets.Workbook;

namespace Slabwright.Sheets;

/// <summary>
/// Everything a crew, an estimator and a map need, as bytes: plan set (PDF), bid schedule (XLSX), tables (CSV), map (GeoJSON, GeoPackage)
/// and drawings (DXF). The same project, plan and options always give the same plan set.
/// </summary>
public static class SheetSet
{
    /// <summary>Writes every file; formats are made side by side.</summary>
    /// <param name="project">The job.</param>
    /// <param name="plan">Its plan.</param>
    /// <param name="options">Printing day, revision and the like.</param>
    public static IReadOnlyList<SheetFile> Write(Project project, RepairPlan plan, SheetOptions options)
    {
        ArgumentNullException.ThrowIfNull(project);
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(options);
        Func<IReadOnlyList<SheetFile>>[] writers =
        [
            () => [PlanSetPdf.Write(project, plan, options)],
            () => [WorkbookFile.Write(project, plan, options)],
            () => CsvFiles.Write(project, plan, options),
            () => GeoJsonFile.Write(project, plan, options),
            () => [GeoPackageFile.Write(project, plan, options)],
            () => [DxfFile.Write(project, plan, options), JointDxfFile.Write(project, plan, options)],
        ];
        var files = new IReadOnlyList<SheetFile>[writers.Length];
        Parallel.For(0, writers.Length, i => files[i] = writers[i]());
        return [.. files.SelectMany(f => f)];
    }
}
