namespace Slabwright.Core.Numerics.Plates;

/// <summary>Quadratic shape functions on −1, 0, 1 and the points of integration of the elements.</summary>
internal static class Quadratic
{
    /// <summary>Gauss points of three.</summary>
    public static readonly double[] Points = [-Math.Sqrt(0.6), 0, Math.Sqrt(0.6)];

    /// <summary>Weights of the three points.</summary>
    public static readonly double[] Weights = [5.0 / 9, 8.0 / 9, 5.0 / 9];

    /// <summary>Gauss point of two, at ± this.</summary>
    public static readonly double Half = 1 / Math.Sqrt(3);

    /// <summary>Values at r.</summary>
    public static void Values(double r, Span<double> into)
    {
        into[0] = r * (r - 1) / 2;
        into[1] = 1 - r * r;
        into[2] = r * (r + 1) / 2;
    }

    /// <summary>Slopes at r.</summary>
    public static void Slopes(double r, Span<double> into)
    {
        into[0] = r - 0.5;
        into[1] = -2 * r;
        into[2] = r + 0.5;
    }

    /// <summary>Quadratic through the values at −b, 0 and b.</summary>
    public static void Through(double s, double b, Span<double> into)
    {
        var t = s / b;
        into[0] = t * (t - 1) / 2;
        into[1] = 1 - t * t;
        into[2] = t * (t + 1) / 2;
    }
}
