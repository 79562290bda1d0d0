namespace Slabwright.Core.Numerics.Heat;

/// <summary>
/// Conduction along the rows of a grid: what flows at given temperatures, and the implicit correction that makes a stage stable in that
/// direction. All rows are solved side by side; cells lie column after column, the rows of a column together.
/// </summary>
/// <remarks>Source: stabilising correction of Douglas, Numerische Mathematik 4, 1962 (from memory); the order is measured in the tests.</remarks>
/// <param name="columns">Cells along a row.</param>
/// <param name="rows">Rows.</param>
public sealed class RowSweep(int columns, int rows)
{
    private readonly double[] shares = new double[columns * rows];
    private readonly double[] inverses = new double[columns * rows];

    /// <summary>Factors the rows for stages of a length.</summary>
    /// <param name="capacity">Capacity of each cell, J/(m²·K): per square metre of face across the row.</param>
    /// <param name="links">Conductance before each cell of a row and, last column, behind the last, W/(m²·K); 0 at insulated ends.</param>
    /// <param name="length">Length of the stage, s.</param>
    public void Factor(ReadOnlySpan<double> capacity, ReadOnlySpan<double> links, double length)
    {
        for (var i = 0; i < shares.Length; i++)
        {
            var (before, after) = (length * links[i], length * links[i + rows]);
            var pivot = capacity[i] + before + after;
            if (i >= rows) pivot -= before * shares[i - rows];
            inverses[i] = 1 / pivot;
            shares[i] = after * inverses[i];
        }
    }

    /// <summary>Heat that flows into each cell along its row, W for each square metre of face across the row.</summary>
    /// <param name="links">Conductances.</param> <param name="temperatures">Temperatures, °C.</param> <param name="around">Temperature beyond the ends, °C.</param>
    /// <param name="power">The answer.</param>
    public void Power(ReadOnlySpan<double> links, ReadOnlySpan<double> temperatures, double around, Span<double> power)
    {
        var end = temperatures.Length - rows;
        for (var i = 0; i < rows; i++)
        {
            power[i] = links[i] * (around - temperatures[i]);
            power[end + i] = (end == 0 ? power[i] : 0) + links[end + rows + i] * (around - temperatures[end + i]);
        }

        for (var i = rows; i < end; i++) power[i] = 0;
        for (var i = rows; i < temperatures.Length; i++)
        {
            var flow = links[i] * (temperatures[i - rows] - temperatures[i]);
            power[i] += flow;
            power[i - rows] -= flow;
        }
    }

    /// <summary>Replaces changes of temperature found with the flow along rows held by those found with it implicit.</summary>
    /// <param name="capacity">Capacities as factored.</param> <param name="links">Conductances as factored.</param> <param name="length">Length of the stage, s.</param>
    /// <param name="changes">Changes over the stage, K.</param>
    public void Correct(ReadOnlySpan<double> capacity, ReadOnlySpan<double> links, double length, Span<double> changes)
    {
        for (var i = 0; i < rows; i++) changes[i] *= capacity[i] * inverses[i];
        for (var i = rows; i < changes.Length; i++) changes[i] = (capacity[i] * changes[i] + length * links[i] * changes[i - rows]) * inverses[i];
        for (var i = changes.Length - rows - 1; i >= 0; i--) changes[i] += shares[i] * changes[i + rows];
    }

    /// <summary>Heat that comes in through both ends of each row, W/m² of face.</summary>
    /// <param name="links">Conductances.</param> <param name="temperatures">Temperatures, °C.</param> <param name="around">Temperature beyond the ends, °C.</param> <param name="row">The row.</param>
    public double ThroughEnds(ReadOnlySpan<double> links, ReadOnlySpan<double> temperatures, double around, int row)
    {
        var end = temperatures.Length - rows;
        return links[row] * (around - temperatures[row]) + links[end + rows + row] * (around - temperatures[end + row]);
    }
}
