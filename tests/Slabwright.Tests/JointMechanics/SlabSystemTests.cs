using Slabwright.Core.Joints.Slabs;
using Slabwright.Core.Numerics.Plates;
using static Slabwright.Tests.JointMechanics.TwoSlabs;

namespace Slabwright.Tests.JointMechanics;

/// <summary>Slab systems: refusal of what cannot be, and laws of joints.</summary>
public sealed class SlabSystemTests
{
    public static TheoryData<string, Func<SlabSystem, SlabSystem>> Wrong() => new()
    {
        { "JNT-090", s => s with { Pieces = [] } },
        { "JNT-091", s => s with { Reaction = -1 } },
        { "JNT-092", s => s with { Pieces = [s.Pieces[0] with { Thickness = 0 }, s.Pieces[1]] } },
        { "JNT-092", s => s with { Pieces = [s.Pieces[0], s.Pieces[1] with { Poisson = 0.5 }] } },
        { "JNT-093", s => s with { Pieces = [s.Pieces[0] with { To = 1 }, s.Pieces[1]] } },
        { "JNT-094", s => s with { Transverse = [new TransverseMeeting(1, 0, 1e6)] } },
        { "JNT-095", s => s with { Bars = [new SlabBar(0, 1, 3.7, Bar())] } },
        { "JNT-096", s => s with { Voids = [new SlabVoid(1, 0, 0, 1, 0.01)] } },
        { "JNT-097", s => s with { Bars = [new SlabBar(0, 1, 1.0, Bar()), new SlabBar(0, 1, 1.01, Bar())] } },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void What_cannot_be_is_found_before_it_is_computed(string code, Func<SlabSystem, SlabSystem> spoil)
    {
        var system = spoil(TwoSlabs.System());
        var finding = Assert.Single(SlabSystemCheck.Of(system), f => f.Code == code);
        Assert.NotNull(finding.Mend);
        Assert.NotNull(finding.Place.Field);
        Assert.Throws<ArgumentException>(() => new SlabModel(system));
    }

    [Fact]
    public void A_sound_system_has_no_finding() => Assert.Empty(SlabSystemCheck.Of(TwoSlabs.System()));

    [Fact]
    public void Stiffer_bars_transfer_more_and_the_sum_of_deflections_hardly_moves()
    {
        var influence = new JointInfluence(TwoSlabs.System(), 0, 1, Offsets, [new LoadCase("axle", [.. Axle()])]);
        int[] all = [.. Enumerable.Range(0, Offsets.Length)];
        var thin = influence.Respond(0, Bar(0.025), all);
        var thick = influence.Respond(0, Bar(0.038), all);
        Assert.True(thick.DeflectionTransfer > thin.DeflectionTransfer);
        Assert.True(thick.Bearing < thin.Bearing);
        Assert.Equal(1, (thick.Deflection.Loaded + thick.Deflection.Unloaded) / (thin.Deflection.Loaded + thin.Deflection.Unloaded), 0.02);
    }

    [Fact]
    public void More_bars_carry_more_together_and_less_each()
    {
        var influence = new JointInfluence(TwoSlabs.System(), 0, 1, Offsets, [new LoadCase("axle", [.. Axle()])]);
        var four = influence.Respond(0, Bar(), [0, 1, 2, 3, 7, 8, 9, 10]);
        var eleven = influence.Respond(0, Bar(), [.. Enumerable.Range(0, 11)]);
        Assert.True(Math.Abs(eleven.Carried) > Math.Abs(four.Carried));
        Assert.True(eleven.Bars.Average(b => b.Bearing) < four.Bars.Average(b => b.Bearing));
    }

    [Fact]
    public void Finer_meshes_agree()
    {
        int[] all = [.. Enumerable.Range(0, Offsets.Length)];
        var (coarse, fine) = (Respond(SlabMesh.Coarse), Respond(SlabMesh.Fine));
        Assert.Equal(1, coarse.Bearing / fine.Bearing, 0.03);
        Assert.Equal(1, coarse.Deflection.Loaded / fine.Deflection.Loaded, 0.01);
        Assert.Equal(1, coarse.DeflectionTransfer / fine.DeflectionTransfer, 0.01);
        Assert.Equal(1, coarse.EdgeStress.Loaded / fine.EdgeStress.Loaded, 0.06);

        JointResponse Respond(SlabMesh mesh) => new JointInfluence(TwoSlabs.System(mesh), 0, 1, Offsets, [new LoadCase("axle", [.. Axle()])]).Respond(0, Bar(), all);
    }

    [Fact]
    public void A_hinged_neighbour_lane_shares_the_load_and_an_isolated_one_does_not()
    {
        var alone = TwoSlabs.System();
        var beside = alone.Pieces[0] with { Name = "lane beside", Left = 3.6, Right = 7.2, From = -4.5, To = 4.5 };
        var pieces = alone.Pieces.Add(beside);
        var edge = new WheelPatch[] { new(1, 3.4, 0.25, 0.3, 40_000) };
        double At(params LongitudinalMeeting[] sides) =>
            new SlabModel(alone with { Pieces = pieces, Longitudinal = [.. sides] }).Wheels(edge).Deflection(1, 1, 3.6);

        var isolated = At();
        var tied = At(new LongitudinalMeeting(1, 2, 1e9));
        Assert.Equal(new SlabModel(alone).Wheels(edge).Deflection(1, 1, 3.6), isolated, 1e-12);
        Assert.InRange(tied / isolated, 0.3, 0.6);
    }

    [Fact]
    public void Skewed_slabs_balance_too()
    {
        var square = TwoSlabs.System();
        var skewed = square with
        {
            Pieces = [square.Pieces[0] with { EndSkew = 0.6 }, square.Pieces[1] with { StartSkew = 0.6 }],
            Transverse = [new TransverseMeeting(0, 1, 2e8)],
            Bars = [.. Offsets.Select(o => new SlabBar(0, 1, o, Bar()))],
        };
        var state = new SlabModel(skewed).Wheels([new WheelPatch(0.5, 3.0, 0.25, 0.5, 40_000)]);
        Assert.Equal(40_000, state.Applied, 1e-6 * 40_000);
        Assert.True(Math.Abs(state.Plate.Imbalance) < 1e-9);
        Assert.InRange(state.DeflectionTransfer(0, 1, 3.0), 0.7, 1.0);
        Assert.Equal(SolveEnd.Converged, state.Plate.End);
    }
}
