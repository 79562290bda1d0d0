using CsCheck;
using Slabwright.Core.Joints;

namespace Slabwright.Tests.Laws;

public class FatigueAndDowelLaws
{
    public static TheoryData<FatigueLaw> Laws() => [.. Enum.GetValues<FatigueLaw>()];

    [Theory]
    [MemberData(nameof(Laws))]
    public void More_stress_means_fewer_repetitions(FatigueLaw law) => Gen.Select(Gen.Double[0.46, 1.2], Gen.Double[0.001, 0.2]).Sample((ratio, more) =>
        Assert.True(ConcreteFatigue.AllowableRepetitions(law, ratio) > ConcreteFatigue.AllowableRepetitions(law, ratio + more)));

    [Theory]
    [MemberData(nameof(Laws))]
    public void Every_law_has_its_row(FatigueLaw law)
    {
        var facts = FatigueLaws.Of(law);
        Assert.Equal(law, facts.Law);
        Assert.True(facts.Expression.Length > 5 && facts.BelongsTo.Length > 5);
    }

    /// <summary>The PCA law breaks at 0.55; both branches meet there within 2 %.</summary>
    [Fact]
    public void The_branches_of_the_PCA_law_meet() => Assert.Equal(
        1, ConcreteFatigue.AllowableRepetitions(0.55) / ConcreteFatigue.AllowableRepetitions(0.55 + 1e-12), 0.02);

    [Fact]
    public void Damage_adds_up_and_no_stress_does_none()
    {
        var one = ConcreteFatigue.Damage(FatigueLaw.Nchrp137A, [(1000, 0.6)]);
        Assert.Equal(3 * one, ConcreteFatigue.Damage(FatigueLaw.Nchrp137A, [(1000, 0.6), (2000, 0.6), (1e9, 0)]), 12);
        Assert.Equal(1, ConcreteFatigue.Damage(FatigueLaw.Pca1984, [(ConcreteFatigue.AllowableRepetitions(0.6), 0.6)]), 12);
    }

    [Theory]
    [InlineData(CrackingCalibration.Report2004, 0.5)]
    [InlineData(CrackingCalibration.Manual2008, 0.5)]
    [InlineData(CrackingCalibration.Recalibrated2015, 1 / 1.52)]
    public void Cracked_slabs_at_a_damage_of_one(CrackingCalibration calibration, double share)
    {
        Assert.Equal(share, ConcreteFatigue.CrackedSlabs(calibration, 1), 12);
        Assert.Equal(0, ConcreteFatigue.CrackedSlabs(calibration, 0));
        Assert.True(ConcreteFatigue.CrackedSlabs(calibration, 0.1) < ConcreteFatigue.CrackedSlabs(calibration, 0.2));
        Assert.Equal(0.75, ConcreteFatigue.Cracked(0.5, 0.5));
    }

    /// <summary>With no gap the bar is two buried halves: half the published stiffness. The gap only adds to the yield.</summary>
    [Fact]
    public void Two_sides_yield_twice_without_a_gap() => Gen.Select(Gen.Double[0.01, 0.06], Gen.Double[1e10, 1e12]).Sample((diameter, support) =>
    {
        const double Steel = 2e11;
        var beta = DowelBar.Beta(support, diameter, Steel);
        var one = 1 / DowelBar.FaceDeflection(1, 0, beta, diameter, Steel);
        Assert.Equal(0.5, DowelSpring.TwoSided(support, diameter, Steel, 0.3, 0) / one, 1e-9);
        Assert.True(DowelSpring.TwoSided(support, diameter, Steel, 0.3, 0.01) < DowelSpring.TwoSided(support, diameter, Steel, 0.3, 0.005));
        Assert.True(DowelSpring.TwoSided(support, diameter, Steel, 0.3, 0.01) < DowelBar.JointStiffness(support, diameter, Steel, 0.3, 0.01) / 2 * 1.0001);
    });

    /// <summary>The concrete springs along the buried bar carry its whole load: K d ∫ y dx = P.</summary>
    [Fact]
    public void Bearing_along_the_bar_is_in_balance_with_its_load() => Gen.Select(
        Gen.Double[0.015, 0.05], Gen.Double[5e10, 5e11], Gen.Double[0, 0.02]).Sample((diameter, support, joint) =>
    {
        const double Steel = 2e11;
        var beta = DowelBar.Beta(support, diameter, Steel);
        var pressure = MathNet.Numerics.Integrate.GaussLegendre(
            x => support * diameter * DowelSpring.BuriedDeflection(x, 1000, joint, beta, diameter, Steel), 0, 30 / beta, 256);
        Assert.Equal(1000, pressure, 0.001);
        Assert.Equal(
            DowelBar.FaceDeflection(1000, joint, beta, diameter, Steel), DowelSpring.BuriedDeflection(0, 1000, joint, beta, diameter, Steel), 1e-12);
    }, iter: 50);

    /// <summary>The cube form is the cylinder form with f'c = 0.8 fck.</summary>
    [Fact]
    public void Both_allowable_bearings_are_one() => Assert.Equal(
        DowelBar.AllowableBearing(0.0381, 0.8 * 40e6), DowelBar.AllowableBearingFromCube(0.0381, 40e6), 1.0);

    /// <summary>Loaded and unloaded side add up to the free edge, and their ratio is the transfer.</summary>
    [Fact]
    public void Both_sides_add_up_to_the_free_edge() => Gen.Select(Gen.Double[0.0001, 0.01], Gen.Double[0, 1]).Sample((free, transfer) =>
    {
        var (loaded, unloaded) = (LoadTransfer.LoadedSide(free, transfer), LoadTransfer.UnloadedSide(free, transfer));
        Assert.Equal(free, loaded + unloaded, 1e-12);
        Assert.Equal(transfer, unloaded / loaded, 1e-12);
    });

    /// <summary>The turning part is the face slope over the gap: the slope by differences of the buried deflection.</summary>
    [Fact]
    public void The_turning_part_is_the_slope_at_the_face()
    {
        const double Steel = 2e11, Step = 1e-7, Joint = 0.008;
        var beta = DowelBar.Beta(4e11, 0.032, Steel);
        var slope = (DowelSpring.BuriedDeflection(0, 1, Joint, beta, 0.032, Steel)
            - DowelSpring.BuriedDeflection(Step, 1, Joint, beta, 0.032, Steel)) / Step;
        Assert.Equal(1, DowelSpring.Yield(4e11, 0.032, Steel, 0.3, Joint).Turning / (slope * Joint), 1e-5);
    }
}
