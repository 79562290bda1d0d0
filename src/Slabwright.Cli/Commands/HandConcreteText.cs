using System.Globalization;
using Slabwright.Cli.Output;
using Slabwright.Core.Evidence;
using Slabwright.Core.Handbook;
using Slabwright.Core.Measures;

namespace Slabwright.Cli.Commands;

/// <summary>Prints what stands behind concrete by hand: mixes by absolute volume, and every input with where it comes from.</summary>
internal static class HandConcreteText
{
    private static readonly UnitPair Content = new(Units.PoundPerCubicYard, Units.KilogramPerCubicMetre);

    /// <summary>Mixes by absolute volume with what was filled in.</summary>
    public static void Mixes(Report report, HandConcrete concrete, ConcreteWords words)
    {
        var (unit, volume, whole) = words.System == UnitSystem.Si ? (Content.Si, "litres in 1 m3", 1000.0) : (Content.Customary, "ft3 in 1 yd3", 27.0);
        foreach (var mix in concrete.Mixes)
        {
            var cost = mix.CostPerCubicMetre is null ? "cost not known" : $"{words.Cost(mix.CostPerCubicMetre)} {words.CostUnit}";
            report.Line(string.Create(CultureInfo.InvariantCulture,
                $"{mix.Mix.Id}: {TradeWords.Of(mix.Mix.CementKind)}, water–cement ratio {mix.Mix.WaterCement:0.00}, {Units.PoundPerCubicFoot.Format(mix.Mix.Density, 1)} ({mix.Mix.Density:0} kg/m3), yield {mix.Yield:0.000}, {cost}"));
            var table = new TextTable("part", $"mass, {unit}>", "relative density>", $"{volume}>");
            foreach (var part in mix.Volumes)
            {
                table.Add(part.Name, part.Mass is { } mass ? unit.FromBase(mass).ToString("N0", CultureInfo.InvariantCulture) : "-",
                    part.RelativeDensity is { } d ? d.ToString("0.00", CultureInfo.InvariantCulture) : "-", (whole * part.Volume).ToString("N2", CultureInfo.InvariantCulture));
            }

            table.Add("together", unit.FromBase(mix.Mix.Density).ToString("N0", CultureInfo.InvariantCulture), "", (whole * mix.Volumes.Sum(v => v.Volume)).ToString("N2", CultureInfo.InvariantCulture));
            report.Table(table);
            foreach (var reason in mix.Reasons) ConcretePlanText.Wrapped(report, $"{reason.Rule}: {reason.Sentence} [{reason.Source}]", "  ");
            report.Line();
        }
    }

    /// <summary>Every input as taken.</summary>
    public static void Inputs(Report report, HandConcrete concrete)
    {
        var table = new TextTable("option", "value", "taken from");
        foreach (var input in concrete.Inputs) table.Add("--" + input.Key, Short(input.Value), input.Source?.ToString() ?? "given");
        report.Table(table);
        report.Line();
    }

    private static string Short(string value) => value.Length <= 60 ? value : value[..57] + "...";
}
