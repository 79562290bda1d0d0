namespace Slabwright.Core.Numerics.Plates;

/// <summary>
/// Moderately thick plate element of nine nodes with deflection w (down) and rotations βx, βy of the normal (u = −z βx, so that a thin
/// plate has βx = ∂w/∂x). Transverse shear strains are taken at six points each way and interpolated, which keeps thin plates from
/// locking. Straight sides, nodes in rows along r; unknowns w, βx, βy node by node.
/// </summary>
/// <remarks>Mixed interpolation of tensorial components, nine nodes: Bucalem and Bathe, Int. J. Numer. Methods Eng. 36, 1993 (from memory).</remarks>
internal static class PlateElement
{
    /// <summary>Number of nodes.</summary>
    public const int Nodes = 9;

    /// <summary>Number of unknowns.</summary>
    public const int Unknowns = 27;

    private static readonly double TieAcross = Math.Sqrt(0.6);

    /// <summary>Stiffness, N/m, N and N·m by unknown; 27 × 27, row by row.</summary>
    /// <param name="quad">The corners.</param> <param name="section">The plate.</param>
    public static double[] Stiffness(in Quad quad, PlateSection section)
    {
        var stiffness = new double[Unknowns * Unknowns];
        var (bend, shear) = (new double[3 * Unknowns], new double[2 * Unknowns]);
        var (bendStress, shearStress) = (new double[3 * Unknowns], new double[2 * Unknowns]);
        var ties = new double[12 * Unknowns];
        TieRows(quad, ties);
        for (var i = 0; i < 3; i++)
        {
            for (var j = 0; j < 3; j++)
            {
                var (r, s) = (Quadratic.Points[i], Quadratic.Points[j]);
                var area = quad.Jacobian(r, s).Determinant * Quadratic.Weights[i] * Quadratic.Weights[j];
                Curvature(quad, r, s, bend);
                Shear(quad, r, s, ties, shear);
                Stress(section, bend, bendStress, shear, shearStress);
                AddProduct(stiffness, bend, bendStress, 3, area);
                AddProduct(stiffness, shear, shearStress, 2, area);
            }
        }

        Mirror(stiffness);
        return stiffness;
    }

    /// <summary>Rows κx, κy, κxy of the curvature at a point, 3 × 27.</summary>
    public static void Curvature(in Quad quad, double r, double s, Span<double> rows)
    {
        Span<double> alongX = stackalloc double[Nodes];
        Span<double> alongY = stackalloc double[Nodes];
        Gradients(quad, r, s, alongX, alongY);
        rows.Clear();
        for (var n = 0; n < Nodes; n++)
        {
            rows[3 * n + 1] = alongX[n];
            rows[Unknowns + 3 * n + 2] = alongY[n];
            rows[2 * Unknowns + 3 * n + 1] = alongY[n];
            rows[2 * Unknowns + 3 * n + 2] = alongX[n];
        }
    }

    /// <summary>Shape functions of the nine nodes.</summary>
    public static void Shape(double r, double s, Span<double> into)
    {
        Span<double> a = stackalloc double[3];
        Span<double> b = stackalloc double[3];
        Quadratic.Values(r, a);
        Quadratic.Values(s, b);
        for (var j = 0; j < 3; j++)
        {
            for (var i = 0; i < 3; i++) into[3 * j + i] = a[i] * b[j];
        }
    }

    private static void Derivatives(double r, double s, Span<double> alongR, Span<double> alongS)
    {
        Span<double> a = stackalloc double[3];
        Span<double> b = stackalloc double[3];
        Span<double> da = stackalloc double[3];
        Span<double> db = stackalloc double[3];
        Quadratic.Values(r, a);
        Quadratic.Values(s, b);
        Quadratic.Slopes(r, da);
        Quadratic.Slopes(s, db);
        for (var j = 0; j < 3; j++)
        {
            for (var i = 0; i < 3; i++) (alongR[3 * j + i], alongS[3 * j + i]) = (da[i] * b[j], a[i] * db[j]);
        }
    }

    private static void Gradients(in Quad quad, double r, double s, Span<double> alongX, Span<double> alongY)
    {
        Span<double> alongR = stackalloc double[Nodes];
        Span<double> alongS = stackalloc double[Nodes];
        Derivatives(r, s, alongR, alongS);
        var jacobian = quad.Jacobian(r, s);
        for (var n = 0; n < Nodes; n++) (alongX[n], alongY[n]) = jacobian.Inverse(alongR[n], alongS[n]);
    }

