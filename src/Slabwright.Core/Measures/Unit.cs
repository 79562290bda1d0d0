using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace Slabwright.Core.Measures;

/// <summary>What a unit measures. Two measures add only when their dimensions agree.</summary>
public enum Dimension
{
    /// <summary>A plain number or ratio.</summary>
    None,

    /// <summary>Length, base unit metre.</summary>
    Length,

    /// <summary>Area, base unit square metre.</summary>
    Area,

    /// <summary>Volume, base unit cubic metre.</summary>
    Volume,

    /// <summary>Mass, base unit kilogram.</summary>
    Mass,

    /// <summary>Time, base unit second.</summary>
    Time,

    /// <summary>Temperature on a scale, base unit degree Celsius.</summary>
    Temperature,

    /// <summary>Temperature difference, base unit kelvin.</summary>
    TemperatureDifference,

    /// <summary>Force, base unit newton.</summary>
    Force,

    /// <summary>Stress or pressure, base unit pascal.</summary>
    Stress,

    /// <summary>Modulus of foundation or dowel reaction, base unit pascal per metre.</summary>
    Reaction,

    /// <summary>Speed, base unit metre per second.</summary>
    Speed,

    /// <summary>Share, base unit one; percent is 0.01.</summary>
    Share,

    /// <summary>Plane angle, base unit radian.</summary>
    Angle,

    /// <summary>Density, base unit kilogram per cubic metre.</summary>
    Density,

    /// <summary>Thermal expansion, base unit per kelvin.</summary>
    Expansion,

    /// <summary>Traffic flow, base unit vehicles per hour.</summary>
    Flow,

    /// <summary>Something per length, base unit one per metre: prices by length, the stiffness β of a dowel.</summary>
    PerLength,

    /// <summary>Something per area, base unit one per square metre: prices by area.</summary>
    PerArea,

    /// <summary>Spring stiffness, base unit newton per metre.</summary>
    Stiffness,

    /// <summary>Steel area per length of joint, base unit square metre per metre.</summary>
    SteelPerLength,

    /// <summary>Heat through a square metre for a kelvin, base unit W/(m²·K).</summary>
    HeatTransfer,

    /// <summary>Conductivity, base unit W/(m·K).</summary>
    Conductivity,

    /// <summary>Thermal resistance of an area, base unit m²·K/W.</summary>
    ThermalResistance,

    /// <summary>Heat flux, base unit W/m².</summary>
    HeatFlux,

    /// <summary>Heat freed in a volume, base unit W/m³.</summary>
    HeatSource,

    /// <summary>Heat of a mass, base unit J/kg.</summary>
    HeatPerMass,

    /// <summary>Heat capacity of a volume, base unit J/(m³·K).</summary>
    HeatCapacity,

    /// <summary>Energy of a mole, base unit J/mol.</summary>
    MolarEnergy,

    /// <summary>Surface of a mass, base unit m²/kg.</summary>
    Fineness,
}

/// <summary>A unit of measure: base value = value × <see cref="Factor"/> + <see cref="Offset"/>.</summary>
/// <param name="Symbol">Printed symbol and the suffix used in column names.</param>
/// <param name="Dimension">What it measures.</param>
/// <param name="Factor">Multiplier to the base unit.</param>
/// <param name="Offset">Added after multiplying; only temperatures have one.</param>
public sealed record Unit(string Symbol, Dimension Dimension, double Factor, double Offset = 0)
{
    /// <summary>Converts a value in this unit to the base unit of its dimension.</summary>
    public double ToBase(double value) => value * Factor + Offset;

    /// <summary>Converts a value in the base unit to this unit.</summary>
    public double FromBase(double value) => (value - Offset) / Factor;

    /// <summary>Formats a base value in this unit with the given number of decimals, e.g. <c>6.0 ft</c>.</summary>
    public string Format(double baseValue, int decimals = 1)
    {
        var number = FromBase(baseValue).ToString("N" + decimals, CultureInfo.InvariantCulture);
        return Symbol.Length == 0 ? number : $"{number} {Symbol}";
    }

