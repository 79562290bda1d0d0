using System.Collections.Immutable;
using Slabwright.Core.Concrete.Hydration;
using Slabwright.Core.Evidence;
using Slabwright.Core.Numerics.Heat;

namespace Slabwright.Core.Concrete.Heat;

/// <summary>
/// A section along the road through a repair and what stands at its ends, down through base and ground. Places along count from the middle of
/// the repair, positive in the direction of travel. Immutable; <see cref="Run"/> may be called on many threads at once.
/// </summary>
public sealed record SlabSection
{
    /// <summary>Distance from faces at which edge and corners are reported, m: where a probe is put.</summary>
    public const double ProbeInset = 0.025;

    /// <summary>Slab, base, ground, surface, covers and cells, as in a column.</summary>
    public required SlabColumn Column { get; init; }

    /// <summary>Length of the repair, m.</summary>
    public required double Length { get; init; }

    /// <summary>What stands behind, against the direction of travel.</summary>
    public SectionSide Behind { get; init; } = SectionSide.OldSlab;

    /// <summary>What stands ahead.</summary>
    public SectionSide Ahead { get; init; } = SectionSide.OldSlab;

    /// <summary>Blankets lie this far over the old slabs, m.</summary>
    public double BlanketOverhang { get; init; }

    /// <summary>Heat given off by a bare form or face besides convection, W/(m²·K): radiation near 20 °C.</summary>
    public double FaceRadiation { get; init; } = 5;

    /// <summary>Computes temperatures from placing on. The answer carries its heat balance; findings name weather that is missing.</summary>
    public TemperatureHistory Run(HeatRun run)
    {
        var findings = HeatRunner.Check(run, out var end);
        var record = new HistoryRecord(ReportPoints(), run.KeepFields);
        if (end <= 0) return record.Finish(run.Placed, default, 0, [], [], findings);
        if (HeatRunner.ShortSpinUp(run) is { } cut) findings.Add(cut);

        var before = run.Before ?? Column.SpinUp(run);
        var rows = RoadRows.Of(Column.Thickness, Column.Ground, Column.Cells);
        var columns = SectionColumns.Of(this);
        var grid = Prepare(rows, columns, before, run.PlacingTemperature);
        var probe = new HeatProbe(grid, columns.Along, rows.Depths, Column.Thickness);
        var middle = columns.Nearest(0);
        record.Take(grid, probe, columns.Fresh, middle, 0);
        HeatRunner.Run(grid, Surfaces(run), 0, end, run.Step, run.Every, Changes(), time => record.Take(grid, probe, columns.Fresh, middle, time));
        return record.Finish(run.Placed, grid.Balance, grid.Steps, [.. columns.Along], [.. rows.Depths], findings);
    }

    private ImmutableArray<ReportPoint> ReportPoints()
    {
        var (x, h) = (Length / 2 - ProbeInset, Column.Thickness);
        return RoadRows.Points(h,
        [
            new("edge", x, h / 2), new("top corner", x, ProbeInset), new("bottom corner", x, h - ProbeInset),
            new("edge behind", -x, h / 2), new("top corner behind", -x, ProbeInset), new("bottom corner behind", -x, h - ProbeInset),
            .. Column.Points,
        ]);
    }

    private HeatGrid Prepare(RoadRows rows, SectionColumns columns, GroundProfile before, double placing)
    {
        var grid = rows.Grid(columns.Widths);
        rows.Spread(grid, before);
        grid.Fill((0, columns.Fresh.From), (0, rows.SlabRows), Behind.Concrete.Conductivity.Value, Behind.Concrete.CapacityAt(1, before.At(0)));
        grid.Fill((columns.Fresh.To, columns.Widths.Length), (0, rows.SlabRows), Ahead.Concrete.Conductivity.Value, Ahead.Concrete.CapacityAt(1, before.At(0)));
        var concrete = Column.Hydration is null ? Column.Concrete with { Ingredients = null } : Column.Concrete;
        grid.Make(columns.Fresh, rows.SlabRows, concrete, Column.Hydration, (Behind.FaceResistance, Ahead.FaceResistance));
        grid.Place(placing);
        for (var c = 0; c < columns.Widths.Length; c++) grid.SurfaceOf[c] = SurfaceAt(columns.Along[c]);
        grid.Link();
        return grid;
    }

    /// <summary>0 on the new concrete, 1 on the old, 2 on the old below the overhang of a blanket.</summary>
    private int SurfaceAt(double along)
    {
        var beyond = Math.Abs(along) - Length / 2;
        return beyond < 0 ? 0 : beyond < BlanketOverhang ? 2 : 1;
    }

    private RoadSurfaces Surfaces(HeatRun run)
    {
        CoverSchedule[] covers = [Column.Covers, CoverSchedule.Dry, new([.. Column.Covers.Covers.Select(c => c.Resistance > 0 ? c : SurfaceCover.Dry(c.From))])];
        var open = Behind.Form is not null || Ahead.Form is not null;
        var start = run.Weather.SecondsTo(run.Placed);
        return new(i => new SurfaceBalance(Column.Surface, covers[i], run.Weather, run.Placed), covers.Length, open ? (grid, time) => Open(grid, run, start + time, time) : null);
    }

    /// <summary>Sets the links of open ends to the air and returns its temperature.</summary>
    private double Open(HeatGrid grid, HeatRun run, double inWeather, double time)
    {
        var now = run.Weather.At(inWeather);
        var wind = now.Wind * Column.Surface.WindFactor.Value;
        var face = Convection.By(Column.Surface.Convection.Value, wind, now.Air, now.Air)
            + (Column.Surface.Convection.Value == ConvectionLaw.Barber ? 0 : FaceRadiation);
        foreach (var (side, last) in new[] { (Behind, false), (Ahead, true) })
        {
            if (side.Form is not { } form) continue;
            var links = grid.EndLinks(last);
            for (var r = 0; r < grid.SlabRows; r++)
                links[r] = 1 / (1 / grid.HalfCell(last, r) + (time < form.Strip ? form.Resistance : 0) + 1 / face);
        }

        return now.Air;
    }

    private ImmutableArray<double> Changes() =>
    [
        .. Column.Covers.Covers.Select(c => c.From)
            .Concat(new[] { Behind, Ahead }.Where(s => s.Form is not null && double.IsFinite(s.Form.Strip)).Select(s => s.Form!.Strip)).Distinct().Order(),
    ];
}

/// <summary>Columns of cells of a section.</summary>
/// <param name="Widths">Their widths, m.</param> <param name="Along">Their middles, m from the middle of the repair.</param> <param name="Fresh">Those of the repair.</param>
internal sealed record SectionColumns(double[] Widths, double[] Along, (int From, int To) Fresh)
{
    /// <summary>Columns of a section: fine at the faces of the repair.</summary>
    public static SectionColumns Of(SlabSection section)
    {
        var cells = section.Column.Cells;
        var beside = CellGrading.From(cells.Beside, cells.First, cells.Growth);
        double[] behind = section.Behind.Form is null ? [.. beside.Reverse()] : [];
        var repair = CellGrading.Both(section.Length, cells.First, cells.Growth);
        double[] widths = [.. behind, .. repair, .. section.Ahead.Form is null ? beside : []];
        return new(widths, CellGrading.Middles(widths, -section.Length / 2 - behind.Sum()), (behind.Length, behind.Length + repair.Length));
    }

    /// <summary>The column nearest to a place.</summary>
    public int Nearest(double along) => Array.IndexOf(Along, Along.MinBy(x => Math.Abs(x - along)));
}
