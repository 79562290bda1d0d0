namespace Slabwright.Core.Numerics.Plates;

/// <summary>Elastic plate of one thickness.</summary>
/// <param name="Modulus">Young's modulus, Pa.</param>
/// <param name="Poisson">Poisson's ratio.</param>
/// <param name="Thickness">m.</param>
public readonly record struct PlateSection(double Modulus, double Poisson, double Thickness)
{
    /// <summary>Bending stiffness D = E h³/(12 (1 − ν²)), N·m.</summary>
    public double Bending => Modulus * Thickness * Thickness * Thickness / (12 * (1 - Poisson * Poisson));

    /// <summary>Shear stiffness 5/6 G h, N/m.</summary>
    public double Shear => 5.0 / 6 * Modulus / (2 * (1 + Poisson)) * Thickness;
}

/// <summary>Bending moments of a unit width, N·m/m; positive where they stretch the bottom.</summary>
/// <param name="X">Moment that bends along x.</param>
/// <param name="Y">Moment that bends along y.</param>
/// <param name="XY">Twisting moment.</param>
public readonly record struct PlateMoment(double X, double Y, double XY)
{
    /// <summary>Stress at the bottom of a plate of some thickness, Pa: 6 M/h² in each component; the top has the opposite sign.</summary>
    public PlateMoment BottomStress(double thickness) => this * (6 / (thickness * thickness));

    /// <summary>Greatest and least principal value.</summary>
    public (double Most, double Least) Principal
    {
        get
        {
            var centre = (X + Y) / 2;
            var radius = Math.Sqrt((X - Y) * (X - Y) / 4 + XY * XY);
            return (centre + radius, centre - radius);
        }
    }

    /// <summary>Sum.</summary>
    public static PlateMoment operator +(PlateMoment one, PlateMoment two) => new(one.X + two.X, one.Y + two.Y, one.XY + two.XY);

    /// <summary>Multiple.</summary>
    public static PlateMoment operator *(PlateMoment one, double factor) => new(one.X * factor, one.Y * factor, one.XY * factor);
}
