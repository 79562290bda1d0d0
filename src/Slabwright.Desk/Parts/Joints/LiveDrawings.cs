using System.Collections.Immutable;
using Slabwright.Core.Joints;
using Slabwright.Core.Joints.Design;
using Slabwright.Core.Joints.Live;
using Slabwright.Core.Joints.Slabs;
using Slabwright.Core.Measures;
using Slabwright.Sheets.Figures;
using Slabwright.Sheets.Joints;
using Slabwright.Sheets.Words;

namespace Slabwright.Desk.Parts.Joints;

/// <summary>The drawings of one answer as SVG.</summary>
/// <param name="Bars">Shear, moment and bearing, a column for each bar; empty without bars.</param>
/// <param name="Map">Contour map.</param>
/// <param name="Section">Section along both wheel paths.</param>
public sealed record LiveDrawings(ImmutableArray<string> Bars, string Map, string Section)
{
    /// <summary>Nothing drawn yet.</summary>
    public static LiveDrawings None { get; } = new([], "", "");

    /// <summary>A moment is a force times a length; the plots name the unit as such.</summary>
    private static readonly UnitPair Moments = new(
        new Unit("kip·in", Dimension.None, Units.Kip.ToBase(1) * Units.Inch.ToBase(1)), new Unit("kN·m", Dimension.None, 1000));

    /// <summary>Name of a quantity.</summary>
    public static string Named(LiveQuantity what) => what switch
    {
        LiveQuantity.Deflection => "Deflection added by the wheels",
        LiveQuantity.BottomTension => "Greatest stress at the bottom",
        LiveQuantity.BasePressure => "Pressure on the base (contact)",
        _ => "Greatest stress at the top",
    };

    /// <summary>Draws an answer.</summary>
    /// <param name="joint">The joint.</param> <param name="answer">The answer.</param> <param name="what">What is mapped.</param>
    /// <param name="units">Units.</param> <param name="from">Start of the stretch shown, m.</param> <param name="to">Its end, m.</param>
    public static LiveDrawings Of(LiveJoint joint, LiveAnswer answer, LiveQuantity what, JobUnits units, double from, double to)
    {
        var unit = what == LiveQuantity.Deflection ? units.Thickness : units.Stress;
        var grid = LiveGrid.Over(joint, from, to);
        var field = new ResponseField(Named(what), grid.Along, grid.Across, answer.Field(what, grid), unit, units.Length) { Overlays = Overlays(joint, answer, grid) };
        var fine = LiveGrid.Over(joint, from, to, 120, 2);
        var paths = answer.Wheels.Select(w => w.Across).Distinct().Order().ToArray();
        var section = new ResponseSection($"{Named(what)} along both wheel paths", "From the joint", what switch { LiveQuantity.Deflection => "Deflection", LiveQuantity.BasePressure => "Pressure", _ => "Stress" },
            [Curve("under the left wheel", paths[0]), Curve("under the right wheel", paths[^1])], unit, units.Length)
        {
            IsDownward = what == LiveQuantity.Deflection,
            Places = joint.Conditions.Repair < to ? [new ResponseMark(0, "joint"), new ResponseMark(joint.Conditions.Repair, "far joint")] : [new ResponseMark(0, "joint")],
        };
        return new LiveDrawings(
            [.. BarPlots(joint, answer, units)],
            ResponsePlots.Contours(field, new PlotOptions { Width = 720, TextSize = 12, GreatestHeight = 330, IdPrefix = "live-map" }),
            ResponsePlots.Section(section, new PlotOptions { Width = 540, TextSize = 12, GreatestHeight = 300, IdPrefix = "live-section" }));

        ResponseCurve Curve(string name, double across) => new(name, fine.Along, answer.Section(what, fine, across));
    }

    private static IEnumerable<string> BarPlots(LiveJoint joint, LiveAnswer answer, JobUnits units)
    {
        if (joint.Bars is not { } bars) yield break;
        var allowed = DowelBar.AllowableBearing(bars.Diameter, joint.Conditions.Strength);
        yield return Plot("Shear on each bar", "Shear", "live-shear", units.Force, b => b.Shear, null);
        yield return Plot("Moment of each bar at the face", "Moment", "live-moment", Moments.In(units.System), b => Math.Abs(b.FirstMoment) > Math.Abs(b.SecondMoment) ? b.FirstMoment : b.SecondMoment, null);
        yield return Plot("Bearing on the concrete", "Bearing", "live-bearing", units.Stress, b => b.Bearing, new ResponseMark(allowed, "allowed"));

        string Plot(string title, string quantity, string id, Unit unit, Func<BarForce, double> of, ResponseMark? limit) => ResponsePlots.Bars(
            new BarResponse(title, quantity, bars.Offsets, [.. answer.Bars.Select(of)], joint.Conditions.LaneWidth, unit, units.Length)
            {
                Limit = limit,
                Wheels = [.. answer.Wheels.Select(w => w.Across).Distinct().Order()],
            },
            new PlotOptions { Width = 430, TextSize = 12.5, GreatestHeight = 170, IdPrefix = id });
    }

    private static ImmutableArray<PlotOverlay> Overlays(LiveJoint joint, LiveAnswer answer, LiveGrid grid)
    {
        var (first, last, width) = (grid.Along[0], grid.Along[^1], joint.Conditions.LaneWidth);
        var overlays = ImmutableArray.CreateBuilder<PlotOverlay>();
        overlays.Add(new PlotOverlay([new FigurePoint(0, 0), new FigurePoint(0, width)], FigureStyle.BoundaryCut));
        if (joint.Conditions.Repair < last) overlays.Add(new PlotOverlay([new FigurePoint(joint.Conditions.Repair, 0), new FigurePoint(joint.Conditions.Repair, width)], FigureStyle.SawnJoint));
        foreach (var wheel in answer.Wheels)
        {
            var (left, right) = (wheel.Along - wheel.Length / 2, wheel.Along + wheel.Length / 2);
            if (left < first || right > last) continue;
            var (low, high) = (wheel.Across - wheel.Width / 2, wheel.Across + wheel.Width / 2);
            overlays.Add(new PlotOverlay([new(left, low), new(right, low), new(right, high), new(left, high)], FigureStyle.Wheel, IsClosed: true));
        }

        return overlays.ToImmutable();
    }
}