    /// <inheritdoc/>
    public override string ToString() => Symbol;
}

/// <summary>
/// The units Slabwright reads and prints. The foot is the international foot of 0.3048 m exactly; the US survey foot differs
/// by two parts in a million and is not used.
/// </summary>
/// <remarks>Source: NIST SP 811, Appendix B.8. Cross-checked against UnitsNet in the tests.</remarks>
public static class Units
{
    private const double PoundForce = 4.4482216152605;
    private const double Inch_ = 0.0254;

    /// <summary>International table British thermal unit, J: 2,326 J/kg for 1 Btu/lb exactly.</summary>
    private const double Btu_ = 2326 * 0.45359237;

    private const double Psi_ = PoundForce / (Inch_ * Inch_);

    /// <summary>A plain number.</summary>
    public static Unit One { get; } = new("", Dimension.None, 1);

    /// <summary>Metre.</summary>
    public static Unit Metre { get; } = new("m", Dimension.Length, 1);

    /// <summary>Millimetre.</summary>
    public static Unit Millimetre { get; } = new("mm", Dimension.Length, 0.001);

    /// <summary>Centimetre.</summary>
    public static Unit Centimetre { get; } = new("cm", Dimension.Length, 0.01);

    /// <summary>Kilometre.</summary>
    public static Unit Kilometre { get; } = new("km", Dimension.Length, 1000);

    /// <summary>International foot, 0.3048 m.</summary>
    public static Unit Foot { get; } = new("ft", Dimension.Length, 0.3048);

    /// <summary>Inch, 25.4 mm.</summary>
    public static Unit Inch { get; } = new("in", Dimension.Length, Inch_);

    /// <summary>Mile, 5,280 ft.</summary>
    public static Unit Mile { get; } = new("mi", Dimension.Length, 1609.344);

    /// <summary>Square metre.</summary>
    public static Unit SquareMetre { get; } = new("m2", Dimension.Area, 1);

    /// <summary>Square foot.</summary>
    public static Unit SquareFoot { get; } = new("ft2", Dimension.Area, 0.3048 * 0.3048);

    /// <summary>Square yard.</summary>
    public static Unit SquareYard { get; } = new("yd2", Dimension.Area, 0.9144 * 0.9144);

    /// <summary>Cubic metre.</summary>
    public static Unit CubicMetre { get; } = new("m3", Dimension.Volume, 1);

    /// <summary>Cubic yard.</summary>
    public static Unit CubicYard { get; } = new("yd3", Dimension.Volume, 0.9144 * 0.9144 * 0.9144);

    /// <summary>Cubic foot.</summary>
    public static Unit CubicFoot { get; } = new("ft3", Dimension.Volume, 0.3048 * 0.3048 * 0.3048);

    /// <summary>Kilogram.</summary>
    public static Unit Kilogram { get; } = new("kg", Dimension.Mass, 1);

    /// <summary>Pound, 0.45359237 kg.</summary>
    public static Unit Pound { get; } = new("lb", Dimension.Mass, 0.45359237);

    /// <summary>US short ton, 2,000 lb.</summary>
    public static Unit ShortTon { get; } = new("ton", Dimension.Mass, 907.18474);

    /// <summary>Tonne.</summary>
    public static Unit Tonne { get; } = new("t", Dimension.Mass, 1000);

    /// <summary>Second.</summary>
    public static Unit Second { get; } = new("s", Dimension.Time, 1);

    /// <summary>Minute.</summary>
    public static Unit Minute { get; } = new("min", Dimension.Time, 60);

    /// <summary>Hour.</summary>
    public static Unit Hour { get; } = new("h", Dimension.Time, 3600);

    /// <summary>Day.</summary>
    public static Unit Day { get; } = new("d", Dimension.Time, 86400);

    /// <summary>Degree Celsius.</summary>
    public static Unit Celsius { get; } = new("°C", Dimension.Temperature, 1);

