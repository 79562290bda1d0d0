using System.Globalization;
using Slabwright.Core.Evidence;
using Slabwright.Core.Joints.Design;
using Slabwright.Core.Measures;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.Joints;

/// <summary>One condition a joint is designed for.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Value">Value with its unit.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record ConditionRow(string Name, string Value, string Source);

/// <summary>The conditions of a lane's joints as rows, the same on sheets and screens.</summary>
public static class ConditionRows
{
    /// <summary>Every condition in its order.</summary>
    /// <param name="c">The conditions.</param> <param name="findings">Findings of the step: they note every default it took.</param>
    /// <param name="units">Units of the values.</param>
    public static IEnumerable<ConditionRow> Of(JointConditions c, IReadOnlyList<Finding> findings, JobUnits units)
    {
        UnitPair reaction = new(Units.Pci, Units.MegapascalPerMetre), expansion = new(Units.PerFahrenheit, Units.PerKelvin), plain = new(Units.One);
        UnitPair stress = new(Units.Psi, Units.Megapascal);
        const string road = "road";
        string SourceOf(params ReadOnlySpan<string> fields) => Source(findings, fields);
        yield return new("Slab thickness", units.ThicknessText(c.Thickness), road);
        yield return new("Lane width", units.LengthText(c.LaneWidth), road);
        yield return new("Old slab beside the joint", units.LengthText(c.OldSlab), road);
        yield return new("Repair beside the joint", units.LengthText(c.Repair), "rule set: least repair");
        yield return new("Edge on the wheels’ side", SheetWords.Of(c.OuterEdge), road);
        yield return new("Base", TradeWords.Of(c.Base), road);
        yield return new("Modulus of reaction k", units.PairText(c.Reaction, reaction), SourceOf("reaction"));
        yield return new("Modulus of concrete", units.PairText(c.Modulus, stress), SourceOf("modulus"));
        yield return new("Poisson’s ratio", units.PairText(c.Poisson, plain), SourceOf("poisson"));
        yield return new("Strength of concrete", units.StressText(c.Strength), SourceOf("strength"));
        yield return new("Modulus of rupture", units.StressText(c.Rupture), SourceOf("rupture"));
        yield return new("Thermal expansion", units.PairText(c.Expansion, expansion), SourceOf("expansion"));
        yield return new("Modulus of dowel support", units.PairText(c.DowelSupport, reaction), SourceOf("dowel_support"));
        yield return new("Modulus of steel", units.PairText(c.SteelModulus, stress), SourceOf("steel_modulus"));
        yield return new("Slab, coldest to hottest", $"{units.TemperatureText(c.Temperatures.Coldest)} to {units.TemperatureText(c.Temperatures.Hottest)}", string.Join("; ", new[] { SourceOf("coldest"), SourceOf("hottest") }.Distinct()));
        yield return new("Joint when open", units.MovementText(c.JointWidth), "worked out from movement");
        yield return new("Drainage coefficient", units.PairText(c.Drainage, plain), SourceOf("drainage"));
        yield return new("Equivalent axles a day", JobUnits.Number(c.EquivalentAxlesPerDay), SourceOf("equivalent_axles_per_day", "axles"));
        yield return new("Axle classes", AxleWords(c, units), SourceOf("axles"));
        yield return new("Growth of traffic", JobUnits.Percent(c.Growth) + " a year", road);
        yield return new("Design years", c.DesignYears.ToString("0.#", CultureInfo.InvariantCulture), SourceOf("design_years"));
    }

    private static string AxleWords(JointConditions c, JobUnits units) => string.Join("; ", c.Traffic.Select(a =>
        $"{(a.Axles switch { 1 => "single", 2 => "tandem", _ => "tridem" })} {units.ForceText(a.Load)}, {JobUnits.Number(a.PerDay)} a day"));

    /// <summary>Where a value came from: the step notes every default it took, and all else is the project's.</summary>
    private static string Source(IReadOnlyList<Finding> findings, ReadOnlySpan<string> fields)
    {
        foreach (var field in fields)
        {
            var note = findings.FirstOrDefault(f => f.Place.Field == "joints." + field && f.Level == FindingLevel.Note);
            if (note is not null) return note.Source ?? SourceRef.CommonPractice.ToString();
        }

        return "project";
    }
}
