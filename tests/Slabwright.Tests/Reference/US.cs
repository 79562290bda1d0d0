namespace Slabwright.Tests.Reference;

/// <summary>US customary units in SI, written out here so that the checks do not lean on the program's own table.</summary>
internal static class US
{
    public const double Inch = 0.0254;
    public const double Foot = 0.3048;
    public const double Pound = 4.4482216152605;
    public const double Kip = 1000 * Pound;
    public const double Psi = Pound / (Inch * Inch);
    public const double Pci = Psi / Inch;
    public const double Pcf = 0.45359237 / (Foot * Foot * Foot);
    public const double Fahrenheit = 5.0 / 9;
}