    /// <summary>Degree Fahrenheit.</summary>
    public static Unit Fahrenheit { get; } = new("°F", Dimension.Temperature, 5.0 / 9, -160.0 / 9);

    /// <summary>Kelvin as a difference.</summary>
    public static Unit Kelvin { get; } = new("K", Dimension.TemperatureDifference, 1);

    /// <summary>Fahrenheit degree as a difference.</summary>
    public static Unit FahrenheitDegree { get; } = new("Δ°F", Dimension.TemperatureDifference, 5.0 / 9);

    /// <summary>Newton.</summary>
    public static Unit Newton { get; } = new("N", Dimension.Force, 1);

    /// <summary>Kilonewton.</summary>
    public static Unit Kilonewton { get; } = new("kN", Dimension.Force, 1000);

    /// <summary>Pound-force.</summary>
    public static Unit PoundOfForce { get; } = new("lbf", Dimension.Force, PoundForce);

    /// <summary>Kip, 1,000 lbf.</summary>
    public static Unit Kip { get; } = new("kip", Dimension.Force, 1000 * PoundForce);

    /// <summary>Kilogram-force, 9.80665 N; in Indian and older metric texts.</summary>
    public static Unit KilogramForce { get; } = new("kgf", Dimension.Force, 9.80665);

    /// <summary>Pascal.</summary>
    public static Unit Pascal { get; } = new("Pa", Dimension.Stress, 1);

    /// <summary>Kilopascal.</summary>
    public static Unit Kilopascal { get; } = new("kPa", Dimension.Stress, 1000);

    /// <summary>Megapascal.</summary>
    public static Unit Megapascal { get; } = new("MPa", Dimension.Stress, 1e6);

    /// <summary>Gigapascal.</summary>
    public static Unit Gigapascal { get; } = new("GPa", Dimension.Stress, 1e9);

    /// <summary>Pound-force per square inch.</summary>
    public static Unit Psi { get; } = new("psi", Dimension.Stress, Psi_);

    /// <summary>Kilogram-force per square centimetre, 98,066.5 Pa.</summary>
    public static Unit KilogramForcePerSquareCentimetre { get; } = new("kgf/cm2", Dimension.Stress, 98066.5);

    /// <summary>Megapascal per metre.</summary>
    public static Unit MegapascalPerMetre { get; } = new("MPa/m", Dimension.Reaction, 1e6);

    /// <summary>Pound per cubic inch (psi per inch).</summary>
    public static Unit Pci { get; } = new("pci", Dimension.Reaction, Psi_ / Inch_);

    /// <summary>Mile per hour.</summary>
    public static Unit MilePerHour { get; } = new("mph", Dimension.Speed, 0.44704);

    /// <summary>Metre per second.</summary>
    public static Unit MetrePerSecond { get; } = new("m/s", Dimension.Speed, 1);

    /// <summary>Share of one.</summary>
    public static Unit ShareOfOne { get; } = new("share", Dimension.Share, 1);

    /// <summary>Percent.</summary>
    public static Unit Percent { get; } = new("%", Dimension.Share, 0.01);

    /// <summary>Degree of arc.</summary>
    public static Unit Degree { get; } = new("deg", Dimension.Angle, Math.PI / 180);

    /// <summary>Gradian (gon), a four-hundredth of a turn.</summary>
    public static Unit Gradian { get; } = new("gon", Dimension.Angle, Math.PI / 200);

    /// <summary>Radian.</summary>
    public static Unit Radian { get; } = new("rad", Dimension.Angle, 1);

    /// <summary>Kilogram per cubic metre.</summary>
    public static Unit KilogramPerCubicMetre { get; } = new("kg/m3", Dimension.Density, 1);

    /// <summary>Pound per cubic foot.</summary>
    public static Unit PoundPerCubicFoot { get; } = new("lb/ft3", Dimension.Density, 0.45359237 / (0.3048 * 0.3048 * 0.3048));

