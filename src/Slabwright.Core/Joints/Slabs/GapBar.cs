namespace Slabwright.Core.Joints.Slabs;

/// <summary>What one bar does.</summary>
/// <param name="Shear">Shear across the gap, N; positive where the first slab presses the bar down and the bar presses the second.</param>
/// <param name="FirstMoment">Bending moment of the bar at the first slab's face, N·m.</param>
/// <param name="SecondMoment">Bending moment of the bar at the second slab's face, N·m.</param>
/// <param name="FirstBearing">Bearing stress on the concrete at the first slab's face, Pa.</param>
/// <param name="SecondBearing">Bearing stress on the concrete at the second slab's face, Pa.</param>
public readonly record struct BarForce(double Shear, double FirstMoment, double SecondMoment, double FirstBearing, double SecondBearing)
{
    /// <summary>The greater of the two bearing stresses, Pa.</summary>
    public double Bearing => Math.Max(Math.Abs(FirstBearing), Math.Abs(SecondBearing));
}

/// <summary>
/// A round bar that bridges a joint: a beam with bending and shear over the gap, held on both sides by springs along its embedded length,
/// free at its ends. Worked out in closed form for the length each side really has.
/// </summary>
/// <remarks>
/// Beam on elastic foundation: Timoshenko and Lessels 1925; finite lengths after Hetényi 1946 (from memory). With long embedment the
/// deflection at the face is Friberg's y0 = P (2 + β z)/(4 β³ E I) on each side.
/// </remarks>
public sealed class GapBar
{
    private readonly double _half;
    private readonly double _support;
    private readonly (double VV, double VM, double MM) _first;
    private readonly (double VV, double VM, double MM) _second;
    private readonly (double VV, double VM, double MM) _flexibility;

    /// <summary>A bar.</summary>
    /// <param name="diameter">m.</param> <param name="gap">Joint width z, m; 0 or more.</param>
    /// <param name="first">Embedded length in the first slab, m.</param> <param name="second">Embedded length in the second slab, m.</param>
    /// <param name="support">Modulus of dowel support K, Pa/m.</param> <param name="modulus">Steel modulus, Pa.</param>
    /// <param name="poisson">Poisson's ratio of steel.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length, K or E is not positive, or the gap is negative.</exception>
    public GapBar(double diameter, double gap, double first, double second, double support, double modulus = 200e9, double poisson = 0.3)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(diameter);
        ArgumentOutOfRangeException.ThrowIfNegative(gap);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(first);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(second);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(support);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(modulus);
        (Diameter, _half, _support) = (diameter, gap / 2, support);
        var bending = modulus * DowelBar.SecondMoment(diameter);
        var beta = DowelBar.Beta(support, diameter, modulus);
        var shear = modulus / (2 * (1 + poisson)) * 0.9 * Math.PI * diameter * diameter / 4;
        _first = Embedded(beta, bending, first);
        _second = Embedded(beta, bending, second);
        var (one, two) = (Tip(_first, bending, shear), Tip(_second, bending, shear));
        _flexibility = (one.VV + two.VV, two.VM - one.VM, one.MM + two.MM);
    }

    /// <summary>Bar diameter, m.</summary>
    public double Diameter { get; }

    /// <summary>Half the gap, m: lever of each face about the middle of the joint.</summary>
    public double HalfGap => _half;

    /// <summary>
    /// Give of the bar at the middle of the gap: step in deflection by shear (m/N), step by moment = kink by shear (1/N), kink by moment
    /// (1/(N·m)).
    /// </summary>
    public (double VV, double VM, double MM) Flexibility => _flexibility;

    /// <summary>Stiffness between w and slope of the first slab's face and of the second's, 4 × 4, row by row; N/m, N, N·m.</summary>
    public double[] Stiffness()
    {
        var (vv, vm, mm) = _flexibility;
        var det = vv * mm - vm * vm;
        double[] kernel = [mm / det, -vm / det, -vm / det, vv / det];
        double[,] across = { { 1, _half, -1, _half }, { 0, 1, 0, -1 } };
        var stiffness = new double[16];
        for (var i = 0; i < 4; i++)
        {
            for (var j = 0; j < 4; j++)
            {
                for (var a = 0; a < 2; a++)
                {
                    for (var b = 0; b < 2; b++) stiffness[4 * i + j] += across[a, i] * kernel[2 * a + b] * across[b, j];
                }
            }
        }

        return stiffness;
    }

    /// <summary>Stiffness against a step between faces that do not turn, N/m.</summary>
    public double ShearStiffness => Stiffness()[0];

    /// <summary>Shear and moment at the middle of the gap from the movements of the faces.</summary>
    public (double Shear, double Moment) Middle(double firstDeflection, double firstSlope, double secondDeflection, double secondSlope)
    {
        var (vv, vm, mm) = _flexibility;
        var (step, kink) = (firstDeflection - secondDeflection + _half * (firstSlope + secondSlope), firstSlope - secondSlope);
        var det = vv * mm - vm * vm;
        return ((mm * step - vm * kink) / det, (vv * kink - vm * step) / det);
    }

    /// <summary>Forces and bearing from shear and moment at the middle of the gap.</summary>
    public BarForce Forces(double shear, double moment)
    {
        var (onSecond, onFirst) = (moment - shear * _half, moment + shear * _half);
        var secondFace = _second.VV * shear + _second.VM * onSecond;
        var firstFace = -_first.VV * shear + _first.VM * onFirst;
        return new BarForce(shear, onFirst, onSecond, _support * firstFace, _support * secondFace);
    }

    /// <summary>Give of the embedded part at the face (bar running away from it): deflection and slope by force and by couple.</summary>
    private static (double VV, double VM, double MM) Embedded(double beta, double bending, double length)
    {
        var (b, decay) = (beta * length, Math.Exp(-beta * length));
        var (cos, sin) = (Math.Cos(b), Math.Sin(b));
        var (sinh, cosh) = ((1 - decay * decay) / 2, (1 + decay * decay) / 2);
        var (s, c) = (decay * sin, decay * cos);
        var below = sinh * sinh - s * s;
        return (
            (sinh * cosh - s * c) / below / (2 * Math.Pow(beta, 3) * bending),
            -(sinh * sinh + s * s) / below / (2 * beta * beta * bending),
            (sinh * cosh + s * c) / below / (beta * bending));
    }

    /// <summary>The give carried forward to the middle of the gap, with bending and shear of the half bridge.</summary>
    private (double VV, double VM, double MM) Tip((double VV, double VM, double MM) face, double bending, double shear)
    {
        var a = _half;
        return (
            face.VV - 2 * a * face.VM + a * a * face.MM + a * a * a / (3 * bending) + a / shear,
            face.VM - a * face.MM - a * a / (2 * bending),
            face.MM + a / bending);
    }
}
