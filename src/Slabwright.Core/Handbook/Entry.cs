using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;

namespace Slabwright.Core.Handbook;

/// <summary>Short forms for writing handbook entries: inputs with their units and ranges, outputs, examples, sources.</summary>
internal static class Entry
{
    public static UnitPair Plain { get; } = new(Units.One);

    public static UnitPair Long { get; } = new(Units.Foot, Units.Metre);

    public static UnitPair Short { get; } = new(Units.Inch, Units.Millimetre);

    public static UnitPair Area { get; } = new(Units.SquareYard, Units.SquareMetre);

    public static UnitPair Force { get; } = new(Units.PoundOfForce, Units.Kilonewton);

    public static UnitPair Kips { get; } = new(Units.Kip, Units.Kilonewton);

    public static UnitPair Spring { get; } = new(Units.PoundForcePerInch, Units.NewtonPerMillimetre);

    public static UnitPair Mass { get; } = new(Units.Pound, Units.Kilogram);

    public static UnitPair Stress { get; } = new(Units.Psi, Units.Megapascal);

    public static UnitPair Reaction { get; } = new(Units.Pci, Units.MegapascalPerMetre);

    public static UnitPair Density { get; } = new(Units.PoundPerCubicFoot, Units.KilogramPerCubicMetre);

    public static UnitPair Share { get; } = new(Units.Percent);

    public static UnitPair Difference { get; } = new(Units.FahrenheitDegree, Units.Kelvin);

    public static UnitPair Temperature { get; } = new(Units.Fahrenheit, Units.Celsius);

    public static UnitPair Expansion { get; } = new(Units.PerFahrenheit, Units.PerKelvin);

    public static UnitPair Flow { get; } = new(Units.VehiclePerHour);

    public static UnitPair Steel { get; } = new(Units.SquareInchPerFoot, Units.SquareMillimetrePerMetre);

    public static UnitPair PerLong { get; } = new(Units.PerFoot, Units.PerMetre);

    public static UnitPair Hours { get; } = new(Units.Hour);

    public static UnitPair Speed { get; } = new(Units.MilePerHour, Units.MetrePerSecond);

    public static UnitPair HeatTransfer { get; } = new(Units.BtuPerHourSquareFootFahrenheit, Units.WattPerSquareMetreKelvin);

    public static UnitPair Conductivity { get; } = new(Units.BtuPerHourFootFahrenheit, Units.WattPerMetreKelvin);

    public static UnitPair Insulation { get; } = new(Units.HourSquareFootFahrenheitPerBtu, Units.SquareMetreKelvinPerWatt);

    public static UnitPair HeatFlux { get; } = new(Units.BtuPerHourSquareFoot, Units.WattPerSquareMetre);

    public static UnitPair HeatOfMass { get; } = new(Units.BtuPerPound, Units.KilojoulePerKilogram);

    public static UnitPair HeatCapacity { get; } = new(Units.BtuPerCubicFootFahrenheit, Units.KilojoulePerCubicMetreKelvin);

    public static UnitPair Molar { get; } = new(Units.KilojoulePerMole);

    /// <summary>A length read in feet or metres.</summary>
    public static HandbookInput Length(string key, string symbol, string name, double most = 1000) => new(key, symbol, name, Long, 0.001, most);

    /// <summary>A thickness, width or diameter read in inches or millimetres.</summary>
    public static HandbookInput Small(string key, string symbol, string name, double least = 0.0001, double most = 5) =>
        new(key, symbol, name, Short, least, most);

    /// <summary>A load.</summary>
    public static HandbookInput Load(string key, string symbol, string name) => new(key, symbol, name, Force, 0, 1e7);

    /// <summary>A modulus or strength.</summary>
    public static HandbookInput Strength(string key, string symbol, string name, double most = 3e11) => new(key, symbol, name, Stress, 1, most);

    /// <summary>A plain number.</summary>
    public static HandbookInput Number(string key, string symbol, string name, double least, double most) =>
        new(key, symbol, name, Plain, least, most);

    /// <summary>A count.</summary>
    public static HandbookInput Whole(string key, string symbol, string name, int least, int most) =>
        new(key, symbol, name, Plain, least, most) { Whole = true };

    /// <summary>A share, read in percent.</summary>
    public static HandbookInput Part(string key, string symbol, string name, double least = 0, double most = 1) =>
        new(key, symbol, name, Share, least, most);

    public static HandbookInput Modulus { get; } = Strength("modulus", "E", "Young's modulus of concrete");

    public static HandbookInput Thickness { get; } = Small("thickness", "h", "Slab thickness", 0.05, 1);

    public static HandbookInput Poisson { get; } = Number("poisson", "µ", "Poisson's ratio", 0, 0.5) with { Default = 0.15 };

    public static HandbookInput Springs { get; } = new("reaction", "k", "Modulus of foundation reaction", Reaction, 1e6, 1e9);

    public static HandbookInput Alpha { get; } = new("expansion", "α", "Thermal expansion of concrete", Expansion, 1e-6, 3e-5);

    public static HandbookInput ConcreteDensity { get; } =
        new("density", "ρ", "Density of concrete", Density, 500, 5000) { Default = 150 * Units.PoundPerCubicFoot.Factor };

    public static HandbookInput FrictionFactor { get; } = Number("friction", "f", "Friction coefficient", 0.1, 20) with { Default = 1.5 };

    /// <summary>A source whose figure was read.</summary>
    public static SourceRef Seen(string tag, string place = "") => new(tag, place, SourceStatus.Verified);

    /// <summary>A source known from memory.</summary>
    public static SourceRef Memory(string tag, string place = "") => new(tag, place, SourceStatus.FromMemory);

    /// <summary>An answer worked by hand from the statement given.</summary>
    public static SourceRef ByHand { get; } = new("worked by hand", "", SourceStatus.CommonPractice);

    /// <summary>An example; inputs alternate key and text.</summary>
    public static WorkedExample Example(
        string title, string[] inputs, ImmutableArray<ExpectedValue> expected, SourceRef source, string remark = "") =>
        new(title, [.. inputs.Chunk(2).Select(p => (p[0], p[1]))], expected, source, remark);
}
