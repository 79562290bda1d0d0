using System.Globalization;
using System.Text.RegularExpressions;
using Slabwright.Core.Measures;

namespace Slabwright.Sheets.Words;

/// <summary>
/// The units a project is printed in, and how its measures are written. Values come in metres and square metres, and leave as text in
/// feet, inches and square yards or in metres, millimetres and square metres.
/// </summary>
public sealed partial class JobUnits
{
    private JobUnits(UnitSystem system) => System = system;

    /// <summary>The unit system.</summary>
    public UnitSystem System { get; }

    /// <summary>Unit of lengths along the road.</summary>
    public Unit Length => IsUs ? Units.Foot : Units.Metre;

    /// <summary>Unit of thickness and depth.</summary>
    public Unit Thickness => IsUs ? Units.Inch : Units.Millimetre;

    /// <summary>Unit of area.</summary>
    public Unit Area => IsUs ? Units.SquareYard : Units.SquareMetre;

    /// <summary>Unit of volume.</summary>
    public Unit Volume => IsUs ? Units.CubicYard : Units.CubicMetre;

    /// <summary>Unit of distances on the key plan.</summary>
    public Unit Distance => IsUs ? Units.Mile : Units.Kilometre;

    /// <summary>Unit of mass of lift pieces.</summary>
    public Unit Mass => IsUs ? Units.ShortTon : Units.Tonne;

    /// <summary>Unit of stress.</summary>
    public Unit Stress => IsUs ? Units.Psi : Units.Megapascal;

    /// <summary>Unit of pulls in slings and pins.</summary>
    public Unit Force => IsUs ? Units.Kip : Units.Kilonewton;

    /// <summary>Unit of temperature.</summary>
    public Unit Temperature => IsUs ? Units.Fahrenheit : Units.Celsius;

    /// <summary>Words for the footer of the sheets.</summary>
    public string Name => IsUs ? "US customary (ft, in, yd²)" : "SI (m, mm, m²)";

    private bool IsUs => System == UnitSystem.UsCustomary;

    private int LengthDecimals => IsUs ? 1 : 2;

    /// <summary>The units of a system.</summary>
    public static JobUnits Of(UnitSystem system) => new(system);

    /// <summary>A number with thousands separators and fixed decimals.</summary>
    public static string Number(double value, int decimals = 0)
    {
        var text = value.ToString("N" + decimals, CultureInfo.InvariantCulture);
        return text.StartsWith('-') && text.All(c => c is '-' or '0' or '.' or ',') ? text[1..] : text;
    }

    /// <summary>A number for a list inside a cell: no separators, no zeros at the end.</summary>
    public static string Plain(double value, int decimals) => Math.Round(value, decimals, MidpointRounding.AwayFromZero).ToString("0." + new string('#', decimals), CultureInfo.InvariantCulture);

    /// <summary>A unit symbol as printed on paper, with raised powers.</summary>
    public static string Symbol(Unit unit) => unit.Symbol.Replace("2", "²", StringComparison.Ordinal).Replace("3", "³", StringComparison.Ordinal);

    /// <summary>A text with the powers of its units raised: <c>12 yd2</c> becomes <c>12 yd²</c>.</summary>
    public static string Raised(string text) => PowerPattern().Replace(text, m => m.Groups[1].Value + (m.Groups[2].Value == "2" ? "²" : "³"));

    [GeneratedRegex(@"\b(yd|ft|m|in)([23])\b")]
    private static partial Regex PowerPattern();

    /// <summary>Length along the road without its unit.</summary>
    public string LengthNumber(double metres) => Number(Length.FromBase(metres), LengthDecimals);

    /// <summary>Length along the road with its unit.</summary>
    public string LengthText(double metres) => $"{LengthNumber(metres)} {Length.Symbol}";

    /// <summary>Long length in whole feet or metres, with its unit.</summary>
    public string WholeLength(double metres) => $"{Number(Length.FromBase(metres))} {Length.Symbol}";

    /// <summary>Distance in miles or kilometres, with its unit.</summary>
    public string DistanceText(double metres) => $"{Number(Distance.FromBase(metres), 2)} {Distance.Symbol}";

    /// <summary>Thickness without its unit.</summary>
    public string ThicknessNumber(double metres) => Number(Thickness.FromBase(metres), IsUs ? 1 : 0);

    /// <summary>Thickness with its unit.</summary>
    public string ThicknessText(double metres) => $"{ThicknessNumber(metres)} {Thickness.Symbol}";

    /// <summary>Small measure such as a crack width, with its unit.</summary>
    public string SmallText(double metres) => IsUs
        ? $"{Number(Units.Inch.FromBase(metres), 2)} in"
        : $"{Number(Units.Millimetre.FromBase(metres), 1)} mm";

    /// <summary>Area without its unit.</summary>
    public string AreaNumber(double squareMetres) => Number(Area.FromBase(squareMetres), 1);

    /// <summary>Area with its unit.</summary>
    public string AreaText(double squareMetres) => $"{AreaNumber(squareMetres)} {Symbol(Area)}";

