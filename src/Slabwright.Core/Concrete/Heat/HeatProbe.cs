namespace Slabwright.Core.Concrete.Heat;

/// <summary>Reads temperatures and hydration between the cells of a grid: straight from middle to middle, to the surface and to the slab's bottom face.</summary>
internal sealed class HeatProbe
{
    private readonly HeatGrid grid;
    private readonly double[] depths;
    private readonly double[] along;
    private readonly double thickness;

    /// <param name="grid">The grid.</param> <param name="along">Middles of its columns, m along the road.</param>
    /// <param name="depths">Middles of its rows, m.</param> <param name="thickness">Thickness of the slab, m.</param>
    public HeatProbe(HeatGrid grid, double[] along, double[] depths, double thickness) =>
        (this.grid, this.along, this.depths, this.thickness) = (grid, along, depths, thickness);

    /// <summary>Temperature at a place, °C.</summary>
    public double Temperature(double x, double depth)
    {
        var (column, share) = Cell(along, x);
        var here = Column(column, depth);
        return share == 0 ? here : here + share * (Column(column + 1, depth) - here);
    }

    /// <summary>Degree of hydration at a place; that of the outermost cells at the faces.</summary>
    public double Degree(double x, double depth, (int From, int To) fresh)
    {
        var (column, share) = Cell(along, x);
        column = Math.Clamp(share > 0.5 ? column + 1 : column, fresh.From, fresh.To - 1);
        var (row, part) = Cell(depths.AsSpan(0, grid.SlabRows), depth);
        var i = column * depths.Length + row;
        return part == 0 ? grid.Degrees[i] : grid.Degrees[i] + part * (grid.Degrees[i + 1] - grid.Degrees[i]);
    }

    /// <summary>Mean over the slab's depth, surface minus bottom, and the straight profile that curls as much.</summary>
    /// <remarks>Equivalent difference: 12/h² ∫ T (h/2 − z) dz, elementary plate theory.</remarks>
    public PlateTemperature Plate(int column, double time)
    {
        var (sum, moment) = (0.0, 0.0);
        for (var r = 0; r < grid.SlabRows; r++)
        {
            var part = grid.Temperatures[column * depths.Length + r] * grid.Heights[r];
            sum += part;
            moment += part * (thickness / 2 - depths[r]);
        }

        return new(time, sum / thickness, Column(column, 0) - Column(column, thickness), 12 * moment / (thickness * thickness));
    }

    private double Column(int column, double depth)
    {
        if (depth <= 0) return grid.Surface(column);
        if (Math.Abs(depth - thickness) < 1e-9 && grid.SlabRows < depths.Length) return grid.Between(column, grid.SlabRows - 1);
        var start = column * depths.Length;
        if (depth < depths[0]) return grid.Surface(column) + depth / depths[0] * (grid.Temperatures[start] - grid.Surface(column));
        var (row, share) = Cell(depths, depth);
        var here = grid.Temperatures[start + row];
        return share == 0 ? here : here + share * (grid.Temperatures[start + row + 1] - here);
    }

    /// <summary>The cell whose middle lies at or before a place, and the share of the way to the next; the outermost middles hold outside.</summary>
    private static (int Cell, double Share) Cell(ReadOnlySpan<double> middles, double at)
    {
        if (at <= middles[0]) return (0, 0);
        if (at >= middles[^1]) return (middles.Length - 1, 0);
        var i = 0;
        while (middles[i + 1] <= at) i++;
        return (i, (at - middles[i]) / (middles[i + 1] - middles[i]));
    }
}
