using System.Collections.Immutable;
using Slabwright.Core.Numerics.Heat;

namespace Slabwright.Core.Concrete.Heat;

/// <summary>Rows of cells through slab, base and ground.</summary>
/// <param name="Heights">Heights of the rows, m.</param> <param name="Depths">Their middles, m.</param> <param name="SlabRows">Rows of the slab.</param>
/// <param name="Layers">Layers below and the rows each fills.</param>
internal sealed record RoadRows(double[] Heights, double[] Depths, int SlabRows, ImmutableArray<(GroundLayer Layer, int From, int To)> Layers)
{
    /// <summary>Diffusivity of the lowest layer, m²/s.</summary>
    public double Diffusivity => Layers.IsEmpty ? 7e-7 : Layers[^1].Layer.Conductivity / (Layers[^1].Layer.Density * Layers[^1].Layer.SpecificHeat);

    /// <summary>Rows of a road.</summary>
    public static RoadRows Of(double thickness, ImmutableArray<GroundLayer> ground, HeatCells cells)
    {
        var heights = new List<double>(CellGrading.Both(thickness, cells.First, cells.Growth));
        var slab = heights.Count;
        var layers = ImmutableArray.CreateBuilder<(GroundLayer, int, int)>();
        var first = cells.First * 1.5;
        foreach (var layer in ground)
        {
            var from = heights.Count;
            heights.AddRange(CellGrading.From(layer.Thickness, first, cells.Growth));
            first = heights[^1];
            layers.Add((layer, from, heights.Count));
        }

        return new([.. heights], CellGrading.Middles(heights), slab, layers.ToImmutable());
    }

    /// <summary>A grid of these rows with some columns, the ground filled in.</summary>
    public HeatGrid Grid(double[] widths)
    {
        var grid = new HeatGrid(widths, Heights);
        foreach (var (layer, from, to) in Layers)
            grid.Fill((0, widths.Length), (from, to), layer.Conductivity, layer.Density * layer.SpecificHeat);
        return grid;
    }

    /// <summary>Gives every column of a grid the temperatures of a profile.</summary>
    public void Spread(HeatGrid grid, GroundProfile profile)
    {
        grid.Deep = profile.Deep;
        for (var c = 0; c < grid.Widths.Length; c++)
        {
            for (var r = 0; r < Depths.Length; r++) grid.Temperatures[c * Depths.Length + r] = profile.At(Depths[r]);
            grid.Outer[c] = grid.Temperatures[c * Depths.Length];
        }
    }

    /// <summary>Top, middle and bottom, and what is asked for besides.</summary>
    public static ImmutableArray<ReportPoint> Points(double thickness, ImmutableArray<ReportPoint> others) =>
        [new("top", 0, 0), new("middle", 0, thickness / 2), new("bottom", 0, thickness), .. others];
}
