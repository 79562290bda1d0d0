using Slabwright.Core.Joints.Design;
using Slabwright.Core.Joints.Live;
using Slabwright.Core.Measures;
using Slabwright.Core.Numerics.Plates;
using Slabwright.Core.Pavement;

namespace Slabwright.Tests.JointMechanics;

/// <summary>A joint asked while an axle moves: two roads to one answer, mirror symmetry, sums where they hold and not where they do not.</summary>
public sealed class LiveJointTests
{
    private static readonly AxleClass Single = new(1, Units.Kip.ToBase(20), 0);
    private static readonly LiveJoint Joint = LiveJoint.Build(Conditions, Bars, new LiveSurroundings());

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private static JointConditions Conditions => new()
    {
        Thickness = 0.25, LaneWidth = 3.6, OldSlab = 4.5, Repair = 1.8, Modulus = 28e9, Poisson = 0.15, Strength = 28e6, Rupture = 4.5e6, Reaction = 40e6,
        Expansion = 1e-5, Base = BaseKind.Granular, Drainage = 1, Climate = new Climate(true), Temperatures = (-18, 49), DowelSupport = 4e11, SteelModulus = 200e9,
        JointWidth = 0.005, OuterEdge = LaneEdge.AsphaltShoulder, Traffic = [Single], EquivalentAxlesPerDay = 500, Growth = 0, DesignYears = 20,
    };

    private static BarLayout Bars => new()
    {
        Kind = BarKind.Dowel, Arrangement = BarArrangement.FullWidth, Diameter = 0.032, Length = 0.45, Embedment = 0.225, Depth = 0.125,
        Offsets = [.. Enumerable.Range(0, 11).Select(n => 0.3 + 0.3 * n)], Spacing = 0.3,
    };

    [Theory]
    [InlineData(-0.15, 1.8)]
    [InlineData(0.4, 1.6)]
    [InlineData(-1.2, 2.0)]
    public void Influence_and_field_give_the_same_bars_and_load_is_kept(double along, double across)
    {
        var answer = Joint.Under(new LiveAxle(Single, along, across));

        Assert.True(answer.Disagreement < 1e-8, $"{answer.Disagreement:E2}");
        Assert.True(Math.Abs(answer.State.Plate.Imbalance) < 1e-9);
        Assert.Equal(Single.Load, answer.State.Applied, Single.Load * 1e-9);
        Assert.InRange(answer.Transfer, 0, 1);
        Assert.Equal(along < 0, answer.OldSide > answer.RepairSide);
    }

    [Fact]
    public void An_axle_in_the_middle_loads_mirrored_bars_alike_and_one_to_the_right_loads_the_right()
    {
        var middle = Joint.Under(new LiveAxle(Single, -0.15, 1.8)).Bars;
        Assert.All(Enumerable.Range(0, 5), n => Assert.Equal(middle[n].Shear, middle[10 - n].Shear, Math.Abs(middle[n].Shear) * 1e-6 + 1e-3));
        var right = Joint.Under(new LiveAxle(Single, -0.15, 2.1)).Bars;

        Assert.True(right[10].Bearing > 1.2 * right[0].Bearing);
    }

    [Fact]
    public void Two_axles_are_the_sum_of_each_where_the_base_is_in_touch_and_not_where_slabs_lift_off()
    {
        var (one, two) = (new LiveAxle(Single, -0.15, 1.8).Wheels(Conditions), new LiveAxle(Single, -1.35, 1.8).Wheels(Conditions));
        var sum = Joint.BarsUnder(one).Zip(Joint.BarsUnder(two), (a, b) => a.Shear + b.Shear);
        Assert.All(Joint.BarsUnder([.. one, .. two]).Zip(sum), p => Assert.Equal(p.Second, p.First.Shear, 1e-6 * Math.Abs(p.Second) + 1e-6));

        var loose = LiveJoint.Build(Conditions, Bars, new LiveSurroundings(LosesContact: true, TopWarmer: -12, HollowCorner.OldSlab), cancel: Cancel);
        var (a, b, both) = (loose.Model.Everything(one), loose.Model.Everything(two), loose.Model.Everything([.. one, .. two]));
        var (apart, together) = (a.Deflection(0, -0.1, 3.5) + b.Deflection(0, -0.1, 3.5) - loose.Rest!.Deflection(0, -0.1, 3.5), both.Deflection(0, -0.1, 3.5));

        Assert.Equal(SolveEnd.Converged, both.Plate.End);
        Assert.True(Math.Abs(apart - together) > 0.01 * together, $"{apart} and {together}");
        Assert.True(loose.Rest.Plate.Contact[0] < 0.999);
    }

    [Fact]
    public void A_map_has_a_sharp_step_at_the_joint_and_stays_on_the_slabs()
    {
        var answer = Joint.Under(new LiveAxle(Single, -0.15, 1.8));
        var grid = LiveGrid.Over(Joint, -3, 3);
        var field = answer.Field(LiveQuantity.Deflection, grid);
        var step = Enumerable.Range(1, grid.Along.Length - 1).Single(n => grid.Along[n - 1] < 0 && grid.Along[n] > 0);
        var (before, after) = (field[15 * grid.Along.Length + step - 1], field[15 * grid.Along.Length + step]);

        Assert.Equal(grid.Along.Length * 24, field.Length);
        Assert.All(field, v => Assert.True(double.IsFinite(v)));
        Assert.Equal(answer.State.SideDeflection(0, PanelSide.End, grid.Across[15]), before, 1e-8);
        Assert.True(before > after && after > 0);
    }

    [Fact]
    public void Bad_input_is_named_before_anything_is_built()
    {
        Assert.Contains(LiveJoint.Check(Conditions with { Reaction = -1 }, Bars, new()), f => f.Code == "JNT-010" && f.Place.Field == "joints.reaction");
        Assert.Contains(LiveJoint.Check(Conditions, Bars with { Offsets = [0.3, 4.2] }, new()), f => f.Code == "JNT-016");
        Assert.Contains(LiveJoint.Check(Conditions, Bars, new(LosesContact: true, Hollow: HollowCorner.Repair, HollowDepth: 0)), f => f.Code == "JNT-096");
        Assert.Empty(LiveJoint.Check(Conditions, Bars, new()));
    }

    [Fact]
    public void Building_stops_when_told()
    {
        using var stop = new CancellationTokenSource();
        var steps = new List<string>();

        Assert.Throws<OperationCanceledException>(() => LiveJoint.Build(Conditions, Bars, new(), s => { steps.Add(s); stop.Cancel(); }, stop.Token));
        Assert.Single(steps);
    }
}
