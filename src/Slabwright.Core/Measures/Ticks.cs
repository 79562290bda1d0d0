namespace Slabwright.Core.Measures;

/// <summary>
/// Exact positions for the boundary search: whole tenths of a millimetre. An inch is 254 ticks and a foot 3,048, so crews' marks in
/// inches, feet, millimetres and metres are all whole numbers and two plans can be compared for equality.
/// </summary>
public static class Ticks
{
    /// <summary>Ticks in a metre.</summary>
    public const long PerMetre = 10_000;

    /// <summary>Ticks in an international foot.</summary>
    public const long PerFoot = 3_048;

    /// <summary>Ticks in an inch.</summary>
    public const long PerInch = 254;

    /// <summary>Nearest tick to a length in metres.</summary>
    public static long FromMetres(double metres) => (long)Math.Round(metres * PerMetre, MidpointRounding.AwayFromZero);

    /// <summary>Nearest tick to a length in feet.</summary>
    public static long FromFeet(double feet) => (long)Math.Round(feet * PerFoot, MidpointRounding.AwayFromZero);

    /// <summary>How many parts of at most <paramref name="part"/> make <paramref name="whole"/>, at least 1; both in metres, to the tick, so that 12 ft is exactly two parts of 6 ft.</summary>
    public static int CountUp(double whole, double part)
    {
        var (total, step) = (FromMetres(whole), FromMetres(part));
        return (int)Math.Max(1, (total + step - 1) / step);
    }

    /// <summary>Metres of a number of ticks.</summary>
    public static double ToMetres(long ticks) => ticks / (double)PerMetre;

    /// <summary>Feet of a number of ticks.</summary>
    public static double ToFeet(long ticks) => ticks / (double)PerFoot;
}