    /// <summary>Pound per cubic yard; contents of concrete mixes.</summary>
    public static Unit PoundPerCubicYard { get; } = new("lb/yd3", Dimension.Density, 0.45359237 / (0.9144 * 0.9144 * 0.9144));

    /// <summary>Per kelvin.</summary>
    public static Unit PerKelvin { get; } = new("1/K", Dimension.Expansion, 1);

    /// <summary>Per Fahrenheit degree.</summary>
    public static Unit PerFahrenheit { get; } = new("1/°F", Dimension.Expansion, 1.8);

    /// <summary>Vehicles per hour.</summary>
    public static Unit VehiclePerHour { get; } = new("veh/h", Dimension.Flow, 1);

    /// <summary>Per metre.</summary>
    public static Unit PerMetre { get; } = new("1/m", Dimension.PerLength, 1);

    /// <summary>Per foot.</summary>
    public static Unit PerFoot { get; } = new("1/ft", Dimension.PerLength, 1 / 0.3048);

    /// <summary>Per inch.</summary>
    public static Unit PerInch { get; } = new("1/in", Dimension.PerLength, 1 / Inch_);

    /// <summary>Per square metre.</summary>
    public static Unit PerSquareMetre { get; } = new("1/m2", Dimension.PerArea, 1);

    /// <summary>Per square foot.</summary>
    public static Unit PerSquareFoot { get; } = new("1/ft2", Dimension.PerArea, 1 / (0.3048 * 0.3048));

    /// <summary>Per square yard.</summary>
    public static Unit PerSquareYard { get; } = new("1/yd2", Dimension.PerArea, 1 / (0.9144 * 0.9144));

    /// <summary>Newton per millimetre.</summary>
    public static Unit NewtonPerMillimetre { get; } = new("N/mm", Dimension.Stiffness, 1000);

    /// <summary>Pound-force per inch.</summary>
    public static Unit PoundForcePerInch { get; } = new("lbf/in", Dimension.Stiffness, PoundForce / Inch_);

    /// <summary>Square millimetre per metre.</summary>
    public static Unit SquareMillimetrePerMetre { get; } = new("mm2/m", Dimension.SteelPerLength, 1e-6);

    /// <summary>Square centimetre per metre.</summary>
    public static Unit SquareCentimetrePerMetre { get; } = new("cm2/m", Dimension.SteelPerLength, 1e-4);

    /// <summary>Square inch per foot.</summary>
    public static Unit SquareInchPerFoot { get; } = new("in2/ft", Dimension.SteelPerLength, Inch_ * Inch_ / 0.3048);

    /// <summary>Watt per square metre and kelvin.</summary>
    public static Unit WattPerSquareMetreKelvin { get; } = new("W/m2K", Dimension.HeatTransfer, 1);

    /// <summary>British thermal unit per hour, square foot and degree Fahrenheit.</summary>
    public static Unit BtuPerHourSquareFootFahrenheit { get; } = new("Btu/hft2°F", Dimension.HeatTransfer, Btu_ * 1.8 / (3600 * 0.3048 * 0.3048));

    /// <summary>Watt per metre and kelvin.</summary>
    public static Unit WattPerMetreKelvin { get; } = new("W/mK", Dimension.Conductivity, 1);

    /// <summary>British thermal unit per hour, foot and degree Fahrenheit.</summary>
    public static Unit BtuPerHourFootFahrenheit { get; } = new("Btu/hft°F", Dimension.Conductivity, Btu_ * 1.8 / (3600 * 0.3048));

    /// <summary>Square metre kelvin per watt.</summary>
    public static Unit SquareMetreKelvinPerWatt { get; } = new("m2K/W", Dimension.ThermalResistance, 1);

    /// <summary>Hour square foot degree Fahrenheit per British thermal unit: the R value of insulation.</summary>
    public static Unit HourSquareFootFahrenheitPerBtu { get; } = new("hft2°F/Btu", Dimension.ThermalResistance, 3600 * 0.3048 * 0.3048 / (Btu_ * 1.8));

    /// <summary>Watt per square metre.</summary>
    public static Unit WattPerSquareMetre { get; } = new("W/m2", Dimension.HeatFlux, 1);

