using System.Collections.Immutable;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;

namespace Slabwright.Core.Joints.Sealing;

/// <summary>Sealing of the repair joints: how far each moves, and for each build-up of a lane the reservoir that follows it.</summary>
public static class SealPlanner
{
    /// <summary>Plans the seals.</summary>
    /// <param name="road">The road.</param>
    /// <param name="repairs">Its repairs.</param>
    /// <param name="settings">Sealant, temperatures, movement.</param>
    /// <param name="units">Whether the crew's table steps by 10 °F or by 5 °C, and units in sentences.</param>
    public static SealPlan For(Road road, IReadOnlyList<Repair> repairs, SealingSettings settings, UnitSystem units = UnitSystem.UsCustomary)
    {
        if (repairs.Count == 0) return SealPlan.Empty;
        var findings = new List<Finding>(SealingCheck.Of(settings));
        if (findings.Any(f => f.Level == FindingLevel.Error && f.Code != "JNT-040")) return SealPlan.Empty with { Findings = [.. findings] };
        var reservoirs = ImmutableArray.CreateBuilder<Reservoir>();
        var joints = new Dictionary<string, List<SealedJoint>>(StringComparer.Ordinal);
        foreach (var lane in road.Lanes)
        {
            ImmutableArray<Repair> here = [.. repairs.Where(r => r.Lane == lane.Number).OrderBy(r => r.From)];
            var moving = JointBodies.Of(lane, here).Select(m => Joint(m, lane, settings)).ToList();
            foreach (var group in moving.GroupBy(j => lane.SectionAt(j.At)).OrderBy(g => g.Key.From))
            {
                var place = -1;
                if (group.Any(j => j.Works))
                {
                    place = reservoirs.Count;
                    reservoirs.Add(Reservoirs.Design(lane, group.Key, [.. group.Where(j => j.Works)], place, settings, units));
                    findings.AddRange(Reservoirs.Findings(reservoirs[^1], settings, units));
                }

                foreach (var joint in group)
                {
                    if (!joints.TryGetValue(joint.RepairId, out var list)) joints[joint.RepairId] = list = [];
                    list.Add(joint with { Reservoir = joint.Works ? place : -1 });
                }
            }
        }

        return new()
        {
            Joints = [.. repairs.SelectMany(r => joints.GetValueOrDefault(r.Id) ?? [])],
            Reservoirs = reservoirs.ToImmutable(),
            Notes = SealNotes.For(settings, units),
            Findings = [.. findings],
        };
    }

    private static SealedJoint Joint(MovingJoint moving, Lane lane, SealingSettings settings)
    {
        var section = lane.SectionAt(moving.Joint.At);
        var factor = settings.FactorFor(section.Base).Value;
        var (old, made) = (moving.Moves.Old, moving.Moves.New);
        var perKelvin = SealMechanics.Opening(factor, old, settings.OldExpansion.Value, made, settings.NewExpansion.Value);
        var shrinkage = SealMechanics.Opening(factor, old, settings.OldShrinkage.Value, made, settings.NewShrinkage.Value);
        var (coldest, hottest) = settings.Range;
        return new()
        {
            RepairId = moving.RepairId,
            Lane = lane.Number,
            Position = moving.Position,
            At = moving.Joint.At,
            Works = moving.Joint.Design != JointDesign.Tied,
            OldLength = old,
            NewLength = made,
            PerKelvin = perKelvin,
            Shrinkage = shrinkage,
            Movement = new JointTravel(perKelvin, shrinkage, coldest, hottest).Whole,
            Reservoir = -1,
        };
    }
}
