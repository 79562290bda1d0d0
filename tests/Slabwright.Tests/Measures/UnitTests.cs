using CsCheck;
using Slabwright.Core.Measures;
using UnitsNet;
using Unit = Slabwright.Core.Measures.Unit;

namespace Slabwright.Tests.Measures;

/// <summary>Our units against UnitsNet 5.75 (general-purpose units library), and the exact definitions of NIST SP 811 App. B.8.</summary>
public sealed class UnitTests
{
    public static TheoryData<string, double> AgainstUnitsNet() => new()
    {
        { "ft", Length.FromFeet(1).Meters },
        { "in", Length.FromInches(1).Meters },
        { "mi", Length.FromMiles(1).Meters },
        { "mm", Length.FromMillimeters(1).Meters },
        { "cm", Length.FromCentimeters(1).Meters },
        { "km", Length.FromKilometers(1).Meters },
        { "ft2", Area.FromSquareFeet(1).SquareMeters },
        { "yd2", Area.FromSquareYards(1).SquareMeters },
        { "yd3", Volume.FromCubicYards(1).CubicMeters },
        { "ft3", Volume.FromCubicFeet(1).CubicMeters },
        { "lb", Mass.FromPounds(1).Kilograms },
        { "ton", Mass.FromShortTons(1).Kilograms },
        { "t", Mass.FromTonnes(1).Kilograms },
        { "lbf", Force.FromPoundsForce(1).Newtons },
        { "kip", Force.FromKilopoundsForce(1).Newtons },
        { "kgf", Force.FromKilogramsForce(1).Newtons },
        { "kgf/cm2", Pressure.FromKilogramsForcePerSquareCentimeter(1).Pascals },
        { "psi", Pressure.FromPoundsForcePerSquareInch(1).Pascals },
        { "MPa", Pressure.FromMegapascals(1).Pascals },
        { "GPa", Pressure.FromGigapascals(1).Pascals },
        { "mph", Speed.FromMilesPerHour(1).MetersPerSecond },
        { "deg", Angle.FromDegrees(1).Radians },
        { "gon", Angle.FromGradians(1).Radians },
        { "lb/ft3", Density.FromPoundsPerCubicFoot(1).KilogramsPerCubicMeter },
        { "Δ°F", TemperatureDelta.FromDegreesFahrenheit(1).Kelvins },
        { "1/°F", CoefficientOfThermalExpansion.FromPerDegreeFahrenheit(1).PerKelvin },
        { "h", Duration.FromHours(1).Seconds },
        { "d", Duration.FromDays(1).Seconds },
        { "Btu/hft2°F", HeatTransferCoefficient.FromBtusPerHourSquareFootDegreeFahrenheit(1).WattsPerSquareMeterKelvin },
        { "Btu/hft°F", ThermalConductivity.FromBtusPerHourFootFahrenheit(1).WattsPerMeterKelvin },
        { "Btu/hft2", HeatFlux.FromBtusPerHourSquareFoot(1).WattsPerSquareMeter },
        { "kJ/kg", SpecificEnergy.FromKilojoulesPerKilogram(1).JoulesPerKilogram },
        { "kJ/mol", MolarEnergy.FromKilojoulesPerMole(1).JoulesPerMole },
    };

    [Theory]
    [MemberData(nameof(AgainstUnitsNet))]
    public void One_of_each_unit_agrees_with_UnitsNet(string symbol, double expected)
    {
        Assert.True(Units.TryFind(symbol, out var unit));
        Assert.Equal(expected, unit.ToBase(1), Math.Abs(expected) * 1e-8); // UnitsNet rounds lb/ft3 in the ninth digit
    }

    [Theory]
    [InlineData(32, 0)]
    [InlineData(212, 100)]
    [InlineData(-40, -40)]
    [InlineData(70, 21.1111111)]
    public void Fahrenheit_agrees_with_Celsius(double fahrenheit, double celsius) =>
        Assert.Equal(celsius, Units.Fahrenheit.ToBase(fahrenheit), 1e-6);

    [Fact]
    public void Pound_per_cubic_inch_is_psi_per_inch() =>
        Assert.Equal(0.2714471, Units.MegapascalPerMetre.FromBase(Units.Pci.ToBase(1)), 1e-6); // common conversion: 1 pci = 0.27145 MPa/m

    [Fact]
    public void A_Btu_per_pound_is_2326_joules_per_kilogram_by_definition() =>
        Assert.Equal(2326, Units.BtuPerPound.ToBase(1), 1e-9); // UnitsNet rounds its Btu in the eighth digit

    [Fact]
    public void Every_unit_comes_back_to_itself() =>
        Gen.Int[0, Units.All.Length - 1].Select(i => Units.All[i]).Select(Gen.Double[-1e6, 1e6])
            .Sample((Unit unit, double value) => Math.Abs(unit.FromBase(unit.ToBase(value)) - value) <= 1e-9 * Math.Max(1, Math.Abs(value)));

    [Fact]
    public void Symbols_are_unique() =>
        Assert.Equal(Units.All.Length, Units.All.Select(u => u.Symbol).Distinct(StringComparer.Ordinal).Count());

    [Fact]
    public void A_foot_an_inch_and_a_millimetre_are_whole_ticks()
    {
        Assert.Equal(Ticks.PerFoot, Ticks.FromMetres(0.3048));
        Assert.Equal(Ticks.PerInch, Ticks.FromMetres(0.0254));
        Assert.Equal(10, Ticks.FromMetres(0.001));
        Assert.Equal(6.5, Ticks.ToFeet(Ticks.FromFeet(6.5)));
    }
}
