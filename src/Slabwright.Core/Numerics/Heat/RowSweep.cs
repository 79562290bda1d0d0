namespace Slabwright.Core.Numerics.Heat;

/// <summary>
/// Conduction along the rows of a grid by the implicit half of <see cref="ImplicitExplicit"/>. All rows are solved side by side; cells lie
/// column after column, the rows of a column together.
/// </summary>
/// <param name="columns">Cells along a row.</param>
/// <param name="rows">Rows.</param>
public sealed class RowSweep(int columns, int rows)
{
    private readonly double[] shares = new double[columns * rows];
    private readonly double[] inverses = new double[columns * rows];
    private readonly double[] first = new double[columns * rows];
    private readonly double[] start = new double[columns * rows];

    /// <summary>Moves the temperatures on by a time and returns what came in through the two ends, row by row, J/m² of face.</summary>
    /// <param name="capacity">Capacity of each cell, J/(m²·K): per square metre of face across the row.</param>
    /// <param name="links">Conductance before each cell of a row and, last column, behind the last, W/(m²·K); 0 at insulated ends.</param>
    /// <param name="temperatures">Temperatures, °C; moved on.</param>
    /// <param name="time">Length of the step, s.</param>
    /// <param name="around">Temperature beyond the ends, °C.</param>
    /// <param name="ends">Heat that came in, added row by row, J/m².</param>
    public void Step(ReadOnlySpan<double> capacity, ReadOnlySpan<double> links, Span<double> temperatures, double time, double around, Span<double> ends)
    {
        var length = ImplicitExplicit.Gamma * time;
        Factor(capacity, links, length);
        temperatures.CopyTo(start);
        for (var i = 0; i < start.Length; i++) first[i] = capacity[i] * start[i];
        Solve(links, first, length, around);
        Gather(links, first, around, (1 - ImplicitExplicit.Gamma) * time, ends);
        for (var i = 0; i < start.Length; i++) temperatures[i] = capacity[i] * (start[i] + ImplicitExplicit.Carry * (first[i] - start[i]));
        Solve(links, temperatures, length, around);
        Gather(links, temperatures, around, length, ends);
    }

    private void Factor(ReadOnlySpan<double> capacity, ReadOnlySpan<double> links, double length)
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

    private void Solve(ReadOnlySpan<double> links, Span<double> values, double length, double around)
    {
        var end = values.Length - rows;
        for (var i = 0; i < rows; i++)
        {
            values[i] += length * links[i] * around;
            values[end + i] += length * links[end + rows + i] * around;
            values[i] *= inverses[i];
        }

        for (var i = rows; i < values.Length; i++) values[i] = (values[i] + length * links[i] * values[i - rows]) * inverses[i];
        for (var i = end - 1; i >= 0; i--) values[i] += shares[i] * values[i + rows];
    }

    private void Gather(ReadOnlySpan<double> links, ReadOnlySpan<double> values, double around, double time, Span<double> ends)
    {
        var end = values.Length - rows;
        for (var i = 0; i < rows; i++)
            ends[i] += time * (links[i] * (around - values[i]) + links[end + rows + i] * (around - values[end + i]));
    }
}
