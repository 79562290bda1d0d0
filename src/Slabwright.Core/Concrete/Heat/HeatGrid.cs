using Slabwright.Core.Concrete.Hydration;
using Slabwright.Core.Numerics.Heat;

namespace Slabwright.Core.Concrete.Heat;

/// <summary>
/// Cells of a column or section, their temperatures and the hydration of the fresh ones, moved on in time. Finite volumes: every exchange is
/// booked on both sides, so that heat is neither made nor lost. Cells lie column after column, from the surface down within a column.
/// </summary>
internal sealed partial class HeatGrid
{
    private readonly double[] verticalLinks;
    private readonly double[] rowLinks;
    private readonly double[] columnCapacity;
    private readonly double[] rowCapacity;
    private readonly double[] conductivity;
    private readonly RowSweep? sweep;
    private ConcreteHeat concrete = ConcreteHeat.Default;
    private HydrationCurve? curve;
    private (int From, int To) freshColumns;
    private (double Behind, double Ahead) faceResistance;

    /// <summary>Cells of given lengths.</summary>
    /// <param name="widths">Along the road, m; one cell of 1 m in a column.</param> <param name="heights">From the surface down, m.</param>
    public HeatGrid(double[] widths, double[] heights)
    {
        (Widths, Heights) = (widths, heights);
        var cells = widths.Length * heights.Length;
        Temperatures = new double[cells];
        Ages = new double[cells];
        Degrees = new double[cells];
        Capacity = new double[cells];
        conductivity = new double[cells];
        columnCapacity = new double[cells];
        rowCapacity = new double[cells];
        verticalLinks = new double[widths.Length * (heights.Length + 1)];
        rowLinks = new double[(widths.Length + 1) * heights.Length];
        Outer = new double[widths.Length];
        Flux = new double[widths.Length];
        SurfaceOf = new int[widths.Length];
        sweep = widths.Length > 1 ? new RowSweep(widths.Length, heights.Length) : null;
        InitialiseWork();
    }

    /// <summary>Lengths of the cells along the road, m.</summary>
    public double[] Widths { get; }

    /// <summary>Lengths of the cells downwards, m.</summary>
    public double[] Heights { get; }

    /// <summary>Rows that belong to the slab.</summary>
    public int SlabRows { get; private set; }

    /// <summary>Temperatures, °C.</summary>
    public double[] Temperatures { get; }

    /// <summary>Equivalent ages, s; 0 in all but fresh concrete.</summary>
    public double[] Ages { get; }

    /// <summary>Degrees of hydration; 0 in all but fresh concrete.</summary>
    public double[] Degrees { get; }

    /// <summary>Heat capacities, J/(m³·K).</summary>
    public double[] Capacity { get; }

    /// <summary>Temperature of the outer face of each column, °C: of the blanket, where one lies.</summary>
    public double[] Outer { get; }

    /// <summary>Heat flux into each column at the end of the last step, W/m².</summary>
    public double[] Flux { get; }

    /// <summary>Which surface law each column meets.</summary>
    public int[] SurfaceOf { get; }

    /// <summary>Temperature below the lowest cells, °C.</summary>
    public double Deep { get; set; }

    /// <summary>Gives a block of cells one material.</summary>
    public void Fill((int From, int To) columns, (int From, int To) rows, double conduct, double capacity)
    {
        for (var c = columns.From; c < columns.To; c++)
        {
            var start = c * Heights.Length;
            Array.Fill(conductivity, conduct, start + rows.From, rows.To - rows.From);
            Array.Fill(Capacity, capacity, start + rows.From, rows.To - rows.From);
        }
    }

    /// <summary>Makes the slab rows of some columns concrete that may hydrate; <see cref="Place"/> gives it a temperature.</summary>
    /// <param name="columns">Columns of the repair.</param> <param name="slabRows">Rows of the slab.</param> <param name="heat">Its properties.</param>
    /// <param name="hydration">Its hydration; null for concrete that frees no heat.</param> <param name="face">Resistance of the contact with the old slabs, m²K/W.</param>
    public void Make((int From, int To) columns, int slabRows, ConcreteHeat heat, HydrationCurve? hydration, (double Behind, double Ahead) face) =>
        (freshColumns, SlabRows, concrete, curve, faceResistance) = (columns, slabRows, heat, hydration, face);

