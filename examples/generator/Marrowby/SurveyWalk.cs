using System.Globalization;
using Slabwright.Core.Pavement;

namespace Slabwright.Examples.Marrowby;

/// <summary>
/// Walks the lanes and finds what such a road wears: a severe stretch where water stands under lane 2, joints with durability cracking
/// in the reinforced miles, washed-out base in a cut, slow lane worse than fast lane, and scattered wear elsewhere.
/// </summary>
internal sealed partial class SurveyWalk(Road road)
{
    private const double Foot = 0.3048;

    private readonly Dice _dice = new(20_250_414);
    private readonly List<SurveyRow> _rows = [];
    private readonly HashSet<(int Lane, int Slab, string Type)> _taken = [];

    /// <summary>A stretch that draws distresses.</summary>
    private sealed record Spot(int Lane, double From, double To);

    private static readonly Spot Severe = new(2, 3_050, 3_650);
    private static readonly Spot DurabilityTwo = new(2, 7_500, 9_600);
    private static readonly Spot DurabilityOne = new(1, 7_900, 9_300);
    private static readonly Spot Washed = new(2, 11_900, 12_700);
    private static readonly Spot RampLane = new(3, 16_250, 17_350);
    private static readonly Spot BeforeBridge = new(2, 20_300, 21_250);
    private static readonly Spot Overlay = new(2, 23_820, 24_620);
    private static readonly Spot OverlayOne = new(1, 23_820, 24_620);
    private static readonly Spot All = new(2, 0, 26_400);
    private static readonly Spot AllOne = new(1, 0, 26_400);

    /// <summary>All distresses in order along the road, numbered.</summary>
    public IReadOnlyList<SurveyRow> Walk()
    {
        Joints();
        Cracks();
        Surface();
        Edges();
        return [.. _rows.OrderBy(r => r.From).ThenBy(r => r.Lane).ThenBy(r => r.Type, StringComparer.Ordinal)
            .Select((r, i) => r with { Id = "D" + (i + 1).ToString("000", CultureInfo.InvariantCulture) })];
    }

    private void Joints()
    {
        Repeat(8, Severe, JointDeterioration);
        Repeat(14, DurabilityTwo, JointDeterioration);
        Repeat(4, DurabilityOne, JointDeterioration);
        Repeat(4, Washed, JointDeterioration);
        Repeat(8, All, JointDeterioration);
        Repeat(20, DurabilityTwo, DurabilityCracking);
        Repeat(7, DurabilityOne, DurabilityCracking);
        Repeat(24, All, TransverseSpall);
        Repeat(15, AllOne, TransverseSpall);
        Repeat(6, DurabilityTwo, TransverseSpall);
        Repeat(2, DurabilityOne, TransverseSpall);
        Repeat(1, new(1, 16_100, 18_400), TransverseSpall);
        Repeat(3, RampLane, TransverseSpall);
        Repeat(14, All, Faulting);
        Repeat(6, BeforeBridge, Faulting);
        Repeat(1, new(1, 25_000, 25_600), Blowup);
        Repeat(1, new(2, 14_000, 14_500), Blowup);
        Repeat(1, new(2, 20_900, 21_280), Blowup);
        Repeat(11, Overlay, Reflection);
        Repeat(5, OverlayOne, Reflection);
        Repeat(9, All, SealDamage);
        Repeat(5, AllOne, SealDamage);
    }

    private void Cracks()
    {
        Repeat(13, Severe, CornerBreak);
        Repeat(18, All, CornerBreak);
        Repeat(7, AllOne, CornerBreak);
        Repeat(2, RampLane, CornerBreak);
        Repeat(4, BeforeBridge, CornerBreak);
        Repeat(12, Severe, TransverseCrack);
        Repeat(8, Washed, TransverseCrack);
        Repeat(27, All, TransverseCrack);
        Repeat(15, AllOne, TransverseCrack);
        Repeat(2, RampLane, TransverseCrack);
        Repeat(5, Severe, LongitudinalCrack);
        Repeat(14, All, LongitudinalCrack);
        Repeat(7, AllOne, LongitudinalCrack);
        Repeat(7, Severe, Shattered);
        Repeat(2, Washed, Shattered);
        Repeat(1, new(2, 25_800, 26_300), Shattered);
    }

    private void Repeat(int times, Spot spot, Action<Spot> see)
    {
        for (var i = 0; i < times; i++) see(spot);
    }

    /// <summary>A slab of a spot that has no distress of this type yet, off the bridge and clear of earlier repairs unless wanted.</summary>
    private Slab Pick(Spot spot, string type, Func<Slab, bool>? fits = null)
    {
        var lane = road.LaneByNumber(spot.Lane);
        for (var i = 0; i < 10_000; i++)
        {
            var slab = lane.SlabAt(_dice.Between(spot.From, spot.To) * Foot);
            var whole = slab.Start.At >= spot.From * Foot - 1e-9 && slab.End.At <= spot.To * Foot + 1e-9 && slab.Length > 3;
            if (!whole || OnBridge(slab) || OverRepair(lane, slab) || (fits is not null && !fits(slab))) continue;
            if (_taken.Add((spot.Lane, slab.Number, type))) return slab;
        }

        throw new InvalidOperationException($"The stretch from {spot.From} ft is full of {type}.");
    }

    private static bool OnBridge(Slab slab) => slab.End.At > 21_316 * Foot && slab.Start.At < 21_544 * Foot;

    private static bool OverRepair(Lane lane, Slab slab) => lane.EarlierRepairs.Any(r => r.To > slab.Start.At - 0.01 && r.From < slab.End.At + 0.01);

    private static bool StartsAtJoint(Slab slab) => slab.Start.Kind is JointKind.Dowelled or JointKind.Undowelled;

    private static double Ft(double metres) => metres / Foot;

    /// <summary>Rounded to a tenth of a foot, as a measuring wheel is read.</summary>
    private static double Wheel(double feet) => Math.Round(feet, 1);

    /// <summary>Rounded to a step, as a rule is read.</summary>
    private double Rule(double low, double high, double step) => Math.Round(_dice.Between(low, high) / step) * step;

    private bool Bad(Spot spot, double share) => _dice.Chance(spot == Severe || spot == Washed || spot == DurabilityTwo ? share + 0.3 : share);

    private void Add(SurveyRow row) => _rows.Add(row with
    {
        From = Wheel(row.From), To = Wheel(Math.Max(row.From, row.To)), OffsetFrom = row.OffsetFrom is { } l ? Math.Clamp(Wheel(l), 0, 12) : null,
        OffsetTo = row.OffsetTo is { } r ? Math.Clamp(Wheel(r), 0, 12) : null,
    });
}