    /// <summary>
    /// Covariant shear along r at (±1/√3; −√0.6, 0, √0.6) in rows 0–5, along s at the mirrored points in rows 6–11. Row 3 i + m stands
    /// for the i-th place along and the m-th across.
    /// </summary>
    private static void TieRows(in Quad quad, Span<double> rows)
    {
        Span<double> shape = stackalloc double[Nodes];
        Span<double> alongR = stackalloc double[Nodes];
        Span<double> alongS = stackalloc double[Nodes];
        for (var i = 0; i < 2; i++)
        {
            for (var m = 0; m < 3; m++)
            {
                var (along, across) = ((2 * i - 1) * Quadratic.Half, (m - 1) * TieAcross);
                Shape(along, across, shape);
                Derivatives(along, across, alongR, alongS);
                var jacobian = quad.Jacobian(along, across);
                Row(rows[((3 * i + m) * Unknowns)..], alongR, shape, jacobian.XR, jacobian.YR);
                Shape(across, along, shape);
                Derivatives(across, along, alongR, alongS);
                jacobian = quad.Jacobian(across, along);
                Row(rows[((6 + 3 * i + m) * Unknowns)..], alongS, shape, jacobian.XS, jacobian.YS);
            }
        }
    }

    private static void Row(Span<double> row, Span<double> slope, Span<double> shape, double x, double y)
    {
        for (var n = 0; n < Nodes; n++) (row[3 * n], row[3 * n + 1], row[3 * n + 2]) = (slope[n], -shape[n] * x, -shape[n] * y);
    }

    /// <summary>Rows γx, γy at a point from the tied values, 2 × 27.</summary>
    private static void Shear(in Quad quad, double r, double s, double[] ties, double[] rows)
    {
        Span<double> alongR = stackalloc double[3];
        Span<double> alongS = stackalloc double[3];
        Quadratic.Through(s, TieAcross, alongR);
        Quadratic.Through(r, TieAcross, alongS);
        var jacobian = quad.Jacobian(r, s);
        for (var u = 0; u < Unknowns; u++)
        {
            var (one, two) = (0.0, 0.0);
            for (var i = 0; i < 2; i++)
            {
                var (nearR, nearS) = ((1 + (2 * i - 1) * r / Quadratic.Half) / 2, (1 + (2 * i - 1) * s / Quadratic.Half) / 2);
                for (var m = 0; m < 3; m++)
                {
                    one += nearR * alongR[m] * ties[(3 * i + m) * Unknowns + u];
                    two += nearS * alongS[m] * ties[(6 + 3 * i + m) * Unknowns + u];
                }
            }

            (rows[u], rows[Unknowns + u]) = jacobian.Inverse(one, two);
        }
    }

    private static void Stress(PlateSection section, double[] bend, double[] bendStress, double[] shear, double[] shearStress)
    {
        var (stiff, poisson) = (section.Bending, section.Poisson);
        for (var u = 0; u < Unknowns; u++)
        {
            var (x, y, xy) = (bend[u], bend[Unknowns + u], bend[2 * Unknowns + u]);
            bendStress[u] = stiff * (x + poisson * y);
            bendStress[Unknowns + u] = stiff * (y + poisson * x);
            bendStress[2 * Unknowns + u] = stiff * (1 - poisson) / 2 * xy;
            shearStress[u] = section.Shear * shear[u];
            shearStress[Unknowns + u] = section.Shear * shear[Unknowns + u];
        }
    }

    private static void AddProduct(double[] stiffness, double[] rows, double[] stresses, int count, double weight)
    {
        for (var k = 0; k < count; k++)
        {
            for (var i = 0; i < Unknowns; i++)
            {
                var factor = weight * rows[k * Unknowns + i];
                if (factor == 0) continue;
                for (var j = 0; j <= i; j++) stiffness[i * Unknowns + j] += factor * stresses[k * Unknowns + j];
            }
        }
    }

    private static void Mirror(double[] stiffness)
    {
        for (var i = 0; i < Unknowns; i++)
        {
            for (var j = 0; j < i; j++) stiffness[j * Unknowns + i] = stiffness[i * Unknowns + j];
        }
    }
}