    /// <summary>Gives that concrete the temperature it is placed at, °C.</summary>
    public void Place(double temperature)
    {
        for (var c = freshColumns.From; c < freshColumns.To; c++)
        {
            Array.Fill(Temperatures, temperature, c * Heights.Length, SlabRows);
            Outer[c] = temperature;
        }
    }

    /// <summary>Works out capacities and links of all cells; call once after filling.</summary>
    public void Link()
    {
        Renew();
        var rows = Heights.Length;
        for (var c = 0; c < Widths.Length; c++) LinkColumn(c, rows);
        for (var c = 1; c < Widths.Length; c++) LinkRows(c, rows);
        for (var i = 0; i < Capacity.Length; i++) Weigh(i, rows);
    }

    /// <summary>Conductance of each row to the air beyond an end of the section, W/(m²·K); 0 where insulated.</summary>
    public Span<double> EndLinks(bool last) => rowLinks.AsSpan(last ? Widths.Length * Heights.Length : 0, Heights.Length);

    /// <summary>Conductance from the middle of an end cell to its outer side, W/(m²·K).</summary>
    public double HalfCell(bool last, int row)
    {
        var column = last ? Widths.Length - 1 : 0;
        return 2 * conductivity[column * Heights.Length + row] / Widths[column];
    }

    /// <summary>Temperature where two rows of a column touch, °C: as much flows in as out.</summary>
    public double Between(int column, int above)
    {
        var i = column * Heights.Length + above;
        var (up, down) = (conductivity[i] / Heights[above], conductivity[i + 1] / Heights[above + 1]);
        return (up * Temperatures[i] + down * Temperatures[i + 1]) / (up + down);
    }

    /// <summary>Temperature of the concrete's surface in a column, °C: below the blanket where one lies.</summary>
    public double Surface(int column)
    {
        var i = column * Heights.Length;
        return Temperatures[i] + Flux[column] * Heights[0] / (2 * conductivity[i]);
    }

    /// <summary>Properties of fresh concrete follow its hydration; they are held over a step.</summary>
    private void Follow()
    {
        if (curve is null || (!concrete.ConductivityFollowsHydration.Value && concrete.Ingredients is null)) return;
        Renew();
        var rows = Heights.Length;
        for (var c = freshColumns.From; c < freshColumns.To; c++)
        {
            LinkColumn(c, SlabRows + 1);
            if (concrete.Ingredients is null) continue;
            for (var i = c * rows; i < c * rows + SlabRows; i++) Weigh(i, rows);
        }

        if (sweep is null) return;
        for (var c = Math.Max(1, freshColumns.From); c < Math.Min(Widths.Length, freshColumns.To + 1); c++) LinkRows(c, SlabRows);
    }

    private void Renew()
    {
        if (SlabRows == 0) return;
        for (var c = freshColumns.From; c < freshColumns.To; c++)
        {
            for (var i = c * Heights.Length; i < c * Heights.Length + SlabRows; i++)
            {
                conductivity[i] = curve is null ? concrete.Conductivity.Value : concrete.ConductivityAt(Degrees[i]);
                Capacity[i] = concrete.CapacityAt(Degrees[i], Temperatures[i]);
            }
        }
    }

    private void LinkColumn(int column, int rows)
    {
        var (cell, link) = (column * Heights.Length, column * (Heights.Length + 1));
        verticalLinks[link] = 2 * conductivity[cell] / Heights[0];
        for (var r = 1; r < Math.Min(rows, Heights.Length); r++)
            verticalLinks[link + r] = 2 / (Heights[r - 1] / conductivity[cell + r - 1] + Heights[r] / conductivity[cell + r]);
        if (rows >= Heights.Length) verticalLinks[link + Heights.Length] = 2 * conductivity[cell + Heights.Length - 1] / Heights[^1];
    }

    /// <summary>Links between a column and the one before it; where one is fresh and the other old the contact resists.</summary>
    private void LinkRows(int column, int rows)
    {
        var contact = column == freshColumns.From ? faceResistance.Behind : column == freshColumns.To ? faceResistance.Ahead : 0;
        for (var r = 0; r < rows; r++)
        {
            var i = column * Heights.Length + r;
            var resistance = (Widths[column - 1] / conductivity[i - Heights.Length] + Widths[column] / conductivity[i]) / 2;
            rowLinks[i] = 1 / (resistance + (r < SlabRows ? contact : 0));
        }
    }

    private void Weigh(int cell, int rows)
    {
        columnCapacity[cell] = Capacity[cell] * Heights[cell % rows];
        rowCapacity[cell] = Capacity[cell] * Widths[cell / rows];
    }
}
