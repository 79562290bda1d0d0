namespace Slabwright.Core.Numerics.Plates;

/// <summary>Derivatives of x and y by the element coordinates r and s.</summary>
internal readonly record struct Jacobian(double XR, double YR, double XS, double YS)
{
    /// <summary>Area of the element's unit square in the plane.</summary>
    public double Determinant => XR * YS - XS * YR;

    /// <summary>Components along x and y of a gradient given along r and s.</summary>
    public (double X, double Y) Inverse(double r, double s) =>
        ((YS * r - YR * s) / Determinant, (XR * s - XS * r) / Determinant);
}

/// <summary>A quadrilateral with straight sides: corners at (r, s) = (−1, −1), (1, −1), (1, 1), (−1, 1).</summary>
internal readonly record struct Quad(double X0, double Y0, double X1, double Y1, double X2, double Y2, double X3, double Y3)
{
    /// <summary>Place of (r, s).</summary>
    public (double X, double Y) At(double r, double s)
    {
        var (a, b, c, d) = ((1 - r) * (1 - s) / 4, (1 + r) * (1 - s) / 4, (1 + r) * (1 + s) / 4, (1 - r) * (1 + s) / 4);
        return (a * X0 + b * X1 + c * X2 + d * X3, a * Y0 + b * Y1 + c * Y2 + d * Y3);
    }

    /// <summary>Derivatives at (r, s).</summary>
    public Jacobian Jacobian(double r, double s) => new(
        ((1 - s) * (X1 - X0) + (1 + s) * (X2 - X3)) / 4, ((1 - s) * (Y1 - Y0) + (1 + s) * (Y2 - Y3)) / 4,
        ((1 - r) * (X3 - X0) + (1 + r) * (X2 - X1)) / 4, ((1 - r) * (Y3 - Y0) + (1 + r) * (Y2 - Y1)) / 4);

    /// <summary>(r, s) of a place, by Newton from the middle; exact after one step where opposite sides are parallel.</summary>
    /// <exception cref="ArithmeticException">The quadrilateral is degenerate.</exception>
    public (double R, double S) Find(double x, double y)
    {
        var (r, s) = (0.0, 0.0);
        for (var step = 0; step < 50; step++)
        {
            var (px, py) = At(r, s);
            var j = Jacobian(r, s);
            var (dr, ds) = ((j.YS * (x - px) - j.XS * (y - py)) / j.Determinant, (j.XR * (y - py) - j.YR * (x - px)) / j.Determinant);
            (r, s) = (r + dr, s + ds);
            if (Math.Abs(dr) + Math.Abs(ds) < 1e-9) return (r, s);
        }

        throw new ArithmeticException("The place could not be found in a degenerate quadrilateral.");
    }

    /// <summary>Area.</summary>
    public double Area => ((X2 - X0) * (Y3 - Y1) - (X3 - X1) * (Y2 - Y0)) / 2;
}