    /// <summary>Stress without its unit.</summary>
    public string StressNumber(double pascals) => Number(Stress.FromBase(pascals), IsUs ? 0 : 1);

    /// <summary>Stress with its unit.</summary>
    public string StressText(double pascals) => $"{StressNumber(pascals)} {Stress.Symbol}";

    /// <summary>Pull without its unit.</summary>
    public string ForceNumber(double newtons) => Number(Force.FromBase(newtons), 1);

    /// <summary>Pull with its unit.</summary>
    public string ForceText(double newtons) => $"{ForceNumber(newtons)} {Force.Symbol}";

    /// <summary>Temperature in whole degrees with its unit.</summary>
    public string TemperatureText(double celsius) => $"{Number(Temperature.FromBase(celsius)).Replace('-', '−')} {Temperature.Symbol}";

    /// <summary>A movement or a faulting without its unit: thousandths of an inch or hundredths of a millimetre.</summary>
    public string MovementNumber(double metres) => Number(Thickness.FromBase(metres), IsUs ? 3 : 2);

    /// <summary>A movement or a faulting with its unit.</summary>
    public string MovementText(double metres) => $"{MovementNumber(metres)} {Thickness.Symbol}";

    /// <summary>A value of any kind in the project's unit of a pair, to four figures, with its unit.</summary>
    public string PairText(double value, UnitPair pair)
    {
        var unit = pair.In(System);
        var number = unit.FromBase(value);
        var size = Math.Abs(number);
        var text = size is 0 or >= 1000 ? Number(number) : size >= 0.001 ? number.ToString("G4", CultureInfo.InvariantCulture) : number.ToString("0.##E+0", CultureInfo.InvariantCulture);
        return unit.Symbol.Length == 0 ? text : $"{text} {Symbol(unit)}";
    }

    /// <summary>Mass of a lift piece with its unit.</summary>
    public string MassText(double kilograms) => $"{Number(Mass.FromBase(kilograms), 1)} {Mass.Symbol}";

    /// <summary>
    /// A distance as a crew tapes it: feet and whole inches (<c>3 ft 6 in</c>) or metres with two decimals. The value is rounded to the
    /// nearest inch or centimetre.
    /// </summary>
    public string Taped(double metres)
    {
        if (!IsUs) return $"{Number(Math.Abs(metres), 2)} m";
        var inches = (long)Math.Round(Units.Inch.FromBase(Math.Abs(metres)), MidpointRounding.AwayFromZero);
        return $"{(inches / 12).ToString(CultureInfo.InvariantCulture)} ft {(inches % 12).ToString(CultureInfo.InvariantCulture)} in";
    }

    /// <summary>
    /// A measure of a detail drawing: inches with sixteenths below two feet (<c>1 5/8 in</c>), above feet and inches with eighths
    /// (<c>11 ft 6 1/4 in</c>); or whole millimetres, below 10 mm with one decimal.
    /// </summary>
    public string Detail(double metres)
    {
        if (!IsUs) return $"{Number(Units.Millimetre.FromBase(metres), Math.Abs(metres) < 0.00995 ? 1 : 0)} mm";
        return Math.Abs(metres) < 2 * 0.3048 - 1e-6 ? $"{Inches(metres, 16)} in" : FeetAndInches(metres);
    }

    /// <summary>A distance from an edge, always in feet and inches (<c>1 ft 0 in</c>), or in millimetres.</summary>
    public string Running(double metres) => IsUs ? FeetAndInches(metres) : Detail(metres);

    private static string FeetAndInches(double metres)
    {
        var eighths = (long)Math.Round(Units.Inch.FromBase(metres) * 8, MidpointRounding.AwayFromZero);
        return $"{(eighths / 96).ToString(CultureInfo.InvariantCulture)} ft {Inches(eighths % 96 / 8.0 * 0.0254, 8)} in";
    }

    /// <summary>Inches with a reduced fraction: <c>1 5/8</c>.</summary>
    private static string Inches(double metres, int parts)
    {
        var count = (long)Math.Round(Units.Inch.FromBase(metres) * parts, MidpointRounding.AwayFromZero);
        var (whole, over) = (count / parts, count % parts);
        while (over != 0 && over % 2 == 0) (over, parts) = (over / 2, parts / 2);
        var fraction = over == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $"{over}/{parts}");
        return whole == 0 && over != 0 ? fraction : $"{whole.ToString(CultureInfo.InvariantCulture)} {fraction}".TrimEnd();
    }

    /// <summary>Money with the currency in front, in whole units.</summary>
    public static string Money(string currency, decimal amount) =>
        $"{currency} {amount.ToString("N0", CultureInfo.InvariantCulture)}".TrimStart();

    /// <summary>Money without currency, with cents.</summary>
    public static string Cents(decimal amount) => amount.ToString("N2", CultureInfo.InvariantCulture);

    /// <summary>A share as a percentage with one decimal.</summary>
    public static string Percent(double share) => $"{Number(share * 100, 1)} %";
}
