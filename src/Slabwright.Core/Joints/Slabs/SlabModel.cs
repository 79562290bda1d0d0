using System.Collections.Immutable;
using Slabwright.Core.Numerics.Plates;
using Slabwright.Core.Numerics.Sparse;

namespace Slabwright.Core.Joints.Slabs;

/// <summary>
/// A slab system as plate finite elements. Built once; with every part of the base in touch it is linear and answers any wheels from one
/// factor; with weight, temperature and hollows it finds the contact anew.
/// </summary>
public sealed class SlabModel
{
    private readonly PlateSystem _plates;

    /// <summary>Meshes a system.</summary>
    /// <exception cref="ArgumentException">The system has an error finding; see <see cref="SlabSystemCheck"/>.</exception>
    public SlabModel(SlabSystem system)
    {
        var findings = SlabSystemCheck.Of(system);
        if (!findings.IsEmpty) throw new ArgumentException(findings[0].Sentence + " " + findings[0].Mend);
        System = system;
        Panels = [.. system.Pieces.Select(p => SlabMesher.Panel(system, p))];
        _plates = new PlateSystem(Panels, Links);
    }

    /// <summary>The system.</summary>
    public SlabSystem System { get; }

    /// <summary>One panel a piece.</summary>
    public ImmutableArray<PlatePanel> Panels { get; }

    /// <summary>Unknowns.</summary>
    public int Unknowns => _plates.FreeCount;

    /// <summary>Entries of the factor.</summary>
    public long FactorEntries => _plates.FactorEntries;

    internal PlateSystem Plates => _plates;

    /// <summary>Wheels on slabs that rest on their base everywhere; weight and temperature left out.</summary>
    /// <param name="wheels">The wheels.</param>
    public SlabState Wheels(IReadOnlyList<WheelPatch> wheels)
    {
        var loads = LoadsOf(wheels, out var applied);
        return new SlabState(this, _plates.Solve(loads), applied, bent: false);
    }

    /// <summary>Wheels, own weight and temperature together, on a base that pushes but does not pull, over the hollows given.</summary>
    /// <param name="wheels">The wheels; may be empty.</param>
    /// <param name="near">A state of this model with wheels nearby, to start from; the answer is the same without.</param>
    public SlabState Everything(IReadOnlyList<WheelPatch> wheels, SlabState? near = null)
    {
        var loads = LoadsOf(wheels, out var applied);
        for (var p = 0; p < Panels.Length; p++)
        {
            var piece = System.Pieces[p];
            PlateLoads.AddUniform(loads, Panels[p], piece.Density * SlabTemperature.Gravity * piece.Thickness);
            if (piece.TopWarmer != 0) PlateLoads.AddCurvature(loads, Panels[p], piece.FreeCurvature);
        }

        return new SlabState(this, _plates.SolveContact(loads, near?.Plate), applied, bent: true);
    }

    /// <summary>Forces of wheels on the unknowns. What of a wheel stands off the slabs is left out.</summary>
    /// <param name="wheels">The wheels.</param> <param name="applied">Load that stands on slabs, N.</param>
    public double[] LoadsOf(IReadOnlyList<WheelPatch> wheels, out double applied)
    {
        var loads = _plates.NewLoads();
        applied = 0;
        foreach (var wheel in wheels)
        {
            foreach (var panel in Panels)
            {
                applied += PlateLoads.AddPatch(
                    loads, panel, wheel.Along - wheel.Length / 2, wheel.Across - wheel.Width / 2, wheel.Along + wheel.Length / 2,
                    wheel.Across + wheel.Width / 2, wheel.Pressure);
            }
        }

        return loads;
    }

    /// <summary>Nodes of a piece's end or start side at a place across the road.</summary>
    internal NodeWeights Side(int piece, PanelSide side, double across) =>
        Panels[piece].SideAt(side, SideRange.Share(System.Pieces[piece], across));

    /// <summary>The forces whose work on any movements is a bar's shear, or its moment, at the middle of the gap.</summary>
    internal double[] ActionOf(SlabBar bar, bool shear)
    {
        var action = _plates.NewLoads();
        var ends = EndsOf(bar);
        for (var k = 0; k < 4; k++)
        {
            var (ofShear, ofMoment) = bar.Bar.Middle(k == 0 ? 1 : 0, k == 1 ? 1 : 0, k == 2 ? 1 : 0, k == 3 ? 1 : 0);
            foreach (var (unknown, factor) in ends[k]) action[unknown] += factor * (shear ? ofShear : ofMoment);
        }

        return action;
    }

    /// <summary>Deflection and slope of the first slab's face at a bar, then of the second's.</summary>
    private (int Unknown, double Factor)[][] EndsOf(SlabBar bar)
    {
        var (one, two) = (Side(bar.First, PanelSide.End, bar.Across), Side(bar.Second, PanelSide.Start, bar.Across));
        return [PlateLinks.Deflection(one), PlateLinks.SlopeAlong(one), PlateLinks.Deflection(two), PlateLinks.SlopeAlong(two)];
    }

    private IEnumerable<ElementBlock> Links()
    {
        foreach (var bar in System.Bars)
        {
            yield return PlateLinks.Between(EndsOf(bar), bar.Bar.Stiffness(), SideRange.EndAt(System.Pieces[bar.First], bar.Across), bar.Across);
        }

        foreach (var block in System.Transverse.Where(m => m.Interlock > 0).SelectMany(Interlock)) yield return block;
        foreach (var block in System.Longitudinal.Where(m => m.Shear > 0 || m.Bending > 0).SelectMany(LongSide)) yield return block;
    }

    private IEnumerable<ElementBlock> Interlock(TransverseMeeting meeting)
    {
        var range = SideRange.Transverse(System, meeting.First, meeting.Second);
        var (one, two) = (System.Pieces[meeting.First], System.Pieces[meeting.Second]);
        return PlateLinks.Line(
            Panels[meeting.First], PanelSide.End, SideRange.Share(one, range.Low), SideRange.Share(one, range.High),
            Panels[meeting.Second], PanelSide.Start, SideRange.Share(two, range.Low), SideRange.Share(two, range.High), meeting.Interlock);
    }

    private IEnumerable<ElementBlock> LongSide(LongitudinalMeeting meeting)
    {
        var range = SideRange.Longitudinal(System, meeting.Left, meeting.Right);
        var (one, two) = (System.Pieces[meeting.Left], System.Pieces[meeting.Right]);
        double On(SlabPiece piece, double along, double across)
        {
            var (from, to) = (SideRange.StartAt(piece, across), SideRange.EndAt(piece, across));
            return (along - from) / (to - from);
        }

        return PlateLinks.Line(
            Panels[meeting.Left], PanelSide.Right, On(one, range.Low, one.Right), On(one, range.High, one.Right),
            Panels[meeting.Right], PanelSide.Left, On(two, range.Low, two.Left), On(two, range.High, two.Left), meeting.Shear, meeting.Bending);
    }
}
