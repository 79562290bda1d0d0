using System.Collections.Immutable;
using Slabwright.Core.Concrete.Hydration;
using Slabwright.Core.Concrete.Weather;
using Slabwright.Core.Evidence;
using Slabwright.Core.Numerics.Heat;

namespace Slabwright.Core.Concrete.Heat;

/// <summary>
/// A column through slab, base and ground, far from the ends of the slab: heat flows only up and down. Immutable; <see cref="Run"/> may be
/// called on many threads at once.
/// </summary>
public sealed record SlabColumn
{
    /// <summary>Slab thickness, m.</summary>
    public required double Thickness { get; init; }

    /// <summary>Hydration of the new concrete; null for old concrete, which frees no heat.</summary>
    public HydrationCurve? Hydration { get; init; }

    /// <summary>Thermal properties of the new concrete.</summary>
    public ConcreteHeat Concrete { get; init; } = ConcreteHeat.Default;

    /// <summary>Thermal properties of the old concrete that lay there before.</summary>
    public ConcreteHeat Old { get; init; } = ConcreteHeat.Default;

    /// <summary>Layers below the slab, from above down to where the ground's temperature holds still.</summary>
    public ImmutableArray<GroundLayer> Ground { get; init; } = GroundLayer.Usual;

    /// <summary>Coefficients of the surface.</summary>
    public SurfaceSettings Surface { get; init; } = SurfaceSettings.Default;

    /// <summary>What lies on the new concrete.</summary>
    public CoverSchedule Covers { get; init; } = CoverSchedule.Compound;

    /// <summary>Cells.</summary>
    public HeatCells Cells { get; init; } = HeatCells.Default;

    /// <summary>Places reported besides top, middle and bottom.</summary>
    public ImmutableArray<ReportPoint> Points { get; init; } = [];

    /// <summary>Finds the temperatures of the old road at placing by running it through the weather before, from the yearly wave of the ground.</summary>
    public GroundProfile SpinUp(HeatRun run)
    {
        var rows = RoadRows.Of(Thickness, Ground, Cells);
        var grid = rows.Grid([1]);
        var deepest = rows.Depths[^1] + rows.Heights[^1] / 2;
        var wave = GroundWave.From(run.Weather, run.Placed);
        var back = Math.Min(run.SpinUp, Math.Max(0, run.Weather.SecondsTo(run.Placed)));
        var start = run.Placed.AddSeconds(-back);
        grid.Deep = run.Deep ?? wave.At(run.Placed, deepest, rows.Diffusivity);
        for (var r = 0; r < rows.Depths.Length; r++)
        {
            var natural = wave.At(start, rows.Depths[r], rows.Diffusivity);
            grid.Temperatures[r] = run.Deep is { } deep ? natural + (deep - wave.At(start, deepest, rows.Diffusivity)) * rows.Depths[r] / deepest : natural;
        }

        grid.Outer[0] = grid.Temperatures[0];
        grid.Make((0, 1), rows.SlabRows, Old with { Ingredients = null }, null, default);
        grid.Link();
        var surfaces = RoadSurfaces.Of(Surface, CoverSchedule.Dry, run.Weather, run.Placed);
        HeatRunner.Run(grid, surfaces, -back, 0, Math.Min(1800, 3 * run.Step), double.PositiveInfinity, [], _ => { });
        return new([.. rows.Depths], [.. grid.Temperatures], grid.Deep);
    }

    /// <summary>Computes temperatures from placing on. The answer carries its heat balance; findings name weather that is missing.</summary>
    public TemperatureHistory Run(HeatRun run) => Compute(run, place: true);

    /// <summary>The same without placing anything: the road as it lies goes on. The placing temperature is not used.</summary>
    internal TemperatureHistory Continue(HeatRun run) => Compute(run, place: false);

    private TemperatureHistory Compute(HeatRun run, bool place)
    {
        var findings = HeatRunner.Check(run, out var end);
        var record = new HistoryRecord(RoadRows.Points(Thickness, Points), run.KeepFields);
        if (end <= 0) return record.Finish(run.Placed, default, 0, [0], [], findings);
        if (HeatRunner.ShortSpinUp(run) is { } cut) findings.Add(cut);

        var before = run.Before ?? SpinUp(run);
        var rows = RoadRows.Of(Thickness, Ground, Cells);
        var grid = rows.Grid([1]);
        rows.Spread(grid, before);
        grid.Make((0, 1), rows.SlabRows, Hydration is null ? Concrete with { Ingredients = null } : Concrete, Hydration, default);
        if (place) grid.Place(run.PlacingTemperature);
        grid.Link();
        var probe = new HeatProbe(grid, [0], rows.Depths, Thickness);
        record.Take(grid, probe, (0, 1), 0, 0);
        var surfaces = RoadSurfaces.Of(Surface, Covers, run.Weather, run.Placed);
        HeatRunner.Run(grid, surfaces, 0, end, run.Step, run.Every, [.. Covers.Covers.Select(c => c.From)], time => record.Take(grid, probe, (0, 1), 0, time));
        return record.Finish(run.Placed, grid.Balance, grid.Steps, [0], [.. rows.Depths], findings);
    }
}
