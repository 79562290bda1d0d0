using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Pavement;

namespace Slabwright.Core.Joints.Design;

/// <summary>Trucks, axle classes and equivalent axles of one lane.</summary>
/// <param name="Trucks">Trucks a day in the first year; from equivalent axles where the road gives no traffic.</param>
/// <param name="Axles">Axle classes, passes a day.</param>
/// <param name="Equivalent">18-kip equivalent axles a day.</param>
/// <param name="Growth">Growth a year, share.</param>
internal sealed record LaneTraffic(double Trucks, ImmutableArray<AxleClass> Axles, double Equivalent, double Growth)
{
    private const double Terminal = 2.5;

    /// <summary>
    /// The project's own classes as given; otherwise a common truck times trucks in the lane. Where equivalent axles or a truck factor are
    /// given too, passes are scaled so that the classes carry them.
    /// </summary>
    public static LaneTraffic Of(Road road, Lane lane, double thickness, JointInputs inputs, List<Finding> findings)
    {
        var settings = inputs.Settings;
        var share = LaneShare(road, lane, inputs);
        var trucks = TrucksOf(road, settings, inputs, share, findings);
        var axles = settings.Axles.IsEmpty
            ? [.. JointDefaults.PerTruck.Select(a => a with { PerDay = a.PerDay * trucks })]
            : settings.Axles;
        var carried = axles.Sum(a => a.PerDay * EquivalentAxles.Factor(a.Load, a.Axles, thickness, Terminal));
        var wanted = settings.EquivalentAxlesPerDay ?? (settings.TruckFactor is { } factor ? factor * trucks : carried);
        if (carried > 0 && wanted != carried) axles = [.. axles.Select(a => a with { PerDay = a.PerDay * wanted / carried })];
        return new(trucks, axles, wanted, road.Traffic?.GrowthPerYear ?? 0);
    }

    private static double TrucksOf(Road road, JointSettings settings, JointInputs inputs, double share, List<Finding> findings)
    {
        if (road.Traffic is { } traffic) return traffic.TrucksPerDay * share;
        if (settings.EquivalentAxlesPerDay is { } given) return given / (settings.TruckFactor ?? CommonTruckFactor);
        if (settings.Axles.Length > 0) return settings.Axles.Sum(a => a.PerDay) / JointDefaults.PerTruck.Sum(a => a.PerDay);
        findings.Add(new("JNT-002", FindingLevel.Warning, "The project gives no traffic, so the joints are designed for an assumed number of trucks.",
            new("project.json", null, "road.traffic"), JointWords.Count(JointDefaults.TrucksPerDay.Value) + " a day in each lane",
            "Give road.traffic, or joints.axles, or joints.equivalent_axles_per_day."));
        return inputs.Use(JointDefaults.TrucksPerDay);
    }

    private static double CommonTruckFactor =>
        JointDefaults.PerTruck.Sum(a => a.PerDay * EquivalentAxles.Factor(a.Load, a.Axles, 10 * 0.0254, Terminal));

    /// <summary>
    /// The outer through lane takes the design lane's share by NCHRP 277; the others share the rest. Lanes that run over less than half the
    /// road count with the others.
    /// </summary>
    private static double LaneShare(Road road, Lane lane, JointInputs inputs)
    {
        if (inputs.Settings.LaneShare is { } given) return given;
        var through = road.Lanes.Where(l => l.To - l.From >= road.Length / 2).ToArray();
        if (through.Length < 2) return inputs.Use(JointDefaults.LaneShare);
        if (road.Traffic is not { Aadt: > 0 } traffic) return 1;
        var design = Math.Clamp(EquivalentAxles.DesignLaneShare(traffic.Aadt, through.Length), 1.0 / through.Length, 1);
        return lane.Number == through[^1].Number ? design : (1 - design) / (through.Length - 1);
    }
}
