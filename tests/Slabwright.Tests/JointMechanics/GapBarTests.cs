using Slabwright.Core.Joints;
using Slabwright.Core.Joints.Slabs;

namespace Slabwright.Tests.JointMechanics;

/// <summary>A bar across a gap against the closed forms it must meet.</summary>
public sealed class GapBarTests
{
    private const double Support = 407e9;
    private const double Steel = 200e9;

    [Fact]
    public void Long_bar_bears_as_Friberg_says_when_the_faces_do_not_turn()
    {
        const double Diameter = 0.0318, Gap = 0.006, Load = 6000;
        var bar = new GapBar(Diameter, Gap, 1.5, 1.5, Support, Steel);
        var forces = bar.Forces(Load, 0);
        var beta = DowelBar.Beta(Support, Diameter, Steel);
        var face = DowelBar.FaceDeflection(Load, Gap, beta, Diameter, Steel);
        Assert.Equal(Support * face, forces.SecondBearing, Support * face * 1e-9);
        Assert.Equal(-Support * face, forces.FirstBearing, Support * face * 1e-9);
    }

    [Fact]
    public void Step_between_faces_is_two_face_deflections_and_the_bridge()
    {
        const double Diameter = 0.0318, Gap = 0.006;
        var bar = new GapBar(Diameter, Gap, 1.5, 1.5, Support, Steel);
        var beta = DowelBar.Beta(Support, Diameter, Steel);
        var bending = Steel * DowelBar.SecondMoment(Diameter);
        var shearArea = 0.9 * Math.PI * Diameter * Diameter / 4;
        var half = Gap / 2;
        var face = (1 + beta * half) / (2 * Math.Pow(beta, 3) * bending);
        var turned = 1 / (2 * beta * beta * bending) + half / (beta * bending);
        var step = 2 * (face + half * turned + half * half * half / (3 * bending) + half / (Steel / 2.6 * shearArea));
        Assert.Equal(1 / step, bar.ShearStiffness, 1e-9 / step);
    }

    [Fact]
    public void No_gap_and_no_length_of_bar_lost_is_allowed_and_stiffest()
    {
        var tight = new GapBar(0.032, 0, 0.2, 0.2, Support, Steel);
        var open = new GapBar(0.032, 0.01, 0.2, 0.2, Support, Steel);
        Assert.True(tight.ShearStiffness > open.ShearStiffness);
        Assert.True(double.IsFinite(tight.ShearStiffness));
    }

    [Theory]
    [InlineData(0, 0.005, 0.2, 0.2, 4e11)]
    [InlineData(0.03, -0.001, 0.2, 0.2, 4e11)]
    [InlineData(0.03, 0.005, 0, 0.2, 4e11)]
    [InlineData(0.03, 0.005, 0.2, 0.2, 0)]
    public void Impossible_bars_are_refused(double diameter, double gap, double first, double second, double support) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new GapBar(diameter, gap, first, second, support));
}
