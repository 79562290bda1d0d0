namespace Slabwright.Core.Numerics.Heat;

/// <summary>
/// One implicit stage of conduction down a column of cells with a nonlinear face on top: elimination from below leaves one equation
/// between the top cell and the face, solved by Newton's method to the last digits, so that no heat is lost.
/// </summary>
public static class ColumnStage
{
    private const int MostIterations = 50;
    private const double Settled = 1e-10;

    /// <summary>Solves C T = rhs + h · (conduction, face and ground at the new temperatures).</summary>
    /// <param name="capacity">Heat capacity of each cell, J/(m²·K).</param>
    /// <param name="links">Conductance above each cell and, last, below the last, W/(m²·K). The first joins the top cell to the face.</param>
    /// <param name="known">Right-hand sides, J/m²; used up.</param>
    /// <param name="length">Length of the stage h, s.</param>
    /// <param name="law">What the top meets, its time set.</param>
    /// <param name="deep">Temperature below the last link, °C.</param>
    /// <param name="work">As long as the cells.</param>
    /// <param name="temperatures">The answer, °C.</param>
    /// <param name="outer">Temperature of the outer face: a guess, then the answer.</param>
    /// <param name="fromBelow">Heat flux from below, W/m².</param>
    /// <returns>Heat flux through the face into the column, W/m².</returns>
    public static double Solve(
        ReadOnlySpan<double> capacity, ReadOnlySpan<double> links, Span<double> known, double length, ISurfaceLaw law, double deep, Span<double> work,
        Span<double> temperatures, ref double outer, out double fromBelow)
    {
        var last = capacity.Length - 1;
        var below = length * links[last + 1];
        var pivot = capacity[last] + below;
        known[last] += below * deep;
        for (var i = last; i > 0; i--)
        {
            var link = length * links[i];
            var share = link / (pivot + link);
            work[i] = share;
            known[i] /= pivot + link;
            known[i - 1] += link * known[i];
            pivot = capacity[i - 1] + link * (1 - share);
        }

        var flux = Face(links[0], pivot, known[0], length, law, ref outer);
        temperatures[0] = (known[0] + length * flux) / pivot;
        for (var i = 1; i <= last; i++) temperatures[i] = known[i] + work[i] * temperatures[i - 1];
        fromBelow = links[last + 1] * (deep - temperatures[last]);
        return flux;
    }

    /// <summary>Temperature of the outer face and the flux through it, given that the top cell answers T = (rhs + h q)/pivot.</summary>
    private static double Face(double link, double pivot, double known, double length, ISurfaceLaw law, ref double outer)
    {
        var joined = link / (1 + link * law.Resistance);
        var within = joined * pivot / (pivot + length * joined);
        var rest = known / pivot;
        for (var i = 0; i < MostIterations; i++)
        {
            var change = (law.Flux(outer, out var slope) - within * (outer - rest)) / (slope - within);
            outer -= change;
            if (Math.Abs(change) < Settled) break;
        }

        return within * (outer - rest);
    }
}
