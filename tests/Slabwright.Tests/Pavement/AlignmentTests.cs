using CsCheck;
using MathNet.Numerics.Integration;
using Slabwright.Core.Pavement;

namespace Slabwright.Tests.Pavement;

public sealed class AlignmentTests
{
    /// <summary>Outside check: MathNet's double-exponential quadrature of the clothoid's cosine and sine, both turns and directions.</summary>
    [Fact]
    public void Clothoids_agree_with_numerical_integration() =>
        Gen.Select(Gen.Double[-0.02, 0.02], Gen.Double[-0.02, 0.02], Gen.Double[5, 400], Gen.Double[-4, 4], Gen.Double[0, 1]).Sample(
            (first, last, length, heading, share) =>
            {
                var spiral = new SpiralElement(new(new(100, -50), heading), first, last, length);
                var distance = share * length;
                double Heading(double s) => heading + first * s + (last - first) * s * s / (2 * length);
                var east = 100 + DoubleExponentialTransformation.Integrate(s => Math.Cos(Heading(s)), 0, distance, 1e-13);
                var north = -50 + DoubleExponentialTransformation.Integrate(s => Math.Sin(Heading(s)), 0, distance, 1e-13);
                var pose = spiral.PoseAt(distance);
                Assert.Equal(east, pose.Point.East, tolerance: 1e-9);
                Assert.Equal(north, pose.Point.North, tolerance: 1e-9);
                Assert.Equal(Heading(distance), pose.Heading, 12);
            }, iter: 300);

    /// <summary>Asymptotic point of the unit clothoid: Fresnel integrals C(∞) = S(∞) = 1/2 (Abramowitz and Stegun 7.3.20); C(1), S(1) from Table 7.7.</summary>
    [Fact]
    public void Clothoids_agree_with_tabled_fresnel_integrals()
    {
        var unit = new SpiralElement(default, 0, Math.PI, 1).PoseAt(1).Point;
        Assert.Equal(0.7798934, unit.East, 7);
        Assert.Equal(0.4382591, unit.North, 7);
    }

    [Fact]
    public void A_spiral_walked_backwards_is_the_same_curve() =>
        Gen.Select(Gen.Double[-0.01, 0.01], Gen.Double[-0.01, 0.01], Gen.Double[10, 300]).Sample((first, last, length) =>
        {
            var there = new SpiralElement(new(default, 0.3), first, last, length);
            var end = there.PoseAt(length);
            var back = new SpiralElement(new(end.Point, end.Heading + Math.PI), -last, -first, length);
            Assert.True(back.PoseAt(length).Point.DistanceTo(there.Start.Point) < 1e-9);
            Assert.True(back.PoseAt(length / 3).Point.DistanceTo(there.PoseAt(length * 2 / 3).Point) < 1e-9);
        }, iter: 300);

    [Fact]
    public void A_spiral_between_equal_curvatures_is_an_arc()
    {
        var start = new PlanPose(new(5, 5), 1.2);
        var spiral = new SpiralElement(start, -0.004, -0.004, 180).PoseAt(150);
        var arc = new ArcElement(start, -0.004, 180).PoseAt(150);
        Assert.True(spiral.Point.DistanceTo(arc.Point) < 1e-10);
        Assert.Equal(arc.Heading, spiral.Heading, 12);
    }

    [Theory]
    [InlineData(true, 100, 0, -Math.PI / 2)]
    [InlineData(false, 0, 100, Math.PI / 2)]
    public void A_quarter_turn_ends_where_it_should(bool clockwise, double east, double north, double turn)
    {
        var (start, end) = clockwise ? (new PlanPoint(0, 100), new PlanPoint(100, 0)) : (new PlanPoint(100, 0), new PlanPoint(0, 100));
        var arc = ArcElement.Through(start, new(0, 0), end, clockwise);
        Assert.Equal(50 * Math.PI, arc.Length, 10);
        Assert.True(arc.PoseAt(arc.Length).Point.DistanceTo(new(east, north)) < 1e-10);
        Assert.Equal(turn, arc.PoseAt(arc.Length).Heading - arc.PoseAt(0).Heading, 12);
    }

    /// <summary>Law: a point set off from the road is found again at its place and offset.</summary>
    [Fact]
    public void Locating_undoes_offsetting() =>
        Gen.Select(Gen.Double[-80, 1_000], Gen.Double[-60, 60]).Sample((at, offset) =>
        {
            var road = Winding();
            var found = road.Locate(road.PoseAt(at).Offset(offset));
            Assert.Equal(at, found.At, tolerance: 1e-7);
            Assert.Equal(offset, found.Offset, tolerance: 1e-7);
        }, iter: 3_000);

    [Fact]
    public void A_run_of_chords_locates_and_measures()
    {
        var road = new Alignment("", [new PolylineElement([new(0, 0), new(100, 0), new(100, 100)])], "");
        Assert.Equal(200, road.Length);
        Assert.Equal(new PlanLocation(40, 3), road.Locate(new(40, -3)));
        Assert.Equal(new PlanLocation(150, -2), road.Locate(new(98, 50)));
        Assert.Equal(new PlanPoint(100, 20), road.PoseAt(120).Point);
    }

    /// <summary>Line, clothoid, arc, clothoid, line, arc the other way: no radius below 150 m, so offsets up to 60 m are unambiguous.</summary>
    private static Alignment Winding()
    {
        AlignmentElement[] pieces = new AlignmentElement[6];
        pieces[0] = new LineElement(new(1000, 2000), new(1080, 2040));
        var pose = pieces[0].PoseAt(pieces[0].Length);
        pieces[1] = new SpiralElement(pose, 0, -1 / 200.0, 120);
        pieces[2] = new ArcElement(pieces[1].PoseAt(120), -1 / 200.0, 160);
        pieces[3] = new SpiralElement(pieces[2].PoseAt(160), -1 / 200.0, 1 / 150.0, 220);
        pieces[4] = new ArcElement(pieces[3].PoseAt(220), 1 / 150.0, 200);
        pose = pieces[4].PoseAt(200);
        pieces[5] = new LineElement(pose.Point, new(pose.Point.East + 100 * Math.Cos(pose.Heading), pose.Point.North + 100 * Math.Sin(pose.Heading)));
        return new Alignment("winding", [.. pieces], "", StartOffset: 10);
    }
}
