using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Joints.Removal;
using Slabwright.Core.Pavement;
using Slabwright.Core.Prices;
using Slabwright.Core.RuleSets;
using Slabwright.Core.Treatments;

namespace Slabwright.Core.Quantities;

/// <summary>
/// The take-off: one line for each repair or surface work and pay item, unrounded, with its working. The rules are in
/// <see cref="MeasurementRules"/>. Each lane's repair is measured on its own, so a ramp patched in two halves is two repairs
/// (Iowa DOT Construction Manual 9.70).
/// </summary>
public static class TakeOff
{
    /// <summary>Measures a plan.</summary>
    /// <param name="road">The road; fixes the order of lanes from the left, on which the shared-edge rule rests.</param>
    /// <param name="repairs">Repairs.</param>
    /// <param name="surfaceWorks">Partial-depth repairs and sealing.</param>
    /// <param name="prices">Pay items; every item of the list is measured by its role.</param>
    /// <param name="joints">Joint limits; give the tie bar spacing.</param>
    /// <param name="settings">Nights and loose base.</param>
    /// <returns>Lines by repair, then by surface work, then for the job; within each in bid order.</returns>
    public static ImmutableArray<TakeOffLine> Measure(
        Road road,
        IReadOnlyList<Repair> repairs,
        IReadOnlyList<SurfaceWork> surfaceWorks,
        PriceList prices,
        JointLimits joints,
        MeasurementSettings settings)
    {
        var lines = ImmutableArray.CreateBuilder<TakeOffLine>();
        foreach (var repair in repairs.OrderBy(r => r.From).ThenBy(r => LanePlace(road, r.Lane)))
        {
            AddRepair(lines, road, repair, prices, joints, settings);
        }

        foreach (var work in surfaceWorks) AddSurfaceWork(lines, work, prices);
        AddJobWide(lines, prices, settings);
        return lines.ToImmutable();
    }

    private static int LanePlace(Road road, int lane)
    {
        for (var i = 0; i < road.Lanes.Length; i++)
        {
            if (road.Lanes[i].Number == lane) return i;
        }

        return int.MaxValue;
    }

    private static void AddRepair(
        ImmutableArray<TakeOffLine>.Builder lines, Road road, Repair repair, PriceList prices, JointLimits joints, MeasurementSettings settings)
    {
        foreach (var item in prices.Items)
        {
            var units = PayUnits.For(item, prices);
            if (OfRepair(item.Role, road, repair, units, joints, settings) is { } measured)
            {
                lines.Add(Line(item, repair.Id, measured, units, repair.Area));
            }
        }
    }

    private static Measurement? OfRepair(
        PayRole role, Road road, Repair repair, PayUnits units, JointLimits joints, MeasurementSettings settings) =>
        role switch
        {
            PayRole.FullDepthArea => AreaMeasure.FullDepth(repair, units),
            PayRole.RepairSetUp => new Measurement(1, "1"),
            PayRole.TransverseSawCut => CrossMeasure.BoundaryCuts(repair, units),
            PayRole.LongitudinalSawCut => FaceMeasure.FacingConcrete(repair, units, tellTieBars: true),
            PayRole.InternalSawCut => CrossMeasure.InternalCuts(repair, LiftLayout.Of(road, repair, settings.Lifting), units),
            PayRole.DrilledDowel => BarMeasure.Drilled(repair),
            PayRole.BasketDowel => BarMeasure.Baskets(repair),
            PayRole.TieBar => BarMeasure.Ties(repair, joints.TieBarSpacing?.Value ?? BarMeasure.FallbackTieSpacing, units),
            PayRole.IsolationBoard => FaceMeasure.With(repair, units, f => f == LongitudinalFace.Isolated),
            PayRole.TransverseSeal => CrossMeasure.Seals(repair, units),
            PayRole.LongitudinalSeal => FaceMeasure.FacingConcrete(repair, units, tellTieBars: false),
            PayRole.ShoulderStrip => FaceMeasure.With(repair, units, f => f == LongitudinalFace.FormedAgainstShoulder),
            PayRole.EdgeForm => FaceMeasure.With(repair, units, FaceMeasure.Formed),
            PayRole.BaseConcrete => AreaMeasure.BaseConcrete(repair, settings.LooseBaseShare, settings.LooseBaseDepth, units),
            _ => null,
        };

    private static void AddSurfaceWork(ImmutableArray<TakeOffLine>.Builder lines, SurfaceWork work, PriceList prices)
    {
        foreach (var item in prices.Items)
        {
            var units = PayUnits.For(item, prices);
            Measurement? measured = (item.Role, work.Treatment) switch
            {
                (PayRole.PartialDepthArea, Treatment.PartialDepthRepair) => new(work.Area, SquareWorking(work, units)),
                (PayRole.SealLength, Treatment.Seal) => new(work.Length, units.Of(work.Length) + units.Divisor()),
                _ => null,
            };
            if (measured is { Base: > 0 } found) lines.Add(Line(item, work.Id, found, units, work.Area));
        }
    }

    /// <summary>Surface works carry their area, not its sides, so the working shows the area in square length units.</summary>
    private static string SquareWorking(SurfaceWork work, PayUnits units) =>
        PayUnits.Plain(work.Area / (units.Length.Factor * units.Length.Factor)) + " " + units.Length.Symbol + "2" + units.Divisor();

    private static void AddJobWide(ImmutableArray<TakeOffLine>.Builder lines, PriceList prices, MeasurementSettings settings)
    {
        foreach (var item in prices.Items)
        {
            var units = PayUnits.For(item, prices);
            if (item.Role == PayRole.LumpSum) lines.Add(Line(item, "", new Measurement(1, "1"), units, 0));
            if (item.Role == PayRole.TrafficControlNight && settings.Nights is { } nights && nights > 0)
            {
                lines.Add(Line(item, "", new Measurement(nights, nights.ToString(CultureInfo.InvariantCulture), "nights"), units, 0));
            }
        }
    }

    private static TakeOffLine Line(PayItem item, string workId, Measurement measured, PayUnits units, double area)
    {
        var quantity = item.Unit.FromBase(measured.Base);
        var working = $"{measured.Working} = {units.Quantity(quantity)}";
        if (measured.Remark.Length > 0) working += "; " + measured.Remark;
        if (quantity < item.LeastPay && workId.Length > 0)
        {
            quantity = item.LeastPay;
            working += $"; paid as {units.Quantity(quantity)}, the least";
        }

        return new TakeOffLine(item.Code, workId, quantity, working, item.PriceFor(area)) { SizeClass = item.SizeClassFor(area) };
    }
}
