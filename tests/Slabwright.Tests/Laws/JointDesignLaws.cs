using CsCheck;
using Slabwright.Core.Joints.Design;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;
using Slabwright.Tests.JointLayouts;
using JointChecks = Slabwright.Core.Joints.Design.JointChecks;

namespace Slabwright.Tests.Laws;

/// <summary>Laws every lane's design keeps, over thin and thick, soft and stiff, light and heavy.</summary>
public sealed class JointDesignLaws
{
    private static readonly Gen<JointConditions> Conditions =
        from thickness in Gen.Double[6, 14]
        from width in Gen.Double[9, 14]
        from reaction in Gen.Double[50, 500]
        from strength in Gen.Double[2500, 6000]
        from slab in Gen.Double[12, 60]
        from gap in Gen.Double[0.5, 8]
        from trucks in Gen.Double[20, 4000]
        select Lanes.Highway with
        {
            Thickness = thickness * Lanes.Inch, LaneWidth = width * Lanes.Foot, Reaction = Units.Pci.ToBase(reaction),
            Strength = Units.Psi.ToBase(strength), OldSlab = slab * Lanes.Foot, JointWidth = gap / 1000, TrucksPerDay = trucks,
            EquivalentAxlesPerDay = 1.8 * trucks,
            Traffic = [new(1, Units.Kip.ToBase(12), trucks), new(2, Units.Kip.ToBase(34), 0.65 * trucks)],
        };

    [Fact]
    public void The_winner_is_beaten_by_no_passing_cheaper_one_and_every_bar_lies_in_the_lane() => Conditions.Sample(
        c =>
        {
            Assert.Empty(JointChecks.Conditions(c));
            var design = Lanes.Design(c);
            if (design.Winner is { } winner)
            {
                Assert.True(winner.Passes);
                Assert.DoesNotContain(design.Alternatives, a => a.Passes && a.CostPerJoint < winner.CostPerJoint);
            }
            else
            {
                Assert.DoesNotContain(design.Alternatives, a => a.Passes);
            }

            foreach (var bars in design.Alternatives.Select(a => a.Layout).OfType<BarLayout>())
            {
                Assert.Empty(JointChecks.Layout(bars, c.LaneWidth, c.Thickness));
                Assert.True(bars.Offsets[0] >= BarRow.EdgeDistance - 1e-9 && bars.Offsets[^1] <= c.LaneWidth - BarRow.EdgeDistance + 1e-9);
            }
        },
        seed: "0000KOIPSQsT", iter: 25, threads: 1);

    [Fact]
    public void Rows_keep_their_spacing_and_bounds() => Gen.Select(Gen.Double[2.4, 4.6], Gen.Double[0.2, 0.5], Gen.Int[1, 6]).Sample(
        (width, spacing, perPath) =>
        {
            var (first, last) = (BarRow.EdgeDistance, width - BarRow.EdgeDistance);
            var full = BarRow.FullWidth(first, last, spacing);
            Assert.Equal(BarRow.FullWidthCount(width, BarRow.EdgeDistance, spacing), full.Length);
            Assert.Equal(full[0] - 0, width - full[^1], 1e-9);
            var paths = BarRow.WheelPaths(first, last, spacing, perPath);
            Assert.True(paths.IsEmpty || paths.Length == 2 * perPath);
            foreach (var row in new[] { full, paths })
            {
                for (var n = 1; n < row.Length; n++) Assert.True(row[n] - row[n - 1] >= spacing - 1e-9);
                Assert.All(row, x => Assert.InRange(x, first - 1e-9, last + 1e-9));
            }
        },
        iter: 500);
}