    /// <summary>British thermal unit per hour and square foot.</summary>
    public static Unit BtuPerHourSquareFoot { get; } = new("Btu/hft2", Dimension.HeatFlux, Btu_ / (3600 * 0.3048 * 0.3048));

    /// <summary>Watt per cubic metre.</summary>
    public static Unit WattPerCubicMetre { get; } = new("W/m3", Dimension.HeatSource, 1);

    /// <summary>Kilojoule per kilogram.</summary>
    public static Unit KilojoulePerKilogram { get; } = new("kJ/kg", Dimension.HeatPerMass, 1000);

    /// <summary>British thermal unit per pound.</summary>
    public static Unit BtuPerPound { get; } = new("Btu/lb", Dimension.HeatPerMass, Btu_ / 0.45359237);

    /// <summary>Kilojoule per cubic metre and kelvin.</summary>
    public static Unit KilojoulePerCubicMetreKelvin { get; } = new("kJ/m3K", Dimension.HeatCapacity, 1000);

    /// <summary>British thermal unit per cubic foot and degree Fahrenheit.</summary>
    public static Unit BtuPerCubicFootFahrenheit { get; } = new("Btu/ft3°F", Dimension.HeatCapacity, Btu_ * 1.8 / (0.3048 * 0.3048 * 0.3048));

    /// <summary>Kilojoule per mole.</summary>
    public static Unit KilojoulePerMole { get; } = new("kJ/mol", Dimension.MolarEnergy, 1000);

    /// <summary>Square metre per kilogram.</summary>
    public static Unit SquareMetrePerKilogram { get; } = new("m2/kg", Dimension.Fineness, 1);

    /// <summary>Every unit, in the order above.</summary>
    public static ImmutableArray<Unit> All { get; } =
    [
        One, Metre, Millimetre, Centimetre, Kilometre, Foot, Inch, Mile, SquareMetre, SquareFoot, SquareYard, CubicMetre, CubicYard,
        CubicFoot, Kilogram, Pound, ShortTon, Tonne, Second, Minute, Hour, Day, Celsius, Fahrenheit, Kelvin, FahrenheitDegree, Newton,
        Kilonewton, PoundOfForce, Kip, KilogramForce, Pascal, Kilopascal, Megapascal, Gigapascal, Psi, KilogramForcePerSquareCentimetre, MegapascalPerMetre, Pci, MilePerHour,
        MetrePerSecond, ShareOfOne, Percent, Degree, Gradian, Radian, KilogramPerCubicMetre, PoundPerCubicFoot, PoundPerCubicYard, PerKelvin,
        PerFahrenheit, VehiclePerHour, PerMetre, PerFoot, PerInch, PerSquareMetre, PerSquareFoot, PerSquareYard, NewtonPerMillimetre,
        PoundForcePerInch, SquareMillimetrePerMetre, SquareCentimetrePerMetre, SquareInchPerFoot,
        WattPerSquareMetreKelvin, BtuPerHourSquareFootFahrenheit, WattPerMetreKelvin, BtuPerHourFootFahrenheit, SquareMetreKelvinPerWatt,
        HourSquareFootFahrenheitPerBtu, WattPerSquareMetre, BtuPerHourSquareFoot, WattPerCubicMetre, KilojoulePerKilogram, BtuPerPound,
        KilojoulePerCubicMetreKelvin, BtuPerCubicFootFahrenheit, KilojoulePerMole, SquareMetrePerKilogram,
    ];

    /// <summary>Finds a unit by its symbol, ignoring case where no two symbols differ by case only.</summary>
    public static bool TryFind(string symbol, [NotNullWhen(true)] out Unit? unit)
    {
        unit = All.FirstOrDefault(u => u.Symbol.Equals(symbol, StringComparison.Ordinal))
            ?? All.FirstOrDefault(u => u.Symbol.Equals(symbol, StringComparison.OrdinalIgnoreCase));
        return unit is not null;
    }
}
