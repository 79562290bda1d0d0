namespace Slabwright.Sheets.Figures;

/// <summary>Finds the scale at which a figure fits a box.</summary>
internal static class FigureFit
{
    /// <summary>The figure at the largest scale that keeps it inside; texts keep their size, so the scale is found by halving.</summary>
    public static Figure Within(double width, double height, Func<double, Figure> draw)
    {
        var (low, high) = (1.0, 4000.0);
        var best = draw(low);
        for (var i = 0; i < 12; i++)
        {
            var middle = Math.Sqrt(low * high);
            var figure = draw(middle);
            if (figure.Width <= width && figure.Height <= height) (low, best) = (middle, figure);
            else high = middle;
        }

        return best;
    }
}
