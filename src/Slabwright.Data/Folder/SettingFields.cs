using System.Text.Json;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;
using Slabwright.Core.RuleSets;

namespace Slabwright.Data.Folder;

/// <summary>Short forms for settings that keep their default and its source until the project gives a value of its own.</summary>
internal static class SettingFields
{
    public static readonly (string, Unit)[] Small = [("in", Units.Inch), ("mm", Units.Millimetre)];
    public static readonly (string, Unit)[] Long = [("ft", Units.Foot), ("m", Units.Metre)];
    public static readonly (string, Unit)[] Warmth = [("f", Units.Fahrenheit), ("c", Units.Celsius)];
    public static readonly (string, Unit)[] Expansion = [("per_f", Units.PerFahrenheit), ("per_c", Units.PerKelvin)];
    public static readonly (string, Unit)[] Mass = [("lb", Units.Pound), ("kg", Units.Kilogram), ("t", Units.Tonne)];
    public static readonly (string, Unit)[] Density = [("lb_per_ft3", Units.PoundPerCubicFoot), ("kg_per_m3", Units.KilogramPerCubicMetre)];
    public static readonly (string, Unit)[] Stress = [("psi", Units.Psi), ("kpa", Units.Kilopascal), ("mpa", Units.Megapascal), ("gpa", Units.Gigapascal)];
    public static readonly (string, Unit)[] Force = [("lbf", Units.PoundOfForce), ("kn", Units.Kilonewton)];
    public static readonly (string, Unit)[] Angle = [("deg", Units.Degree)];

    /// <summary>The value of the project where it gives one, else the default with its source.</summary>
    public static Sourced<double> Or(this double? given, Sourced<double> plain) => given is { } value ? new(value, SourceRef.Project) : plain;

    /// <summary>Writes a length, mass, force or the like in the project's own unit; a temperature always in °C, for the offset of °F would cost the last bit.</summary>
    public static void Put(this Utf8JsonWriter json, string name, double? value, (string Ending, Unit Unit)[] units, FolderUnits system)
    {
        if (value is not { } known) return;
        var (ending, unit) = units[units.Length > 1 && (system.System == UnitSystem.Si || units[0].Unit.Offset != 0) ? 1 : 0];
        ProjectFileWriter.Number(json, $"{name}_{ending}", ExactNumber.Write(known, unit));
    }

    /// <summary>Writes a value only where it is the project's own.</summary>
    public static void Put(this Utf8JsonWriter json, string name, Sourced<double> value, (string Ending, Unit Unit)[] units, FolderUnits system)
    {
        if (value.Source == SourceRef.Project) json.Put(name, value.Value, units, system);
    }

    /// <summary>Writes a plain number.</summary>
    public static void Plain(this Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } known) ProjectFileWriter.Number(json, name, ExactNumber.Write(known, Units.One));
    }

    /// <summary>Writes a plain number only where it is the project's own.</summary>
    public static void Plain(this Utf8JsonWriter json, string name, Sourced<double> value)
    {
        if (value.Source == SourceRef.Project) json.Plain(name, value.Value);
    }
}
