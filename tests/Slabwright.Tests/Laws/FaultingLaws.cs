using CsCheck;
using Slabwright.Core.Joints;
using Slabwright.Core.Joints.Faulting;

namespace Slabwright.Tests.Laws;

public class FaultingLaws
{
    private static readonly Gen<double> Energy = Gen.Double[0, 3e6];

    private static FaultingSite Site(double erodibility, double lift) => new()
    {
        Erodibility = erodibility, FrozenShare = 0.1, FinesShare = 0.4, WetDays = 120, Overburden = 10_000, CornerLift = lift,
    };

    private static FaultingCase Joint(double diameter, double thickness, double free) => new()
    {
        Coefficients = FaultingCoefficients.Recalibrated2015, Site = Site(3, 0.0004), Reaction = 54e6, Thickness = thickness, Strength = 35e6,
        Bars = diameter > 0 ? FaultingBars.OfSize(diameter, 0.3048, thickness) : null, Interlock = false, Opening = 0.001, BaseTransfer = 0.2,
        Loads = [new CornerLoad(free, 20_000), new CornerLoad(free / 2, 60_000)], Growth = 0.02,
    };

    [Fact]
    public void Faulting_never_decreases_and_never_passes_its_greatest_value() => Gen.Select(
        Gen.Double[1, 5], Gen.Double[0.0001, 0.002], Energy.Array[1, 60], Gen.Int[0, 2]).Sample((erodibility, lift, energies, set) =>
    {
        var last = 0.0;
        foreach (var month in FaultingModel.Run(FaultingCoefficients.All[set], Site(erodibility, lift), energies))
        {
            Assert.True(month.Faulting >= last);
            Assert.True(month.Faulting <= month.Greatest);
            last = month.Faulting;
        }
    });

    [Fact]
    public void The_integrated_step_tends_to_the_printed_one()
    {
        var energies = Enumerable.Repeat(50.0, 24).ToArray();
        var printed = FaultingModel.Run(FaultingCoefficients.Report2004, Site(4, 0.0005), energies, FaultingStep.Printed);
        var integrated = FaultingModel.Run(FaultingCoefficients.Report2004, Site(4, 0.0005), energies);
        Assert.True(integrated[^1].Faulting < printed[^1].Faulting);
        Assert.Equal(1, integrated[^1].Faulting / printed[^1].Faulting, 0.001);
    }

    /// <summary>A heavy month in one printed step overshoots; that is why the program integrates.</summary>
    [Fact]
    public void The_printed_step_can_overshoot_where_the_integrated_does_not()
    {
        var heavy = new[] { 3e6 };
        var set = FaultingCoefficients.Report2004;
        var printed = FaultingModel.Run(set, Site(4, 0.0005), heavy, FaultingStep.Printed)[0];
        Assert.True(printed.Faulting > printed.Greatest);
        var integrated = FaultingModel.Run(set, Site(4, 0.0005), heavy)[0];
        Assert.True(integrated.Faulting < integrated.Greatest);
    }

    [Fact]
    public void Full_transfer_stores_no_energy() => Gen.Select(Gen.Double[1e7, 3e8], Gen.Double[0, 0.005]).Sample((reaction, deflection) =>
    {
        Assert.Equal(0, FaultingModel.Energy(reaction, deflection, deflection));
        Assert.True(FaultingModel.Energy(reaction, deflection + 0.0001, deflection) > 0);
    });

    [Fact]
    public void A_larger_dowel_never_raises_faulting() => Gen.Select(
        Gen.Double[0.018, 0.05], Gen.Double[0.001, 0.02], Gen.Double[0.18, 0.36], Gen.Double[0.0002, 0.003]).Sample(
        (diameter, more, thickness, free) =>
        {
            var small = FaultingProjection.Run(Joint(diameter, thickness, free), 240)[^1].Month.Faulting;
            var large = FaultingProjection.Run(Joint(diameter + more, thickness, free), 240)[^1].Month.Faulting;
            Assert.True(large <= small * (1 + 1e-12), $"{diameter} m: {small}, {diameter + more} m: {large}");
        }, iter: 300);

    [Fact]
    public void Bars_loosen_but_never_stiffen_and_outlast_none()
    {
        var months = FaultingProjection.Run(Joint(0.0381, 0.254, 0.001), 360);
        var bare = FaultingProjection.Run(Joint(0, 0.254, 0.001), 360);
        for (var i = 1; i < months.Length; i++)
        {
            Assert.True(months[i].Transfer <= months[i - 1].Transfer);
            Assert.True(months[i].BarDamage > months[i - 1].BarDamage);
        }

        Assert.True(months[^1].Transfer < months[0].Transfer);
        Assert.True(FaultingProjection.YearsTo(months, 0.0025) > FaultingProjection.YearsTo(bare, 0.0025));
    }

    [Fact]
    public void Years_to_a_limit_lie_between_the_months_around_it()
    {
        var months = FaultingProjection.Run(Joint(0.0254, 0.254, 0.001), 240);
        var limit = months[100].Month.Faulting * 0.4 + months[101].Month.Faulting * 0.6;
        Assert.Equal((101 + 0.6) / 12, FaultingProjection.YearsTo(months, limit), 1e-9);
        Assert.Equal(double.PositiveInfinity, FaultingProjection.YearsTo(months, 10));
    }

    [Fact]
    public void Interlock_wears_and_wider_joints_interlock_less()
    {
        var narrow = JointWear.FaceCapacity(0.254, 0.0005);
        Assert.True(narrow > JointWear.FaceCapacity(0.254, 0.001));
        Assert.True(JointWear.Faces(narrow) > JointWear.Faces(narrow / 2));
        var joint = Joint(0, 0.254, 0.001) with { Interlock = true, Opening = 0.0012 };
        var months = FaultingProjection.Run(joint, 240);
        Assert.True(months[^1].Transfer < months[0].Transfer);
        Assert.True(months[0].Transfer > FaultingProjection.Run(joint with { Interlock = false }, 1)[0].Transfer);
    }
}
