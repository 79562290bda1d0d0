using System.Text.Json;
using System.Text.Json.Serialization;
using Slabwright.Core.Concrete.Heat;
using Slabwright.Core.Concrete.Weather;

namespace Slabwright.SystemTests.HeatFlow;

/// <summary>What the stiff integrator answers.</summary>
internal sealed record StiffAnswer(
    [property: JsonPropertyName("seconds")] double Seconds, [property: JsonPropertyName("temperatures")] double[][] Temperatures);

/// <summary>
/// The same cells, weather and physics given to scipy's stiff integrator (Debian python3-scipy) by the script kept in
/// tests/data/heat/stiff_reference.py.
/// </summary>
internal static class StiffReference
{
    /// <summary>Runs a column, or a section where a length is given, and returns ours and theirs at the same times.</summary>
    /// <param name="python">Runs a script with two arguments.</param>
    public static (TemperatureHistory Ours, StiffAnswer Theirs) Compare(SlabColumn column, double? length, HeatRun run, string folder, Action<string, string, string> python)
    {
        var asked = run with { Before = run.Before ?? column.SpinUp(run), KeepFields = true };
        var ours = length is { } l ? new SlabSection { Column = column, Length = l }.Run(asked) : column.Run(asked);
        Directory.CreateDirectory(folder);
        var (input, output) = (Path.Combine(folder, "case.json"), Path.Combine(folder, "answer.json"));
        File.WriteAllText(input, JsonSerializer.Serialize(Case(column, length, asked, ours)));
        var script = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "data", "heat", "stiff_reference.py"));
        python(script, input, output);
        return (ours, JsonSerializer.Deserialize<StiffAnswer>(File.ReadAllText(output))!);
    }

    /// <summary>Greatest difference over all cells and times after placing, K.</summary>
    public static double Greatest(TemperatureHistory ours, StiffAnswer theirs)
    {
        if (theirs.Temperatures.Length != ours.Fields.Length) throw new InvalidOperationException("The answers are not at the same times.");
        return ours.Fields.Zip(theirs.Temperatures).Skip(1).Max(p => p.First.Temperatures.Zip(p.Second, (a, b) => Math.Abs(a - b)).Max());
    }

    /// <summary>Greatest difference hour by hour, with its place, for messages.</summary>
    public static string ByHour(TemperatureHistory ours, StiffAnswer theirs) => string.Join("; ", ours.Fields.Zip(theirs.Temperatures).Skip(1).Select(p =>
    {
        var differences = p.First.Temperatures.Zip(p.Second, (a, b) => Math.Abs(a - b)).ToArray();
        var at = Array.IndexOf(differences, differences.Max());
        return FormattableString.Invariant($"{p.First.Time / 3600:0} h {differences[at]:0.000} K at {ours.Along[at / ours.Depths.Length]:0.000} m, {ours.Depths[at % ours.Depths.Length]:0.000} m down");
    }));

    private static Dictionary<string, object?> Case(SlabColumn column, double? length, HeatRun run, TemperatureHistory ours)
    {
        var heights = Lengths(ours.Depths, 0);
        var widths = length is { } l ? Lengths(ours.Along, -l / 2 - column.Cells.Beside) : [1.0];
        var cells = ours.Along.SelectMany(x => ours.Depths.Select(z => (Fresh: z < column.Thickness && (length is null || Math.Abs(x) < length / 2), Depth: z))).ToArray();
        var surface = column.Surface;
        object Cover(SurfaceCover c) => new Dictionary<string, object>
        {
            ["from"] = c.From, ["resistance"] = c.Resistance, ["absorptivity"] = c.Absorptivity ?? surface.Absorptivity.Value,
            ["emissivity"] = c.Emissivity ?? surface.Emissivity.Value, ["wet"] = c.WetShare,
        };
        var mix = column.Hydration!;
        return new()
        {
            ["widths"] = widths, ["heights"] = heights,
            ["conductivity"] = cells.Select(c => Layer(column, c.Depth)?.Conductivity ?? column.Old.Conductivity.Value),
            ["capacity"] = cells.Select(c => Layer(column, c.Depth) is { } g ? g.Density * g.SpecificHeat : column.Concrete.CapacityAt(1, 20)),
            ["fresh"] = cells.Select(c => c.Fresh), ["surface"] = ours.Along.Select(x => length is null || Math.Abs(x) < length / 2 ? 0 : 1),
            ["temperatures"] = cells.Select(c => c.Fresh ? run.PlacingTemperature : run.Before!.At(c.Depth)), ["deep"] = run.Before!.Deep,
            ["ku"] = column.Concrete.Conductivity.Value, ["follows"] = column.Concrete.ConductivityFollowsHydration.Value,
            ["hydration"] = new Dictionary<string, double>
            {
                ["heat"] = mix.HeatPerVolume, ["degree"] = mix.UltimateDegree, ["time"] = mix.Time, ["slope"] = mix.Slope, ["energy"] = mix.ActivationEnergy, ["reference"] = mix.Reference,
            },
            ["settings"] = new Dictionary<string, double> { ["wind"] = surface.WindFactor.Value, ["evaporation"] = surface.EvaporationWindFactor.Value, ["latent"] = surface.LatentHeat.Value },
            ["covers"] = new[] { column.Covers.Covers.Select(Cover).ToArray(), [Cover(SurfaceCover.Dry())] },
            ["weather"] = run.Weather.Hours.Select(h => new[] { h.Air, h.Humidity, h.Wind, h.Sun, h.Cloud }),
            ["start"] = run.Weather.SecondsTo(run.Placed), ["times"] = ours.Times,
        };
    }

    private static GroundLayer? Layer(SlabColumn column, double depth)
    {
        var top = column.Thickness;
        if (depth < top) return null;
        foreach (var layer in column.Ground)
        {
            top += layer.Thickness;
            if (depth < top) return layer;
        }

        return column.Ground[^1];
    }

    private static double[] Lengths(IReadOnlyList<double> middles, double start)
    {
        var lengths = new double[middles.Count];
        for (var i = 0; i < lengths.Length; i++)
        {
            lengths[i] = 2 * (middles[i] - start);
            start += lengths[i];
        }

        return lengths;
    }
}
