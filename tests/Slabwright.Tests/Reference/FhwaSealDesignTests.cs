using Slabwright.Core.Evidence;
using Slabwright.Core.Joints.Sealing;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;
using Slabwright.Tests.Boundaries;
using Slabwright.Tests.JointSealing;

namespace Slabwright.Tests.Reference;

/// <summary>
/// FHWA pavement notebook ch. 3, example A (p. 3.3.7), through the whole design: 60 ft of slab, granular base, 14 to 90 °F, 20 to 55 %.
/// Published: 0.3 in of movement, a 1 in seal, 0.5 in saw cut at 80 °F, 0.68 in at 40 °F. Deviations within the printed digits.
/// </summary>
public sealed class FhwaSealDesignTests
{
    private const double Inch = 0.0254;

    [Fact]
    public void Example_A_as_a_repair_joint()
    {
        // A 60 ft repair beside a 60 ft slab: half of each, 60 ft in all.
        var road = Worked.Road(Worked.Lane(1, 600, JointKind.Dowelled, Worked.Every(60, 600)));
        var eighty = new Core.RuleSets.Sourced<double>(Units.Fahrenheit.ToBase(80), SourceRef.Project);
        var settings = new SealingSettings
        {
            Sealant = SealantFamilies.PreformedCompression, Coldest = Units.Fahrenheit.ToBase(14), Hottest = Units.Fahrenheit.ToBase(90),
            SealFrom = eighty, SealTo = eighty, NewShrinkage = new(1e-4, SourceRef.Project),
        };
        var reservoir = Assert.Single(SealPlanner.For(road, [SealPlannerTests.Repair(120, 180)], settings).Reservoirs);
        Assert.Equal(0.3, reservoir.Governing.Movement / Inch, 0.005);
        Assert.Equal(1.0, reservoir.Chosen!.SealSize!.Value / Inch, 6);
        Assert.Equal(0.5, reservoir.Chosen.Width / Inch, 6);
        Assert.Equal(0.5, SawWidth(80), 0.005);
        Assert.Equal(0.68, SawWidth(40), 0.005);

        double SawWidth(double fahrenheit) =>
            reservoir.Table.Single(r => Math.Abs(Units.Fahrenheit.FromBase(r.SlabTemperature) - fahrenheit) < 1e-6).SawWidth!.Value / Inch;
    }
}
